/** One change to a notebook, as far as what other notes say may hang on it. */
export interface Change {
  /** Files whose note came, went or became another. */
  readonly files: readonly string[];
  /** Names, as they are compared, that may lead elsewhere now, or to a place or date of another kind. */
  readonly names: readonly string[];
}

/** Changes kept. Our choice: who is farther behind starts again, which takes no longer than to follow so many. */
const MOST_KEPT = 2000;

/** The latest changes to a notebook, for whoever keeps something up note by note. */
export class ChangeLog {
  readonly #kept: Change[] = [];
  #dropped = 0;

  /** How many changes there ever were. */
  get length(): number {
    return this.#dropped + this.#kept.length;
  }

  /** Writes a change down. */
  add(change: Change): void {
    this.#kept.push(change);
    if (this.#kept.length < 2 * MOST_KEPT) return;
    this.#kept.splice(0, MOST_KEPT);
    this.#dropped += MOST_KEPT;
  }

  /** The changes behind the first so many; undefined where some of them are not kept any more. */
  since(length: number): readonly Change[] | undefined {
    return length < this.#dropped ? undefined : this.#kept.slice(length - this.#dropped);
  }
}
