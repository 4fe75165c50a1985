import { isMap, isScalar, isSeq } from 'yaml';
import type { YamlTree } from './read-yaml.ts';
import { keyText } from './read-yaml.ts';
import { RawYaml, isList } from './yaml-text.ts';
import type { PlainValue } from './yaml-text.ts';

/** Front matter boiled down to what it says, for comparing before and after an edit. Keys keep their order. */
export type PlainTree =
  | { readonly is: 'scalar'; readonly type: string; readonly text: string }
  | { readonly is: 'list'; readonly items: readonly PlainTree[] }
  | { readonly is: 'map'; readonly pairs: readonly (readonly [key: string, value: PlainTree])[] };

/** Nothing, as YAML's null says it. */
export const NOTHING: PlainTree = { is: 'scalar', type: 'object', text: 'null' };

/** What a node says, aliases followed. */
export function treeOf(node: unknown, resolve: YamlTree['resolve'], depth = 0): PlainTree {
  const real = resolve(node);
  if (depth > 40) return NOTHING;
  if (isScalar(real)) {
    const text = typeof real.value === 'number' ? (real.source ?? String(real.value)) : String(real.value);
    return { is: 'scalar', type: typeof real.value, text };
  }
  if (isSeq(real)) return { is: 'list', items: real.items.map((item) => treeOf(item, resolve, depth + 1)) };
  if (!isMap(real)) return NOTHING;
  return { is: 'map', pairs: real.items.map(({ key, value }) => [keyText(key), treeOf(value, resolve, depth + 1)] as const) };
}

/** What a value says once it is written. */
export function treeOfValue(value: PlainValue): PlainTree {
  if (typeof value !== 'object') return { is: 'scalar', type: typeof value, text: String(value) };
  if (isList(value)) return { is: 'list', items: value.map(treeOfValue) };
  return { is: 'map', pairs: Object.entries(value).map(([key, each]) => [key, treeOfValue(each)] as const) };
}

/** The tree with another one at a path; `undefined` takes the key or item away. Undefined where the path leads nowhere. */
export function treeWith(tree: PlainTree, path: readonly (string | number)[], put: PlainTree | undefined): PlainTree | undefined {
  const [step, ...rest] = path;
  if (step === undefined) return put;
  // Where nothing stands, the step says what will: a key makes a map, item 0 a list.
  if (sameTree(tree, NOTHING)) return treeWith(typeof step === 'string' ? { is: 'map', pairs: [] } : { is: 'list', items: [] }, path, put);
  if (typeof step === 'number' && tree.is === 'list') {
    const inner = step === tree.items.length && rest.length === 0 ? put : treeWith(tree.items[step] ?? NOTHING, rest, put);
    if (inner === undefined && rest.length > 0) return undefined;
    return { is: 'list', items: inner === undefined ? tree.items.toSpliced(step, 1) : tree.items.toSpliced(step, 1, inner) };
  }
  if (typeof step === 'number') return step === 0 ? treeWith(tree, rest, put) : undefined;
  if (tree.is !== 'map') return undefined;
  const at = tree.pairs.findIndex(([key]) => key === step);
  const index = at < 0 ? tree.pairs.length : at;
  const inner = rest.length === 0 ? put : treeWith(tree.pairs[index]?.[1] ?? NOTHING, rest, put);
  if (inner === undefined && rest.length > 0) return undefined;
  return { is: 'map', pairs: inner === undefined ? tree.pairs.toSpliced(index, 1) : tree.pairs.toSpliced(index, 1, [step, inner]) };
}

/** True where both say the same. */
export const sameTree = (a: PlainTree, b: PlainTree): boolean => JSON.stringify(a) === JSON.stringify(b);

/** True for YAML text put in as it is. */
export const isRaw = (value: PlainValue | RawYaml): value is RawYaml => value instanceof RawYaml;
