import { isAlias, isCollection, isMap, isScalar, isSeq } from 'yaml';
import type { Node, Pair, YAMLMap, YAMLSeq } from 'yaml';
import { isNothing } from './shape.ts';
import { keyText } from './read-yaml.ts';
import type { YamlTree } from './read-yaml.ts';

/** The keys and item numbers that lead to a value. */
export type ValuePath = readonly (string | number)[];

/** The list or map that holds a value, and which of its items it is. */
export interface Holder {
  readonly in: YAMLMap | YAMLSeq;
  /** Equal to the number of items where the value is not there yet. */
  readonly index: number;
  /** True where the value stands between brackets, so that commas part it from others. */
  readonly flow: boolean;
}

/** How far a path could be followed. */
export interface Located {
  /** The value at the end of what could be followed. */
  readonly node?: Node;
  /** What holds it; absent for the front matter itself. */
  readonly holder?: Holder;
  /** The steps that lead on to nothing yet. */
  readonly rest: ValuePath;
}

/**
 * Follows a path through front matter.
 *
 * @returns undefined where it crosses an alias (an edit there would change two places) or a value that has no such steps.
 */
export function locateValue(map: YAMLMap, path: ValuePath): Located | undefined {
  let node: Node = map;
  let holder: Holder | undefined;
  let flow = false;
  for (const [at, step] of path.entries()) {
    flow ||= isCollection(node) && node.flow === true;
    const rest = path.slice(at + 1);
    if (isAlias(node)) return undefined;
    if (isNothing(node)) return { node, holder, rest: path.slice(at) };
    if (typeof step === 'number') {
      if (!isSeq(node)) {
        if (step !== 0) return undefined;
        continue;
      }
      if (step > node.items.length || step < 0 || !Number.isInteger(step)) return undefined;
      holder = { in: node as YAMLSeq, index: step, flow };
      if (step === node.items.length) return { holder, rest };
      node = node.items[step] as Node;
    } else {
      if (!isMap(node)) return undefined;
      const found: number = node.items.findIndex(({ key }) => isScalar(key) && keyText(key) === step);
      holder = { in: node as YAMLMap, index: found < 0 ? node.items.length : found, flow };
      if (found < 0) return { holder, rest: path.slice(at) };
      const value: unknown = node.items[found]?.value;
      if (value === null || value === undefined) return { holder, rest };
      node = value as Node;
    }
  }
  return { node, holder, rest: [] };
}

/** The pair or item a holder points at. */
export const heldBy = ({ in: list, index }: Holder): { readonly key?: Node; readonly value?: Node } => {
  if (!isMap(list)) return { value: list.items[index] as Node | undefined };
  const pair = list.items[index] as Pair | undefined;
  return { key: pair?.key as Node | undefined, value: (pair?.value ?? undefined) as Node | undefined };
};

/** Where the pair or item at an index begins and ends. */
export function extentOf(holder: Holder, tree: YamlTree): readonly [start: number, end: number] | undefined {
  const { key, value } = heldBy(holder);
  const first = key ?? value;
  const last = value ?? key;
  if (!first || !last) return undefined;
  return [tree.range(first)[0], Math.max(tree.range(last)[1], tree.range(first)[1])];
}
