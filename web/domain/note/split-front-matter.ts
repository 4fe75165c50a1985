import type { Report, TextRange } from '../diagnostic.ts';

/** A file parted into front matter and body. */
export interface FrontMatter {
  /** The YAML between the fences, without them; absent where the file has no front matter. */
  readonly yaml?: TextRange;
  /** Where the Markdown body begins. */
  readonly bodyStart: number;
}

const FENCE = /---[ \t]*(?:\r\n|\n|\r|$)/y;

/**
 * Parts a note at its `---` fences. The first must be the first line (after a byte order mark), the second the next line
 * that is nothing but a fence.
 *
 * @error `front-matter-open` where the second fence is missing; the whole file is then body.
 */
export function splitFrontMatter(text: string, report: Report): FrontMatter {
  const first = text.startsWith('\uFEFF') ? 1 : 0;
  const start = fenceEnd(text, first);
  if (start === undefined) return { bodyStart: first };
  for (let line = start; line !== undefined && line < text.length; line = nextLine(text, line) ?? text.length) {
    const end = fenceEnd(text, line);
    if (end !== undefined) return { yaml: [start, line], bodyStart: end };
  }
  report({ code: 'front-matter-open', severity: 'error', range: [first, first + 3], about: [] });
  return { bodyStart: first };
}

/** Where the line after the fence begins; undefined where no fence stands at `at`. */
function fenceEnd(text: string, at: number): number | undefined {
  FENCE.lastIndex = at;
  return FENCE.test(text) ? FENCE.lastIndex : undefined;
}

function nextLine(text: string, from: number): number | undefined {
  for (let at = from; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 10) return at + 1;
    if (code === 13) return text.charCodeAt(at + 1) === 10 ? at + 2 : at + 1;
  }
  return undefined;
}
