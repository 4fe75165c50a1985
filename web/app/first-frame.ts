/** The parts of a page that tell when it shows something. */
export interface FramedPage {
  readonly document: Pick<Document, 'visibilityState' | 'addEventListener'>;
  requestAnimationFrame(callback: () => void): unknown;
  setTimeout(callback: () => void, milliseconds: number): unknown;
}

/** A page that is shown and still has no frame by then has something else to wait for. Our choice, in milliseconds. */
const LONGEST = 1000;

/** Resolves once the page has made its first frame; at once, or as soon as it is hidden, in a tab that has no frames. */
export const firstFrame = (page: FramedPage): Promise<void> =>
  new Promise((resolve) => {
    const unlessShown = () => page.document.visibilityState === 'hidden' && resolve();
    page.document.addEventListener('visibilitychange', unlessShown);
    unlessShown();
    page.requestAnimationFrame(() => page.requestAnimationFrame(() => resolve()));
    page.setTimeout(resolve, LONGEST);
  });
