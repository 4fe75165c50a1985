import type { Diagnostic } from '../../domain/diagnostic.ts';
import { lineColumn, lineStarts } from '../../domain/note/line-column.ts';
import { diagnosticWords } from '../words/diagnostic-words.ts';

/** A finding as a reader meets it. */
export interface ProblemView {
  readonly code: string;
  readonly severity: Diagnostic['severity'];
  /** Both from 1. */
  readonly line: number;
  readonly column: number;
  /** In the note's text, half-open, UTF-16 code units. */
  readonly from: number;
  readonly to: number;
  readonly says: string;
  readonly instead: string;
}

/** Findings about a text, in its order. */
export function problemViews(text: string, diagnostics: readonly Diagnostic[]): readonly ProblemView[] {
  const starts = lineStarts(text);
  return [...diagnostics]
    .sort((a, b) => a.range[0] - b.range[0])
    .map(({ code, severity, range, about }) => ({
      code,
      severity,
      ...lineColumn(starts, range[0]),
      from: range[0],
      to: range[1],
      ...diagnosticWords[code](about),
    }));
}
