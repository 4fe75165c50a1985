import type { StoreFailure } from '../../domain/ports.ts';
import type { SkipReason } from '../import/found-files.ts';
import { counted } from './counted.ts';

/** Why a file was not read in, after its name. */
export const skipWords = {
  climbs: 'its name leads out of the folder',
  absolute: 'its name begins at the root of a disk',
  drive: 'its name names a drive',
  backslash: 'its name has a backslash in it',
  'control-character': 'its name has a character in it that cannot be seen',
  'odd-part': 'its name has an empty part',
  'name-too-long': 'its name is longer than 1,024 characters',
  twice: 'its name stands there twice; the first one was read',
  link: 'it is only a link to another file',
  encrypted: 'it is locked with a password',
  'packing-unknown': 'it is packed in a way this page does not know',
  bomb: 'it unpacks to far more than any note or photo does',
  damaged: 'it is damaged',
  'too-large': 'it is larger than 64 MB',
  'too-large-together': 'all that came before it fills the 1 GB that are read at once',
  unreadable: 'the browser could not read it',
  'kept-mine': 'the notebook has another text under its name, which was kept',
  'changed-meanwhile': 'another tab changed it meanwhile',
} as const satisfies Record<SkipReason, string>;

/** Why an import ended early, and what helps. */
export const endedWords = {
  quota: 'The browser gives this notebook no more room. Free some space, then read the rest in again.',
  blocked: 'Another tab holds an older state of the notebook open. Close it, then read the rest in again.',
  terminated: 'The browser closed the notebook. Reload the page, then read the rest in again.',
  'newer-version': 'A newer version of this page has taken the notebook over. Reload the page, then read the rest in again.',
  closed: 'The notebook was closed. Reload the page, then read the rest in again.',
  unavailable: 'The browser did not keep the rest, and does not say why. Read it in again.',
  stopped: 'Stopped, as you asked.',
} as const satisfies Record<StoreFailure | 'stopped', string>;

/** Why a zip cannot be opened at all. */
export const zipWords = {
  'not-a-zip': () => 'This file is no zip. Nothing was read.',
  unreadable: () => 'The browser could not read this file; perhaps it is too large for it. Nothing was read.',
  damaged: () => 'This zip is damaged: its list of files does not agree with what is in it. Nothing was read.',
  'too-many': (count: number) =>
    `This zip holds ${counted(count, 'file')}, more than the 10,000 that are read without asking. Nothing was read.`,
} as const;

const NOTHING_TAKEN = 'Until then the demonstration is shown, and nothing can be saved.';

/** Why the notebook could not be opened, and what helps. */
export const openFailureWords = {
  quota: `The browser has no room left to open the notebook. Free some space, then reload the page. ${NOTHING_TAKEN}`,
  blocked: `Another tab still has this notebook open in an older version of the page. Your notes are there. Close that tab, then reload this one. ${NOTHING_TAKEN}`,
  terminated: `The browser closed the notebook while it was being opened. Reload the page. ${NOTHING_TAKEN}`,
  'newer-version': `This notebook was last kept by a newer version of the page. Reload until the newer version comes; nothing was changed. ${NOTHING_TAKEN}`,
  closed: `The notebook was closed. Reload the page. ${NOTHING_TAKEN}`,
  unavailable:
    'The browser keeps nothing for this page, perhaps because the window is a private one. What you write is lost when you leave; export it before.',
} as const satisfies Record<StoreFailure, string>;

/** How an open notebook ended under its reader, and what helps. */
export const endedNowWords = {
  terminated:
    'The browser took away the notebook it kept: its data were deleted, here or in another tab, or the disk failed. Nothing more can be saved. What this page shows is still at hand, its photos are not: export it before you leave, then reload and read it in again.',
  'newer-version':
    'A newer version of this page, in another tab, has taken the notebook over. Your notes are there. Nothing more can be saved here: copy what you are writing, then reload the page.',
} as const satisfies Record<'terminated' | 'newer-version', string>;

/** What is offered once the data are gone. */
export const RESCUE_OFFER = 'Export what is at hand';

/** What the next start says of an import that was cut off. */
export const unfinishedWords = (from: string, planned: number, missing: number): string =>
  `Reading in “${from}” was cut off: ${(planned - missing).toLocaleString()} of ${counted(planned, 'file')} are in the notebook, ${missing.toLocaleString()} are missing. Read it in again; what is there already stays as it is.`;
