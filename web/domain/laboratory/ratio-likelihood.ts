import type { DyeProfile } from './compound.ts';
import type { RatioFinding } from './findings.ts';
import { type MarkerRatio, ratioNamed } from './tables/marker-ratios.ts';
import type { LabWeights } from './tables/weights.ts';

/** How a reported ratio lies to a dye's own range. */
export interface RatioFit {
  readonly dye: string;
  readonly low: number;
  readonly high: number;
  /** Standard deviations outside the range; 0 inside. */
  readonly off: number;
}

const onScale = (ratio: MarkerRatio, value: number): number => (ratio.scale === 'times' ? Math.log10(Math.max(value, 1e-6)) : value);

/** The report's tolerance and the dye's own straying together, on the ratio's scale. */
function spreadOf(ratio: MarkerRatio, { value, tolerance = 0 }: RatioFinding): number {
  const measured = ratio.scale === 'times' ? onScale(ratio, value + tolerance) - onScale(ratio, value) : tolerance;
  return Math.hypot(ratio.spread, measured);
}

/** How the ratio fits one dye; undefined where the tables give that dye no range. */
export function ratioFit(finding: RatioFinding, dye: string): RatioFit | undefined {
  const ratio = ratioNamed(finding.ratio);
  const range = ratio?.ranges.find((one) => one.dye === dye);
  if (!ratio || !range) return undefined;
  const [at, low, high] = [finding.value, range.low, range.high].map((one) => onScale(ratio, one)) as [number, number, number];
  return { dye, low: range.low, high: range.high, off: Math.max(low - at, at - high, 0) / spreadOf(ratio, finding) };
}

/**
 * Density of a reported ratio under a set of dyes. One dye with a range of its own: flat inside, bell-shaped outside.
 * Two or more that give its compounds, or one without a range: open, because a mixture may lie anywhere.
 */
export function ratioDensity(finding: RatioFinding, dyes: readonly DyeProfile[], weights: LabWeights): number {
  const ratio = ratioNamed(finding.ratio);
  if (!ratio) return 1;
  const open = weights.openRatio[ratio.scale];
  const concerned = new Set([...ratio.above, ...ratio.below]);
  const givers = dyes.filter(({ holds }) => holds.some(({ compound, strength }) => concerned.has(compound) && strength !== 'trace'));
  const giver = givers[0];
  const fit = giver && ratioFit(finding, giver.dye);
  if (givers.length !== 1 || !fit) return open;
  const spread = spreadOf(ratio, finding);
  const width = onScale(ratio, fit.high) - onScale(ratio, Math.max(fit.low, ratio.scale === 'times' ? 1e-6 : 0));
  return Math.exp(-0.5 * fit.off * fit.off) / (width + spread * Math.sqrt(2 * Math.PI));
}
