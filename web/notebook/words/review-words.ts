import type { Skipped } from '../import/found-files.ts';
import { counted } from './counted.ts';

/** Why a notebook at an address could not be opened for review, and what helps. */
export type ReviewFailure = 'elsewhere' | 'missing' | 'unreachable' | 'no-list' | 'no-zip';

/** What a reviewer reads who opened an address that leads to no notebook. */
export const reviewFailureWords = (address: string): Readonly<Record<ReviewFailure, string>> => ({
  elsewhere: `“${address}” lies on another site. This page asks no other site for anything: read the notebook in as a zip or a folder instead.`,
  missing: `No notebook lies at “${address}”. Ask who sent it for the address again, or read the notebook in as a zip or a folder.`,
  unreachable: `“${address}” could not be fetched. Reload the page to try again; what was reviewed here before is as it was.`,
  'no-list': `What lies at “${address}” is no list of a notebook’s files. It reads {"files": [{"path": "…"}]}; the command “tenterground list FOLDER” writes it.`,
  'no-zip': `What lies at “${address}” is no zip that can be read.`,
});

/** The files of a published notebook that did not come, and which; empty where all did. */
export function unreadWords(skipped: readonly Skipped[], endedEarly: boolean): string {
  if (endedEarly) return 'The notebook did not come whole: the browser could not keep all of it. Free some space, then reload the page.';
  if (skipped.length === 0) return '';
  const [some, rest] = [skipped.slice(0, 5), skipped.length - 5];
  const names = some.map(({ path }) => path).join(', ');
  return `${counted(skipped.length, 'file')} of the notebook could not be read: ${names}${rest > 0 ? ` and ${rest} more` : ''}.`;
}
