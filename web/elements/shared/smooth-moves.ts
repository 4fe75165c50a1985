import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** True where the reader asked for stillness. */
export const wantsStillness = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

/** Lets the pieces of an element glide to their new places when an update moves them. Does nothing for a reader who wants stillness. */
export class SmoothMoves implements ReactiveController {
  #before = new Map<string, DOMRect>();

  /**
   * @param host the element; hand `this`.
   * @param pieces the elements that may move, by a key that stays theirs.
   * @param milliseconds how long a move takes.
   */
  constructor(
    host: ReactiveControllerHost,
    private readonly pieces: () => ReadonlyMap<string, HTMLElement>,
    private readonly milliseconds = 160,
  ) {
    host.addController(this);
  }

  hostUpdate(): void {
    this.#before = wantsStillness() ? new Map() : new Map([...this.pieces()].map(([key, piece]) => [key, piece.getBoundingClientRect()]));
  }

  hostUpdated(): void {
    if (this.#before.size === 0) return;
    for (const [key, piece] of this.pieces()) {
      const was = this.#before.get(key);
      if (!was) continue;
      const now = piece.getBoundingClientRect();
      const [dx, dy] = [was.left - now.left, was.top - now.top];
      if (dx === 0 && dy === 0) continue;
      piece.animate([{ transform: `translate(${dx}px, ${dy}px)` }, { transform: 'none' }], {
        duration: this.milliseconds,
        easing: 'ease-out',
      });
    }
  }
}
