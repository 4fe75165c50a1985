import { strToU8, zipSync } from 'fflate';

/** Texts as one zip, all in one folder. */
export const packedFiles = (folder: string, files: readonly { readonly path: string; readonly text: string }[]): Uint8Array<ArrayBuffer> =>
  zipSync(Object.fromEntries(files.map(({ path, text }) => [`${folder}/${path}`, strToU8(text)]))) as Uint8Array<ArrayBuffer>;
