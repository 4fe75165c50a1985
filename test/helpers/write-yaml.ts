import type { PlainValue } from '../../web/domain/note/yaml-text.ts';
import type { Chance } from './random.ts';

/** Writes a map as YAML in styles taken by chance: block and flow, all quotes, comments, blank lines, indents. */
export function writeYaml(map: { readonly [key: string]: PlainValue }, eol: string, dice: Chance): string {
  return new Writer(dice).map(map, 0).join(eol) + eol;
}

class Writer {
  readonly #dice: Chance;
  #comments = 0;

  constructor(dice: Chance) {
    this.#dice = dice;
  }

  /** The lines of a block map, indented. */
  map(map: { readonly [key: string]: PlainValue }, indent: number): string[] {
    return Object.entries(map).flatMap(([key, value]) => {
      const before = this.#dice.oneIn(9) ? [`${' '.repeat(indent)}${this.#comment()}`] : this.#dice.oneIn(12) ? [''] : [];
      const written = this.#dice.oneIn(10) ? JSON.stringify(key) : key === '<<' || key === '__proto__' ? `'${key}'` : key;
      const [first, ...more] = this.#entry(value, indent);
      return [...before, `${' '.repeat(indent)}${written}:${first ?? ''}`, ...more];
    });
  }

  /** What stands behind `key:` or `-`: the rest of that line, and further lines. */
  #entry(value: PlainValue, indent: number): string[] {
    const step = this.#dice.pick([2, 2, 3, 4]);
    if (Array.isArray(value) && value.length > 0 && !this.#dice.oneIn(3)) {
      const at = this.#dice.oneIn(3) ? indent : indent + step;
      return [this.#tail(), ...(value as readonly PlainValue[]).flatMap((item) => this.#item(item, at))];
    }
    if (isMap(value) && Object.keys(value).length > 0 && !this.#dice.oneIn(3)) return [this.#tail(), ...this.map(value, indent + step)];
    if (typeof value === 'string' && this.#dice.oneIn(value.includes('\n') ? 2 : 8)) {
      const block = literal(value, indent + step);
      if (block) return block;
    }
    return [` ${this.#inline(value)}${this.#tail()}`];
  }

  #item(item: PlainValue, indent: number): string[] {
    const pad = ' '.repeat(indent);
    if (isMap(item) && Object.keys(item).length > 0 && !this.#dice.oneIn(3)) {
      const lines = this.map(item, indent + 2);
      // Comments and blank lines before the first key would part it from the dash.
      while (/^\s*(#|$)/.test(lines[0] ?? '')) lines.shift();
      return [`${pad}- ${(lines[0] ?? '').trimStart()}`, ...lines.slice(1)];
    }
    if (Array.isArray(item)) return [`${pad}- ${this.#inline(item)}${this.#tail()}`];
    const [first, ...more] = typeof item === 'string' ? this.#entry(item, indent) : [` ${this.#inline(item)}${this.#tail()}`];
    return [`${pad}-${first ?? ''}`, ...more];
  }

  #inline(value: PlainValue): string {
    if (Array.isArray(value))
      return this.#between(
        '[',
        (value as readonly PlainValue[]).map((item) => this.#inline(item)),
        ']',
      );
    if (isMap(value))
      return this.#between(
        '{',
        Object.entries(value).map(([key, each]) => `${key === '<<' ? "'<<'" : key}: ${this.#inline(each)}`),
        '}',
      );
    if (typeof value !== 'string') return JSON.stringify(value);
    const style = this.#dice.below(4);
    if (style < 2 && /^[\p{L}\d#.][\p{L}\d .–%/-]*$/u.test(value) && !looksLikeOther(value)) return value;
    if (style === 3 && !/[\p{C}\u2028]/u.test(value)) return `'${value.replaceAll("'", "''")}'`;
    return JSON.stringify(value).replace('\u2028', '\\u2028');
  }

  #between(open: string, parts: readonly string[], close: string): string {
    const space = this.#dice.oneIn(2) ? ' ' : '';
    const comma = this.#dice.oneIn(5) ? ' ,  ' : ', ';
    const last = parts.length > 0 && this.#dice.oneIn(8) ? ',' : '';
    return `${open}${space}${parts.join(comma)}${last}${parts.length > 0 ? space : ''}${close}`;
  }

  #tail(): string {
    return this.#dice.oneIn(8) ? ` ${this.#comment()}` : this.#dice.oneIn(10) ? '  ' : '';
  }

  #comment(): string {
    return `# remark ${this.#comments++}: "kept" [as, it] stands`;
  }
}

const isMap = (value: PlainValue): value is { readonly [key: string]: PlainValue } => typeof value === 'object' && !Array.isArray(value);

const looksLikeOther = (value: string): boolean =>
  /^(?:#|\.|[\d.]+$|0x|\d+e\d|null$|true$|false$)/i.test(value) || value !== value.trim() || / #/.test(value);

function literal(value: string, indent: number): string[] | undefined {
  if (/^\s|[^\S\n ]|[\p{Cc}\u2028]/u.test(value.replaceAll('\n', '')) || /^\s/.test(value) || value.endsWith('\n\n')) return undefined;
  const lines = value.replace(/\n$/, '').split('\n');
  return [value.endsWith('\n') ? ' |' : ' |-', ...lines.map((line) => (line === '' ? '' : ' '.repeat(indent) + line))];
}
