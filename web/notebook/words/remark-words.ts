import { counted } from './counted.ts';
import { storeFailureWords } from './save-words.ts';

/** What became of a remark, where it was not kept. */
export const remarkFailureWords = {
  ...storeFailureWords,
  unreadable:
    'Not kept: the file remarks.json of this notebook cannot be read as remarks. It was left as it is; look at it in a text editor.',
  'changed-meanwhile': 'Not kept: the remarks were changed meanwhile. Try once more.',
} as const;

/** What a file of remarks brought. */
export function readInWords(added: number, known: number, unread: number): string {
  const parts = [
    added === 0 ? 'Nothing new in it' : `${counted(added, 'remark')} came in`,
    known === 0 ? '' : `${counted(known, 'remark')} ${known === 1 ? 'was' : 'were'} here already`,
    unread === 0
      ? ''
      : `${unread === 1 ? '1 entry is' : `${unread.toLocaleString()} entries are`} no remarks and ${unread === 1 ? 'was' : 'were'} left out`,
  ];
  return `${parts.filter((part) => part !== '').join('; ')}. Each stands under its note.`;
}

/** Why a file is no file of remarks. */
export const refusedWords = {
  'not-remarks': 'This is no file of remarks. Nothing was changed.',
  newer: 'These remarks were written by a newer version of this page. Reload the page, then read them in again.',
} as const;
