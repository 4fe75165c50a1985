import type { TgApp } from '../elements/app/tg-app.ts';
import '../elements/sharing/sharing-events.ts';
import { isHidden } from '../notebook/import/path-fault.ts';
import type { Keeper } from '../notebook/keeper.ts';
import type { SharingState } from '../notebook/sharing/sharing-state.ts';
import { linkWords, meetingsNotice } from '../notebook/words/sharing-words.ts';
import { linkedFolder } from '../store/linked-folder.ts';
import type { NoticeBoard } from './notice-board.ts';
import { Sharing } from './sharing.ts';

/** Between two looks at the folder, at least (our choice: soon enough for a person who turns from one window to another). */
const REST = 5000;
/** A large folder takes longer to look through: it rests this many times as long as the look took. */
const REST_TIMES = 10;
/** After a change here, before it goes out: what is saved together goes together. */
const SOON = 300;

/** Links the page with a folder: answers its wishes, keeps both alike, and tells its reader when something is theirs to decide. */
export function wireSharing(app: TgApp, keeper: Keeper, board: NoticeBoard): void {
  const sharing = new Sharing(keeper, {
    openFolder: (handle) => linkedFolder(handle, isHidden),
    now: () => Date.now(),
    alone: aloneAmongTabs(`${keeper.store.notebookId}:folder`),
    shown: (state) => {
      app.sharing = state;
      tell(board, state);
    },
  });
  app.addEventListener('tg-folder-request', (event) => event.respondWith(sharing.fulfil(event.detail)));
  app.addEventListener('tg-meeting-settle-request', (event) =>
    event.respondWith(sharing.settle(event.detail.meeting, event.detail.settlement)),
  );
  const soon = new Soon(async () => {
    await sharing.look();
    await sharing.gather();
  });
  keeper.subscribe(({ type }) => {
    if (type === 'changed') soon.ask(SOON);
  });
  const lookAgain = async () => {
    const began = Date.now();
    if (document.visibilityState === 'visible') await sharing.look().catch((fault: unknown) => globalThis.reportError(fault));
    setTimeout(() => void lookAgain(), Math.max(REST, (Date.now() - began) * REST_TIMES));
  };
  globalThis.addEventListener('focus', () => void sharing.look());
  void sharing.start().then(lookAgain);
}

/** Runs some work a moment after it was last asked for, and not twice at once. */
class Soon {
  readonly #work: () => Promise<void>;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #running: Promise<void> = Promise.resolve();

  constructor(work: () => Promise<void>) {
    this.#work = work;
  }

  ask(milliseconds: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      this.#running = this.#running.then(this.#work).catch((fault: unknown) => globalThis.reportError(fault));
    }, milliseconds);
  }
}

/** Lets one tab at a time do something; browsers without locks have each tab do it. */
const aloneAmongTabs =
  (name: string) =>
  async <T>(work: () => Promise<T>, waits: boolean): Promise<T | undefined> => {
    const locks = (navigator as { readonly locks?: LockManager }).locks;
    if (!locks) return work();
    return locks.request(name, waits ? {} : { ifAvailable: true }, (lock) => (lock ? work() : Promise.resolve(undefined))) as Promise<
      T | undefined
    >;
  };

/** What was told already: a notice that was put away does not come back for the same reason. */
const told = { link: '', meetings: '' };

function tell(board: NoticeBoard, { link, meetings }: SharingState): void {
  const show = () => (globalThis.location.hash = '#/notebook?share=1');
  const reason = link?.is === 'stopped' || link?.is === 'waiting' ? linkWords(link) : '';
  if (reason !== told.link) {
    if (reason === '') board.withdraw('folder');
    else board.post({ id: 'folder', text: reason, offer: 'See to it', taken: show });
  }
  const met = meetings.map(({ path, copy = '' }) => `${path} ${copy}`).join('\n');
  if (met !== told.meetings) {
    if (met === '') board.withdraw('meetings');
    else board.post({ id: 'meetings', text: meetingsNotice(meetings.length), offer: 'Look at them side by side', taken: show });
  }
  Object.assign(told, { link: reason, meetings: met });
}
