import { isMap } from 'yaml';
import { failed, ok } from '../result.ts';
import type { Result } from '../result.ts';
import { locateValue } from './locate-value.ts';
import type { Located, ValuePath } from './locate-value.ts';
import { NOTHING, isRaw, sameTree, treeOf, treeOfValue, treeWith } from './plain-tree.ts';
import type { PlainTree } from './plain-tree.ts';
import { readYaml } from './read-yaml.ts';
import { added, removed, replaced } from './splice-edits.ts';
import type { Edit, Filled, Place } from './splice-edits.ts';
import { splitFrontMatter } from './split-front-matter.ts';
import { isList } from './yaml-text.ts';
import type { PlainValue, RawYaml } from './yaml-text.ts';

/**
 * Why an edit was not made: the front matter is broken; the path leads nowhere (or through an alias); the value cannot be
 * written; or the result would say more or less than was asked for.
 */
export type SpliceError = 'front-matter-broken' | 'path-unknown' | 'value-unwritable' | 'not-safe';

/**
 * Sets one value of the front matter; every character outside it stays.
 * A key that is not there is added at the end of its map, an item numbered as many as there are at the end of its list.
 *
 * @param path keys and 0-based item numbers; item 0 of a single value is that value.
 * @param value what shall stand there; `RawYaml` goes in as it is.
 * @returns the whole file. It has been read again: it says what was asked for and is otherwise unchanged.
 */
export function spliceValue(source: string, path: ValuePath, value: PlainValue | RawYaml): Result<string, SpliceError> {
  if (path.length === 0) return failed('path-unknown');
  const wanted = isRaw(value) ? treeOfRaw(value) : isWritable(value) ? treeOfValue(value) : undefined;
  if (wanted === undefined) return failed('value-unwritable');
  const place = placeOf(source);
  if (place === undefined) return failed('front-matter-broken');
  const { map } = place.tree;
  const located: Located | undefined = map ? locateValue(map, path) : { rest: path };
  if (located === undefined) return failed('path-unknown');
  const filled = fill(value, located);
  if (filled === undefined) return failed('path-unknown');
  const edit = located.node ? replaced(place, located.node, located.holder, filled) : added(place, located.holder, filled);
  if (edit === undefined) return failed('not-safe');
  return checked(place, edit, treeWith(treeOf(map, place.tree.resolve), path, wanted) ?? wantedAlone(path, wanted));
}

/**
 * Takes a key or an item out of the front matter, with its line where it stands on lines of its own.
 * The last item of a list leaves `[]`, the last key of a group `{}`; item 0 of a single value is its key.
 */
export function removeValue(source: string, path: ValuePath): Result<string, SpliceError> {
  const place = placeOf(source);
  if (place === undefined) return failed('front-matter-broken');
  const { map } = place.tree;
  const located = map && locateValue(map, path);
  if (map === undefined || !located?.holder || located.rest.length > 0 || located.holder.index >= located.holder.in.items.length)
    return failed('path-unknown');
  const { in: list, index } = located.holder;
  const outer = path.slice(0, -1);
  const above = locateValue(map, outer);
  if (above?.holder?.in === list && above.holder.index === index) return removeValue(source, outer);
  if (list.items.length === 1 && list !== map) return spliceValue(source, outer, isMap(list) ? {} : []);
  const edit = removed(place, located.holder);
  return edit === undefined ? failed('not-safe') : checked(place, edit, treeWith(treeOf(map, place.tree.resolve), path, undefined));
}

function placeOf(source: string): Place | undefined {
  let open = false;
  const { yaml, bodyStart } = splitFrontMatter(source, () => (open = true));
  if (open) return undefined;
  const within = yaml ?? ([bodyStart, bodyStart] as const);
  let bad = false;
  const tree = readYaml(source, within, ({ severity, code }) => (bad ||= severity === 'error' && code !== 'yaml-key-twice'));
  const eol = /\r\n|\n|\r/.exec(source)?.[0] ?? '\n';
  return tree.broken || bad ? undefined : { source, tree, within, fenced: yaml !== undefined, eol };
}

/** Makes the edit, then reads the result: anything but the wanted front matter and the old body is refused. */
function checked({ source, fenced, eol }: Place, { from, to, text }: Edit, wanted: PlainTree | undefined): Result<string, SpliceError> {
  const result = source.slice(0, from) + (fenced ? text : `---${eol}${text}---${eol}`) + source.slice(to);
  const after = placeOf(result);
  if (wanted === undefined || after === undefined) return failed('not-safe');
  const { bodyStart } = splitFrontMatter(result, () => undefined);
  const oldBody = source.slice(splitFrontMatter(source, () => undefined).bodyStart);
  const now = after.tree.map ? treeOf(after.tree.map, after.tree.resolve) : NOTHING;
  const same = sameTree(now, wanted) || (now === NOTHING && wanted.is === 'map' && wanted.pairs.length === 0);
  return same && result.slice(bodyStart) === oldBody ? ok(result) : failed('not-safe');
}

const wantedAlone = (path: ValuePath, wanted: PlainTree): PlainTree | undefined =>
  path.reduceRight<PlainTree | undefined>(
    (inner, step) =>
      inner && (typeof step === 'string' ? { is: 'map', pairs: [[step, inner]] } : step === 0 ? { is: 'list', items: [inner] } : undefined),
    wanted,
  );

/** The value with the maps and lists around it that are not there yet. Its first key, where a map is asked for a new one, comes apart. */
function fill(value: PlainValue | RawYaml, { node, rest }: Located): Filled | undefined {
  const [key, ...deeper] = node ? [undefined, ...rest] : typeof rest[0] === 'string' ? rest : [undefined, ...rest];
  let filled: PlainValue | RawYaml = value;
  for (const step of deeper.reverse()) {
    if (isRaw(filled) || (typeof step === 'number' && step !== 0) || step === undefined) return undefined;
    filled = typeof step === 'number' ? [filled] : { [step]: filled };
  }
  return { key: key as string | undefined, value: filled };
}

const treeOfRaw = ({ text }: RawYaml): PlainTree | undefined => {
  let bad = /[\r\n]/.test(text);
  // Read as the value of a key, because that is where it will stand.
  const source = `v: ${text}\n`;
  const tree = readYaml(source, [0, source.length], () => (bad = true));
  const read = tree.map && treeOf(tree.map, tree.resolve);
  return bad || read?.is !== 'map' || read.pairs.length !== 1 ? undefined : read.pairs[0]?.[1];
};

function isWritable(value: PlainValue): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (isList(value)) return value.every(isWritable);
  return typeof value === 'object' ? Object.values(value).every(isWritable) : true;
}
