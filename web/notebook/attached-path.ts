import { stemFrom } from './starters.ts';

/** A file as a browser hands it over: what it is called and what it holds. */
interface Named {
  readonly name: string;
  /** Its media type, such as `image/jpeg`; may be ''. */
  readonly type: string;
}

/** The ending of a picked file, with its dot: its name's, or what its type says. */
export function endingOf({ name, type }: Named): string {
  const named = /\.[a-z\d]{2,5}$/i.exec(name)?.[0];
  const typed = /^image\/([a-z\d]+)$/i.exec(type)?.[1];
  return named ?? (typed === undefined ? '.jpg' : `.${typed === 'jpeg' ? 'jpg' : typed}`);
}

/**
 * Where a picked file goes in the notebook: under its own name and told apart by what is in it, so that the same file is kept once.
 *
 * @source the sum over the bytes is FNV-1a, 32 bits (Fowler, Noll & Vo).
 */
export function attachedPath(folder: 'photos' | 'spectra', file: Named, bytes: Uint8Array): string {
  const sum = bytes.reduce((hash, byte) => Math.imul(hash ^ byte, 0x01000193) >>> 0, 0x811c9dc5);
  const ending = endingOf(file);
  const bare = file.name.endsWith(ending) ? file.name.slice(0, -ending.length) : file.name;
  return `${folder}/${stemFrom(bare, 'colour')}-${sum.toString(16).padStart(8, '0')}${ending.toLowerCase()}`;
}
