import type { RoundFailure, SyncRound } from '../sharing/folder-sync.ts';
import type { Meeting, SettleOutcome } from '../sharing/meeting.ts';
import type { LinkState } from '../sharing/sharing-state.ts';
import { counted } from './counted.ts';

/** Why the notebook and its folder are not kept alike just now, and what helps. */
export const linkFailureWords = {
  'no-permission':
    'The browser no longer lets this page into the folder. Your notebook goes on in this browser; what changes meanwhile goes to the folder once you allow it again.',
  gone: 'The folder is not where it was. Your notebook goes on in this browser; put the folder back, or link another.',
  unreadable: 'The system would not let the folder be read or written. Your notebook goes on in this browser; another try comes by itself.',
  emptied:
    'The folder is empty all at once. Nothing was taken out of the notebook. Put the files back; or unlink the folder, if you meant to empty it.',
  quota: 'The browser gives this notebook no more room, so the rest of the folder was not taken in. Free some space, then look again.',
  blocked: 'Another tab holds an older state of the notebook open. Close it, then look again.',
  terminated: 'The browser closed the notebook. Reload the page.',
  'newer-version': 'The notebook was made by a newer version of this page. Reload the page.',
  closed: 'The notebook is closed. Reload the page.',
  unavailable: 'The browser keeps nothing for this page, so the folder cannot be kept alike with it.',
} as const satisfies Record<RoundFailure, string>;

/** What a look at the folder did; empty where it did nothing. */
export function roundWords({ takenIn, writtenOut, merged, passedOver }: SyncRound): string {
  const parts = [
    takenIn.length > 0 ? `${counted(takenIn.length, 'change')} came in from the folder` : '',
    writtenOut.length > 0 ? `${counted(writtenOut.length, 'change')} went out to it` : '',
    merged.length > 0 ? `changed on both sides and merged: ${merged.join(', ')}` : '',
    passedOver.length > 0 ? `passed over, too large or with a name that cannot be kept: ${passedOver.join(', ')}` : '',
  ].filter((part) => part !== '');
  return parts.length === 0 ? '' : `${parts.join('; ')}.`.replace(/^./, (first) => first.toUpperCase());
}

/** How the notebook stands with its folder. */
export function linkWords({ name, is, why, progress }: LinkState): string {
  if (is === 'looking' && progress)
    return `Looking through “${name}”: ${progress.done.toLocaleString()} of ${counted(progress.of, 'file')}.`;
  if (is === 'looking') return `Looking through “${name}”.`;
  if (is === 'alike') return `Linked with “${name}”: what you save is written there, and what changes there comes in.`;
  if (is === 'waiting') return `Linked with “${name}”, but not allowed in yet: browsers ask again after a while.`;
  return linkFailureWords[why ?? 'unreadable'];
}

/** What has met, and how. */
export const meetingWords = {
  folder: () => 'Changed in this notebook and in the folder since they were last alike.',
  copy: (copy = '') =>
    `A second copy of this note lies beside it: ${copy}. When you decide, the copy goes and stays among the removed files.`,
  marks: () => 'Version control marked in this file what it could not merge.',
} as const satisfies Record<Meeting['from'], (copy?: string) => string>;

/** What the other version is called. */
export const otherSideWords = {
  folder: 'In the folder',
  copy: 'In the second copy',
  marks: 'On the other side',
} as const satisfies Record<Meeting['from'], string>;

/** What became of a decision. */
export const settleWords = {
  settled: 'Kept. Both versions stay among the earlier ones.',
  'changed-meanwhile': 'One of the two was changed meanwhile. Nothing was written; look at both again.',
  'not-written': 'It could not be written. Nothing is lost: both are as they were.',
} as const satisfies Record<SettleOutcome, string>;

/** The notice above the page. */
export const meetingsNotice = (count: number): string =>
  count === 1
    ? 'Two versions of one file have met, and the page cannot decide between them. Both are kept.'
    : `Two versions each of ${counted(count, 'file')} have met, and the page cannot decide between them. All are kept.`;
