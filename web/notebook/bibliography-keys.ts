import { readReferences } from './references/read-references.ts';

/** The citation keys a notebook's bibliographies hold: CSL-JSON ids, BibTeX keys, the `ID` of RIS entries. */
export const citationKeys = (files: readonly { readonly path: string; readonly text: string }[]): ReadonlySet<string> =>
  new Set(files.flatMap(({ path, text }) => readReferences(path, text).map(({ key }) => key)));
