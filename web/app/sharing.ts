import type { FolderPort } from '../domain/folder-port.ts';
import type { FolderWish } from '../elements/sharing/sharing-events.ts';
import type { Keeper } from '../notebook/keeper.ts';
import { FolderSync, type SyncRound } from '../notebook/sharing/folder-sync.ts';
import { localMeetings, settleLocally } from '../notebook/sharing/local-meetings.ts';
import type { Meeting, SettleOutcome, Settlement } from '../notebook/sharing/meeting.ts';
import { SeenFiles } from '../notebook/sharing/seen-files.ts';
import type { LinkState, SharingState } from '../notebook/sharing/sharing-state.ts';

/** What sharing takes from the page around it. */
export interface SharingSurroundings {
  /** Opens a folder from the handle a reader gave, or that was kept. */
  readonly openFolder: (handle: FileSystemDirectoryHandle) => FolderPort;
  readonly now: () => number;
  /** Does work that only one tab may do at a time; `undefined` where another is at it and `waits` is not asked for. */
  readonly alone: <T>(work: () => Promise<T>, waits: boolean) => Promise<T | undefined>;
  readonly shown: (state: SharingState) => void;
}

const [FOLDER, LEFT] = ['linked-folder', 'copies-left'];

/** Links the notebook with a folder, looks at it from time to time, and gathers the versions that have met. */
export class Sharing {
  readonly #keeper: Keeper;
  readonly #around: SharingSurroundings;
  #sync: FolderSync | undefined;
  #seen: SeenFiles;
  #link: LinkState | undefined;
  #folderMeetings: readonly Meeting[] = [];
  #localMeetings: readonly Meeting[] = [];

  constructor(keeper: Keeper, around: SharingSurroundings) {
    this.#keeper = keeper;
    this.#around = around;
    this.#seen = new SeenFiles(keeper.store);
  }

  /** Opens the folder that was linked before, as far as the browser allows it without a click. */
  async start(): Promise<void> {
    const kept = await this.#keeper.store.setting(FOLDER);
    if (kept.ok && kept.value) await this.#open(kept.value as FileSystemDirectoryHandle);
    await this.gather();
  }

  /** Does what the reader wants about the folder. */
  async fulfil(wish: FolderWish): Promise<void> {
    if (wish.is === 'look') await this.look(true);
    else if (wish.is === 'link') {
      await this.#forget();
      // Where the handle cannot be kept, the link lasts as long as the page.
      await this.#keeper.store.keepSetting(FOLDER, wish.folder);
      await this.#open(wish.folder);
    } else if (wish.is === 'unlink') {
      await this.#forget();
      this.#show(undefined);
    } else if (this.#sync) {
      const isAllowed = await this.#sync.folder.askAccess();
      if (isAllowed) await this.look(true);
      else this.#show({ name: this.#sync.folder.name, is: 'stopped', why: 'no-permission' });
    }
  }

  /**
   * Looks at the folder and makes both alike.
   *
   * @param isThorough reads every file, and waits for another tab that is at it.
   */
  async look(isThorough = false): Promise<void> {
    const sync = this.#sync;
    if (!sync || (this.#link?.is === 'looking' && !isThorough)) return;
    // What its reader has not allowed yet is not tried: they know, and were asked.
    if (this.#link?.is === 'waiting' && (await sync.folder.access()) !== 'granted') return;
    const before = this.#link;
    const looking: LinkState = { ...(before ?? { name: sync.folder.name }), is: 'looking' };
    if (isThorough) this.#show(looking);
    const round = await this.#around.alone(async () => {
      // Another tab may have looked since.
      await this.#seen.load();
      return sync.round(isThorough, (progress) => {
        if (isThorough && sync === this.#sync) this.#show({ ...looking, progress });
      });
    }, isThorough);
    if (sync !== this.#sync || !round) return;
    this.#folderMeetings = round.failure ? this.#folderMeetings : round.meetings;
    this.#show(this.#linkAfter(round, before));
  }

  /** Looks for second copies and marked notes in the notebook itself. */
  async gather(): Promise<void> {
    if (!this.#keeper.isKept) return;
    const found = await localMeetings(this.#keeper.store, await this.#leftCopies());
    if (found.ok) this.#localMeetings = found.value;
    this.#show(this.#link);
  }

  /** Writes what the reader decided; without a settlement both versions stay and are no longer offered. */
  async settle(meeting: Meeting, settlement: Settlement | undefined): Promise<SettleOutcome> {
    const outcome = await this.#settled(meeting, settlement);
    if (meeting.from === 'folder') await this.look();
    await this.gather();
    return outcome;
  }

  async #settled(meeting: Meeting, settlement: Settlement | undefined): Promise<SettleOutcome> {
    if (!settlement) {
      const left = await this.#leftCopies();
      await this.#keeper.store.keepSetting(LEFT, [...left, meeting.copy ?? meeting.path]);
      return 'settled';
    }
    const sync = this.#sync;
    if (meeting.from !== 'folder') return settleLocally(this.#keeper, meeting, settlement);
    const outcome = await this.#around.alone(async () => {
      await this.#seen.load();
      return sync?.settle(meeting, settlement);
    }, true);
    return outcome ?? 'not-written';
  }

  async #open(handle: FileSystemDirectoryHandle): Promise<void> {
    const folder = this.#around.openFolder(handle);
    this.#sync = new FolderSync(this.#keeper, folder, this.#seen);
    if ((await folder.access()) === 'granted') await this.look(true);
    else this.#show({ name: folder.name, is: 'waiting' });
  }

  async #forget(): Promise<void> {
    this.#sync = undefined;
    this.#link = undefined;
    this.#folderMeetings = [];
    await this.#seen.load();
    this.#seen.clear();
    await this.#seen.keep();
    await this.#keeper.store.keepSetting(FOLDER, undefined);
  }

  async #leftCopies(): Promise<ReadonlySet<string>> {
    const left = await this.#keeper.store.setting(LEFT);
    return new Set(left.ok && Array.isArray(left.value) ? left.value.filter((path) => typeof path === 'string') : []);
  }

  #linkAfter(round: SyncRound, before: LinkState | undefined): LinkState {
    const name = this.#sync?.folder.name ?? '';
    const did = round.takenIn.length + round.writtenOut.length + round.merged.length > 0;
    const last = did ? round : before?.last;
    const lookedAt = round.failure ? before?.lookedAt : this.#around.now();
    return {
      name,
      is: round.failure ? 'stopped' : 'alike',
      ...(round.failure && { why: round.failure }),
      ...(lookedAt !== undefined && { lookedAt }),
      ...(last && { last }),
    };
  }

  #show(link: LinkState | undefined): void {
    this.#link = link;
    this.#around.shown({ ...(link && { link }), meetings: [...this.#folderMeetings, ...this.#localMeetings] });
  }
}
