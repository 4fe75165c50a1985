import { isMap, isScalar } from 'yaml';
import type { Node, YAMLMap } from 'yaml';
import type { Report, TextRange } from '../diagnostic.ts';
import { nearestNames } from '../text/nearest-names.ts';
import { keyText } from './read-yaml.ts';
import { isNothing, single, tell, tellWrongType } from './shape.ts';
import type { KeyTable, ReadContext, Shape } from './shape.ts';

/** The values read by a table of keys. */
export type ValuesOf<Table extends KeyTable> = { readonly [K in keyof Table]: Table[K] extends Shape<infer T> ? T : never };

/** The keys of a map with their values, each key once; keys with nothing beside them are left out. */
export type Entries = ReadonlyMap<string, { readonly key: Node; readonly value: Node }>;

/** Where a group stands and where its values stand. */
export interface Place {
  readonly range: TextRange;
  /** True where the key stands there with a value. */
  readonly has: (key: string) => boolean;
  /** Where a key's value stands; the group's own range where it has none. */
  readonly at: (key: string) => TextRange;
  readonly report: Report;
}

/** Takes a map apart. Of a key that stands twice the first counts. */
export function entriesOf(map: YAMLMap, context: ReadContext): Entries {
  const entries = new Map<string, { key: Node; value: Node }>();
  for (const { key, value } of map.items) {
    const keyNode = context.resolve(key);
    const valueNode = context.resolve(value);
    if (keyNode === undefined || valueNode === undefined || isNothing(valueNode)) continue;
    if (!isScalar(keyNode)) tellWrongType(keyNode, '', 'key', context);
    else if (!entries.has(keyText(keyNode))) entries.set(keyText(keyNode), { key: keyNode, value: valueNode });
  }
  return entries;
}

/**
 * Reads the keys of a table out of a map.
 *
 * @param owner what the keys belong to, for `key-missing`: a kind, or the key that holds the group.
 * @param range where to say that a key is missing.
 */
export function readKeys<Table extends KeyTable>(
  table: Table,
  entries: Entries,
  owner: string,
  range: TextRange,
  context: ReadContext,
): ValuesOf<Table> {
  const values: [string, unknown][] = [];
  for (const [key, shape] of Object.entries(table)) {
    const entry = entries.get(key);
    values.push([key, entry === undefined ? shape.absent : shape.read(entry.value, key, context)]);
    if (entry === undefined && shape.needed) context.report({ code: 'key-missing', severity: 'warning', range, about: [key, owner] });
  }
  return Object.fromEntries(values) as ValuesOf<Table>;
}

/** Tells the keys no table knows, with the nearest known ones. */
export function tellUnknownKeys(entries: Entries, table: KeyTable, owner: string, context: ReadContext): void {
  for (const [key, { key: node }] of entries) {
    if (!Object.hasOwn(table, key))
      tell('key-unknown', node, [key, owner, ...nearestNames(key, Object.keys(table), 2)], context, 'warning');
  }
}

/** The place of a map and its values. */
export const placeOf = (range: TextRange, entries: Entries, context: ReadContext): Place => ({
  range,
  has: (key) => entries.has(key),
  at: (key) => {
    const entry = entries.get(key);
    return entry === undefined ? range : context.range(entry.value);
  },
  report: context.report,
});

/**
 * A map with keys of its own.
 *
 * @param build turns the values into what the note holds; undefined leaves it out.
 * @param short the key that a bare value stands for: `alum` for `{ what: alum }`.
 */
export function group<Table extends KeyTable, T>(
  table: Table,
  build: (values: ValuesOf<Table>, place: Place) => T | undefined,
  short?: keyof Table & string,
): Shape<T | undefined> {
  return single(
    'map',
    (node, key, context) => {
      const entries = isMap(node)
        ? entriesOf(node as YAMLMap, context)
        : short !== undefined && isScalar(node)
          ? new Map([[short as string, { key: node as Node, value: node as Node }]])
          : undefined;
      if (entries === undefined) {
        tellWrongType(node, key, 'map', context);
        return undefined;
      }
      const range = context.range(node);
      const values = readKeys(table, entries, key, range, context);
      tellUnknownKeys(entries, table, key, context);
      return build(values, placeOf(range, entries, context));
    },
    { keys: table, ...(short === undefined ? {} : { short }) },
  );
}
