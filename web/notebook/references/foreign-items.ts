import { parse as readBibtex } from '@citation-js/plugin-bibtex/lib/input/file.js';
import { parse as bibtexToCsl } from '@citation-js/plugin-bibtex/lib/input/entries.js';
import { parse as readRis, parseMixed as risToCsl } from '@citation-js/plugin-ris/lib/ris.js';
import { fold } from '../../domain/text/fold.ts';
import { isLoose, referenceOfCsl } from './reference.ts';

/** The entries of a BibTeX file as CSL items: the whole file at once; where that fails, entry by entry, each with the file's abbreviations before it. */
export function bibtexItems(text: string): readonly unknown[] {
  const whole = tryBibtex(text);
  if (whole) return whole;
  const chunks = text.split(/^(?=[ \t]*@)/m);
  const isString = (chunk: string) => /^\s*@string\b/i.test(chunk);
  const strings = chunks.filter((chunk) => isString(chunk) && tryBibtex(chunk)).join('\n');
  return chunks.filter((chunk) => !isString(chunk)).flatMap((chunk) => tryBibtex(`${strings}\n${chunk}`) ?? []);
}

function tryBibtex(text: string): readonly unknown[] | undefined {
  try {
    return bibtexToCsl(readBibtex(text));
  } catch {
    return undefined;
  }
}

/** The entries of a RIS file as CSL items. RIS need not name its entries; one without `ID` is called by its first author and year, as `shannon-1948`. */
export function risItems(text: string): readonly unknown[] {
  let entries: readonly unknown[];
  try {
    entries = readRis(fromFirstEntry(text));
  } catch {
    return [];
  }
  return entries.flatMap((entry) => {
    try {
      const item = risToCsl(entry);
      if (!isLoose(item)) return [];
      const given = isLoose(entry) && typeof entry['ID'] === 'string' ? entry['ID'].trim() : '';
      if (given !== '') return [{ ...item, id: given }];
      const named = referenceOfCsl({ ...item, id: '-' });
      const family = fold(named?.authors[0]?.family ?? '').replaceAll(' ', '-');
      return family !== '' && named?.year ? [{ ...item, id: `${family}-${named.year}` }] : [];
    } catch {
      return [];
    }
  });
}

/** What stands before the first entry is no RIS; a line of it that looks like a tag would stop the reading. */
const fromFirstEntry = (text: string): string => {
  const start = /^[ \t\uFEFF]*TY {2}-/m.exec(text);
  return start ? text.slice(start.index).replaceAll('\uFEFF', '') : '';
};
