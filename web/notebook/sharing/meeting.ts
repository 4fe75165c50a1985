import type { FolderStamp } from '../../domain/folder-port.ts';
import type { NoteMerge } from '../../domain/merge/note-merge.ts';
import type { Version } from '../../domain/ports.ts';

/**
 * Two versions of one file that have met and that only its reader can bring together.
 * - `folder`: changed in the notebook and in the linked folder.
 * - `copy`: a second file of the note lies beside it.
 * - `marks`: version control marked in the file itself what it could not merge.
 */
export interface Meeting {
  readonly from: 'folder' | 'copy' | 'marks';
  readonly path: string;
  /** The other file, for a copy. */
  readonly copy?: string;
  /** The two texts brought as near as they come; absent for a file that is no note, of which one is taken whole or both are kept. */
  readonly merge?: NoteMerge;
  /** What the notebook has. */
  readonly version: Version;
  /** What lies on the other side. */
  readonly theirs: Uint8Array;
  /** The other side's state as it was seen: of the folder's file, or of the second file. */
  readonly stamp?: FolderStamp;
  readonly copyVersion?: Version;
}

/** What a reader decided: the note's text, or which file to take. */
export type Settlement =
  { readonly is: 'text'; readonly text: string } | { readonly is: 'file'; readonly take: 'mine' | 'theirs' | 'both' };

/** What became of it. `changed-meanwhile`: one side is no longer what the reader saw; they will be shown it anew. */
export type SettleOutcome = 'settled' | 'changed-meanwhile' | 'not-written';

/** One name for a meeting, the same as long as it is about the same files. */
export const meetingId = ({ from, path, copy }: Meeting): string => [from, path, ...(copy === undefined ? [] : [copy])].join(' ');
