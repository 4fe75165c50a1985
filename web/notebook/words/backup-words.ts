import type { BackupDue } from '../backup.ts';
import { counted } from './counted.ts';

/** What waits for an export, in a sentence. The date as its reader writes dates. */
export function backupWords({ notes, exportedAt }: BackupDue): string {
  if (exportedAt === undefined) return `${counted(notes, 'note')} of this notebook ${notes === 1 ? 'was' : 'were'} never exported.`;
  const day = new Date(exportedAt).toLocaleDateString(undefined, { dateStyle: 'long' });
  // Only deletions, photos or spectra: they count as changes, and there is no note to count.
  if (notes === 0) return `The notebook changed since the last export on ${day}.`;
  return `${counted(notes, 'note')} changed since the last export on ${day}.`;
}
