import { ciede2000Of } from '../../web/domain/colour/ciede2000.ts';
import { TEXTILE } from '../../web/domain/colour/conditions.ts';
import { dyeTerm, spectrumToKs } from '../../web/domain/colour/kubelka-munk.ts';
import type { Lab } from '../../web/domain/colour/lab.ts';
import { Nearness } from '../../web/domain/colour/nearness.ts';
import { bandWeights, whitePoint } from '../../web/domain/colour/spectrum-to-xyz.ts';
import { alternate } from './alternate.ts';
import { byDifference, DYES, FIRSTS, GROUNDS, type Ranked, sets, take, within } from './over-dye-pairs.ts';
import { type Figure, report, timedFigure } from './report.ts';

/** The yardstick: every pair, band by band, on plain typed arrays. */
const BANDS = 36;
const PAIRS = GROUNDS.length * FIRSTS * DYES;
const weights = { ...bandWeights(380, 10, BANDS, TEXTILE), white: whitePoint('D65', 10) };
const flat = sets.map(({ ground, layers }) => {
  const under = spectrumToKs(ground);
  const terms = layers.map((one) => dyeTerm(one, ground));
  return {
    first: Float64Array.from(terms.slice(0, FIRSTS).flatMap((term) => term.map((value, band) => (under[band] ?? 0) + value))),
    second: Float64Array.from(terms.slice(FIRSTS).flat()),
  };
});
const compressed = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
function plainLoop([l, a, b]: Lab): Float64Array {
  const differences = new Float64Array(PAIRS);
  let pair = 0;
  for (const { first, second } of flat) {
    for (let one = 0; one < first.length; one += BANDS) {
      for (let other = 0; other < second.length; other += BANDS) {
        let [x, y, z] = [0, 0, 0];
        for (let band = 0; band < BANDS; band += 1) {
          const ks = (first[one + band] ?? 0) + (second[other + band] ?? 0);
          const r = 1 / (1 + ks + Math.sqrt(ks * ks + 2 * ks));
          x += r * (weights.x[band] ?? 0);
          y += r * (weights.y[band] ?? 0);
          z += r * (weights.z[band] ?? 0);
        }
        const [fx, fy, fz] = [compressed(x / weights.white[0]), compressed(y / weights.white[1]), compressed(z / weights.white[2])];
        differences[pair++] = ciede2000Of(l, a, b, 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
      }
    }
  }
  return differences;
}

const ranked = (differences: Float64Array, limit: number): readonly Ranked[] => {
  const near: Ranked[] = [];
  differences.forEach((deltaE00, pair) => deltaE00 <= limit && near.push({ pair, deltaE00 }));
  return near.sort(byDifference);
};
const plainWithin = (target: Lab, limit: number): readonly Ranked[] => ranked(plainLoop(target), limit);
function plainNearest(target: Lab, most: number): readonly Ranked[] {
  const differences = plainLoop(target);
  const limit = differences.slice().sort()[most - 1] ?? Infinity;
  return ranked(differences, limit).slice(0, most);
}

function nearest(target: Lab, most: number): readonly Ranked[] {
  let found: Ranked[] = [];
  let limit = Infinity;
  let near: Nearness | undefined;
  for (let first = 0; first < GROUNDS.length * FIRSTS; first += 1) {
    take(first, target, near, (one) => one.deltaE00 <= limit && found.push(one));
    if (found.length >= 2 * most || first === GROUNDS.length * FIRSTS - 1) {
      found = found.sort(byDifference).slice(0, most);
      limit = found[most - 1]?.deltaE00 ?? Infinity;
      near = new Nearness([target], limit);
    }
  }
  return found;
}

const TARGETS: readonly (readonly [name: string, lab: Lab])[] = [
  ['a green', [42, -18, 18]],
  ['a blue', [30, 3, -28]],
];
const same = (one: readonly Ranked[], other: readonly Ranked[]): boolean =>
  one.length === other.length && one.every(({ pair, deltaE00 }, at) => pair === other[at]?.pair && deltaE00 === other[at].deltaE00);
const figures: Figure[] = [];
for (const [name, target] of TARGETS) {
  if (!same(nearest(target, 50), plainNearest(target, 50))) throw new Error(`${name}: another ranking`);
  if (!same(within(target, 6), plainWithin(target, 6))) throw new Error(`${name}: another ranking within 6`);
  const [fifty, plainFifty, six, plainSix] = await alternate([
    { name: '50 nearest', run: () => nearest(target, 50) },
    { name: 'Float64Array loop', run: () => plainNearest(target, 50) },
    { name: 'all within ΔE00 6', run: () => within(target, 6) },
    { name: 'Float64Array loop', run: () => plainWithin(target, 6) },
  ]);
  if (!fifty || !plainFifty || !six || !plainSix) continue;
  figures.push(timedFigure({ goal: 'G5', what: `50 over-dyes nearest to ${name}`, at: '720,000 pairs', wanted: 1 / 3 }, fifty, plainFifty));
  figures.push(timedFigure({ goal: 'G5', what: `within ΔE00 6 of ${name}, ranked`, at: '720,000 pairs', wanted: 1 / 3 }, six, plainSix));
}
report('over-dye', 'Which two baths give this colour', figures);
