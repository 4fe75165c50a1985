import type { Person, Reference } from './reference.ts';
import { inList } from '../words/in-list.ts';

/** The two plain styles: a full note, or a list by author and date. */
export type ReferenceStyle = 'note' | 'author-date';

/** A run of a printed reference; titles of books and journals are slanted. */
export interface PrintedRun {
  readonly text: string;
  readonly italic?: boolean;
  /** A web address the run leads to. */
  readonly address?: string;
}

/**
 * A reference printed in a plain style of our own making, close to what most readers know from books.
 *
 * @param locator the page or chapter that is cited; only a note gives it.
 */
export function printReference(reference: Reference, style: ReferenceStyle, locator = ''): readonly PrintedRun[] {
  const writers = reference.authors.length > 0 ? reference.authors : reference.editors;
  const edited = reference.authors.length === 0 && reference.editors.length > 0;
  const who =
    style === 'note' ? listed(writers.map(plainName)) : listed(writers.map((one, at) => (at === 0 ? turnedName(one) : plainName(one))));
  const by = who === '' ? '' : `${who}${edited ? (reference.editors.length > 1 ? ' (eds)' : ' (ed.)') : ''}`;
  // A book is a whole, even where somebody wrote its publisher or series as what it is in.
  const whole = reference.container === '' || WHOLE.has(reference.type);
  const title: readonly PrintedRun[] =
    reference.title === '' ? [] : whole ? [{ text: reference.title, italic: true }] : [{ text: `“${reference.title}”` }];
  const published = [reference.place, reference.publisher].filter(isSaid).join(': ');
  const volume = [reference.volume, reference.issue === '' ? '' : `(${reference.issue})`].filter(isSaid).join(' ');
  const container: readonly PrintedRun[] = whole
    ? run([reference.container, volume].filter(isSaid).join(' '))
    : [{ text: reference.container, italic: true }, ...(volume === '' ? [] : [{ text: ` ${volume}` }])];
  const edition =
    reference.edition === '' ? '' : /^\d+$/.test(reference.edition) ? `${ordinal(Number(reference.edition))} edn` : reference.edition;
  const pages = reference.pages === '' ? '' : `${/[–,]/.test(reference.pages) ? 'pp.' : 'p.'} ${reference.pages}`;
  const web: readonly PrintedRun[] =
    reference.doi !== ''
      ? [{ text: `doi:${reference.doi}`, address: `https://doi.org/${reference.doi}` }]
      : /^https?:\/\//i.test(reference.url)
        ? [{ text: reference.url, address: reference.url }]
        : [];
  const year = reference.year === '' ? 'undated' : reference.year;
  const rest: readonly (readonly PrintedRun[])[] = [
    ...(edition === '' ? [] : [[{ text: edition }]]),
    ...(published === '' ? [] : [[{ text: published }]]),
  ];
  const parts: readonly (readonly PrintedRun[])[] =
    style === 'note'
      ? [run(by), title, container, ...rest, run(year), run(locator === '' ? pages : locator), web]
      : by === ''
        ? [[...(title.length > 0 ? title : run(reference.key)), { text: ` (${year})` }], container, run(pages), ...rest, web]
        : [run(`${by} (${year})`), title, container, run(pages), ...rest, web];
  return closed(parts.filter((part) => part.length > 0));
}

const WHOLE: ReadonlySet<string> = new Set(['book', 'thesis', 'report', 'manuscript']);

/** The short form in running text: "Cardon 2007, p. 12". */
export function printCitation({ authors, editors, year, title, key }: Reference, locator = ''): string {
  const writers = authors.length > 0 ? authors : editors;
  const names = writers.map(({ family }) => family);
  const who = names.length === 0 ? title || key : names.length > 3 ? `${names[0] ?? ''} and others` : listed(names);
  return [`${who} ${year === '' ? 'undated' : year}`, locator].filter(isSaid).join(', ');
}

/** In the order of a list: by author, year, title. */
export const byAuthor = (a: Reference, b: Reference): number => {
  const keyOf = ({ authors, editors, year, title }: Reference) =>
    [(authors[0] ?? editors[0])?.family ?? title, year, title].join('\u0001').toLowerCase();
  return keyOf(a).localeCompare(keyOf(b), 'en');
};

const isSaid = (text: string): boolean => text !== '';
const run = (text: string): readonly PrintedRun[] => (text === '' ? [] : [{ text }]);
const plainName = ({ family, given }: Person): string => (given === '' ? family : `${given} ${family}`);
const turnedName = ({ family, given }: Person): string => (given === '' ? family : `${family}, ${given}`);

function listed(names: readonly string[]): string {
  if (names.length > MOST_NAMES) return `${names[0] ?? ''} and others`;
  return inList(names);
}

/** Writers named in full before "and others". Our choice. */
const MOST_NAMES = 6;

const ordinal = (count: number): string => {
  const tens = count % 100;
  const ending = tens >= 11 && tens <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][count % 10] ?? 'th');
  return `${count}${ending}`;
};

/** Parts with commas between them and a full stop behind, unless one stands there. */
function closed(parts: readonly (readonly PrintedRun[])[]): readonly PrintedRun[] {
  const runs = parts.flatMap((part, at) => (at === 0 ? part : [{ text: ', ' }, ...part]));
  return /[.?!]$/.test(runs.at(-1)?.text ?? '') || runs.at(-1)?.address !== undefined ? runs : [...runs, { text: '.' }];
}
