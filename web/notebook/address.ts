import { PALETTE_ORDERS } from '../domain/palette/palette-order.ts';
import type { TypedQuestion } from './pose-question.ts';
import { PALETTE_GROUPINGS, type TypedPalette } from './typed-palette.ts';

/** The views of the notebook, by the word in their address. */
export const VIEWS = ['ask', 'dyestuffs', 'palette', 'who-had-what', 'recipes', 'pot', 'on-show', 'notebook'] as const;
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
  };
}

/** The settings of an address that asks this. */
export function settingsOf(question: TypedQuestion): Readonly<Record<string, string>> {
  const { dyedHere, ...texts } = question;
  return {
    ...(Object.fromEntries(Object.entries(texts).filter(([, value]) => value !== undefined && value !== '')) as Record<string, string>),
    ...(dyedHere === true ? { dyed: 'here' } : {}),
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
  };
  return Object.fromEntries(Object.entries(settings).filter((pair): pair is [string, string] => pair[1] !== undefined && pair[1] !== ''));
}

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
