import { markedSides } from '../../domain/merge/marked-sides.ts';
import { mergeNote } from '../../domain/merge/merge-note.ts';
import { decodeNote } from '../../domain/note/decode-note.ts';
import type { Change, NotebookStore, StoredFile, StoreFailure } from '../../domain/ports.ts';
import { ok, type Result } from '../../domain/result.ts';
import { conflictCopies } from '../conflict-copies.ts';
import type { Keeper } from '../keeper.ts';
import { isNotePath } from '../note-path.ts';
import type { Meeting, SettleOutcome, Settlement } from './meeting.ts';

const encoder = new TextEncoder();

/**
 * Versions that have met inside the notebook: second copies of a note, and notes with version control's marks in them.
 *
 * @param left copies that their reader wants to stay as they are.
 */
export async function localMeetings(store: NotebookStore, left: ReadonlySet<string>): Promise<Result<readonly Meeting[], StoreFailure>> {
  const files = new Map<string, { readonly file: StoredFile; readonly text: string }>();
  for await (const batch of store.loadAll(({ path }) => isNotePath(path))) {
    if (!batch.ok) return batch;
    for (const file of batch.value) {
      const { text, readOnly } = decodeNote(file.bytes).value;
      if (!readOnly) files.set(file.path, { file, text });
    }
  }
  const marked = [...files.values()].flatMap(({ file, text }): Meeting | [] => {
    const sides = markedSides(text);
    if (!sides) return [];
    return { from: 'marks', path: file.path, version: file.version, merge: mergeNote(sides), theirs: encoder.encode(sides.theirs) };
  });
  const copies = conflictCopies([...files].map(([path, { text }]) => ({ path, text }))).flatMap(({ original, copy }): Meeting | [] => {
    const [mine, theirs] = [files.get(original), files.get(copy)];
    if (!mine || !theirs || left.has(copy)) return [];
    return {
      from: 'copy',
      path: original,
      copy,
      version: mine.file.version,
      merge: mergeNote({ mine: mine.text, theirs: theirs.text }),
      theirs: theirs.file.bytes,
      copyVersion: theirs.file.version,
    };
  });
  return ok([...marked, ...copies]);
}

/** Writes what a reader decided; a second copy goes, and stays among the removed files. */
export async function settleLocally(keeper: Keeper, meeting: Meeting, settlement: Settlement): Promise<SettleOutcome> {
  if (settlement.is !== 'text') return 'not-written';
  const { path, version, copy, copyVersion } = meeting;
  const changes: Change[] = [{ path, bytes: encoder.encode(settlement.text), basedOn: version }];
  if (copy !== undefined && copyVersion !== undefined) changes.push({ path: copy, removed: true, basedOn: copyVersion });
  const result = await keeper.write(changes);
  if (result.ok) return 'settled';
  return result.error === 'conflict' ? 'changed-meanwhile' : 'not-written';
}
