import { CHART_ORIGINS, CHART_SOURCES, type TypedChart } from './typed-chart.ts';
import { PALETTE_ORDERS } from '../domain/palette/palette-order.ts';
import type { TypedQuestion } from './pose-question.ts';
import { PALETTE_GROUPINGS, type TypedPalette } from './typed-palette.ts';

/** The views of the notebook, by the word in their address. */
export const VIEWS = [
  'ask',
  'dyestuffs',
  'palette',
  'who-had-what',
  'recipes',
  'trials',
  'pot',
  'dye-day',
  'samples',
  'on-show',
  'notebook',
] as const;
export type View = (typeof VIEWS)[number];

/** Where a reader is: a view, what it is about, and its settings. Everything a view shows follows from this and the notes. */
export interface Address {
  readonly view: View;
  /** A note's id, where the view shows one. */
  readonly id?: string;
  readonly settings: Readonly<Record<string, string>>;
}

/** Reads the part of an address behind `#`; whatever cannot be read leads to the question. */
export function readAddress(hash: string): Address {
  const [path = '', query = ''] = hash.replace(/^#?\/?/, '').split('?');
  const [name = '', ...rest] = path.split('/');
  const view = VIEWS.find((one) => one === name) ?? 'ask';
  const id = safeDecode(rest.join('/'));
  return { view, ...(id === '' ? {} : { id }), settings: Object.fromEntries(pairsOf(query)) };
}

/** The address of a place in the notebook, with `#`. */
export function addressOf({ view, id, settings }: Address): string {
  const query = Object.entries(settings)
    .filter(([, value]) => value !== '')
    .map(([key, value]) => `${encodeURIComponent(key)}=${encodeURIComponent(value)}`)
    .join('&');
  return `#/${view}${id === undefined ? '' : `/${encodeURIComponent(id)}`}${query === '' ? '' : `?${query}`}`;
}

/** The question an address asks. */
export function questionOf({ settings }: Address): TypedQuestion {
  const text = (key: string) => (settings[key] === undefined ? {} : { [key]: settings[key] });
  return {
    ...text('colour'),
    ...text('dye'),
    region: settings['region'] ?? '',
    when: settings['when'] ?? '',
    ...text('fibre'),
    ...text('wearer'),
    ...text('tolerance'),
    dyedHere: settings['dyed'] === 'here',
    ...(settings['seen'] === 'as-found' ? { asFound: true } : {}),
  };
}

/** The settings of an address that asks this. */
export function settingsOf(question: TypedQuestion): Readonly<Record<string, string>> {
  const { dyedHere, asFound, ...texts } = question;
  return {
    ...(Object.fromEntries(Object.entries(texts).filter(([, value]) => value !== undefined && value !== '')) as Record<string, string>),
    ...(dyedHere === true ? { dyed: 'here' } : {}),
    ...(asFound === true ? { seen: 'as-found' } : {}),
  };
}

/** The palette an address asks for. */
export function paletteOfAddress({ settings }: Address): TypedPalette {
  const text = (key: 'fibre' | 'wearer' | 'since') => (settings[key] === undefined ? {} : { [key]: settings[key] });
  const sort = PALETTE_ORDERS.find((one) => one === settings['sort']);
  const group = PALETTE_GROUPINGS.find((one) => one === settings['gaps']);
  return {
    region: settings['region'] ?? '',
    when: settings['when'] ?? '',
    ...text('fibre'),
    ...text('wearer'),
    ...text('since'),
    ...(sort && { sort }),
    ...(group && { group }),
    dyedHere: settings['dyed'] === 'here',
    all: settings['show'] === 'all',
    tryOverDyes: settings['try'] === 'over-dyes',
  };
}

/** The settings of an address that asks for this palette. */
export function settingsOfPalette({
  region,
  when,
  fibre,
  wearer,
  since,
  sort,
  group,
  dyedHere,
  all,
  tryOverDyes,
}: TypedPalette): Readonly<Record<string, string>> {
  const settings = {
    region,
    when,
    fibre,
    wearer,
    since,
    sort,
    gaps: group,
    dyed: dyedHere === true ? 'here' : undefined,
    show: all === true ? 'all' : undefined,
    try: tryOverDyes === true ? 'over-dyes' : undefined,
  };
  return withoutEmpty(settings);
}

/** Two palettes to compare; of two notebooks where the one before is another notebook's. */
export interface TypedComparison {
  readonly before: TypedPalette;
  readonly now: TypedPalette;
  readonly withOther: boolean;
}

/** What an address compares; undefined where it compares nothing. */
export function comparedOfAddress({ settings }: Address): TypedComparison | undefined {
  const withOther = settings['with'] === 'other-notebook';
  if (!withOther && settings['from-when'] === undefined) return undefined;
  const side = (prefix: string): TypedPalette => ({
    region: settings[`${prefix}region`] ?? '',
    when: settings[`${prefix}when`] ?? '',
    ...(settings[`${prefix}wearer`] === undefined ? {} : { wearer: settings[`${prefix}wearer`] }),
  });
  return { before: side(withOther ? '' : 'from-'), now: side(''), withOther };
}

/** The settings of an address that compares these; two notebooks are compared for one place, date and wearer. */
export function settingsOfCompared({ before, now, withOther }: TypedComparison): Readonly<Record<string, string>> {
  if (withOther) return withoutEmpty({ with: 'other-notebook', region: now.region, when: now.when, wearer: now.wearer });
  return withoutEmpty({
    'from-region': before.region,
    'from-when': before.when,
    'from-wearer': before.wearer,
    region: now.region,
    when: now.when,
    wearer: now.wearer,
  });
}

/** The chart an address asks for, and its year. */
export function chartOfAddress({ settings }: Address): { readonly chart: TypedChart; readonly year: number } {
  const sources = CHART_SOURCES.find((one) => one === settings['sources']);
  const origin = CHART_ORIGINS.find((one) => one === settings['origin']);
  const year = Number(settings['year'] ?? '1370');
  return {
    chart: {
      region: settings['region'] ?? 'hanse-towns',
      ...(sources && { sources }),
      ...(origin && { origin }),
      around: settings['reach'] !== 'within',
    },
    year: Number.isInteger(year) ? year : 1370,
  };
}

/** The settings of an address that asks for this chart. */
export function settingsOfChart({ region, sources, origin, around }: TypedChart, year: number): Readonly<Record<string, string>> {
  return withoutEmpty({ region, year: String(year), sources, origin, reach: around === false ? 'within' : undefined });
}

const withoutEmpty = (settings: Readonly<Record<string, string | undefined>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(settings).filter((pair): pair is [string, string] => pair[1] !== undefined && pair[1] !== ''));

const safeDecode = (text: string): string => {
  try {
    return decodeURIComponent(text.replaceAll('+', ' '));
  } catch {
    return text;
  }
};

/** The pairs of a query, read without a page. */
const pairsOf = (query: string): readonly (readonly [string, string])[] =>
  query
    .split('&')
    .filter((pair) => pair !== '')
    .map((pair) => {
      const at = pair.indexOf('=');
      return at < 0 ? [safeDecode(pair), ''] : [safeDecode(pair.slice(0, at)), safeDecode(pair.slice(at + 1))];
    });
