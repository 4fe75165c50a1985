import type { FolderFailure, FolderPort, FolderStamp } from '../../domain/folder-port.ts';
import { mergeNote } from '../../domain/merge/merge-note.ts';
import { decodeNote } from '../../domain/note/decode-note.ts';
import type { Change, FileStamp, StoredFile, StoreFailure, Version } from '../../domain/ports.ts';
import { failed, ok, type Result } from '../../domain/result.ts';
import { isHidden, pathFault } from '../import/path-fault.ts';
import type { Keeper } from '../keeper.ts';
import { isNotePath } from '../note-path.ts';
import { mergeRemarks, readRemarks, REMARKS_FILE, remarksFile } from '../remarks.ts';
import type { Meeting, SettleOutcome, Settlement } from './meeting.ts';
import type { SeenFiles } from './seen-files.ts';
import { sidesOf } from './sides-of.ts';

/** What one look at the folder did. */
export interface SyncRound {
  /** Changes of the folder that came in, and of the notebook that went out; removals among them. */
  readonly takenIn: readonly string[];
  readonly writtenOut: readonly string[];
  /** Changed on both sides and merged. */
  readonly merged: readonly string[];
  /** Changed on both sides, for the reader to decide. */
  readonly meetings: readonly Meeting[];
  /** Passed over: too large, or a name that cannot be kept. */
  readonly passedOver: readonly string[];
  /** Present where the look ended early. `emptied`: the folder holds nothing any more, which is not taken for a wish. */
  readonly failure?: FolderFailure | StoreFailure | 'emptied';
}

/** How far a look has come: files looked at, of all there are on both sides. */
export interface SyncProgress {
  readonly done: number;
  readonly of: number;
}

export type RoundFailure = NonNullable<SyncRound['failure']>;

/** As an import has it. */
const LARGEST_BYTES = 64 * 1024 * 1024;
/** Files taken in together, and between two words of how far it is. */
const BATCH_FILES = 100;

type Trouble = { readonly ok: false; readonly error: RoundFailure };

const encoder = new TextEncoder();

/**
 * Keeps a notebook and a folder alike.
 *
 * What changed on one side goes to the other; a note that changed on both is merged, or shown to its reader where that cannot be
 * done. Whatever gives way stays among the earlier versions, and nothing is written over that was not looked at first.
 */
export class FolderSync {
  readonly folder: FolderPort;
  readonly #keeper: Keeper;
  readonly #seen: SeenFiles;
  #last: Promise<unknown> = Promise.resolve();

  /** Links a folder; `load` the seen files first where it was linked before. */
  constructor(keeper: Keeper, folder: FolderPort, seen: SeenFiles) {
    this.#keeper = keeper;
    this.folder = folder;
    this.#seen = seen;
  }

  /**
   * Looks at both sides once and makes them alike.
   *
   * @param isThorough reads every file, also those whose size and date say nothing changed.
   * @param onProgress told before the first file, after every batch of them, and at the end.
   */
  round(isThorough = false, onProgress?: (progress: SyncProgress) => void): Promise<SyncRound> {
    return this.#alone(() => this.#round(isThorough, onProgress));
  }

  /** Writes what a reader decided to both sides; the two versions that met stay among the earlier ones. */
  settle(meeting: Meeting, settlement: Settlement): Promise<SettleOutcome> {
    return this.#alone(() => this.#settle(meeting, settlement));
  }

  #alone<T>(work: () => Promise<T>): Promise<T> {
    const next = this.#last.then(work, work);
    this.#last = next.catch(() => undefined);
    return next;
  }

  async #round(isThorough: boolean, onProgress?: (progress: SyncProgress) => void): Promise<SyncRound> {
    const round = new Round();
    const trouble = await this.#look(round, isThorough, onProgress);
    await this.#seen.keep();
    return round.report(trouble?.error);
  }

  async #look(round: Round, isThorough: boolean, onProgress?: (progress: SyncProgress) => void): Promise<Trouble | undefined> {
    const listed = await this.folder.list();
    if (!listed.ok) return listed;
    if (listed.value.length === 0 && this.#seen.paths.length > 0) return failed('emptied');
    if (!this.#keeper.isKept) {
      const begun = listed.value.length > 0 ? await this.#keeper.beginEmpty() : await this.#keeper.keepShown();
      if (!begun.ok && begun.error !== 'conflict') return failed(begun.error);
    }
    const stamps = await this.#keeper.store.stamps();
    if (!stamps.ok) return stamps;
    const there = new Map(listed.value.map((stamp) => [stamp.path, stamp]));
    const here = new Map(stamps.value.map((stamp) => [stamp.path, stamp]));
    const paths = [...new Set([...there.keys(), ...here.keys(), ...this.#seen.paths])].toSorted();
    for (const [done, path] of paths.entries()) {
      if (done % BATCH_FILES === 0) onProgress?.({ done, of: paths.length });
      const trouble = await this.#lookAt(path, here.get(path), there.get(path), round, isThorough);
      if (trouble) return trouble;
      if (round.incoming.length >= BATCH_FILES) {
        const stopped = await this.#takeIn(round);
        if (stopped) return stopped;
      }
    }
    const stopped = await this.#takeIn(round);
    if (!stopped) onProgress?.({ done: paths.length, of: paths.length });
    return stopped;
  }

  async #lookAt(
    path: string,
    here: FileStamp | undefined,
    there: FolderStamp | undefined,
    round: Round,
    isThorough: boolean,
  ): Promise<Trouble | undefined> {
    const seen = this.#seen.get(path);
    if (isHidden(path) || pathFault(path) || (there?.byteCount ?? 0) > LARGEST_BYTES) {
      if (there) round.passedOver.push(path);
      return undefined;
    }
    const hereChanged = here?.version !== seen?.version;
    const thereChanged = !sameStamp(there, seen);
    if (!hereChanged && !thereChanged && !(isThorough && there)) return undefined;
    if (!there) return this.#notThere(path, here, hereChanged, seen !== undefined, round);
    const read = await this.folder.read(path);
    // Gone since it was listed: the next look will say so.
    if (!read.ok) return read.error === 'missing' ? undefined : failed(read.error);
    const theirs = read.value;
    if (!here) {
      const sameAsSeen = seen && (await this.#isVersion(path, seen.version, theirs.bytes));
      if (!sameAsSeen) round.incoming.push({ stamp: theirs, change: { path, bytes: theirs.bytes, modifiedAt: theirs.modifiedAt } });
      else return this.#removeThere(theirs, round);
      return undefined;
    }
    const mine = await this.#stored(path);
    if (!mine) return undefined;
    if (sameBytes(mine.bytes, theirs.bytes)) {
      this.#seen.set(theirs, mine.version);
      return undefined;
    }
    const before = seen && (seen.version === mine.version ? mine.bytes : await this.#earlier(path, seen.version));
    if (before && sameBytes(before, theirs.bytes)) return this.#writeOut(mine, theirs, round);
    const meeting = meet(mine, theirs, before, mine.version === seen?.version);
    if (meeting === 'theirs')
      round.incoming.push({
        stamp: theirs,
        change: { path, bytes: theirs.bytes, basedOn: mine.version, modifiedAt: theirs.modifiedAt },
      });
    else if (meeting.merge?.text === undefined) round.meetings.push(meeting);
    else {
      const outcome = await this.#settle(meeting, { is: 'text', text: meeting.merge.text });
      if (outcome === 'settled') round.merged.push(path);
    }
    return undefined;
  }

  /** A file that the folder does not have: it was removed there, or is new here. */
  async #notThere(
    path: string,
    here: FileStamp | undefined,
    hereChanged: boolean,
    wasSeen: boolean,
    round: Round,
  ): Promise<Trouble | undefined> {
    if (!here) {
      this.#seen.forget(path);
      return undefined;
    }
    // What was written here since is worth more than the removal there.
    if (!wasSeen || hereChanged) {
      const mine = await this.#stored(path);
      return mine && this.#writeOut(mine, undefined, round);
    }
    round.incoming.push({ change: { path, removed: true, basedOn: here.version } });
    return undefined;
  }

  async #writeOut(mine: StoredFile, expected: FolderStamp | undefined, round: Round): Promise<Trouble | undefined> {
    const written = await this.#write(mine.path, mine.bytes, expected);
    if (!written.ok) return written.error === 'changed-meanwhile' ? undefined : failed(written.error);
    this.#seen.set(written.value, mine.version);
    round.writtenOut.push(mine.path);
    return undefined;
  }

  async #removeThere(stamp: FolderStamp, round: Round): Promise<Trouble | undefined> {
    const still = await this.#stillIs(stamp.path, stamp);
    if (!still.ok) return still.error === 'changed-meanwhile' ? undefined : failed(still.error);
    const removed = await this.folder.remove(stamp.path);
    if (!removed.ok) return removed;
    this.#seen.forget(stamp.path);
    round.writtenOut.push(stamp.path);
    return undefined;
  }

  /** Writes a file of the folder, if it still is what was looked at. */
  async #write(
    path: string,
    bytes: Uint8Array,
    expected: FolderStamp | undefined,
  ): Promise<Result<FolderStamp, FolderFailure | 'changed-meanwhile'>> {
    const still = await this.#stillIs(path, expected);
    return still.ok ? this.folder.write(path, bytes) : still;
  }

  /** Asks whether a file of the folder is what was looked at; another program may have written it since. */
  async #stillIs(path: string, expected: FolderStamp | undefined): Promise<Result<void, FolderFailure | 'changed-meanwhile'>> {
    const now = await this.folder.read(path);
    if (!now.ok && now.error !== 'missing') return failed(now.error);
    return sameStamp(now.ok ? now.value : undefined, expected) ? ok(undefined) : failed('changed-meanwhile');
  }

  async #takeIn(round: Round): Promise<Trouble | undefined> {
    let incoming = round.incoming.splice(0);
    while (incoming.length > 0) {
      const result = await this.#keeper.write(incoming.map(({ change }) => change));
      if (result.ok) {
        const versions = new Map(result.value.map(({ path, version }) => [path, version]));
        for (const { stamp, change } of incoming) {
          const version = versions.get(change.path);
          if (stamp && version !== undefined) this.#seen.set(stamp, version);
          else this.#seen.forget(change.path);
          round.takenIn.push(change.path);
        }
        return undefined;
      }
      if (result.error !== 'conflict') return failed(result.error);
      // Written here a moment ago: the next look finds both sides changed.
      const lost = new Set(result.conflicts.map(({ path }) => path));
      incoming = incoming.filter(({ change }) => !lost.has(change.path));
    }
    return undefined;
  }

  async #settle(meeting: Meeting, settlement: Settlement): Promise<SettleOutcome> {
    const { path, stamp, theirs } = meeting;
    const [mine, now] = [await this.#stored(path), await this.folder.read(path)];
    if (!mine || mine.version !== meeting.version || !now.ok || !sameStamp(now.value, stamp)) return 'changed-meanwhile';
    const bytes = settlement.is === 'text' ? encoder.encode(settlement.text) : settlement.take === 'theirs' ? theirs : mine.bytes;
    let version: Version = mine.version;
    // First theirs and then what was decided, so that both stand among the earlier versions.
    const steps = settlement.is === 'file' && settlement.take === 'both' ? [] : [theirs, bytes];
    for (const step of steps) {
      const result = await this.#keeper.write([{ path, bytes: step, basedOn: version }]);
      if (!result.ok) return result.error === 'conflict' ? 'changed-meanwhile' : 'not-written';
      version = result.value[0]?.version ?? version;
    }
    if (settlement.is === 'file' && settlement.take === 'both' && !(await this.#keepBeside(path, theirs))) return 'not-written';
    const written = await this.#write(path, bytes, stamp);
    if (!written.ok) return written.error === 'changed-meanwhile' ? 'changed-meanwhile' : 'not-written';
    this.#seen.set(written.value, version);
    await this.#seen.keep();
    return 'settled';
  }

  /** Keeps the folder's file under a name of its own; the next look writes it out. */
  async #keepBeside(path: string, bytes: Uint8Array): Promise<boolean> {
    for (let number = 1; number < 100; number++) {
      const result = await this.#keeper.write([{ path: besideName(path, number), bytes }]);
      if (result.ok) return true;
      if (result.error !== 'conflict') return false;
    }
    return false;
  }

  async #stored(path: string): Promise<StoredFile | undefined> {
    const found = await this.#keeper.store.read([path]);
    return found.ok ? found.value[0] : undefined;
  }

  async #earlier(path: string, version: Version): Promise<Uint8Array | undefined> {
    const found = await this.#keeper.store.readEarlier(path, version);
    return found.ok ? found.value.bytes : undefined;
  }

  async #isVersion(path: string, version: Version, bytes: Uint8Array): Promise<boolean> {
    const earlier = await this.#earlier(path, version);
    return earlier !== undefined && sameBytes(earlier, bytes);
  }
}

/** What a look gathers. */
class Round {
  readonly incoming: { readonly stamp?: FolderStamp; readonly change: Change }[] = [];
  readonly takenIn: string[] = [];
  readonly writtenOut: string[] = [];
  readonly merged: string[] = [];
  readonly meetings: Meeting[] = [];
  readonly passedOver: string[] = [];

  report(failure: RoundFailure | undefined): SyncRound {
    const { takenIn, writtenOut, merged, meetings, passedOver } = this;
    return { takenIn, writtenOut, merged, meetings, passedOver, ...(failure && { failure }) };
  }
}

/**
 * What becomes of a file that the folder has with other bytes.
 *
 * @param isSeen whether the notebook still has what both had.
 * @returns `theirs` where only the folder's changed and its text can be taken as it is.
 */
function meet(
  mine: StoredFile,
  theirs: FolderStamp & { readonly bytes: Uint8Array },
  seen: Uint8Array | undefined,
  isSeen: boolean,
): Meeting | 'theirs' {
  const { path, version } = mine;
  const stamp = { path, byteCount: theirs.byteCount, modifiedAt: theirs.modifiedAt };
  const [own, other] = [decodeNote(mine.bytes).value, decodeNote(theirs.bytes).value];
  const remarks = path === REMARKS_FILE && !isSeen ? mergedRemarks(mine.bytes, theirs.bytes) : undefined;
  if (remarks !== undefined) return { from: 'folder', path, version, merge: { pieces: [], text: remarks }, theirs: theirs.bytes, stamp };
  if (!isNotePath(path) || own.readOnly || other.readOnly)
    return isSeen ? 'theirs' : { from: 'folder', path, version, theirs: theirs.bytes, stamp };
  const sides = sidesOf(own.text, other.text, seen && decodeNote(seen).value.text);
  if (isSeen && sides.theirs === other.text) return 'theirs';
  return { from: 'folder', path, version, merge: mergeNote(sides), theirs: encoder.encode(sides.theirs), stamp };
}

/** The remarks of both sides as one file; undefined where anything in either is no remark. */
function mergedRemarks(mine: Uint8Array, theirs: Uint8Array): string | undefined {
  const [own, other] = [readRemarks(mine), readRemarks(theirs)];
  if (!own.ok || !other.ok || own.value.unreadCount + other.value.unreadCount > 0) return undefined;
  return decodeNote(remarksFile(mergeRemarks(own.value.remarks, other.value.remarks))).value.text;
}

const besideName = (path: string, number: number): string => {
  const [, stem = path, ending = ''] = /^(.*?)(\.[^./]*)?$/s.exec(path) ?? [];
  return `${stem} (from the folder${number === 1 ? '' : ` ${number}`})${ending}`;
};

const sameStamp = (
  a: Pick<FolderStamp, 'byteCount' | 'modifiedAt'> | undefined,
  b: Pick<FolderStamp, 'byteCount' | 'modifiedAt'> | undefined,
): boolean => a?.byteCount === b?.byteCount && a?.modifiedAt === b?.modifiedAt;

const sameBytes = (a: Uint8Array, b: Uint8Array): boolean => a.length === b.length && a.every((byte, at) => byte === b[at]);
