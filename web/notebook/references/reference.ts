/** Somebody who wrote or edited; a body of people has one name. */
export interface Person {
  readonly family: string;
  readonly given: string;
}

/** One source in full, as far as its entry goes: empty text where it says nothing. */
export interface Reference {
  readonly key: string;
  /** CSL's word: book, article-journal, chapter, webpage … */
  readonly type: string;
  readonly authors: readonly Person[];
  readonly editors: readonly Person[];
  readonly year: string;
  readonly title: string;
  /** The journal, book or site it is in. */
  readonly container: string;
  readonly volume: string;
  readonly issue: string;
  readonly pages: string;
  readonly edition: string;
  readonly publisher: string;
  readonly place: string;
  readonly doi: string;
  readonly url: string;
  /** Such as "abstract read". */
  readonly note: string;
}

type Loose = Readonly<Record<string, unknown>>;

/** Whether a value is a plain object. */
export const isLoose = (value: unknown): value is Loose => typeof value === 'object' && value !== null && !Array.isArray(value);

const textOf = (value: unknown): string =>
  typeof value === 'string'
    ? value.replace(/\s+/g, ' ').trim()
    : typeof value === 'number'
      ? String(value)
      : Array.isArray(value)
        ? textOf(value[0])
        : '';

/**
 * A CSL-JSON item as a reference.
 *
 * @returns undefined without an id: nothing could cite it.
 * @source CSL-JSON schema 1.0; `date-parts`, `raw` and `literal` dates are read, of which the year counts.
 */
export function referenceOfCsl(item: unknown): Reference | undefined {
  if (!isLoose(item)) return undefined;
  const key = textOf(item['id']);
  if (key === '') return undefined;
  const field = (...names: readonly string[]): string => names.map((name) => textOf(item[name])).find((text) => text !== '') ?? '';
  return {
    key,
    type: field('type'),
    authors: people(item['author']),
    editors: people(item['editor']),
    year: yearOf(item['issued']),
    title: field('title'),
    container: field('container-title', 'event-title'),
    volume: field('volume'),
    issue: field('issue', 'number'),
    pages: field('page').replaceAll(/(?<=\d)-+(?=\d)/g, '–'),
    edition: field('edition'),
    publisher: field('publisher', 'archive'),
    place: field('publisher-place', 'event-place'),
    doi: field('DOI').replace(/^https?:\/\/(?:dx\.)?doi\.org\//i, ''),
    url: field('URL'),
    note: field('note'),
  };
}

function people(value: unknown): readonly Person[] {
  if (!Array.isArray(value)) return [];
  return value.filter(isLoose).flatMap((one): Person[] => {
    const particle = textOf(one['non-dropping-particle']) || textOf(one['dropping-particle']);
    const family = [particle, textOf(one['family']) || textOf(one['literal'])].filter((part) => part !== '').join(' ');
    const given = textOf(one['given']);
    return family !== '' ? [{ family, given }] : given !== '' ? [{ family: given, given: '' }] : [];
  });
}

function yearOf(issued: unknown): string {
  if (!isLoose(issued)) return '';
  const parts: unknown = issued['date-parts'];
  const first: unknown = Array.isArray(parts) ? parts[0] : undefined;
  const last: unknown = Array.isArray(parts) ? parts[1] : undefined;
  const yearIn = (part: unknown) => (Array.isArray(part) ? textOf(part[0]) : '');
  const year = yearIn(first);
  const until = yearIn(last);
  if (year !== '') return until !== '' && until !== year ? `${year}–${until}` : year;
  // Older RIS writes a year with month and day behind it, empty or not: "2001///".
  return (textOf(issued['literal']) || textOf(issued['raw'])).replace(/^(\d{4})\/[\d/]*$/, '$1');
}
