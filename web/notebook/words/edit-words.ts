import type { SaveOutcome } from '../ports-writing.ts';
import { storeFailureWords } from './save-words.ts';

/** What became of an edit that was to be saved; '' when it was. */
export function editOutcomeText(outcome: SaveOutcome | undefined): string {
  switch (outcome?.is) {
    case 'saved':
      return '';
    case 'conflict':
      return 'Not saved: the note was changed elsewhere meanwhile, in another tab perhaps. Look at it again, then write once more.';
    case 'taken':
      return 'Not saved: there is a note of that name already.';
    case 'failed':
      return storeFailureWords[outcome.why];
    case undefined:
      return 'Nothing here keeps notes, so this cannot be saved.';
  }
}
