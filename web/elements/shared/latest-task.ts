/** Runs one piece of work after another and hands on only what the latest gave: an older answer never overtakes a newer. */
export class LatestTask<T> {
  #turn = 0;
  readonly #done: (value: T) => void;
  readonly #failed: (fault: unknown) => void;

  constructor(done: (value: T) => void, failed: (fault: unknown) => void = (fault) => globalThis.reportError(fault)) {
    this.#done = done;
    this.#failed = failed;
  }

  /** Takes new work; what ran before no longer counts. */
  run(work: Promise<T>): void {
    const turn = ++this.#turn;
    work.then(
      (value) => {
        if (turn === this.#turn) this.#done(value);
      },
      (fault: unknown) => {
        if (turn === this.#turn) this.#failed(fault);
      },
    );
  }
}
