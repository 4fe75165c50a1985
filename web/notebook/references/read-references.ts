import { isLoose, type Reference, referenceOfCsl } from './reference.ts';

/** Files that hold sources: CSL-JSON, BibTeX (and BibLaTeX), RIS. */
export const REFERENCE_FILE = /(?:^|\/)bibliography\.json$|\.(?:bib|ris)$/i;

/** Those of them that are not JSON: their readers are large, so they are loaded for a notebook that holds such a file. */
export const FOREIGN_FILE = /\.(?:bib|ris)$/i;

/** What reads the files that are not JSON. */
export interface ForeignReaders {
  bibtexItems(text: string): readonly unknown[];
  risItems(text: string): readonly unknown[];
}

/**
 * The sources of one file; entries that cannot be read are passed over, the others stay.
 *
 * @param foreign without it BibTeX and RIS give nothing.
 */
export function readReferences(path: string, text: string, foreign?: ForeignReaders): readonly Reference[] {
  const ending = FOREIGN_FILE.exec(path)?.[0].toLowerCase();
  const items = ending === undefined ? jsonItems(text) : ending === '.bib' ? foreign?.bibtexItems(text) : foreign?.risItems(text);
  return (items ?? []).flatMap(single);
}

const single = (item: unknown): readonly Reference[] => {
  const read = referenceOfCsl(item);
  return read ? [read] : [];
};

function jsonItems(text: string): readonly unknown[] {
  try {
    const read: unknown = JSON.parse(text);
    return Array.isArray(read) ? read : isLoose(read) && Array.isArray(read['items']) ? read['items'] : [];
  } catch {
    return [];
  }
}
