import { noteId } from '../../domain/note/note.ts';
import { whereNamed } from '../../domain/naming/where-named.ts';
import type { Notebook } from '../notebook.ts';
import { inSentence, titleOf } from '../words/claim-line.ts';

/** A note that names a dyestuff, for a plain list. */
export interface NamedNoteView {
  readonly id: string;
  readonly title: string;
  readonly kind: string;
  /** '' when it is certain; else what is in doubt. */
  readonly doubt: string;
  readonly places: readonly NamedPlaceView[];
}

/** One place in a note, with the words around the name. */
export interface NamedPlaceView {
  readonly line: number;
  readonly before: string;
  readonly name: string;
  readonly after: string;
}

/** Places shown for one note; the rest is in the note itself. */
const MOST_PLACES = 3;

/** Where a dyestuff is named, in every note but its own. */
export function namingView({ base }: Notebook, id: string): readonly NamedNoteView[] {
  return whereNamed(base, noteId(id))
    .filter(({ own }) => !own)
    .map(({ note, reading, namings }) => {
      const candidates = [...new Set(namings.flatMap((one) => one.candidates))];
      const others = [...new Set(candidates.filter((one) => one.id !== id).map((one) => one.id))];
      const shared = others.map((one) => inSentence(base, one)).join(' or ');
      const doubts = {
        certain: '',
        ambiguous: shared === '' ? 'may mean another' : `may also mean ${shared}`,
        doubtful: 'perhaps no dyestuff is meant',
        'ruled-out':
          shared === '' ? 'not possible at the note’s place and date' : `not possible at the note’s place and date; rather ${shared}`,
      } as const;
      return {
        id: String(note.id),
        title: titleOf(base, note.id),
        kind: note.record.kind,
        doubt: doubts[reading],
        places: namings
          .slice(0, MOST_PLACES)
          .map(({ line, excerpt }) => ({ line, before: excerpt.before, name: excerpt.found, after: excerpt.after })),
      };
    });
}
