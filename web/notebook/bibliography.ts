import { type Person, type Reference } from './references/reference.ts';
import { type ForeignReaders, readReferences } from './references/read-references.ts';
import { inList } from './words/in-list.ts';

/** One source of a bibliography as a reader is shown it. */
export interface BibliographyEntry {
  readonly key: string;
  /** Surnames, or who published it; '' when the entry names nobody. */
  readonly author: string;
  /** As it stands, '' when there is none. */
  readonly year: string;
  readonly title: string;
  /** The journal, book, site or publisher it is in, with volume; '' when there is none. */
  readonly within: string;
  /** An http(s) address, where the entry gives one. */
  readonly address?: string;
}

/**
 * The entries of CSL-JSON, BibTeX and RIS files by citation key; what is broken is passed over.
 *
 * @param foreign reads what is not JSON.
 */
export function readBibliography(
  files: readonly { readonly path: string; readonly text: string }[],
  foreign?: ForeignReaders,
): ReadonlyMap<string, BibliographyEntry> {
  return new Map([...fullBibliography(files, foreign)].map(([key, reference]) => [key, entryOf(reference)]));
}

/** The same in full, for printing. */
export const fullBibliography = (
  files: readonly { readonly path: string; readonly text: string }[],
  foreign?: ForeignReaders,
): ReadonlyMap<string, Reference> =>
  new Map(files.flatMap(({ path, text }) => readReferences(path, text, foreign).map((reference) => [reference.key, reference] as const)));

function entryOf({ key, authors, editors, year, title, container, publisher, volume, url, doi }: Reference): BibliographyEntry {
  const names = (people: readonly Person[]) => joinNames(people.map(({ family }) => family));
  const address = webAddress(url || doiAddress(doi));
  return {
    key,
    author: names(authors) || names(editors),
    year,
    title,
    within: [container || publisher, volume].filter((part) => part !== '').join(' '),
    ...(address === undefined ? {} : { address }),
  };
}

/** "Cardon 2007, Natural Dyes", as far as it is known. */
export const shortEntry = ({ author, year, title }: BibliographyEntry): string =>
  [[author, year].filter((part) => part !== '').join(' '), title].filter((part) => part !== '').join(', ');

/** Three names are written out, of more only the first (our choice, as most journals have it). */
const joinNames = (names: readonly string[]): string => {
  if (names.length > 3) return `${names[0] ?? ''} and others`;
  return inList(names);
};

const doiAddress = (doi: string): string => (/^10\.\d{4,9}\/\S+$/.test(doi) ? `https://doi.org/${doi}` : '');

/** An address a page may link to; anything but http and https is none. */
export const webAddress = (text: string): string | undefined =>
  /^https?:\/\/[^\s/?#"<>\\]+(?:[/?#][^\s"<>\\]*)?$/i.test(text) ? text : undefined;
