import { frontMatterKeys } from '../note/front-matter-keys.ts';
import { NOTHING, type PlainTree, sameTree } from '../note/plain-tree.ts';
import { spliceValue } from '../note/splice.ts';
import type { PlainValue } from '../note/yaml-text.ts';
import { togetherLogged } from './pot-log.ts';

/** Two notes of one pot as one. */
export interface MergedPots {
  readonly text: string;
  /** Keys in which the two say different things: the first note's stand, the other note has to be looked at. */
  readonly differ: readonly string[];
}

/** Lists whose lines are all kept, each once. */
const GATHERED = ['deviations', 'lots', 'tags', 'cautions', 'names'];
/** Lists of things that are told apart by one key; what one note leaves open the other fills in. */
const KEYED: Readonly<Record<string, string>> = { samples: 'code', actual: 'what' };

/**
 * Brings two notes of one pot together, written on two machines: the log by time, deviations and lots as one list, samples by
 * code, amounts by material. What both say differently stays as the first says it, and is named.
 *
 * @returns undefined where one of them cannot be taken apart or put together without loss; then both have to stay.
 */
export function mergePots(mine: string, theirs: string): MergedPots | undefined {
  const [own, other] = [frontMatterKeys(mine), frontMatterKeys(theirs)];
  if (!own || !other) return undefined;
  const said = new Map(own.keys.map(({ key, says }) => [key, says]));
  const date = said.get('date');
  const day = date?.is === 'scalar' ? date.text : undefined;
  const differ: string[] = [];
  let text = mine;
  for (const { key, says } of other.keys) {
    const before = said.get(key) ?? NOTHING;
    const { tree, whole } = mergedKey(key, before, says, day);
    if (!whole) differ.push(key);
    if (sameTree(tree, before)) continue;
    const value = valueOf(tree);
    const spliced = value === undefined ? undefined : spliceValue(text, [key], value);
    if (!spliced?.ok) return undefined;
    text = spliced.value;
  }
  return { text: text + addedParagraphs(own.body, other.body), differ };
}

interface MergedKey {
  readonly tree: PlainTree;
  /** True where everything the other note says is in it. */
  readonly whole: boolean;
}

function mergedKey(key: string, mine: PlainTree, theirs: PlainTree, day: string | undefined): MergedKey {
  if (isEmpty(theirs) || sameTree(mine, theirs)) return { tree: mine, whole: true };
  if (isEmpty(mine)) return { tree: theirs, whole: true };
  const [own, other] = [itemsOf(mine), itemsOf(theirs)];
  if (key === 'log') {
    const lines = togetherLogged(own.map(textOf), other.map(textOf), day);
    return { tree: { is: 'list', items: lines.map((line) => ({ is: 'scalar', type: 'string', text: line })) }, whole: true };
  }
  if (GATHERED.includes(key)) {
    const more = other.filter((item) => !own.some((one) => sameTree(one, item)));
    return { tree: { is: 'list', items: [...own, ...more] }, whole: true };
  }
  const name = KEYED[key];
  return name === undefined || mine.is !== 'list' || theirs.is !== 'list' ? { tree: mine, whole: false } : mergedItems(own, other, name);
}

function mergedItems(own: readonly PlainTree[], other: readonly PlainTree[], name: string): MergedKey {
  const items = [...own];
  let whole = true;
  for (const item of other) {
    const id = valueIn(item, name);
    const at = id === undefined ? items.findIndex((one) => sameTree(one, item)) : items.findIndex((one) => sameOr(valueIn(one, name), id));
    const held = items[at];
    if (!held) items.push(item);
    else {
      const filled = filledIn(held, item);
      items[at] = filled.tree;
      whole &&= filled.whole;
    }
  }
  return { tree: { is: 'list', items }, whole };
}

/** A group with what the other note adds to it. */
function filledIn(mine: PlainTree, theirs: PlainTree): MergedKey {
  if (mine.is !== 'map' || theirs.is !== 'map') return { tree: mine, whole: sameTree(mine, theirs) };
  const keys = new Map(mine.pairs);
  let whole = true;
  for (const [key, value] of theirs.pairs) {
    const held = keys.get(key);
    if (held === undefined || isEmpty(held)) keys.set(key, value);
    else whole &&= sameTree(held, value);
  }
  return { tree: { is: 'map', pairs: [...keys] }, whole };
}

const isEmpty = (tree: PlainTree): boolean =>
  sameTree(tree, NOTHING) || (tree.is === 'list' && tree.items.length === 0) || (tree.is === 'map' && tree.pairs.length === 0);
const itemsOf = (tree: PlainTree): readonly PlainTree[] => (tree.is === 'list' ? tree.items : [tree]);
const textOf = (tree: PlainTree): string => (tree.is === 'scalar' ? tree.text : JSON.stringify(tree));
const valueIn = (tree: PlainTree, key: string): PlainTree | undefined =>
  tree.is === 'map' ? tree.pairs.find(([name]) => name === key)?.[1] : undefined;
const sameOr = (a: PlainTree | undefined, b: PlainTree): boolean => a !== undefined && sameTree(a, b);

/** A tree as a value to write; undefined for a number that would not be written as it stood. */
function valueOf(tree: PlainTree): PlainValue | undefined {
  if (tree.is === 'list') {
    const items = tree.items.map(valueOf);
    return items.every((item) => item !== undefined) ? items : undefined;
  }
  if (tree.is === 'map') {
    const pairs = tree.pairs.map(([key, value]) => [key, valueOf(value)] as const);
    return pairs.every((pair): pair is readonly [string, PlainValue] => pair[1] !== undefined) ? Object.fromEntries(pairs) : undefined;
  }
  if (tree.type === 'boolean') return tree.text === 'true';
  if (tree.type === 'number') return String(Number(tree.text)) === tree.text ? Number(tree.text) : undefined;
  return tree.type === 'string' ? tree.text : undefined;
}

/** Paragraphs of the other body that this one lacks, behind it. */
function addedParagraphs(mine: string, theirs: string): string {
  const parts = (body: string) => body.split(/\n\s*\n/).map((part) => part.trim());
  const have = new Set(parts(mine));
  const more = parts(theirs).filter((part) => part !== '' && !have.has(part));
  return more.length === 0 ? '' : `${mine.endsWith('\n') ? '\n' : '\n\n'}${more.join('\n\n')}\n`;
}
