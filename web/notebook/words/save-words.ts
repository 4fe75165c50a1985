import type { StoreFailure } from '../../domain/ports.ts';
import type { SpliceError } from '../../domain/note/splice.ts';

/** Why nothing could be saved, and what to do. */
export const storeFailureWords = {
  quota: 'Not saved: the browser gives this notebook no more room. Export it, then free some space.',
  blocked: 'Not saved: another tab holds an older state of the notebook open. Close it and save again.',
  terminated: 'Not saved: the browser closed the notebook. Copy your text, then reload the page.',
  'newer-version': 'Not saved: the notebook was made by a newer version of this page. Copy your text, then reload.',
  closed: 'Not saved: the notebook is closed. Copy your text, then reload the page.',
  unavailable: 'Not saved: the browser keeps nothing for this page, perhaps because the window is a private one.',
} as const satisfies Record<StoreFailure, string>;

/** Why a value could not be put into the note through the form. */
export const spliceErrorWords = {
  'front-matter-broken': 'The front matter cannot be read as it stands. Mend it in the text first.',
  'path-unknown': 'This value is repeated from elsewhere in the note, or stands in a shape the form cannot follow. Change it in the text.',
  'value-unwritable': 'This cannot be written there.',
  'not-safe': 'Written here, it would change other lines too. Change it in the text.',
} as const satisfies Record<SpliceError, string>;

/** Why a picked colour could not be written into the note. */
export const pickedColourWords = (error: SpliceError | 'no-colour', typed: string): string =>
  error === 'no-colour'
    ? `No numbers can be made of “${typed}”. Write a hex or CSS colour, or L*, a*, b* such as 45, 45, 28 D65/10.`
    : spliceErrorWords[error];
