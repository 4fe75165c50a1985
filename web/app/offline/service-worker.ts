/**
 * Answers for the site, so that after the first visit it needs no network. It knows nothing of notes.
 *
 * The build puts the list of its files and a hash of them in place of the two constants.
 */
interface Lasting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Lasting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Site {
  readonly location: Location;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', listener: (event: Lasting) => void): void;
  addEventListener(type: 'fetch', listener: (event: Fetching) => void): void;
  addEventListener(type: 'message', listener: (event: Lasting & { readonly data: unknown }) => void): void;
}
declare const BUILT_FILES: readonly string[];
declare const BUILT_HASH: string;

const site = self as unknown as Site;
const PREFIX = 'tenterground-';
const CACHE = PREFIX + BUILT_HASH;

site.addEventListener('install', (event) => {
  const requests = BUILT_FILES.map((path) => new Request(path, { cache: 'no-cache' }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(requests)));
});

site.addEventListener('activate', (event) => {
  event.waitUntil(dropOldCaches().then(() => site.clients.claim()));
});

// A new version waits until a reader asks for it: it would take over every tab, also one that is being written in.
site.addEventListener('message', (event) => {
  if (event.data === 'take-over') event.waitUntil(site.skipWaiting());
});

site.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method === 'GET' && new URL(request.url).origin === site.location.origin) event.respondWith(answer(request));
});

/** What was built first; then what the version before had, for tabs that still run it; then the network. */
async function answer(request: Request): Promise<Response> {
  const options = { ignoreSearch: true, ignoreVary: true };
  const wanted = request.mode === 'navigate' ? '/' : request;
  return (await caches.match(wanted, { ...options, cacheName: CACHE })) ?? (await caches.match(wanted, options)) ?? fetch(request);
}

/** Keeps this version's files and those of the one before; caches are listed in the order they were made. */
async function dropOldCaches(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(PREFIX));
  const kept = new Set([CACHE, names.filter((name) => name !== CACHE).at(-1)]);
  await Promise.all(names.filter((name) => !kept.has(name)).map((name) => caches.delete(name)));
}
