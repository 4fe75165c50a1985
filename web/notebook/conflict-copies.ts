import { frontMatterKeys } from '../domain/note/front-matter-keys.ts';
import { stemOf } from '../domain/note/stem-of.ts';

/** A note's file and its text. */
export interface NoteFile {
  readonly path: string;
  readonly text: string;
}

/** A second file of one note, as programs that keep folders alike leave it where they could not decide. */
export interface ConflictCopy {
  readonly original: string;
  readonly copy: string;
  /** What gave it away: its name, or the same id over much the same text. */
  readonly by: 'name' | 'content';
}

/** Words that such programs put behind a file's name. They say what the file is, so the name is enough. */
const SAYS_CONFLICT = [
  // note (A's conflicted copy 2024-05-01).md, note (conflict).md
  /^(.+?)[ _]*[([](?=[^()[\]]*conflict)[^()[\]]*[)\]]$/i,
  // note.sync-conflict-20240501-101500-ABCDEFG.md, note_conflict-1.md, note.conflict.md
  /^(.+?)[._ -]+(?:sync[._ -]?)?conflict(?:ed)?(?:[._ -].*)?$/i,
];

/** Endings that a person may also have chosen: only with the same title over much the same text. */
const MAY_BE_A_COPY = [
  // note (1).md, note 2.md
  /^(.+?)[ _]*\(\d{1,3}\)$/,
  /^(.+?) \d{1,2}$/,
  // note - Copy.md, note copy 2.md, Copy of note.md
  /^(.+?)(?: -)?[ _]copy(?: \(?\d{1,3}\)?)?$/i,
  /^copy of (.+)$/i,
  // note~HEAD.md, note~main.md
  /^(.+?)~[\w.-]+$/,
];

/** How much of two texts' lines must be the same for one to be a copy of the other (our choice: more than half). */
const ALIKE = 0.5;

/** Finds files that are second copies of another note, each with the note it is a copy of. */
export function conflictCopies(files: readonly NoteFile[]): readonly ConflictCopy[] {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const found = new Map<string, ConflictCopy>();
  for (const file of files) {
    const original = namedAfter(file, byPath);
    if (original) found.set(file.path, { original: original.path, copy: file.path, by: 'name' });
  }
  for (const same of sameIds(files.filter(({ path }) => !found.has(path)))) {
    const [original, ...others] = same.toSorted(originalFirst);
    for (const other of others)
      if (original && likeness(original.text, other.text) > ALIKE)
        found.set(other.path, { original: original.path, copy: other.path, by: 'content' });
  }
  return [...found.values()].toSorted((a, b) => (a.copy < b.copy ? -1 : 1));
}

/** Whether a file's name alone may be that of a second copy. */
export const mayBeCopyName = (path: string): boolean => [...SAYS_CONFLICT, ...MAY_BE_A_COPY].some((pattern) => pattern.test(stemOf(path)));

function namedAfter({ path, text }: NoteFile, byPath: ReadonlyMap<string, NoteFile>): NoteFile | undefined {
  const stem = stemOf(path);
  const slash = path.lastIndexOf('/') + 1;
  const ending = path.slice(slash + stem.length);
  const originalOf = (pattern: RegExp): NoteFile | undefined => {
    const name = pattern.exec(stem)?.[1];
    const original = name === undefined ? undefined : byPath.get(path.slice(0, slash) + name + ending);
    return original?.path === path ? undefined : original;
  };
  for (const pattern of SAYS_CONFLICT) {
    const original = originalOf(pattern);
    if (original) return original;
  }
  for (const pattern of MAY_BE_A_COPY) {
    const original = originalOf(pattern);
    if (original && valueOf(original.text, 'title') === valueOf(text, 'title') && likeness(original.text, text) > ALIKE) return original;
  }
  return undefined;
}

/** Files that give themselves the same id. */
function sameIds(files: readonly NoteFile[]): readonly (readonly NoteFile[])[] {
  const byId = new Map<string, NoteFile[]>();
  for (const file of files) {
    // Parting the front matter of every note would take seconds in a large notebook.
    const id = (/^id:/m.test(file.text) ? valueOf(file.text, 'id') : undefined) ?? stemOf(file.path);
    const same = byId.get(id);
    if (same) same.push(file);
    else byId.set(id, [file]);
  }
  return [...byId.values()].filter(({ length }) => length > 1);
}

/** The original is the one whose name is its id, else the one with the shortest name. */
function originalFirst(a: NoteFile, b: NoteFile): number {
  const isNamed = ({ path, text }: NoteFile) => Number(valueOf(text, 'id') === stemOf(path));
  return isNamed(b) - isNamed(a) || a.path.length - b.path.length || (a.path < b.path ? -1 : 1);
}

function valueOf(text: string, key: string): string | undefined {
  const says = frontMatterKeys(text)?.keys.find((one) => one.key === key)?.says;
  return says?.is === 'scalar' ? says.text : undefined;
}

/** The share of lines that two texts have in common, 0–1; empty lines do not count. */
function likeness(a: string, b: string): number {
  const [own, other] = [linesOf(a), linesOf(b)];
  const left = new Map<string, number>();
  for (const line of own) left.set(line, (left.get(line) ?? 0) + 1);
  let common = 0;
  for (const line of other) {
    const count = left.get(line) ?? 0;
    if (count > 0) {
      common += 1;
      left.set(line, count - 1);
    }
  }
  return own.length + other.length === 0 ? 1 : (2 * common) / (own.length + other.length);
}

const linesOf = (text: string): readonly string[] => text.split(/\r\n|\n|\r/).filter((line) => line.trim() !== '');
