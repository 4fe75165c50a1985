import type { Verdict } from '../../domain/verdict/standing-words.ts';

/** One cloth to hang. */
export interface ClothItem {
  readonly id: string;
  readonly name: string;
  /** `#rrggbb`. */
  readonly hex: string;
  /** The colour for a wide screen, where an ordinary one cannot show it. */
  readonly wide?: string | undefined;
  readonly fibre: string;
  readonly verdict?: Verdict | undefined;
  /** How the verdict is said beneath the cloth. */
  readonly verdictWord?: string | undefined;
  /** Independent classes of evidence. */
  readonly classes?: number | undefined;
  readonly predicted?: boolean | undefined;
  readonly outOfGamut?: boolean | undefined;
  /** Cloths of one group hang together; a change of group is a gap on the line. */
  readonly group?: string | undefined;
  /** One more short line of words: origin, recipe. */
  readonly detail?: string | undefined;
}

/** A cloth as it hangs, or as it is being taken off. */
export interface HungCloth {
  readonly item: ClothItem;
  readonly leaving: boolean;
  /** True for the first of its group: a gap before it, its group's name above it. */
  readonly startsGroup: boolean;
  /** True for the last before another group: the gap follows it. */
  readonly endsGroup: boolean;
}

/**
 * The line after its cloths have changed: the new ones in their order, and those no longer wanted where they hung, leaving.
 *
 * @param before what hung until now; cloths already leaving stay until they are dropped.
 * @param keepLeaving false where nothing may move: what is not wanted is gone at once.
 */
export function hangCloths(before: readonly HungCloth[], items: readonly ClothItem[], keepLeaving: boolean): readonly HungCloth[] {
  const wanted = new Set(items.map(({ id }) => id));
  const gone = keepLeaving ? before.filter(({ item }) => !wanted.has(item.id)) : [];
  const after = new Map<string | undefined, ClothItem[]>();
  for (const { item } of gone) {
    const place = before.findIndex((hung) => hung.item.id === item.id);
    const neighbour = before.slice(0, place).findLast((hung) => wanted.has(hung.item.id))?.item.id;
    after.set(neighbour, [...(after.get(neighbour) ?? []), item]);
  }
  const inOrder = [
    ...(after.get(undefined) ?? []).map((item) => ({ item, leaving: true })),
    ...items.flatMap((item) => [{ item, leaving: false }, ...(after.get(item.id) ?? []).map((left) => ({ item: left, leaving: true }))]),
  ];
  return inOrder.map((hung, i) => ({
    ...hung,
    startsGroup: !hung.leaving && hung.item.group !== undefined && inOrder.slice(0, i).findLast(stays)?.item.group !== hung.item.group,
    endsGroup: inOrder.slice(i + 1).some(stays) && inOrder.slice(i + 1).find(stays)?.item.group !== hung.item.group,
  }));
}

const stays = ({ leaving }: { readonly leaving: boolean }): boolean => !leaving;

/** The words on the line beneath a cloth's name, verdict first. */
export const standingLine = ({ verdictWord, predicted, outOfGamut }: ClothItem): string =>
  [verdictWord, predicted ? 'predicted' : undefined, outOfGamut ? 'screen shows it duller' : undefined]
    .filter((words) => words !== undefined && words !== '')
    .join(', ');

/** What a cloth is called by those who hear the line: all that is seen beneath it. */
export const spokenName = (item: ClothItem): string =>
  [item.name, standingLine(item), item.detail ?? ''].filter((words) => words !== '').join(', ');

/** A cloth's place on the screen, in pixels. */
export interface HungAt {
  readonly id: string;
  readonly left: number;
  readonly top: number;
}

/**
 * The cloth an arrow key leads to.
 *
 * @param places every cloth, in order along the line.
 * @returns its id; undefined when there is none that way, or the key is not one of these.
 */
export function neighbourOf(key: string, from: string, places: readonly HungAt[]): string | undefined {
  const index = places.findIndex(({ id }) => id === from);
  const here = places[index];
  if (!here) return places[0]?.id;
  switch (key) {
    case 'ArrowRight':
      return places[index + 1]?.id;
    case 'ArrowLeft':
      return places[index - 1]?.id;
    case 'Home':
      return places[0]?.id;
    case 'End':
      return places.at(-1)?.id;
    case 'ArrowDown':
    case 'ArrowUp': {
      const beyond = places.filter(({ top }) => (key === 'ArrowDown' ? top > here.top + 1 : top < here.top - 1));
      const row = key === 'ArrowDown' ? Math.min(...beyond.map(({ top }) => top)) : Math.max(...beyond.map(({ top }) => top));
      const inRow = beyond.filter(({ top }) => Math.abs(top - row) <= 1);
      return inRow.sort((a, b) => Math.abs(a.left - here.left) - Math.abs(b.left - here.left))[0]?.id;
    }
    default:
      return undefined;
  }
}
