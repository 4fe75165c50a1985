import type { TextRange } from '../diagnostic.ts';
import { locateValue, type ValuePath } from './locate-value.ts';
import { type PlainTree, treeOf } from './plain-tree.ts';
import { readYaml } from './read-yaml.ts';
import { splitFrontMatter } from './split-front-matter.ts';

/** What the front matter of a file says, value by value; texts as they are read, numbers as they stand. */
export interface FrontMatterTree {
  readonly tree: Extract<PlainTree, { is: 'map' }>;
  /** True where it cannot be edited value by value: it never ends, is no map, or its YAML is broken. */
  readonly broken: boolean;
  /** Where the body begins. */
  readonly bodyStart: number;
  /** Where a value stands in the file; undefined where nothing stands. */
  readonly rangeOf: (path: ValuePath) => TextRange | undefined;
}

/** Reads front matter without measuring it against any kind. */
export function frontMatterTree(source: string): FrontMatterTree {
  let broken = false;
  const { yaml, bodyStart } = splitFrontMatter(source, () => (broken = true));
  const read = yaml && readYaml(source, yaml, ({ severity, code }) => (broken ||= severity === 'error' && code !== 'yaml-key-twice'));
  const tree = read?.map && treeOf(read.map, read.resolve);
  const rangeOf = (path: ValuePath): TextRange | undefined => {
    const located = read?.map && locateValue(read.map, path);
    return read && located?.node && located.rest.length === 0 ? read.range(located.node) : undefined;
  };
  return { tree: tree?.is === 'map' ? tree : { is: 'map', pairs: [] }, broken: broken || read?.broken === true, bodyStart, rangeOf };
}
