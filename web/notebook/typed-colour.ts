import { type Conditions, readIlluminant } from '../domain/colour/conditions.ts';
import type { Lab } from '../domain/colour/lab.ts';
import { labTriple } from '../domain/colour/parse-lab-text.ts';
import type { ColourOrigin } from '../domain/colour/swatch-colour.ts';

/** A colour as an address carries it: numbers, under what they hold, how they were got. */
export interface CarriedColour extends Conditions {
  readonly lab: Lab;
  readonly by?: ColourOrigin;
}

const ORIGINS: readonly ColourOrigin[] = ['spectrum', 'lab', 'photo-with-chart', 'photo', 'eye', 'predicted'];
const CARRIED = /^(.+?)\s+(\S+)\/(2|10)°?(?:\s+([a-z-]+))?$/i;
/** Signs of a carried colour (our choice: twice what the longest takes). */
const LONGEST = 120;
/** Two decimals are finer than any instrument and keep an address short. */
const round = (value: number): string => String(Math.round(value * 100) / 100 + 0);

/** A colour on one line, such as `45.1,44.8,27.9 D65/10 photo`. */
export const carryColour = ({ lab, illuminant, observer, by }: CarriedColour): string =>
  `${lab.map(round).join(',')} ${illuminant}/${observer}${by === undefined ? '' : ` ${by}`}`;

/** Reads what `carryColour` writes, and `L,a,b A/2` as somebody may type it; undefined for anything else. */
export function readCarriedColour(text: string): CarriedColour | undefined {
  const found = text.length > LONGEST ? null : CARRIED.exec(text.trim());
  const typed = found && labTriple((found[1] ?? '').trim().replace(/\s+/g, ' '));
  const illuminant = found && readIlluminant(found[2] ?? '');
  if (!found || typed?.isPossible !== true || !illuminant) return undefined;
  const by = ORIGINS.find((one) => one === found[4]?.toLowerCase());
  if (found[4] !== undefined && by === undefined) return undefined;
  return { lab: typed.lab, illuminant, observer: found[3] === '2' ? 2 : 10, ...(by === undefined ? {} : { by }) };
}

const ORIGIN_WORDS: Readonly<Record<ColourOrigin, string>> = {
  spectrum: 'from a measured spectrum',
  lab: 'in Lab',
  'photo-with-chart': 'from a photo with a chart',
  photo: 'from a plain photo',
  eye: 'chosen by eye',
  predicted: 'predicted',
};

/** Where a colour comes from, as it is said behind the words "a colour". */
export const originInWords = (origin: ColourOrigin): string => ORIGIN_WORDS[origin];

/** A typed colour as it stands in a sentence; undefined where it is not one that was carried here. */
export function carriedInWords(text: string): string | undefined {
  const carried = readCarriedColour(text);
  return carried && `a colour ${originInWords(carried.by ?? 'lab')}`;
}
