/** A value as a form holds it. */
export type PlainValue = string | number | boolean | readonly PlainValue[] | { readonly [key: string]: PlainValue };

/** YAML text put in as it is, such as a value somebody typed. */
export class RawYaml {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

/** How a scalar stood in the file, so that its successor stands likewise. */
export type Quote = 'plain' | 'single' | 'double';

/** Characters that stand in YAML only as escapes: controls, line separators, a byte order mark, halves of a pair. */
const ESCAPED = /[\p{Cc}\u2028\u2029\uFEFF\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/u;
const ESCAPED_ALL = /[\u007F-\u009F\u2028\u2029\uFEFF\uFFFE\uFFFF]/gu;

/** Plain text that the core schema reads as something else than a string. */
const NOT_A_STRING =
  /^(?:~|null|Null|NULL|true|True|TRUE|false|False|FALSE|[-+]?\d+|0o[0-7]+|0x[\da-fA-F]+|[-+]?(?:\.\d+|\d+(?:\.\d*)?)(?:[eE][-+]?\d+)?|[-+]?\.(?:inf|Inf|INF)|\.(?:nan|NaN|NAN))$/;

/**
 * A value on one line.
 *
 * @param flow true between `[ ]` or `{ }`, where commas and brackets part values.
 * @param quote the quotes wanted where the text allows them.
 */
export function inlineYaml(value: PlainValue, flow: boolean, quote: Quote = 'plain'): string {
  if (typeof value === 'string') return scalarYaml(value, flow, quote);
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (isList(value)) return `[${value.map((item) => inlineYaml(item, true)).join(', ')}]`;
  const pairs = Object.entries(value).map(([key, each]) => `${scalarYaml(key, true)}: ${inlineYaml(each, true)}`);
  return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
}

/** A text on one line, quoted where it would be read as something else. */
export function scalarYaml(text: string, flow: boolean, quote: Quote = 'plain'): string {
  if (quote === 'single' && !ESCAPED.test(text)) return `'${text.replaceAll("'", "''")}'`;
  if (quote === 'double' || !isPlainSafe(text, flow)) return doubleQuoted(text);
  return text;
}

const doubleQuoted = (text: string): string =>
  JSON.stringify(text).replace(ESCAPED_ALL, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** Narrower than YAML allows: whoever edits the file by hand should not have to know the rare cases. */
function isPlainSafe(text: string, flow: boolean): boolean {
  if (text === '' || text !== text.trim() || ESCAPED.test(text) || NOT_A_STRING.test(text)) return false;
  if (/^[-?:,[\]{}#&*!|>'"%@`]/.test(text) || /:(?:\s|$)|\s#|^\.\.\.$/.test(text)) return false;
  return !flow || !/[,[\]{}]|:$/.test(text);
}

/**
 * A list or map over several lines, its first line not indented.
 *
 * @param column 0-based, where its items or keys stand.
 */
export function blockYaml(value: PlainValue, column: number, eol: string): string {
  const newLine = eol + ' '.repeat(column);
  if (isList(value) && value.length > 0) {
    return value.map((item) => `- ${isMap(item) ? blockYaml(item, column + 2, eol) : inlineYaml(item, false)}`).join(newLine);
  }
  if (isMap(value) && Object.keys(value).length > 0) {
    return Object.entries(value)
      .map(([key, each]) => `${scalarYaml(key, false)}: ${inlineYaml(each, false)}`)
      .join(newLine);
  }
  return inlineYaml(value, false);
}

/**
 * A text of several lines as a literal block; undefined where the text needs quotes.
 *
 * @param column 0-based, where its lines stand.
 */
export function literalYaml(text: string, column: number, eol: string): string | undefined {
  const lines = text.replace(/\n$/, '').split('\n');
  if (lines.length < 2 || /^\s/.test(text) || text.endsWith('\n\n') || ESCAPED.test(text.replaceAll('\n', '').replaceAll('\t', '')))
    return undefined;
  const indent = ' '.repeat(column);
  return [text.endsWith('\n') ? '|' : '|-', ...lines.map((line) => (line === '' ? '' : indent + line))].join(eol);
}

/** True for a list. */
export const isList = (value: PlainValue): value is readonly PlainValue[] => Array.isArray(value);

/** True for a map. */
export const isMap = (value: PlainValue): value is { readonly [key: string]: PlainValue } =>
  typeof value === 'object' && !Array.isArray(value);
