import type { DiagnosticCode } from '../../web/domain/diagnostic.ts';
import { lineColumn, lineStarts } from '../../web/domain/note/line-column.ts';
import { notebookFindings } from '../../web/notebook/check-notebook.ts';
import type { FileFinding, Notebook } from '../../web/notebook/notebook.ts';
import { wordsFor } from '../../web/notebook/words/diagnostic-words.ts';
import { unrecordedMaterials } from '../../web/notebook/unrecorded-materials.ts';
import type { PassedOver } from '../read-folder.ts';
import { type Command, openFolder, readArgs, wrap } from './command.ts';

interface CheckRow {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly severity: 'error' | 'warning';
  readonly code: string;
  readonly message: string;
}

/** `tenterground check FOLDER [--json]`: every finding by file and line; exit 1 if any is an error. */
export const check: Command = async (args) => {
  const read = readArgs(args, { json: { type: 'boolean' } }, 1);
  if (!read) return 2;
  const opened = await openFolder(read.words[0]);
  if (!opened) return 2;
  const { notebook, passedOver } = opened;
  const today = new Date().toISOString().slice(0, 10);
  const rows = [...passedOver.map(passedOverRow), ...rowsOf(notebookFindings(notebook, today))];
  if (read.values['json'] === true) console.log(JSON.stringify(rows, undefined, 2));
  else console.log(text(notebook, rows));
  return rows.some(({ severity }) => severity === 'error') ? 1 : 0;
};

/** Findings come by file; the lines of a file are counted once. */
function rowsOf(findings: readonly FileFinding[]): readonly CheckRow[] {
  let counted: { readonly source: string; readonly starts: readonly number[] } | undefined;
  return findings.map((finding) => {
    if (counted?.source !== finding.text) counted = { source: finding.text, starts: lineStarts(finding.text) };
    return rowOf(finding, counted.starts);
  });
}

function rowOf({ file, diagnostic }: FileFinding, starts: readonly number[]): CheckRow {
  const { line, column } = lineColumn(starts, diagnostic.range[0]);
  const { says, instead } = wordsFor(diagnostic);
  return {
    file,
    line,
    column,
    severity: diagnostic.severity,
    code: diagnostic.code,
    message: [says, instead].filter((part) => part !== '').join(' '),
  };
}

const PASSED_OVER = {
  unreadable: 'file-unreadable',
  name: 'file-name-not-utf8',
  loop: 'folder-loop',
  link: 'file-link-broken',
  outside: 'file-outside',
  'too-large': 'file-too-large',
} as const satisfies Record<PassedOver['why'], DiagnosticCode>;

function passedOverRow({ path, why, about }: PassedOver): CheckRow {
  const code = PASSED_OVER[why];
  const { says, instead } = wordsFor({ code, about: about ?? [path] });
  return { file: path, line: 1, column: 1, severity: 'warning', code, message: `${says} ${instead}` };
}

function text(notebook: Notebook, rows: readonly CheckRow[]): string {
  const lines = rows.map(
    (row) =>
      `${row.file}:${row.line}:${row.column} ${row.severity === 'error' ? 'error' : 'warning'} ${row.code}\n${wrap(row.message, '    ')}`,
  );
  const errors = rows.filter(({ severity }) => severity === 'error').length;
  const notes = [...notebook.base.notes()].length;
  const silent = unrecordedMaterials(notebook.base).map(
    ({ material, recipes }) => `No claim speaks for ${material}; these recipes hang on it: ${recipes.join(', ')}.`,
  );
  return [
    ...lines,
    ...silent.map((line) => wrap(line)),
    `${notes} notes, ${errors} ${errors === 1 ? 'error' : 'errors'}, ${rows.length - errors} warnings.`,
  ].join('\n');
}
