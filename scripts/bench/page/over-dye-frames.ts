/** Runs in the browser, in the page and in its worker: how even the page's frames stay while the worker looks for over-dyes. */
import type { Lab } from '../../../web/domain/colour/lab.ts';
import { within } from '../over-dye-pairs.ts';

const ENUMERATIONS = 5;

/** What a page saw for a while. */
interface Seen {
  /** Milliseconds between one frame and the next at most. */
  readonly longestGap: number;
  /** Tasks of the page that took more than 50 ms. */
  readonly longTasks: number;
  readonly frames: number;
}

/** Draws a frame after the other until something is done. */
async function watch(done: Promise<unknown>): Promise<Seen> {
  const mark = document.body.appendChild(document.createElement('p'));
  let longTasks = 0;
  const observer = new PerformanceObserver((list) => (longTasks += list.getEntries().length));
  observer.observe({ type: 'longtask' });
  let over = false;
  void done.then(() => (over = true));
  const frame = () => new Promise<number>((resolve) => requestAnimationFrame(() => resolve(performance.now())));
  let [last, longestGap, frames] = [await frame(), 0, 0];
  while (!over) {
    const now = await frame();
    longestGap = Math.max(longestGap, now - last);
    last = now;
    mark.textContent = String((frames += 1));
  }
  longTasks += observer.takeRecords().length;
  observer.disconnect();
  mark.remove();
  return { longestGap, longTasks, frames };
}

function enumerate(target: Lab, limit: number): number {
  let found = 0;
  for (let turn = 0; turn < ENUMERATIONS; turn += 1) found = within(target, limit).length;
  return found;
}

function inPage(): void {
  const worker = new Worker('/page.js', { type: 'module' });
  const heard = () => new Promise<number>((resolve) => worker.addEventListener('message', ({ data }) => resolve(data), { once: true }));
  Object.assign(globalThis, {
    overDyeFrames: {
      /** How many pairs the worker found, how long that took, and what the page saw meanwhile. */
      working: async (target: Lab, limit: number) => {
        const start = performance.now();
        const found = heard();
        worker.postMessage({ target, limit });
        const seen = await watch(found);
        return { ...seen, found: await found, took: performance.now() - start };
      },
      /** The same work in the page itself: what the worker spares it. */
      inPage: (target: Lab, limit: number) =>
        watch(new Promise<void>((resolve) => setTimeout(() => (enumerate(target, limit), resolve()), 100))),
      idle: (milliseconds: number) => watch(new Promise((resolve) => setTimeout(resolve, milliseconds))),
    },
  });
}

function inWorker(): void {
  globalThis.addEventListener('message', ({ data: { target, limit } }: MessageEvent<{ target: Lab; limit: number }>) => {
    globalThis.postMessage(enumerate(target, limit));
  });
}

if ('document' in globalThis) inPage();
else inWorker();
