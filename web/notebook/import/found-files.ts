import type { Instant } from '../../domain/ports.ts';
import type { Result } from '../../domain/result.ts';

/**
 * Why a file that was found is not read in.
 * - of its name: `climbs` (leads out of the folder), `absolute`, `drive` (names a drive), `backslash`, `control-character`,
 *   `odd-part` (an empty part or a lone dot), `name-too-long`, `twice` (the name stands there twice)
 * - of a zip: `link`, `encrypted`, `packing-unknown`, `bomb` (unpacks to far more than any text or photo does), `damaged`
 * - of its size: `too-large`, `too-large-together` (all that came before it fill the limit)
 * - `unreadable`: the browser could not read it
 * - of what is there already: `kept-mine`, `changed-meanwhile` (another tab wrote it during the import)
 */
export type SkipReason =
  | 'climbs'
  | 'absolute'
  | 'drive'
  | 'backslash'
  | 'control-character'
  | 'odd-part'
  | 'name-too-long'
  | 'twice'
  | 'link'
  | 'encrypted'
  | 'packing-unknown'
  | 'bomb'
  | 'damaged'
  | 'too-large'
  | 'too-large-together'
  | 'unreadable'
  | 'kept-mine'
  | 'changed-meanwhile';

/** A file in a folder or zip, not yet read. */
export interface FoundFile {
  /** As the folder or zip has it. */
  readonly path: string;
  readonly byteCount: number;
  readonly modifiedAt?: Instant;
  /** Why it will not be read, where that is known beforehand. */
  readonly fault?: SkipReason;
  read(): Promise<Result<Uint8Array, SkipReason>>;
}

/** What a folder or zip holds. */
export interface FoundFiles {
  /** Its name, as its reader knows it. */
  readonly from: string;
  readonly files: readonly FoundFile[];
  /** Whether a folder that holds everything is only a wrapper: true of a zip and of an uploaded folder. */
  readonly mayBeWrapped: boolean;
}

export interface Skipped {
  readonly path: string;
  readonly reason: SkipReason;
}
