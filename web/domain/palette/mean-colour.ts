import { TEXTILE } from '../colour/conditions.ts';
import type { Lab } from '../colour/lab.ts';
import { type SwatchColour, swatchFromLab } from '../colour/swatch-colour.ts';
import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { DyedSample } from '../verdict/cloths.ts';

/**
 * The colour of a recipe on its swatch: the mean Lab (D65/10°) of its samples.
 * Later baths and unusual grounds are left out, because they are other colours on purpose; where nothing else was dyed, they count.
 *
 * @returns undefined for no samples; the single sample's own colour for one.
 */
export function meanColour(base: EvidenceBase, samples: readonly DyedSample[]): SwatchColour | undefined {
  const counted = usualSamples(base, samples);
  const [first] = counted;
  if (counted.length <= 1) return first?.colour;
  const sum = counted.reduce<Lab>(([l, a, b], { colour: { lab10 } }) => [l + lab10[0], a + lab10[1], b + lab10[2]], [0, 0, 0]);
  const mean: Lab = [sum[0] / counted.length, sum[1] / counted.length, sum[2] / counted.length];
  return first && swatchOfMean(mean, first.colour);
}

/** Swatches of means, by the colour of a first sample: they are the same at every place and date, and their curve takes long. */
const known = new WeakMap<SwatchColour, Map<string, SwatchColour | undefined>>();

function swatchOfMean(mean: Lab, first: SwatchColour): SwatchColour | undefined {
  const byMean = known.get(first) ?? new Map<string, SwatchColour | undefined>();
  known.set(first, byMean);
  const key = mean.join();
  if (!byMean.has(key)) {
    const swatch = swatchFromLab(mean, TEXTILE, first.origin);
    byMean.set(key, swatch.ok ? swatch.value : undefined);
  }
  return byMean.get(key);
}

/** The samples that stand for a recipe: first baths on its most usual ground. */
export function usualSamples(base: EvidenceBase, samples: readonly DyedSample[]): readonly DyedSample[] {
  const firstBaths = samples.filter(({ trial }) => {
    const record = base.note(trial)?.record;
    return record?.kind !== 'trial' || (record.bath?.nth ?? 1) === 1;
  });
  const from = firstBaths.length > 0 ? firstBaths : samples;
  const groundOf = ({ sample: { onto } }: DyedSample) => (onto === undefined || base.note(onto)?.record.kind === 'trial' ? '' : onto);
  const counts = new Map<string, number>();
  for (const one of from) counts.set(groundOf(one), (counts.get(groundOf(one)) ?? 0) + 1);
  const usual = [...counts].sort(([a, many], [b, few]) => few - many || (a < b ? -1 : 1))[0]?.[0];
  return from.filter((one) => groundOf(one) === usual);
}
