import type { PaletteColour } from './palette.ts';

/** One colour that is not the same on both sides. */
export type PaletteChange =
  | { readonly kind: 'came'; readonly now: PaletteColour; readonly before?: PaletteColour }
  | { readonly kind: 'went'; readonly before: PaletteColour; readonly now?: PaletteColour }
  | { readonly kind: 'verdict' | 'origin'; readonly before: PaletteColour; readonly now: PaletteColour };

/**
 * What came, what went and what changed its verdict or origin between two palettes.
 *
 * @param shown whether a colour counts as there.
 * @param before, now every colour judged on each side: what is not shown tells why it came or went.
 */
export function comparePalettes(
  before: readonly PaletteColour[],
  now: readonly PaletteColour[],
  shown: (colour: PaletteColour) => boolean,
): readonly PaletteChange[] {
  const earlier = new Map(before.map((one) => [one.id, one]));
  const later = new Map(now.map((one) => [one.id, one]));
  const ids = [...new Set([...earlier.keys(), ...later.keys()])].sort();
  return ids.flatMap((id): PaletteChange[] => {
    const [was, is] = [earlier.get(id), later.get(id)];
    const [wasShown, isShown] = [was !== undefined && shown(was), is !== undefined && shown(is)];
    if (is && isShown && !wasShown) return [{ kind: 'came', now: is, ...(was && { before: was }) }];
    if (was && wasShown && !isShown) return [{ kind: 'went', before: was, ...(is && { now: is }) }];
    if (!was || !is || !wasShown || !isShown) return [];
    if (was.judgement.verdict !== is.judgement.verdict) return [{ kind: 'verdict', before: was, now: is }];
    return was.origin === is.origin ? [] : [{ kind: 'origin', before: was, now: is }];
  });
}
