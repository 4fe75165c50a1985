import { type YAMLMap, visit } from 'yaml';
import { type PlainTree, treeOf } from './plain-tree.ts';
import { keyText, readYaml } from './read-yaml.ts';
import { splitFrontMatter } from './split-front-matter.ts';

/** One key of the front matter: its lines as they stand, and what they say. */
export interface KeyLines {
  readonly key: string;
  /** From the key's line to the next key's, comments between them included. */
  readonly text: string;
  readonly says: PlainTree;
}

/** A note parted into what stands before its first key, its keys, and what follows the last. Put together they are the file. */
export interface NoteParts {
  /** Byte order mark, opening fence, comments above the first key. */
  readonly opening: string;
  readonly keys: readonly KeyLines[];
  /** The closing fence. */
  readonly closing: string;
  readonly body: string;
}

/**
 * Parts a note at the keys of its front matter.
 *
 * @returns undefined where it has none, or none that can be parted by lines: broken, a key twice, keys on one line, anchors.
 */
export function frontMatterKeys(source: string): NoteParts | undefined {
  let bad = false;
  const report = () => (bad = true);
  const { yaml, bodyStart } = splitFrontMatter(source, report);
  if (!yaml) return undefined;
  const [, end] = yaml;
  const tree = readYaml(source, yaml, report);
  const { map } = tree;
  if (!map || bad || map.flow === true || hangsTogether(map)) return undefined;
  const starts: number[] = [];
  const keys: { readonly key: string; readonly says: PlainTree }[] = [];
  for (const { key, value } of map.items) {
    const at = tree.range(key as Parameters<typeof tree.range>[0])[0];
    if (keyText(key) === '' || !/[\r\n]/.test(source[at - 1] ?? '')) return undefined;
    starts.push(at);
    keys.push({ key: keyText(key), says: treeOf(value, tree.resolve) });
  }
  return {
    opening: source.slice(0, starts[0] ?? end),
    keys: keys.map((key, at) => ({ ...key, text: source.slice(starts[at], starts[at + 1] ?? end) })),
    closing: source.slice(end, bodyStart),
    body: source.slice(bodyStart),
  };
}

/** Whether an anchor in one key may have its alias in another. */
function hangsTogether(map: YAMLMap): boolean {
  let found = false;
  visit(map, {
    Alias: () => {
      found = true;
      return visit.BREAK;
    },
  });
  return found;
}
