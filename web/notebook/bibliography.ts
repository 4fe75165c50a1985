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

/** The entries of CSL-JSON and BibTeX files by citation key; what is broken is passed over. */
export function readBibliography(
  files: readonly { readonly path: string; readonly text: string }[],
): ReadonlyMap<string, BibliographyEntry> {
  const entries = new Map<string, BibliographyEntry>();
  for (const { path, text } of files)
    for (const entry of path.toLowerCase().endsWith('.bib') ? bibEntries(text) : cslEntries(text)) entries.set(entry.key, entry);
  return entries;
}

/** "Cardon 2007, Natural Dyes", as far as it is known. */
export const shortEntry = ({ author, year, title }: BibliographyEntry): string =>
  [[author, year].filter((part) => part !== '').join(' '), title].filter((part) => part !== '').join(', ');

type Loose = Readonly<Record<string, unknown>>;
const isLoose = (value: unknown): value is Loose => typeof value === 'object' && value !== null && !Array.isArray(value);
const textOf = (value: unknown): string => (typeof value === 'string' ? value.trim() : typeof value === 'number' ? String(value) : '');

function cslEntries(text: string): readonly BibliographyEntry[] {
  try {
    const read: unknown = JSON.parse(text);
    return Array.isArray(read) ? read.filter(isLoose).flatMap(cslEntry) : [];
  } catch {
    return [];
  }
}

function cslEntry(entry: Loose): readonly BibliographyEntry[] {
  const key = textOf(entry['id']);
  if (key === '') return [];
  const within = [textOf(entry['container-title']) || textOf(entry['publisher']), textOf(entry['volume'])];
  const address = webAddress(textOf(entry['URL']) || doiAddress(textOf(entry['DOI'])));
  return [
    {
      key,
      author: namesText(entry['author']) || namesText(entry['editor']),
      year: yearOf(entry['issued']),
      title: textOf(entry['title']),
      within: within.filter((part) => part !== '').join(' '),
      ...(address === undefined ? {} : { address }),
    },
  ];
}

function namesText(value: unknown): string {
  if (!Array.isArray(value)) return '';
  const names = value.filter(isLoose).map((one) => textOf(one['family']) || textOf(one['literal']) || textOf(one['given']));
  return joinNames(names.filter((name) => name !== ''));
}

/** Three names are written out, of more only the first (our choice, as most journals have it). */
const joinNames = (names: readonly string[]): string => {
  if (names.length > 3) return `${names[0] ?? ''} and others`;
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;
};

function yearOf(issued: unknown): string {
  if (!isLoose(issued)) return '';
  const parts: unknown = issued['date-parts'];
  const first: unknown = Array.isArray(parts) ? parts[0] : undefined;
  return Array.isArray(first) ? textOf(first[0]) : textOf(issued['literal']) || textOf(issued['raw']);
}

const doiAddress = (doi: string): string => (/^10\.\d{4,9}\/\S+$/.test(doi) ? `https://doi.org/${doi}` : '');

/** An address a page may link to; anything but http and https is none. */
export const webAddress = (text: string): string | undefined => (/^https?:\/\/[^\s/?#"<>\\]+[^\s"<>\\]*$/i.test(text) ? text : undefined);

/** The fields of BibTeX that are shown; strings in braces or quotes, other ways of writing it are passed over. */
function bibEntries(text: string): readonly BibliographyEntry[] {
  const starts = [...text.matchAll(/@[a-z]{3,20}[ \t]{0,8}\{[ \t]{0,8}([^\s,{}]{1,200}),/gi)];
  return starts.map((start, at) => {
    const block = text.slice(start.index + start[0].length, starts[at + 1]?.index ?? text.length).slice(0, LONGEST_ENTRY);
    const field = (name: string): string => bibField(block, name);
    const authors = (field('author') || field('editor')).split(/\s+and\s+/).map((name) => name.split(',')[0]?.trim() ?? '');
    const address = webAddress(field('url') || doiAddress(field('doi')));
    return {
      key: start[1] ?? '',
      author: joinNames(authors.filter((name) => name !== '')),
      year: field('year') || field('date').slice(0, 4),
      title: field('title'),
      within: field('journal') || field('booktitle') || field('publisher'),
      ...(address === undefined ? {} : { address }),
    };
  });
}

/** Characters of one entry looked through (our choice: abstracts are seldom longer). */
const LONGEST_ENTRY = 20_000;

function bibField(block: string, name: string): string {
  const found = new RegExp(`(?:^|[,\\s])${name}\\s*=\\s*(?:\\{((?:[^{}]|\\{[^{}]*\\})*)\\}|"([^"]*)"|(\\d+))`, 'i').exec(block);
  return (found?.[1] ?? found?.[2] ?? found?.[3] ?? '').replace(/[{}]/g, '').replace(/\s+/g, ' ').trim();
}
