/** What a page can hear of its own offline copy. */
export interface OfflineEvents {
  /** Everything needed is on this machine. */
  readonly ready?: () => void;
  /** A new version lies ready; nothing changes until `takeOver`. */
  readonly updateReady?: (takeOver: () => void) => void;
  /** Another tab took the new version over; this one goes on with the files it has until it is loaded again. */
  readonly takenOver?: () => void;
}

/** Asked for at most this often, in milliseconds, when a reader comes back to the page. Our choice: an hour. */
const ASK_EVERY = 60 * 60 * 1000;

/**
 * Follows the site's service worker, and says when a new version is there. It never changes a page that is open.
 *
 * @param registering how the page registered it; `scripts-policy.ts` does.
 * @param reload how to load the page again, once its reader has asked for the new version.
 * @error a browser without service workers, or one that refuses, leaves the page as it is: it then needs the network.
 */
export async function keepOffline(
  container: ServiceWorkerContainer | undefined,
  registering: (container: ServiceWorkerContainer) => Promise<ServiceWorkerRegistration>,
  reload: () => void,
  events: OfflineEvents,
): Promise<ServiceWorkerRegistration | undefined> {
  const registration = container && (await registering(container).catch(() => undefined));
  if (!container || !registration) return undefined;
  let isAsked = false;
  let isFirst = !container.controller;

  const announce = (worker: ServiceWorker) => {
    events.updateReady?.(() => {
      isAsked = true;
      worker.postMessage('take-over');
    });
  };
  container.addEventListener('controllerchange', () => {
    if (isAsked) reload();
    else if (!isFirst) events.takenOver?.();
    isFirst = false;
  });
  const follow = (worker: ServiceWorker) => {
    worker.addEventListener('statechange', () => {
      if (worker.state === 'installed' && registration.active) announce(worker);
      if (worker.state === 'activated') events.ready?.();
    });
  };
  if (registration.installing) follow(registration.installing);
  if (registration.waiting && registration.active) announce(registration.waiting);
  if (registration.active && !registration.installing) events.ready?.();
  registration.addEventListener('updatefound', () => {
    if (registration.installing) follow(registration.installing);
  });
  return registration;
}

/** Looks for a new version whenever a reader comes back to the page, but not at every glance. */
export function lookForUpdates(registration: ServiceWorkerRegistration, page: Document, now: () => number): void {
  let asked = now();
  page.addEventListener('visibilitychange', () => {
    if (page.visibilityState !== 'visible' || now() - asked < ASK_EVERY) return;
    asked = now();
    // Without a network there is no news, and nothing to say about it.
    registration.update().catch(() => undefined);
  });
}
