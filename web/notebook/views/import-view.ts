import type { ImportReport } from '../import/import-files.ts';
import { counted } from '../words/counted.ts';
import { endedWords, skipWords } from '../words/import-words.ts';
import { problemViews } from './problem-view.ts';

/** A file with something to say about it. */
export interface ImportLine {
  readonly path: string;
  readonly says: string;
  /** Where the line at fault can be written; absent where the file was not read. */
  readonly address?: string;
}

/** What an import did, as its reader meets it. */
export interface ImportView {
  /** One sentence each, the most important first. */
  readonly sentences: readonly string[];
  readonly skipped: readonly ImportLine[];
  readonly problems: readonly ImportLine[];
  readonly missing: readonly string[];
}

/** A report in words. */
export function importView(report: ImportReport): ImportView {
  const { added, replaced, unchanged, skipped, hiddenCount, problems, missing, endedBy } = report;
  const read = added.length + replaced.length + unchanged.length;
  const withProblems = new Set(problems.map(({ file }) => file)).size;
  return {
    sentences: [
      `${counted(read, 'file')} of “${report.from}” ${read === 1 ? 'is' : 'are'} in the notebook.`,
      ...(endedBy ? [`${counted(missing.length, 'file')} ${missing.length === 1 ? 'is' : 'are'} missing. ${endedWords[endedBy]}`] : []),
      ...(replaced.length > 0
        ? [`${counted(replaced.length, 'file')} took the place of an earlier version, which can be brought back.`]
        : []),
      ...(unchanged.length > 0
        ? [`${counted(unchanged.length, 'file')} ${unchanged.length === 1 ? 'was' : 'were'} there already, the same to the byte.`]
        : []),
      ...(skipped.length > 0 ? [`${counted(skipped.length, 'file')} ${skipped.length === 1 ? 'was' : 'were'} not read.`] : []),
      ...(hiddenCount > 0 ? [`${counted(hiddenCount, 'hidden file')} ${hiddenCount === 1 ? 'was' : 'were'} passed over.`] : []),
      ...(withProblems > 0 ? [`${counted(withProblems, 'note')} ${withProblems === 1 ? 'has' : 'have'} something to put right.`] : []),
    ],
    skipped: skipped.map(({ path, reason }) => ({ path, says: skipWords[reason] })),
    problems: problems.flatMap(({ file, id, text, diagnostic }) =>
      problemViews(text, [diagnostic]).map(({ line, column, says, instead }) => ({
        path: `${file}, line ${line}`,
        says: `${says} ${instead}`.trim(),
        ...(id !== undefined && { address: `#/notebook/${encodeURIComponent(id)}?write=text&line=${line}&column=${column}` }),
      })),
    ),
    missing,
  };
}
