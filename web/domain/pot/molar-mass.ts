import { ATOMIC_WEIGHTS } from './atomic-weights.ts';

/** How many atoms of each element a formula holds. */
export type Composition = ReadonlyMap<string, number>;

const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉';

/**
 * Reads a formula such as `KAl(SO4)2·12H2O`, with plain or subscript figures and `·`, `.` or `*` before the water.
 *
 * @returns undefined when it cannot be read wholly or names an element without a weight here.
 */
export function readFormula(formula: string): Composition | undefined {
  const plain = formula.replace(/[₀-₉]/g, (sign) => String(SUBSCRIPTS.indexOf(sign))).replace(/\s+/g, '');
  const total = new Map<string, number>();
  for (const part of plain.split(/[·•.*]/)) {
    const times = /^\d*/.exec(part)?.[0] ?? '';
    const atoms = readPart(part.slice(times.length));
    if (!atoms) return undefined;
    for (const [element, count] of atoms) total.set(element, (total.get(element) ?? 0) + count * (times === '' ? 1 : Number(times)));
  }
  return total;
}

function readPart(text: string): Composition | undefined {
  const stack: Map<string, number>[] = [new Map()];
  let at = 0;
  while (at < text.length) {
    const [sign = '', element, open, close, figures = ''] = /^(?:([A-Z][a-z]?)|(\()|(\)))(\d*)/.exec(text.slice(at)) ?? [];
    if (sign === '') return undefined;
    at += sign.length;
    const times = figures === '' ? 1 : Number(figures);
    const top = stack.at(-1);
    if (open !== undefined) {
      if (figures !== '') return undefined;
      stack.push(new Map());
    } else if (close !== undefined) {
      const inner = stack.pop();
      const outer = stack.at(-1);
      if (!inner || !outer) return undefined;
      for (const [name, count] of inner) outer.set(name, (outer.get(name) ?? 0) + count * times);
    } else if (element !== undefined && top && Object.hasOwn(ATOMIC_WEIGHTS, element)) top.set(element, (top.get(element) ?? 0) + times);
    else return undefined;
  }
  const [whole] = stack;
  return stack.length === 1 && whole && whole.size > 0 ? whole : undefined;
}

/** Molar mass of a formula, g/mol, from the IUPAC atomic weights; undefined where it cannot be read. */
export function molarMass(formula: string): number | undefined {
  const atoms = readFormula(formula);
  if (!atoms) return undefined;
  let mass = 0;
  for (const [element, count] of atoms) mass += (ATOMIC_WEIGHTS[element] ?? 0) * count;
  return mass;
}
