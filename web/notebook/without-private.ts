import { decodeNote } from '../domain/note/decode-note.ts';
import { parseNote } from '../domain/note/parse-note.ts';
import { isNotePath } from './note-path.ts';
import type { NotebookFile } from './notebook.ts';

/** `private` with anything but `false` or `no` behind it, at the beginning of a line: counts also where the rest cannot be read. */
const MARKED = /^["']?private["']?[ \t]*:[ \t]*(?!["']?(?:false|no)\b)\S/im;

/** A notebook's files without its private notes, and without photos and data that no other note names. */
export function withoutPrivate<File extends NotebookFile>(files: readonly File[]): readonly File[] {
  const texts = files.filter(({ path }) => isNotePath(path)).map(({ path, bytes }) => ({ path, text: decodeNote(bytes).value.text }));
  const kept = texts.filter(({ path, text }) => MARKED.test(text) || parseNote(path, text).value.private);
  if (kept.length === 0) return files;
  const hidden = new Set(kept.map(({ path }) => path));
  const open = texts.filter(({ path }) => !hidden.has(path));
  const onlyHidden = (path: string): boolean => {
    const name = path.slice(path.lastIndexOf('/') + 1);
    return kept.some(({ text }) => text.includes(name)) && !open.some(({ text }) => text.includes(name));
  };
  return files.filter(({ path }) => (isNotePath(path) ? !hidden.has(path) : !onlyHidden(path)));
}
