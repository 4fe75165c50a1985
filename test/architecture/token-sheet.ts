/** The two views a reader can have, and paper. */
export type View = 'paper' | 'evening' | 'print';

/** Declared custom properties of a rule's body, in order. */
function declarations(body: string): ReadonlyMap<string, string> {
  return new Map([...body.matchAll(/(--[\w-]+)\s*:\s*([^;]+);/g)].map(([, name = '', value = '']) => [name, value.trim()]));
}

/** The body of the block that follows a text, braces matched. */
function blockAfter(css: string, opening: string): string {
  const start = css.indexOf('{', css.indexOf(opening)) + 1;
  if (start === 0 || !css.includes(opening)) throw new Error(`no block ${opening}`);
  let depth = 1;
  let end = start;
  while (depth > 0 && end < css.length) {
    if (css[end] === '{') depth++;
    if (css[end] === '}') depth--;
    end++;
  }
  return css.slice(start, end - 1);
}

const withoutComments = (css: string): string => css.replace(/\/\*[\s\S]*?\*\//g, '');

/** Every token of the sheet as a view sees it, not yet resolved. */
export function tokensOf(sheet: string, view: View): ReadonlyMap<string, string> {
  const css = withoutComments(sheet);
  const base = declarations(blockAfter(css, ':root {'));
  return view === 'print' ? new Map([...base, ...declarations(blockAfter(blockAfter(css, '@media print'), ':root:root'))]) : base;
}

/** OKLCH lightness (0–1) of a grey token in a view; throws where it is no grey. */
export function lightnessOf(tokens: ReadonlyMap<string, string>, name: string, view: View): number {
  const value = tokens.get(name);
  if (value === undefined) throw new Error(`no token ${name}`);
  const grey = /^oklch\(([\d.]+) 0 0\)$/.exec(value);
  if (grey) return Number(grey[1]);
  const pair = /^light-dark\(var\((--[\w-]+)\), var\((--[\w-]+)\)\)$/.exec(value);
  const target = pair ? pair[view === 'evening' ? 2 : 1] : /^var\((--[\w-]+)\)$/.exec(value)?.[1];
  if (target === undefined) throw new Error(`${name} is ${value}, not a grey`);
  return lightnessOf(tokens, target, view);
}

/**
 * Contrast of two greys.
 *
 * @param a, b OKLCH lightness 0–1, chroma 0.
 * @returns ratio 1–21; the order does not matter.
 * @source WCAG 2.2, "contrast ratio"; a grey's relative luminance is its OKLab lightness cubed (B. Ottosson 2020, OKLab).
 */
export function contrast(a: number, b: number): number {
  const [high, low] = [Math.max(a, b) ** 3, Math.min(a, b) ** 3];
  return (high + 0.05) / (low + 0.05);
}
