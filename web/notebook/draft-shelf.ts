import { type Draft, isDirty } from './draft.ts';

/** Where drafts outlast the page: one text, written whole. */
export interface DraftDrawer {
  /** What was written last; '' where there is nothing. */
  readonly read: () => string;
  readonly write: (text: string) => void;
}

/** A draft as it lies in a drawer: what was written, and the text it began with. */
type LaidDraft = readonly [place: string, draft: Pick<Draft, 'path' | 'base' | 'isNew' | 'text'>, first: string];

/** Drafts that were left without being saved, by the address they are written at: going away loses nothing. */
export class DraftShelf {
  readonly #drafts: Map<string, Draft>;
  readonly #drawer: DraftDrawer | undefined;

  /** @param drawer where drafts lie until the next page, which opens with them. */
  constructor(drawer?: DraftDrawer) {
    this.#drawer = drawer;
    this.#drafts = new Map(drawer ? taken(drawer.read()) : []);
  }

  /** Keeps a draft while there is something to save in it. */
  keep(place: string, draft: Draft): void {
    if (isWritten(draft)) this.#drafts.set(place, draft);
    else this.#drafts.delete(place);
    this.#lay();
  }

  /** The draft left there. */
  at(place: string): Draft | undefined {
    return this.#drafts.get(place);
  }

  drop(place: string): void {
    this.#drafts.delete(place);
    this.#lay();
  }

  /** Whether anything would be lost with the page. */
  get holdsUnsaved(): boolean {
    return this.#drafts.size > 0;
  }

  #lay(): void {
    const laid = [...this.#drafts].map(([place, draft]): LaidDraft => {
      const { path, base, isNew, text, past } = draft;
      return [place, { path, base, isNew, text }, (isNew && past[0]?.text) || base];
    });
    this.#drawer?.write(JSON.stringify(laid));
  }
}

/** A new note that nobody has written in yet holds nothing. */
const isWritten = (draft: Draft): boolean => isDirty(draft) && (!draft.isNew || draft.past.length > 0);

/** Drafts as they were laid, each one step from its beginning. */
function taken(text: string): readonly (readonly [string, Draft])[] {
  try {
    const laid = JSON.parse(text) as readonly LaidDraft[];
    return laid.map(([place, draft, first]) => [place, { ...draft, past: [{ text: first, label: 'before' }], future: [] }]);
  } catch {
    // Nothing was laid there, or not by us.
    return [];
  }
}
