import { quantile } from './print-table.ts';

/** Something to be measured. What it gives back was compared with the others' before. */
export interface Contender {
  readonly name: string;
  readonly run: () => unknown;
}

/** Milliseconds: of this process's processor time, to which other work on the machine does not count, or by the wall. */
export type Clock = () => number;
export const cpuClock: Clock = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};
export const wallClock: Clock = () => performance.now();

/** What each repetition of one contender took, in milliseconds. */
export interface Timing {
  readonly name: string;
  readonly times: readonly number[];
}

/**
 * Measures contenders in turn, A B C, A B C, so that whatever else the machine does falls on all of them.
 *
 * @param repetitions at least five.
 * @param warmUp turns before them that do not count.
 */
export async function alternate(
  contenders: readonly Contender[],
  repetitions = 5,
  clock = cpuClock,
  warmUp = 1,
): Promise<readonly Timing[]> {
  const times = contenders.map((): number[] => []);
  for (let turn = -warmUp; turn < repetitions; turn += 1) {
    for (const [at, { run }] of contenders.entries()) {
      globalThis.gc?.();
      const start = clock();
      await run();
      const took = clock() - start;
      if (turn >= 0) times[at]?.push(took);
    }
  }
  return contenders.map(({ name }, at) => ({ name, times: times[at] ?? [] }));
}

/** One who answers queries, to be measured query by query. */
export interface Answerer {
  readonly name: string;
  readonly ask: (query: string) => unknown;
}

/**
 * Asks all queries of each in turn.
 *
 * @param shares for each share a timing of every answerer: what that share of the queries took at most, repetition by repetition.
 */
export function alternateQueries(
  answerers: readonly Answerer[],
  queries: readonly string[],
  shares: readonly number[],
  repetitions = 5,
  clock = cpuClock,
): readonly (readonly Timing[])[] {
  const timings = shares.map(() => answerers.map(({ name }) => ({ name, times: [] as number[] })));
  for (let turn = -1; turn < repetitions; turn += 1) {
    for (const [at, { ask }] of answerers.entries()) {
      const each = queries.map((query) => {
        const start = clock();
        ask(query);
        return clock() - start;
      });
      if (turn >= 0) for (const [nth, share] of shares.entries()) timings[nth]?.[at]?.times.push(quantile(each, share));
    }
  }
  return timings;
}

/** The median of the ratios taken within each repetition. */
export function medianRatio(candidate: Timing, yardstick: Timing): number {
  return quantile(
    candidate.times.map((time, at) => time / (yardstick.times[at] ?? NaN)),
    0.5,
  );
}
