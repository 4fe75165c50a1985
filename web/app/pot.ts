import { decodeNote } from '../domain/note/decode-note.ts';
import { parseNote } from '../domain/note/parse-note.ts';
import { mergePots } from '../domain/pot/merge-pots.ts';
import type { Change, StoreFailure } from '../domain/ports.ts';
import { failed, ok, type Result } from '../domain/result.ts';
import type { LogBroughtIn } from '../elements/pot/pot-events.ts';
import type { TakenOut } from '../elements/take-out/take-out-events.ts';
import type { Engine } from '../notebook/engine.ts';
import { exportFiles } from '../notebook/export-notebook.ts';
import { openZip } from '../notebook/import/open-zip.ts';
import type { Keeper } from '../notebook/keeper.ts';
import type { NotebookFile } from '../notebook/notebook.ts';
import { isPhotoPath } from '../notebook/photo-path.ts';

const encoder = new TextEncoder();
/** The setting that holds the address tags carry. */
const TAG_ADDRESS = 'tag-address';

/** The address tags carry beside their code, changed first where `set` says so. */
export async function tagAddress(keeper: Keeper, set: string | undefined): Promise<string> {
  if (set !== undefined) await keeper.store.keepSetting(TAG_ADDRESS, set);
  const kept = await keeper.store.setting(TAG_ADDRESS);
  return kept.ok && typeof kept.value === 'string' ? kept.value : '';
}

/** A trial's note with the photos it names, as one zip. */
export async function potFile(keeper: Keeper, engine: Engine, id: string): Promise<Result<TakenOut, StoreFailure | 'missing'>> {
  const note = await engine.noteText(id);
  if (!note) return failed('missing');
  const files = new Map<string, Uint8Array>([[note.path, encoder.encode(note.text)]]);
  for (const path of photosIn(note.text)) {
    const photo = await keeper.read(path);
    if (photo) files.set(path, photo.bytes);
  }
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  for await (const piece of exportFiles(id, files)) {
    if (!piece.ok) return piece;
    pieces.push(piece.value as Uint8Array<ArrayBuffer>);
  }
  return ok({ name: `${id}.zip`, file: new Blob(pieces, { type: 'application/zip' }) });
}

/** Pictures that a note's log names. */
const photosIn = (text: string): readonly string[] =>
  [...new Set([...text.matchAll(/\bphotos\/[^\s)"'<>]+/g)].map(([path]) => path))].filter(isPhotoPath);

/** Takes in a pot's note from another machine: one that is here already is merged by its id, and nothing of either is lost. */
export async function bringIn(
  keeper: Keeper,
  engine: Engine,
  { name, bytes }: { readonly name: string; readonly bytes: Uint8Array },
  today: string,
): Promise<LogBroughtIn> {
  const files = await filesIn(name, bytes);
  const trials = files.flatMap((file) => {
    const { text } = decodeNote(file.bytes).value;
    const note = /\.(?:md|markdown)$/i.test(file.path) ? parseNote(file.path, text).value : undefined;
    return note?.record.kind === 'trial' ? [{ id: String(note.id), path: file.path, text }] : [];
  });
  const [theirs] = trials;
  if (!theirs || trials.length > 1) return { is: 'not-a-log' };
  const photos = await newFiles(
    keeper,
    files.filter(({ path }) => isPhotoPath(path)),
  );
  const mine = await engine.noteText(theirs.id);
  const at = { id: theirs.id };
  if (!mine) return { ...at, is: (await keeper.write([put(theirs.path, theirs.text), ...photos])).ok ? 'new' : 'failed' };
  if (mine.text === theirs.text && photos.length === 0) return { ...at, is: 'same' };
  return { ...at, is: await merge(keeper, mine, theirs.text, photos, today) };
}

async function merge(
  keeper: Keeper,
  mine: { readonly path: string; readonly text: string },
  theirs: string,
  photos: readonly Change[],
  today: string,
): Promise<LogBroughtIn['is']> {
  const merged = mergePots(mine.text, theirs);
  const beside = put(mine.path.replace(/(\.[a-z]+)$/i, ` (conflict ${today})$1`), theirs);
  if (!merged) return (await keeper.write([beside, ...photos])).ok ? 'beside' : 'failed';
  if (merged.text === mine.text && merged.differ.length === 0) {
    if (photos.length > 0 && !(await keeper.write(photos)).ok) return 'failed';
    return 'same';
  }
  // Theirs becomes a version of the note first, so that both stand among its earlier ones.
  for (const text of [theirs, merged.text]) {
    const version = (await keeper.read(mine.path))?.version;
    const last = text === merged.text;
    const changes: Change[] = [{ ...put(mine.path, text), ...(version !== undefined && { basedOn: version }) }];
    if (last) changes.push(...photos, ...(merged.differ.length > 0 ? [beside] : []));
    if (!(await keeper.write(changes)).ok) return 'failed';
  }
  return merged.differ.length > 0 ? 'differ' : 'merged';
}

const put = (path: string, text: string) => ({ path, bytes: encoder.encode(text) });

/** Files that do not lie here yet; a photo keeps its name, which tells pot and second. */
async function newFiles(keeper: Keeper, files: readonly NotebookFile[]): Promise<readonly NotebookFile[]> {
  const found: NotebookFile[] = [];
  for (const file of files) if (!(await keeper.read(file.path))) found.push(file);
  return found;
}

/** What a file holds: a zip's files without the folder around them, or the one note that it is. */
async function filesIn(name: string, bytes: Uint8Array): Promise<readonly NotebookFile[]> {
  if (!/\.zip$/i.test(name)) return [{ path: `trials/${name.replace(/(?:\.md)?\.txt$/i, '.md')}`, bytes }];
  const opened = openZip(name, bytes);
  if (!opened.ok) return [];
  const files: NotebookFile[] = [];
  for (const file of opened.value.files) {
    const read = await file.read();
    const path = file.path.slice(file.path.indexOf('/') + 1);
    if (read.ok && !path.split('/').includes('..') && path !== '') files.push({ path, bytes: read.value });
  }
  return files;
}
