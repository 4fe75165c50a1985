import { TgApp } from '../elements/app/tg-app.ts';
import { TgNotices } from '../elements/notices/tg-notices.ts';
import { Backup } from '../notebook/backup.ts';
import type { NotebookFile } from '../notebook/notebook.ts';
import { endedNowWords, openFailureWords, RESCUE_OFFER, unfinishedWords } from '../notebook/words/import-words.ts';
import { updateWords } from '../notebook/words/update-words.ts';
import searchAddress from '../search/worker/entry.ts?worker&url';
import { askToPersist } from '../store/storage-room.ts';
import { beginNotebook } from './beginning.ts';
import { engineOver } from './engine-wire.ts';
import engineAddress from './engine-worker.ts?worker&url';
import { answerFinding, SearchingFinder } from './finding.ts';
import { NoticeBoard } from './notice-board.ts';
import { keepOffline, lookForUpdates } from './offline/offline.ts';
import { registerServiceWorker, startWorker } from './scripts-policy.ts';
import { reviewedDatabase, startNotebook } from './start-notebook.ts';
import { takeOut } from './take-out.ts';
import { wirePot } from './wire-pot.ts';
import { answerWriting } from './writing.ts';

/** The demonstration notebook, as the site carries it. */
async function demonstration(): Promise<readonly NotebookFile[]> {
  const reply = await fetch('/demo.json');
  const { files } = (await reply.json()) as { readonly files: readonly { readonly path: string; readonly text: string }[] };
  const encoder = new TextEncoder();
  return files.map(({ path, text }) => ({ path, bytes: encoder.encode(text) }));
}

/** The day here: Sweden writes days as ISO 8601 does. */
const today = (): string => new Date().toLocaleDateString('sv');

/** Opens the notebook, shows it, and answers what the page wants of it. */
async function open(app: TgApp, board: NoticeBoard): Promise<void> {
  const review = new URLSearchParams(globalThis.location.search).get('review');
  const reviewing = review !== null;
  app.reviewing = reviewing;
  const { keeper, engine, failure, unfinished } = await (reviewing
    ? startNotebook(engineOver(startWorker(engineAddress)), () => Promise.resolve([]), reviewedDatabase(review))
    : startNotebook(engineOver(startWorker(engineAddress)), demonstration));
  const show = async () => app.opened(await engine.size(), keeper.isKept);
  app.engine = engine;
  if (review !== null && review !== '') {
    const { openPublished } = await import('./open-published.ts');
    const trouble = await openPublished(keeper, review, globalThis.location.href);
    if (trouble !== '') board.post({ id: 'review', text: trouble });
  }
  await show();

  if (failure) board.post({ id: 'failure', text: openFailureWords[failure] });
  for (const { importId, from, planned, missing } of unfinished) {
    const forget = () => void keeper.store.closeImport(importId);
    const readAgain = () => {
      forget();
      globalThis.location.hash = '#/notebook?read-in=1';
    };
    const text = unfinishedWords(from, planned, missing.length);
    board.post({ id: importId, text, offer: 'Read it in again', taken: readAgain, putAway: forget });
  }

  // Remarks are packed, which the first view needs nothing of.
  const { answerRemarks, openForReview } = await import('./remarking.ts');
  const backup = new Backup(keeper.store, () => Date.now());
  const remind = async () => (app.backup = keeper.isKept && !reviewing ? await backup.due() : undefined);

  app.addEventListener('tg-begin-request', (event) => {
    const begun = beginNotebook(keeper, event.detail, demonstration);
    event.respondWith(begun);
    void begun.then(show);
  });
  app.addEventListener('tg-lay-beside-request', (event) => {
    const laid = import('./lay-beside.ts').then(({ layBeside }) => layBeside(engine, event.detail));
    event.respondWith(laid);
    void laid.then((beside) => (app.beside = beside));
  });
  app.addEventListener('tg-backup-days', (event) => void backup.remindAfter(event.detail.days).then(remind));
  app.addEventListener('tg-read-in-request', (event) => {
    const { found, ...options } = event.detail;
    event.respondWith(reviewing ? openForReview(keeper, found, options) : keeper.importFiles(found, options));
  });
  app.addEventListener('tg-take-out-request', (event) => {
    const [wanted, began] = [event.detail, Date.now()];
    const taken = takeOut(keeper, wanted, today());
    event.respondWith(taken);
    void taken.then(async ({ ok }) => {
      if (!ok || wanted.what !== 'notebook' || !keeper.isKept) return;
      await backup.exported(began);
      await remind();
    });
  });
  // A notebook that is reviewed takes remarks and nothing else.
  if (!reviewing) {
    answerWriting(app, keeper);
    wirePot(app, keeper, engine, today);
  }
  answerRemarks(app, keeper, { now: () => Date.now(), newId: () => crypto.randomUUID() });
  const finder = new SearchingFinder(
    engine,
    () => startWorker(searchAddress),
    () => (keeper.isKept ? keeper.store : undefined),
  );
  answerFinding(app, finder);
  const tellEnd = (reason: 'terminated' | 'newer-version') => {
    const rescue = async () => {
      const taken = await takeOut(keeper, { what: 'notebook' }, today());
      if (taken.ok) (await import('../elements/take-out/save-file.ts')).saveFile(taken.value.name, taken.value.file);
      tellEnd(reason);
    };
    const offer = reason === 'terminated' && { offer: RESCUE_OFFER, taken: () => void rescue() };
    board.post({ id: 'failure', text: endedNowWords[reason], ...offer });
  };
  keeper.subscribe((event) => {
    if (event.type === 'ended') tellEnd(event.reason);
    else if (event.type === 'changed') {
      void finder.follow(event.paths);
      void backup.changed().then(remind);
      void show();
    } else {
      // What was shown until now may have made room for another notebook.
      void finder.forget();
      // Asked only now: some browsers ask their reader, who by now has something to keep.
      void askToPersist();
    }
  });
  await remind();
  if (!reviewing) (await import('./wire-sharing.ts')).wireSharing(app, keeper, board);
}

/** Keeps the site itself on this machine, and says when a newer one lies ready. */
async function stayOffline(board: NoticeBoard): Promise<void> {
  const container = (navigator as { readonly serviceWorker?: ServiceWorkerContainer }).serviceWorker;
  const reload = () => globalThis.location.reload();
  const registration = await keepOffline(container, registerServiceWorker, reload, {
    updateReady: (taken) => board.post({ id: 'update', ...updateWords.ready, taken }),
    takenOver: () => board.post({ id: 'update', ...updateWords.takenOver, taken: reload }),
  });
  if (registration) lookForUpdates(registration, document, () => Date.now());
}

const app = document.querySelector('tg-app');
if (app instanceof TgApp) {
  const notices = new TgNotices();
  app.before(notices);
  const board = new NoticeBoard(notices);
  open(app, board).catch((fault: unknown) => app.failed(fault instanceof Error ? fault.message : String(fault)));
  // The dev server's files change under a copy.
  if (import.meta.env.PROD) void stayOffline(board);
}
