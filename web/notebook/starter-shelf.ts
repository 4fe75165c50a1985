import { decodeNote } from '../domain/note/decode-note.ts';
import type { NoteKind } from '../domain/note/note.ts';
import { parseNote } from '../domain/note/parse-note.ts';
import { removeValue } from '../domain/note/splice.ts';
import type { NotebookFile } from './notebook.ts';

/** What everybody needs before their first own note: names of things, places, times and people, and words for colours. */
const SHELVED: ReadonlySet<NoteKind> = new Set([
  'dyestuff',
  'mordant',
  'assistant',
  'process',
  'fibre',
  'region',
  'period',
  'wearer',
  'colour-word',
] satisfies readonly NoteKind[]);

/** Where the sources that notes name are kept. */
const BIBLIOGRAPHY = 'bibliography.json';

/** A starter shelf, and notes it had to leave out because their claims could not be taken out of them safely. */
export interface StarterShelf {
  readonly files: readonly NotebookFile[];
  readonly leftOut: readonly string[];
}

/**
 * A shelf to begin with, out of another notebook's notes: no recipe, trial, find or text among them.
 *
 * @param withClaims false leaves out where and when each thing was to hand; everything else of a note stays to the byte.
 */
export function starterShelf(notebook: readonly NotebookFile[], withClaims: boolean): StarterShelf {
  const files: NotebookFile[] = [];
  const leftOut: string[] = [];
  for (const file of notebook) {
    if (file.path === BIBLIOGRAPHY) files.push(file);
    if (!file.path.endsWith('.md')) continue;
    const { text } = decodeNote(file.bytes).value;
    if (!SHELVED.has(parseNote(file.path, text).value.record.kind)) continue;
    const bare = withClaims ? file : withoutClaims(file, text);
    if (bare) files.push(bare);
    else leftOut.push(file.path);
  }
  return { files, leftOut };
}

function withoutClaims(file: NotebookFile, text: string): NotebookFile | undefined {
  const spliced = removeValue(text, ['availability']);
  if (spliced.ok) return { path: file.path, bytes: new TextEncoder().encode(spliced.value) };
  return spliced.error === 'path-unknown' ? file : undefined;
}
