import type { KeyLines } from '../note/front-matter-keys.ts';
import type { MergePiece } from './note-merge.ts';

type ByKey = ReadonlyMap<string, string>;

/**
 * Merges front matter key by key; the lines of a key that one side left alone are the other side's, to the byte.
 *
 * @param base absent where nothing common is known: every key that differs is then a conflict.
 */
export function mergeKeys(
  base: readonly KeyLines[] | undefined,
  mine: readonly KeyLines[],
  theirs: readonly KeyLines[],
): readonly MergePiece[] {
  const [was, own, other] = [base && linesOf(base), linesOf(mine), linesOf(theirs)];
  return orderOf(base, mine, theirs).map((key) => mergeKey(key, was, own.get(key) ?? '', other.get(key) ?? ''));
}

const linesOf = (keys: readonly KeyLines[]): ByKey => new Map(keys.map(({ key, text }) => [key, text]));

function mergeKey(key: string, was: ByKey | undefined, mine: string, theirs: string): MergePiece {
  const base = was && (was.get(key) ?? '');
  if (mine === theirs || theirs === base) return { is: 'agreed', text: mine };
  if (mine === base) return { is: 'agreed', text: theirs };
  return { is: 'conflict', in: 'key', key, ...(base !== undefined && { base }), mine, theirs };
}

/** Mine is the order of the keys, unless only theirs was changed; keys of the other side come behind the key they stood behind. */
function orderOf(base: readonly KeyLines[] | undefined, mine: readonly KeyLines[], theirs: readonly KeyLines[]): readonly string[] {
  const [was, own, other] = [base ?? [], mine, theirs].map((keys) => keys.map(({ key }) => key));
  const isMoved = changedOrder(was ?? [], own ?? []) || !changedOrder(was ?? [], other ?? []);
  const [order, added] = isMoved ? [[...(own ?? [])], other ?? []] : [[...(other ?? [])], own ?? []];
  for (const [at, key] of added.entries()) {
    if (order.includes(key)) continue;
    const before = added.slice(0, at).findLast((one) => order.includes(one));
    order.splice(before === undefined ? 0 : order.indexOf(before) + 1, 0, key);
  }
  return order;
}

/** Whether keys that both have stand in another order. */
function changedOrder(before: readonly string[], now: readonly string[]): boolean {
  const [kept, found] = [before.filter((key) => now.includes(key)), now.filter((key) => before.includes(key))];
  return kept.some((key, at) => key !== found[at]);
}
