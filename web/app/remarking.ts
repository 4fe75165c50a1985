import type { RemarkOutcome, RemarksReadIn } from '../elements/remarks/remark-events.ts';
import type { FoundFiles } from '../notebook/import/found-files.ts';
import type { ImportReport } from '../notebook/import/import-files.ts';
import type { Keeper } from '../notebook/keeper.ts';
import { mergeRemarks, readRemarks, type Remark, REMARKS_FILE, remarksFile } from '../notebook/remarks.ts';

/** What keeping a remark takes from the world around it. */
export interface RemarkSurroundings {
  readonly now: () => number;
  readonly newId: () => string;
}

type RemarkKeeper = Pick<Keeper, 'read' | 'write'>;

/** Answers what readers want done with remarks: made, dealt with, merged in from a file. */
export function answerRemarks(target: EventTarget, keeper: RemarkKeeper, around: RemarkSurroundings): void {
  const on = <Name extends keyof GlobalEventHandlersEventMap>(name: Name, answer: (event: GlobalEventHandlersEventMap[Name]) => void) =>
    target.addEventListener(name, (event) => answer(event as GlobalEventHandlersEventMap[Name]));
  on('tg-remark-add-request', (event) => {
    const remark = { ...event.detail, id: around.newId(), at: new Date(around.now()).toISOString() };
    event.respondWith(changeRemarks(keeper, (remarks) => mergeRemarks(remarks, [remark])));
  });
  on('tg-remark-done-request', (event) => {
    const { id } = event.detail;
    event.respondWith(changeRemarks(keeper, (remarks) => remarks.map((one) => (one.id === id ? { ...one, done: true } : one))));
  });
  on('tg-remarks-read-in-request', (event) => event.respondWith(readRemarksIn(keeper, event.detail.bytes)));
}

/** Merges a file of remarks into the notebook's. */
export async function readRemarksIn(keeper: RemarkKeeper, bytes: Uint8Array): Promise<RemarksReadIn> {
  const read = readRemarks(bytes);
  if (!read.ok) return { is: 'refused', why: read.error };
  const { remarks, unreadCount } = read.value;
  let added = 0;
  const outcome = await changeRemarks(keeper, (mine) => {
    const merged = mergeRemarks(mine, remarks);
    added = merged.length - mine.length;
    return merged;
  });
  if (outcome !== 'kept') return { is: 'not-kept', why: outcome };
  return { is: 'merged', added, known: remarks.length - added, unread: unreadCount };
}

/**
 * Reads a notebook in to be reviewed, in the place of the one reviewed before.
 *
 * Remarks that were made on it stay, and those it brings along come to them: opening the same notebook again loses none.
 */
export async function openForReview(
  keeper: Keeper,
  found: FoundFiles,
  options: Parameters<Keeper['importFiles']>[1],
): Promise<ImportReport> {
  const stamps = await keeper.store.stamps();
  const before = stamps.ok ? stamps.value : [];
  const mine = (await keeper.read(REMARKS_FILE))?.bytes;
  if (before.length > 0) await keeper.write(before.map(({ path, version }) => ({ path, removed: true, basedOn: version })));
  const report = await keeper.importFiles(found, options);
  if (mine) await readRemarksIn(keeper, mine);
  return report;
}

async function changeRemarks(keeper: RemarkKeeper, change: (remarks: readonly Remark[]) => readonly Remark[]): Promise<RemarkOutcome> {
  const stored = await keeper.read(REMARKS_FILE);
  const read = stored && readRemarks(stored.bytes);
  // A file of that name with something else in it, or with entries that would be dropped, is not written over.
  if (read && (!read.ok || read.value.unreadCount > 0)) return 'unreadable';
  const bytes = remarksFile(change(read?.ok ? read.value.remarks : []));
  const basedOn = stored?.version === undefined ? {} : { basedOn: stored.version };
  const result = await keeper.write([{ path: REMARKS_FILE, bytes, ...basedOn }]);
  if (result.ok) return 'kept';
  return result.error === 'conflict' ? 'changed-meanwhile' : result.error;
}
