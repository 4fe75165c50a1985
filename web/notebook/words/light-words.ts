import type { BlueWoolRange, NoBlueWool } from '../../domain/light/blue-wool.ts';
import type { LightCaveat } from '../../domain/light/caveats.ts';
import type { WeighedGrade } from '../../domain/light/light-class.ts';
import type { Sensitivity } from '../../domain/light/sensitivity.ts';

/** What has to be said beside a figure of light. */
export const caveatWords = {
  reciprocity: 'Reckoned as if strong light for a short time were the same as weak light for long; for sensitive dyes it is not.',
  'spread-of-grades': 'Published grades of one dye lie a class or more apart.',
  'table-from-memory': 'Doses of the classes: Michalski/CCI and CIE 157:2004, from memory.',
  'not-linear': 'The first fade comes soonest; later ones take longer.',
  'other-causes': 'Damp, warmth and bad air count too.',
  'no-glass': 'Outdoors there is more ultraviolet than the table, made behind glass, allows for.',
  'light-estimated': 'The light was estimated, not measured.',
  'limit-from-memory': 'Yearly limits: CIE 157:2004; CEN/TS 16163:2014, superseded by EN 16163; from memory.',
} as const satisfies Record<LightCaveat, string>;

/** A class of responsivity as CIE 157 names it. */
export const sensitivityWords = {
  high: 'high responsivity',
  medium: 'medium responsivity',
  low: 'low responsivity',
  irresponsive: 'irresponsive',
} as const satisfies Record<Sensitivity, string>;

/** "blue wool 3–4". */
export const blueWoolText = ({ from, to }: BlueWoolRange): string => (from === to ? `blue wool ${from}` : `blue wool ${from}–${to}`);

/** Why a published grade was not counted. */
export const passedOverWords = {
  'other-scale': 'another scale, which cannot be converted',
  unreadable: 'no class can be read from it',
  'no-grade': 'no grade is given',
  'other-fibre': 'another fibre',
  'other-mordant': 'another mordant',
  'other-test': 'a test of something else than light',
} as const satisfies Record<NoBlueWool | Exclude<WeighedGrade['passedOver'], undefined>, string>;

/** "about 7 months", "20 years", "300 years": no more figures than such an estimate has. */
export function yearsText(years: number): string {
  if (years < 1 / 24) return `about ${plural(Math.max(1, Math.round(years * 365)), 'day')}`;
  if (years < 0.95) return `about ${plural(Math.max(1, Math.round(years * 12)), 'month')}`;
  const rounded = years < 10 ? Number(years.toPrecision(years < 2 ? 2 : 1)) : Number(years.toPrecision(2));
  return rounded === 1 ? '1 year' : `${rounded.toLocaleString('en', { useGrouping: rounded >= 10_000 }).replaceAll(',', ' ')} years`;
}

/** "20 to 67 years", or one of them where both read the same. */
export function yearSpanText({ from, to }: { readonly from: number; readonly to: number }): string {
  const [least, most] = [yearsText(from), yearsText(to)];
  if (least === most) return least;
  const [, leastUnit] = /^(.*) (\S+)$/.exec(least)?.slice(1) ?? [];
  const mostUnit = most.split(' ').at(-1);
  return leastUnit !== undefined && leastUnit === mostUnit
    ? `${least.slice(0, -leastUnit.length - 1)} to ${most.replace(/^about /, '')}`
    : `${least} to ${most}`;
}

/** "15 000 lx·h", "1.5 Mlx·h". */
export const luxHoursText = (luxHours: number): string =>
  luxHours >= 1e6
    ? `${Number((luxHours / 1e6).toPrecision(2))} Mlx·h`
    : `${Math.round(luxHours)
        .toString()
        .replace(/\B(?=(?:\d{3})+$)/g, ' ')} lx·h`;

/** "9.6 times", "80 % of": stands before what it is a share of. */
export const shareText = (share: number): string =>
  share > 1.5 ? `${Number(share.toPrecision(2))} times` : `${Math.round(share * 100)} % of`;

const plural = (count: number, word: string): string => (count === 1 ? `1 ${word}` : `${count} ${word}s`);
