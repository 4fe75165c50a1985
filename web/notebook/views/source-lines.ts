import type { Notebook } from '../notebook.ts';
import type { ClaimLine } from '../words/claim-line.ts';

/** A source in full, as it stands under an answer. */
export interface SourceLine {
  readonly key: string;
  /** "Cardon 2007, Natural Dyes. Archetype."; says so where the bibliography does not have it. */
  readonly text: string;
}

/** The sources of some claims, each once, in the order they are first met. */
export function sourceLines(notebook: Notebook, lines: readonly Pick<ClaimLine, 'keys'>[]): readonly SourceLine[] {
  const bibliography = notebook.bibliography();
  return [...new Set(lines.flatMap(({ keys }) => keys))].map((key) => {
    const entry = bibliography.get(key);
    if (!entry) return { key, text: 'not in the bibliography of this notebook' };
    const { author, year, title, within } = entry;
    const who = [author, year].filter((part) => part !== '').join(' ');
    const parts = [[who, title].filter((part) => part !== '').join(', '), within].filter((part) => part !== '');
    return { key, text: parts.map((part) => part.replace(/(?<!\.)\.+$/, '')).join('. ') };
  });
}
