import { decodeNote } from '../domain/note/decode-note.ts';
import { parseNote } from '../domain/note/parse-note.ts';
import { mergePots } from '../domain/pot/merge-pots.ts';
import { samePot } from '../domain/pot/same-pot.ts';
import { nextBath, printSkeinCode, readSkeinCode } from '../domain/pot/skein-code.ts';
import type { Change, StoreFailure } from '../domain/ports.ts';
import { failed, ok, type Result } from '../domain/result.ts';
import type { LogBroughtIn, PotTakenOut } from '../elements/pot/pot-events.ts';
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

/** A trial's note with the photos it names, as one zip; a note without photos also as plain text, which every browser shares. */
export async function potFile(keeper: Keeper, engine: Engine, id: string): Promise<Result<PotTakenOut, StoreFailure | 'missing'>> {
  const note = await engine.noteText(id);
  if (!note) return failed('missing');
  const files = new Map<string, Uint8Array>([[note.path, encoder.encode(note.text)]]);
  const photos = photosIn(note.text);
  for (const path of photos) {
    const photo = await keeper.read(path);
    if (photo) files.set(path, photo.bytes);
  }
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  for await (const piece of exportFiles(id, files)) {
    if (!piece.ok) return piece;
    pieces.push(piece.value as Uint8Array<ArrayBuffer>);
  }
  return ok({
    name: `${id}.zip`,
    file: new Blob(pieces, { type: 'application/zip' }),
    ...(photos.length === 0 && { plain: { name: `${id}.txt`, file: new Blob([note.text], { type: 'text/plain' }) } }),
  });
}

/** Pictures that a note's log names. */
const photosIn = (text: string): readonly string[] =>
  [...new Set([...text.matchAll(/\bphotos\/[^\s)"'<>,\]}]+/g)].map(([path]) => path))].filter(isPhotoPath);

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
    if (note?.record.kind !== 'trial') return [];
    const codes = note.record.samples.flatMap(({ code }) => (code === undefined ? [] : [code]));
    return [{ id: String(note.id), path: file.path, text, codes }];
  });
  const [theirs] = trials;
  if (!theirs || trials.length > 1) return { is: 'not-a-log' };
  const photos = await newFiles(
    keeper,
    files.filter(({ path }) => isPhotoPath(path)),
  );
  const here = await potsOfItsNumber(engine, theirs);
  if (here.length === 0)
    return { id: theirs.id, is: (await keeper.write([put(theirs.path, theirs.text), ...photos])).ok ? 'new' : 'failed' };
  const mine = here.find(({ text }) => samePot(text, theirs.text));
  if (!mine) return anotherPot(keeper, engine, theirs, photos);
  const at = { id: mine.id };
  if (mine.text === theirs.text && photos.length === 0) return { ...at, is: 'same' };
  return { id: mine.id, is: await merge(keeper, mine, theirs.text, photos, today) };
}

interface TheirPot {
  readonly id: string;
  readonly text: string;
  readonly codes: readonly string[];
}

/** The note of the same id, and every pot one of whose skeins has one of its codes. */
async function potsOfItsNumber(engine: Engine, { id, codes }: TheirPot) {
  const coded = (await engine.pots()).filter((pot) => pot.codes.some((code) => codes.includes(code)));
  const ids = new Set([id, ...coded.map((pot) => pot.id)]);
  const notes = await Promise.all([...ids].map(async (one) => ({ id: one, note: await engine.noteText(one) })));
  return notes.flatMap(({ id: one, note }) => (note ? [{ id: one, path: note.path, text: note.text }] : []));
}

/** Two machines gave one number to two pots: theirs is kept as it is, under the next free number, whose codes are offered. */
async function anotherPot(keeper: Keeper, engine: Engine, theirs: TheirPot, photos: readonly Change[]): Promise<LogBroughtIn> {
  const given = [...theirs.codes, ...(await engine.pots()).flatMap(({ codes }) => codes)];
  const year = theirs.codes.map(readSkeinCode).find((code) => code !== undefined)?.year;
  const bath = year === undefined ? undefined : nextBath(given, year);
  const free = theirs.codes.flatMap((_, at) =>
    year === undefined || bath === undefined ? [] : (printSkeinCode({ year, bath, skein: at + 1 }) ?? []),
  );
  const [first] = free;
  const id = first === undefined ? `${theirs.id}-other` : first.split('-').slice(0, 2).join('-');
  const written = await keeper.write([put(`trials/${id}.md`, theirs.text), ...photos]);
  return written.ok ? { id, is: 'another-pot', free } : { id: theirs.id, is: 'failed' };
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
