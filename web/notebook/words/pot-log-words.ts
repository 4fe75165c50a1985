import type { EntryProblem } from '../pot-entry.ts';

/** What is done at the pot, as the buttons name it. */
export const POT_BUTTONS = {
  in: 'In',
  out: 'Out',
  dip: 'Dip',
  temperature: 'Temperature',
  pH: 'pH',
  'heat-off': 'Heat off',
  timer: 'Timer',
  photo: 'Photo',
  remark: 'Remark',
  deviation: 'Deviation',
} as const;

/** How far a pot is. */
export const potStateWords = { prepared: 'tags given out, nothing logged yet', 'under-way': 'under way', done: 'dyed' } as const;

/** What the copies of a skein are for; all share its code. */
export const COPY_WORDS = {
  skein: { name: 'skein', says: 'goes into the pot: on cloth or plastic that stands boiling, sewn or knotted on' },
  master: { name: 'master', says: 'kept dark, sealed, never shown' },
  working: { name: 'working', says: 'to compare and to measure' },
  display: { name: 'display', says: 'for the board' },
  strip: { name: 'strip', says: 'for tests of light, wash and rub' },
} as const;

/** What a typed or scanned code came to. */
export const codeFoundWords = {
  none: 'No skein of this notebook has this code. Look at the tag again: if one character is wrong, the check character at the end tells.',
  free: 'A sound code that no trial here has: perhaps it was given out on another machine. Bring that pot’s log in, or read that notebook in.',
  several: 'Several trials give this code to a skein. Codes are given once: look at both and change one.',
} as const;

/** What became of a log that was brought in. */
export const logInWords = {
  new: 'The pot is new here and was taken in with its log.',
  same: 'Everything in it was here already.',
  merged: 'Both logs are one now, in the order of their times. Both versions as they were stand among the note’s earlier versions.',
  differ:
    'The logs are one now. The two notes also say different things under some keys: yours stand, and the other version lies beside it to be compared.',
  beside: 'The two notes could not be made one without loss: the other version lies beside yours, to be compared.',
  'another-pot':
    'Two pots have the same number: they were given out on machines that could not ask each other. Both are kept, and nothing of either was changed; theirs has a number of its own here. Its tags still carry the same codes as yours.',
  'not-a-log': 'This file holds no trial note. A log leaves a phone as one file ending in .zip, .md or .txt.',
  failed: 'Nothing was written. Try once more.',
} as const;

/** Which codes to write on the tags of a pot whose codes were given twice. */
export const freeCodesText = (codes: readonly string[]): string =>
  codes.length === 0 ? '' : `Free, for its tags and its note: ${codes.join(', ')}.`;

/** How a log left this machine. */
export const handedOnWords = {
  shared: (name: string) => `Shared as ${name}.`,
  refused: (name: string) => `This browser does not share such a file: ${name} is among the downloads.`,
  saved: (name: string) => `${name} is among the downloads.`,
} as const;

/** Why an entry was not written. */
export const entryProblemWords = {
  impossible:
    'This cannot be: look at the figure. Temperatures lie between −5 and 110 °C, pH between 0 and 14, and what is weighed is above nothing.',
  'in-future': 'This time has not come yet. Give the time at which it happened.',
  empty: 'Nothing was written.',
  'note-broken': 'The note could not be added to without loss. Open it as text and mend its front matter; nothing was changed.',
} as const satisfies Record<EntryProblem, string>;
