import { isMap, isSeq } from 'yaml';
import type { Node } from 'yaml';
import type { TextRange } from '../diagnostic.ts';
import { locateValue, type ValuePath } from './locate-value.ts';
import { readYaml } from './read-yaml.ts';
import { splitFrontMatter } from './split-front-matter.ts';

/**
 * The number of an item in a list of the front matter, known by where it begins: what was read leaves out items that could not be.
 *
 * @returns undefined where no item begins there, or it is repeated by an alias.
 */
export function itemNumber(source: string, path: ValuePath, range: TextRange): number | undefined {
  const found = itemsAt(source, path);
  const at = found?.items.findIndex((item) => found.start(item) === range[0]) ?? -1;
  return at < 0 ? undefined : at;
}

/** How many items stand in a list of the front matter; 0 where there is none, 1 for a single value. */
export const itemCount = (source: string, path: ValuePath): number => itemsAt(source, path)?.items.length ?? 0;

function itemsAt(source: string, path: ValuePath) {
  const { yaml } = splitFrontMatter(source, () => undefined);
  const tree = yaml && readYaml(source, yaml, () => undefined);
  const located = tree && tree.map && locateValue(tree.map, path);
  if (!tree || !located?.node || located.rest.length > 0) return undefined;
  const { node } = located;
  const items = (isSeq(node) ? node.items : isMap(node) ? [node] : []) as readonly Node[];
  return { items, start: (item: Node) => tree.range(item)[0] };
}
