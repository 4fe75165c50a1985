import type { StoreFailure } from '../domain/ports.ts';
import { decodeNote } from '../domain/note/decode-note.ts';
import type { Keeper } from '../notebook/keeper.ts';
import type { EarlierNotes, EarlierText, NoteToSave, SaveOutcome } from '../notebook/ports-writing.ts';
import type { NotebookFile } from '../notebook/notebook.ts';
import { sameBytes } from '../store/same-bytes.ts';
import '../elements/write/write-events.ts';

const encoder = new TextEncoder();

/** The part of the keeper that writing needs. */
export type NoteKeeper = Pick<Keeper, 'read' | 'write' | 'history'> & { readonly store: Pick<Keeper['store'], 'readEarlier'> };

/**
 * Answers what elements wish to have written: saving, deleting, earlier versions, captures.
 *
 * @param target where the wishes arrive; they bubble up to it.
 * @returns how to stop.
 */
export function answerWriting(target: EventTarget, keeper: NoteKeeper): () => void {
  const stopper = new AbortController();
  const { signal } = stopper;
  const on = <Name extends keyof GlobalEventHandlersEventMap>(name: Name, answer: (event: GlobalEventHandlersEventMap[Name]) => void) =>
    target.addEventListener(name, (event) => answer(event as GlobalEventHandlersEventMap[Name]), { signal });
  on('tg-note-save-request', (event) => event.respondWith(saveNote(keeper, event.detail)));
  on('tg-notes-save-request', (event) => event.respondWith(saveNotes(keeper, event.detail.notes, event.detail.takenBack)));
  on('tg-note-delete-request', (event) => event.respondWith(deleteNote(keeper, event.detail.path, event.detail.basedOn)));
  on('tg-note-history-request', (event) => event.respondWith(earlierNotes(keeper, event.detail.path)));
  on('tg-note-earlier-request', (event) => event.respondWith(earlierText(keeper, event.detail.path, event.detail.version)));
  on('tg-capture-save-request', (event) => event.respondWith(saveNote(keeper, event.detail.note, event.detail.photos)));
  return () => stopper.abort();
}

/** Saves a note, with files that belong to it, all or none; what its writer did not see is never overwritten, and what lies there already is kept once. */
export async function saveNote(
  keeper: NoteKeeper,
  { path, text, basedOn }: NoteToSave,
  others: readonly NotebookFile[] = [],
): Promise<SaveOutcome> {
  const stored = await keeper.read(path);
  if (basedOn === undefined && stored) return { is: 'taken' };
  const wanted: NotebookFile[] = [];
  for (const other of others) {
    const there = await keeper.read(other.path);
    if (there && !sameBytes(there.bytes, other.bytes)) return { is: 'taken' };
    if (!there) wanted.push(other);
  }
  if (basedOn !== undefined) {
    const now = stored && decodeNote(stored.bytes).value.text;
    if (now === undefined) return (await failureOf(keeper, path)) ?? { is: 'conflict' };
    if (now !== basedOn) return { is: 'conflict', stored: now };
  }
  const version = stored?.version === undefined ? {} : { basedOn: stored.version };
  const result = await keeper.write([{ path, bytes: encoder.encode(text), ...version }, ...wanted]);
  return outcomeOf(result, path, basedOn === undefined);
}

/** Saves new notes, and takes back others as they were written, all or none; what is there already is never overwritten. */
export async function saveNotes(
  keeper: NoteKeeper,
  notes: readonly NoteToSave[],
  takenBack: readonly NoteToSave[] = [],
): Promise<SaveOutcome> {
  const held = await Promise.all(notes.map(({ path }) => keeper.read(path)));
  if (held.some((one) => one !== undefined)) return { is: 'taken' };
  const there = await Promise.all(takenBack.map(async (note) => ({ note, stored: await keeper.read(note.path) })));
  const kept = there.filter(({ stored }) => stored !== undefined);
  if (kept.some(({ note, stored }) => stored && decodeNote(stored.bytes).value.text !== note.text)) return { is: 'conflict' };
  const removals = kept.flatMap(({ note: { path }, stored }) =>
    stored?.version === undefined ? [] : [{ path, removed: true as const, basedOn: stored.version }],
  );
  const result = await keeper.write([...notes.map(({ path, text }) => ({ path, bytes: encoder.encode(text) })), ...removals]);
  return outcomeOf(result, '', notes.length > 0);
}

/** Deletes a note as its writer saw it. */
export async function deleteNote(keeper: NoteKeeper, path: string, basedOn: string): Promise<SaveOutcome> {
  const shown = await keeper.read(path);
  const now = shown && decodeNote(shown.bytes).value.text;
  if (now === undefined) return (await failureOf(keeper, path)) ?? { is: 'saved' };
  if (now !== basedOn) return { is: 'conflict', stored: now };
  const version = shown?.version ?? (await versionOnceKept(keeper, path));
  if (typeof version !== 'number') return version;
  return outcomeOf(await keeper.write([{ path, removed: true, basedOn: version }]), path, false);
}

/** What is only shown has no version yet: an empty change makes the notebook a kept one. */
async function versionOnceKept(keeper: NoteKeeper, path: string): Promise<number | SaveOutcome> {
  const kept = await keeper.write([]);
  if (!kept.ok) return outcomeOf(kept, path, false);
  return (await keeper.read(path))?.version ?? { is: 'saved' };
}

/** Why nothing can be read of a note: a store that ended gives nothing, and then the note need not be gone. */
async function failureOf(keeper: NoteKeeper, path: string): Promise<SaveOutcome | undefined> {
  const asked = await keeper.write([]);
  return asked.ok ? undefined : outcomeOf(asked, path, false);
}

function outcomeOf(result: Awaited<ReturnType<Keeper['write']>>, path: string, isNew: boolean): SaveOutcome {
  if (result.ok) return { is: 'saved' };
  if (result.error !== 'conflict') return { is: 'failed', why: result.error };
  const stored = result.conflicts.find((conflict) => conflict.path === path)?.stored;
  // A new note, or its photo, met a file of that name that was written a moment ago.
  if (isNew) return { is: 'taken' };
  return stored ? { is: 'conflict', stored: decodeNote(stored.bytes).value.text } : { is: 'conflict' };
}

async function earlierNotes(keeper: NoteKeeper, path: string): Promise<EarlierNotes> {
  const found = await keeper.history(path);
  if (!found.ok) return { is: 'failed', why: found.error };
  return { is: 'found', versions: found.value.map(({ version, savedAt, endedAt }) => ({ version, savedAt, endedAt })) };
}

async function earlierText(keeper: NoteKeeper, path: string, version: number): Promise<EarlierText> {
  const found = await keeper.store.readEarlier(path, version);
  if (found.ok) return { is: 'found', text: decodeNote(found.value.bytes).value.text };
  return found.error === 'missing' ? { is: 'missing' } : { is: 'failed', why: found.error satisfies StoreFailure };
}
