import { expect, test } from 'vitest';
import { type FramedPage, firstFrame } from '../../web/app/first-frame.ts';

/** A page whose frames, changes of sight and timers come when the test says. */
class StillPage implements FramedPage {
  readonly document = Object.assign(new EventTarget(), { visibilityState: 'visible' as DocumentVisibilityState });
  readonly #waiting: (() => void)[] = [];
  readonly #timers: (() => void)[] = [];

  requestAnimationFrame(callback: () => void) {
    this.#waiting.push(callback);
  }
  setTimeout(callback: () => void) {
    this.#timers.push(callback);
  }
  frame() {
    for (const callback of this.#waiting.splice(0)) callback();
  }
  timeIsUp() {
    for (const callback of this.#timers.splice(0)) callback();
  }
  hide() {
    this.document.visibilityState = 'hidden';
    this.document.dispatchEvent(new Event('visibilitychange'));
  }
}

/** Whether the page may begin, as far as is known now. */
async function mayBegin(begun: Promise<void>): Promise<boolean> {
  let may = false;
  void begun.then(() => (may = true));
  // Whatever is settled has told its followers after two turns.
  await Promise.resolve();
  await Promise.resolve();
  return may;
}

test('the page begins with its second frame: then the first has been made', async () => {
  const page = new StillPage();
  const begun = firstFrame(page);
  expect(await mayBegin(begun)).toBe(false);
  page.frame();
  expect(await mayBegin(begun)).toBe(false);
  page.frame();
  expect(await mayBegin(begun)).toBe(true);
});

test('a tab opened in the background has no frames and begins at once', async () => {
  const page = new StillPage();
  page.hide();
  expect(await mayBegin(firstFrame(page))).toBe(true);
});

test('a tab that goes into the background before its first frame begins then', async () => {
  const page = new StillPage();
  const begun = firstFrame(page);
  page.frame();
  page.hide();
  expect(await mayBegin(begun)).toBe(true);
});

test('a page that is never painted begins all the same', async () => {
  const page = new StillPage();
  const begun = firstFrame(page);
  page.timeIsUp();
  expect(await mayBegin(begun)).toBe(true);
});
