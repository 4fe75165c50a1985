import { deltaText } from './because.ts';

const SHARES: readonly (readonly [left: number, words: string])[] = [
  [1, 'nothing lost'],
  [0.85, 'a little lost'],
  [0.7, 'a third lost'],
  [0.5, 'half lost'],
  [0.33, 'two thirds lost'],
];

/** How much of a dye is taken for lost; `left` 0–1. */
export function lossWords(left: number): string {
  const nearest = [...SHARES].sort(([a], [b]) => Math.abs(a - left) - Math.abs(b - left))[0];
  return nearest && Math.abs(nearest[0] - left) < 0.04 ? nearest[1] : `${Math.round((1 - left) * 100)} % lost`;
}

/** The hypothesis that a strip rests on, written out. */
export function hypothesisSentence(dyeings: readonly string[], differs: number): string {
  const how =
    differs <= 3
      ? 'These account for the colour as found'
      : differs <= 6
        ? 'These come near the colour as found'
        : 'These account badly for the colour as found';
  const single = how.replace('These account', 'That accounts').replace('These come', 'That comes');
  return `If it was ${dyeings.join(' and ')}, and nothing else. ${dyeings.length > 1 ? how : single} (ΔE00 ${deltaText(differs)}).`;
}

/** What a strip takes for faded. */
export function stripSentence(dyeings: readonly string[], which: number | 'all'): string {
  if (which === 'all') return dyeings.length > 1 ? 'and both have faded alike:' : 'and it has faded:';
  const rest = dyeings.filter((_, at) => at !== which);
  return rest.length === 0 ? 'and it has faded:' : `and only the ${dyeings[which] ?? ''} has faded, the ${rest.join(' and ')} not:`;
}

/** What no strip can know. */
export const AS_FOUND_CAUTION =
  'One of many: a colour as found does not say what it was. Each piece is computed from trials of single dyes in this notebook (Kubelka–Munk, smoothest spectrum where only a colour is known), without the soil, yellowing and shift of hue of a real old cloth.';
