import { textFindings } from '../check-notebook.ts';
import type { Notebook } from '../notebook.ts';
import { type ProblemView, problemViews } from './problem-view.ts';

/** What a reader would be told about a note if its text were this. */
export const textProblems = (notebook: Notebook, path: string, text: string): readonly ProblemView[] =>
  problemViews(text, textFindings(notebook, path, text));
