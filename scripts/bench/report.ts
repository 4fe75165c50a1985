import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';
import { ROOT } from '../setup.mjs';
import { medianRatio, type Timing } from './alternate.ts';
import { printTable, quantile } from './print-table.ts';

/** One figure against its reference. */
export interface Figure {
  /** `G1` … `G8`. */
  readonly goal: string;
  readonly what: string;
  /** Size of the notebook, or whatever else was held fixed. */
  readonly at: string;
  readonly against: string;
  /** In one unit, whichever it is: the medians of the repetitions. */
  readonly candidate: number;
  readonly yardstick: number;
  readonly ratio: number;
  /** The ratio that is wanted at most; absent where nothing is asked and the figure only informs. */
  readonly wanted?: number;
}

/** A figure of two timings: the median of the ratios, not the ratio of the medians. */
export const timedFigure = (about: Pick<Figure, 'goal' | 'what' | 'at' | 'wanted'>, candidate: Timing, yardstick: Timing): Figure => ({
  ...about,
  against: yardstick.name,
  candidate: quantile(candidate.times, 0.5),
  yardstick: quantile(yardstick.times, 0.5),
  ratio: medianRatio(candidate, yardstick),
});

const verdict = ({ ratio, wanted }: Figure): string => (wanted === undefined ? '' : ratio <= wanted ? 'met' : 'not met');
const asPart = (ratio: number): string => (ratio > 0 && ratio < 0.2 ? `1/${(1 / ratio).toFixed(0)}` : ratio.toPrecision(3));

/** Prints figures as a table, and keeps them as `dist/bench/NAME.json` with the machine they were taken on. */
export function report(name: string, title: string, figures: readonly Figure[]): void {
  printTable(
    title,
    ['goal, work', 'at', 'against', 'ms', 'yardstick ms', 'ratio', 'wanted ≤', ''],
    figures.map((one) => [
      `${one.goal} ${one.what}`,
      one.at,
      one.against,
      one.candidate,
      one.yardstick,
      asPart(one.ratio),
      one.wanted === undefined ? '' : asPart(one.wanted),
      verdict(one),
    ]),
  );
  const folder = join(ROOT, 'dist', 'bench');
  mkdirSync(folder, { recursive: true });
  const machine = { node: process.version, cpu: cpus()[0]?.model, cores: cpus().length, load: loadavg()[0] };
  writeFileSync(join(folder, `${name}.json`), `${JSON.stringify({ takenAt: new Date().toISOString(), machine, figures }, null, 2)}\n`);
}
