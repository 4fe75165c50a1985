import type { Instant } from './ports.ts';
import type { Result } from './result.ts';

/**
 * Why a folder could not be read or written.
 * - `no-permission`: its reader, or the browser, took the permission back.
 * - `gone`: the folder is not where it was, as a stick that was pulled out.
 * - `unreadable`: the system refused, and does not say more.
 */
export type FolderFailure = 'no-permission' | 'gone' | 'unreadable';

/** What a folder says of a file without its being read. */
export interface FolderStamp {
  /** Path inside the folder, `/` between parts. */
  readonly path: string;
  readonly byteCount: number;
  readonly modifiedAt: Instant;
}

/** A file of a folder, with what the folder said of it when it was read. */
export interface FolderFile extends FolderStamp {
  readonly bytes: Uint8Array;
}

/** A folder on the reader's machine that the notebook is kept alike with. */
export interface FolderPort {
  /** Its own name, without what is above it. */
  readonly name: string;
  /** Whether it may be read and written: `ask` where its reader has to say so again. */
  access(): Promise<'granted' | 'ask' | 'denied'>;
  /** Asks for permission; browsers only let this be done at a click. */
  askAccess(): Promise<boolean>;
  /** Every file that is not hidden, in order of path. */
  list(): Promise<Result<readonly FolderStamp[], FolderFailure>>;
  read(path: string): Promise<Result<FolderFile, FolderFailure | 'missing'>>;
  /** Writes a file whole or not at all, with the folders it lies in. */
  write(path: string, bytes: Uint8Array): Promise<Result<FolderStamp, FolderFailure>>;
  /** Takes a file out; one that is not there is out already. */
  remove(path: string): Promise<Result<void, FolderFailure>>;
}
