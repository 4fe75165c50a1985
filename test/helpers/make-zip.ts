import { zipSync, type Zippable, type ZipOptions } from 'fflate';

/** An entry of a zip made for a test; `options` are fflate's. */
export interface MadeEntry {
  readonly path: string;
  readonly bytes: Uint8Array;
  readonly options?: ZipOptions;
}

/** A zip with these entries, whatever their names. */
export function makeZip(entries: readonly MadeEntry[]): Uint8Array {
  const files: Zippable = Object.create(null) as Zippable;
  for (const { path, bytes, options = {} } of entries) files[path] = [bytes, { mtime: '2020-05-04T10:20:30', ...options }];
  return zipSync(files);
}

/** Finds each place where four bytes stand. */
export function placesOf(zip: Uint8Array, signature: number): readonly number[] {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  return [...zip.keys()].filter((at) => at + 4 <= zip.length && view.getUint32(at, true) === signature);
}

/** Where entries begin in a zip's directory, and where its end record does. */
export const ENTRY = 0x02014b50;
export const END = 0x06054b50;

/** A copy of a zip with some numbers overwritten, so that it lies. */
export function tamper(zip: Uint8Array, change: (view: DataView) => void): Uint8Array {
  const copy = zip.slice();
  change(new DataView(copy.buffer));
  return copy;
}
