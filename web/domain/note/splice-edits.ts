import { isCollection, isMap, isScalar } from 'yaml';
import type { Node } from 'yaml';
import { extentOf, heldBy } from './locate-value.ts';
import type { Holder } from './locate-value.ts';
import { isRaw } from './plain-tree.ts';
import type { YamlTree } from './read-yaml.ts';
import { isNothing } from './shape.ts';
import { blockYaml, inlineYaml, isList, isMap as isMapValue, literalYaml, scalarYaml } from './yaml-text.ts';
import type { PlainValue, Quote, RawYaml } from './yaml-text.ts';

/** A note taken apart for an edit. */
export interface Place {
  readonly source: string;
  readonly tree: YamlTree;
  /** Where the YAML stands; empty, at the beginning of the body, where there are no fences yet. */
  readonly within: readonly [start: number, end: number];
  readonly fenced: boolean;
  readonly eol: string;
}

/** Characters `from` to `to` of the source become `text`. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** What shall be written: a value, or a new key with its value. */
export interface Filled {
  readonly key?: string;
  readonly value: PlainValue | RawYaml;
}

const columnOf = (source: string, at: number): number => {
  const text = source.slice(0, at);
  return at - Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r')) - 1;
};

const lineEnd = (source: string, at: number): number => {
  const end = source.slice(at).search(/[\r\n]/);
  return end < 0 ? source.length : at + end;
};

const isBlockScalar = (node: Node): boolean => isScalar(node) && (node.type === 'BLOCK_LITERAL' || node.type === 'BLOCK_FOLDED');

const isBlock = (node: Node): boolean => isCollection(node) && node.flow !== true;

/** The column that what stands under this holder must go beyond; -1 at the top. */
function outerColumn({ source, tree }: Place, holder: Holder | undefined): number {
  if (holder === undefined) return -1;
  const { key } = heldBy(holder);
  return columnOf(source, key ? tree.range(key)[0] : tree.range(holder.in)[0]);
}

/** Another value where one stands. Undefined where no way to write it is known. */
export function replaced(place: Place, node: Node, holder: Holder | undefined, { value }: Filled): Edit | undefined {
  const { source, tree, eol } = place;
  // A tag gives the value another meaning than its words have.
  if ((isScalar(node) || isCollection(node)) && node.tag !== undefined) return undefined;
  const flow = holder?.flow ?? false;
  const [from, to] = tree.range(node);
  if (isNothing(node) && from === to) return filledIn(place, from, holder, value);
  const endsLine = from < to && /[\r\n]/.test(source[to - 1] ?? '');
  // Even a space behind a literal block would become part of it.
  const alone = endsLine || lineEnd(source, to) === to;
  const close = endsLine ? eol : '';
  const outer = outerColumn(place, holder);
  if (isRaw(value)) return { from, to, text: value.text + close };
  if (isBlock(node)) {
    const column = columnOf(source, from);
    // A list may stand in the column of its key; nothing else may.
    const wanted = isList(value) && value.length > 0 && isMap(holder?.in) ? Math.max(column, outer) : Math.max(column, outer + 1);
    return { from, to, text: ' '.repeat(wanted - column) + blockYaml(value, wanted, eol) + close };
  }
  if (typeof value === 'string') {
    const literal = !flow && alone && value.includes('\n') ? literalYaml(value, Math.max(outer, 0) + 2, eol) : undefined;
    return { from, to, text: (literal ?? scalarYaml(value, flow, isBlockScalar(node) ? 'plain' : quoteOf(node))) + close };
  }
  return { from, to, text: inlineYaml(value, flow) + close };
}

const quoteOf = (node: Node): Quote =>
  isScalar(node) && node.type === 'QUOTE_SINGLE' ? 'single' : isScalar(node) && node.type === 'QUOTE_DOUBLE' ? 'double' : 'plain';

/** A value where a key or a dash stood with nothing behind it. */
function filledIn(place: Place, empty: number, holder: Holder | undefined, value: PlainValue | RawYaml): Edit | undefined {
  const { source, tree } = place;
  if (holder === undefined) return undefined;
  const { key } = heldBy(holder);
  if (key === undefined) {
    const dash = source.lastIndexOf('-', empty);
    if (holder.flow || dash < 0 || source.slice(dash + 1, empty).trim() !== '') return undefined;
    return { from: dash + 1, to: dash + 1, text: ` ${isRaw(value) ? value.text : inlineYaml(value, false)}` };
  }
  const after = tree.range(key)[1];
  const colon = /^\s*:/.exec(source.slice(after));
  if (colon === null)
    return holder.flow ? { from: after, to: after, text: `: ${isRaw(value) ? value.text : inlineYaml(value, true)}` } : undefined;
  const at = after + colon[0].length;
  const alone = !holder.flow && lineEnd(source, at) === at;
  return { from: at, to: at, text: afterColon(place, value, outerColumn(place, holder), holder.flow, alone) };
}

/** A value as it stands behind a key, the space before it included; lists of maps and long texts take lines of their own. */
function afterColon({ eol }: Place, value: PlainValue | RawYaml, column: number, flow: boolean, alone: boolean): string {
  if (isRaw(value)) return ` ${value.text}`;
  if (alone && isList(value) && value.some(isMapValue)) return eol + ' '.repeat(column + 2) + blockYaml(value, column + 2, eol);
  const literal = alone && typeof value === 'string' ? literalYaml(value, column + 2, eol) : undefined;
  return ` ${literal ?? inlineYaml(value, flow)}`;
}

/** A new key at the end of its map, or a new item at the end of its list. */
export function added(place: Place, holder: Holder | undefined, { key, value }: Filled): Edit | undefined {
  const { source, tree, within, eol } = place;
  const { map } = tree;
  const entry = (column: number, flow: boolean): string =>
    key === undefined
      ? isRaw(value)
        ? value.text
        : inlineYaml(value, flow)
      : scalarYaml(key, flow) + ':' + afterColon(place, value, column, flow, !flow);
  if (holder === undefined || (holder.in === map && !isFlow(map))) {
    const column = map ? columnOf(source, tree.range(map)[0]) : 0;
    const at = within[1];
    return { from: at, to: at, text: ' '.repeat(column) + entry(column, false) + eol };
  }
  const list = holder.in;
  const [start, end] = tree.range(list);
  const last = extentOf({ ...holder, index: list.items.length - 1 }, tree);
  if (isFlow(list))
    return last ? { from: last[1], to: last[1], text: `, ${entry(0, true)}` } : { from: start + 1, to: start + 1, text: entry(0, true) };
  const column = columnOf(source, start);
  const sibling = isMap(list) ? undefined : (list.items.at(-1) as Node | undefined);
  const asBlock = sibling && isMap(sibling) && isBlock(sibling) && !isRaw(value) && isMapValue(value);
  const text =
    ' '.repeat(column) + (isMap(list) ? entry(column, false) : `- ${asBlock ? blockYaml(value, column + 2, eol) : entry(column, false)}`);
  if (/[\r\n]/.test(source[end - 1] ?? '')) return { from: end, to: end, text: text + eol };
  const at = lineEnd(source, end);
  return { from: at, to: at, text: eol + text };
}

const isFlow = (node: Node | undefined): boolean => isCollection(node) && node.flow === true;

/** A key or an item taken away, with its line where it has lines of its own. */
export function removed(place: Place, holder: Holder): Edit | undefined {
  const { source, tree } = place;
  const list = holder.in;
  const extent = extentOf(holder, tree);
  if (extent === undefined) return undefined;
  const [start, end] = extent;
  const next = extentOf({ ...holder, index: holder.index + 1 }, tree);
  const before = holder.index > 0 ? extentOf({ ...holder, index: holder.index - 1 }, tree) : undefined;
  if (isFlow(list)) {
    const [from, to, gap] = next
      ? [start, next[0], source.slice(end, next[0])]
      : before
        ? [before[1], end, source.slice(before[1], start)]
        : [start, end, ','];
    return /^\s*,\s*$/.test(gap) ? { from, to, text: '' } : undefined;
  }
  const dash = isMap(list) ? start : dashBefore(source, start);
  if (dash === undefined) return undefined;
  const lineStart = dash - columnOf(source, dash);
  const ended = /[\r\n]/.test(source[end - 1] ?? '') ? end : pastLine(source, end);
  if (source.slice(lineStart, dash).replace('\uFEFF', '').trim() === '') return { from: lineStart, to: ended, text: '' };
  // The first key of a list's item shares its line with the dash: the next key moves up.
  if (next === undefined || source.slice(ended, next[0]).trim() !== '') return undefined;
  return { from: start, to: next[0], text: '' };
}

function dashBefore(source: string, at: number): number | undefined {
  const gap = /-\s+$/.exec(source.slice(Math.max(0, at - 200), at));
  return gap ? at - gap[0].length : source[at] === '-' ? at : undefined;
}

function pastLine(source: string, at: number): number {
  const end = lineEnd(source, at);
  return end + (source.startsWith('\r\n', end) ? 2 : end < source.length ? 1 : 0);
}
