import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { edtfYear } from '../../domain/date/format-years.ts';
import { parseDate } from '../../domain/date/parse-date.ts';
import { asText, NewNotes } from './new-notes.ts';
import { type Gathered, isObject, listOf, MOST_ROWS, nothingGathered, readJson, textOf } from './gathered.ts';

type Plain = Readonly<Record<string, unknown>>;

/** A period as the file has it, with the authority it stands under. */
interface FoundPeriod {
  readonly period: Plain;
  readonly authority?: Plain;
}

/**
 * Period definitions of a PeriodO file (JSON-LD) as `period` notes: the whole data set, one authority, one period, or a graph of them.
 *
 * @source the PeriodO data model: start and stop with `in.year`, or `in.earliestYear` and `in.latestYear`; years are ISO 8601.
 */
export function readPeriods(base: EvidenceBase, text: string): Gathered {
  const json = readJson(text);
  if ('gathered' in json) return json.gathered;
  const all = periodsIn(json.value, undefined, 0);
  if (all.length === 0) return nothingGathered(isObject(json.value) || Array.isArray(json.value) ? 'not-this-kind' : 'nothing-inside');
  const notes = new NewNotes(base, 'periods');
  const seen = new Set<string>();
  all.slice(0, MOST_ROWS).forEach((found, at) => readPeriod(notes, at + 1, found, seen));
  if (all.length > MOST_ROWS) notes.tell(0, 'rows-left-out', String(all.length - MOST_ROWS));
  return notes;
}

function periodsIn(value: unknown, authority: Plain | undefined, depth: number): readonly FoundPeriod[] {
  if (depth > 6) return [];
  if (Array.isArray(value)) return value.flatMap((one) => periodsIn(one, authority, depth + 1));
  if (!isObject(value)) return [];
  if (isObject(value['start']) || isObject(value['stop'])) return [{ period: value, ...(authority && { authority }) }];
  const under = value['source'] === undefined ? authority : value;
  return ['authorities', 'periodCollections', 'periods', 'definitions', '@graph'].flatMap((key) => {
    const held = value[key];
    return periodsIn(isObject(held) ? Object.values(held) : held, under, depth + 1);
  });
}

function readPeriod(notes: NewNotes, row: number, { period, authority }: FoundPeriod, seen: Set<string>): void {
  const key = textOf(period['id'] ?? period['@id']);
  const title = textOf(period['label'] ?? period['prefLabel'] ?? period['skos:prefLabel']);
  if (title === '') {
    notes.tell(row, 'no-name', key);
    notes.pass(row, key);
    return;
  }
  if (key !== '' && seen.has(key)) {
    notes.tell(row, 'twice', title);
    notes.pass(row, title);
    return;
  }
  seen.add(key);
  const [start, stop] = [boundOf(period['start']), boundOf(period['stop'])];
  const widened = [start, stop].some((one) => one.earliest !== one.latest);
  const when = start.earliest === undefined && stop.latest === undefined ? undefined : `${sideOf(start.earliest)}/${sideOf(stop.latest)}`;
  const span = when === undefined ? undefined : parseDate(when).span;
  if (when === undefined)
    notes.tell(
      row,
      'no-date',
      title,
      [start.label, stop.label].filter((one) => one !== ''),
    );
  else if (!span) notes.tell(row, 'date-unreadable', when);
  else if (widened) notes.tell(row, 'date-widened', title, [when]);

  const coverage = listOf(period['spatialCoverage']).flatMap((one) => textOf(isObject(one) ? one['label'] : one) || []);
  const described = textOf(period['spatialCoverageDescription']);
  const region = regionOf(notes, row, described, coverage);
  const names = namesOf(period, title);
  const written = span ? when : undefined;
  const front = {
    kind: 'period',
    title,
    ...(names.length > 0 ? { names } : {}),
    ...(region === undefined ? {} : { region }),
    ...(written === undefined ? {} : { when: written }),
  };
  const cells = [
    { label: 'date', text: span ? formatSpan(span) : [start.label, stop.label].filter(Boolean).join(' – ') },
    { label: 'place', text: region ?? described },
  ];
  notes.add(row, title, front, bodyOf({ period, authority }, key, [start.label, stop.label], described, coverage), cells);
}

/** The region of the description, else of the one area it covers; several areas name no single region. */
function regionOf(notes: NewNotes, row: number, described: string, coverage: readonly string[]): string | undefined {
  const wanted = described === '' ? (coverage.length === 1 ? (coverage[0] ?? '') : '') : described;
  return wanted === '' ? undefined : notes.region(row, wanted);
}

interface PeriodBound {
  readonly label: string;
  readonly earliest?: number;
  readonly latest?: number;
}

function boundOf(value: unknown): PeriodBound {
  if (!isObject(value)) return { label: textOf(value) };
  const within = isObject(value['in']) ? value['in'] : {};
  const [year, earliest, latest] = ['year', 'earliestYear', 'latestYear'].map((key) => isoYear(within[key]));
  const low = year ?? earliest;
  const high = year ?? latest;
  return { label: textOf(value['label']), ...(low !== undefined && { earliest: low }), ...(high !== undefined && { latest: high }) };
}

/** `-0499` is astronomical: 500 BCE. */
function isoYear(value: unknown): number | undefined {
  const match = /^([+-]?\d{1,9})/.exec(textOf(value));
  return match ? Number(match[1]) : undefined;
}

/** A year in EDTF; an open side is `..`. */
const sideOf = (year: number | undefined): string => (year === undefined ? '..' : edtfYear(year));

function namesOf(period: Plain, title: string): { readonly name: string; readonly lang: string }[] {
  const labels = isObject(period['localizedLabels']) ? Object.entries(period['localizedLabels']) : [];
  const seen = new Set([title]);
  return labels.flatMap(([lang, list]) =>
    listOf(list).flatMap((one) => {
      const name = textOf(one);
      if (name === '' || seen.has(name)) return [];
      seen.add(name);
      return [{ name, lang }];
    }),
  );
}

function bodyOf(
  { period, authority }: FoundPeriod,
  key: string,
  labels: readonly string[],
  described: string,
  coverage: readonly string[],
): string {
  const given = labels.filter((one) => one !== '');
  const places = [described, coverage.join(', ')].filter((one) => one !== '');
  const note = textOf(period['note']);
  const parts = [
    note === '' ? '' : asText(note),
    given.length === 0 ? '' : `As its source dates it: ${asText(given.join(' to '))}.`,
    places.length === 0 ? '' : `As its source places it: ${asText(places.join('; '))}.`,
    `From ${asText(citationOf(authority) || 'an authority not named')}${key === '' ? '' : `, PeriodO ${asText(key)}`}.`,
  ];
  return parts.filter((part) => part !== '').join('\n\n');
}

function citationOf(authority: Plain | undefined): string {
  const source = authority?.['source'];
  const own = isObject(source) ? source : {};
  const whole = isObject(own['partOf']) ? own['partOf'] : {};
  const creators = listOf(own['creators'] ?? whole['creators']).flatMap((one) => textOf(isObject(one) ? one['name'] : one) || []);
  const year = textOf(own['yearPublished'] ?? whole['yearPublished']);
  const title = textOf(own['title'] ?? own['citation'] ?? whole['title']);
  return [creators.join(', '), year, title].filter((one) => one !== '').join(', ');
}
