import { type Draft, isDirty } from './draft.ts';

/** Drafts that were left without being saved, by the address they are written at: going away loses nothing. */
export class DraftShelf {
  readonly #drafts = new Map<string, Draft>();

  /** Keeps a draft while there is something to save in it. */
  keep(place: string, draft: Draft): void {
    if (isDirty(draft)) this.#drafts.set(place, draft);
    else this.#drafts.delete(place);
  }

  /** The draft left there. */
  at(place: string): Draft | undefined {
    return this.#drafts.get(place);
  }

  drop(place: string): void {
    this.#drafts.delete(place);
  }

  /** Whether anything would be lost with the page. */
  get holdsUnsaved(): boolean {
    return this.#drafts.size > 0;
  }
}
