import { isSeq } from 'yaml';
import type { Node } from 'yaml';
import { group } from './group-shape.ts';
import type { SpectrumRef, StatedColour } from './note.ts';
import { readNumber, readWords, text } from './plain-shapes.ts';
import { single, tell, tellWrongType } from './shape.ts';
import type { ReadContext, Shape } from './shape.ts';

type Bounds = readonly (readonly [least: number, most: number])[];

/** A fixed run of numbers, each within its bounds; all or none is read. */
function readNumbers(node: Node, key: string, context: ReadContext, bounds: Bounds): readonly number[] | undefined {
  if (!isSeq(node) || node.items.length !== bounds.length) {
    tellWrongType(node, key, `${bounds.length} numbers`, context);
    return undefined;
  }
  const read = bounds.map(([least, most], index) => readNumber(context.resolve(node.items[index]), key, context, least, most));
  const values = read.filter((value) => value !== undefined);
  return values.length === bounds.length ? values : undefined;
}

const three = (bounds: Bounds): Shape<readonly [number, number, number] | undefined> =>
  single('numbers', (node, key, context) => {
    const [a, b, c] = readNumbers(node, key, context, bounds) ?? [];
    return a === undefined || b === undefined || c === undefined ? undefined : [a, b, c];
  });

/** Latitude and longitude in degrees. */
export const point: Shape<readonly [latitude: number, longitude: number] | undefined> = single('numbers', (node, key, context) => {
  const [latitude, longitude] =
    readNumbers(node, key, context, [
      [-90, 90],
      [-180, 180],
    ]) ?? [];
  return latitude === undefined || longitude === undefined ? undefined : [latitude, longitude];
});

const hex: Shape<string | undefined> = single('hex', (node, key, context) => {
  const words = readWords(node, key, context, 'hex');
  if (words === undefined) return undefined;
  if (/^#(?:[\da-f]{3}|[\da-f]{6})$/i.test(words)) return words;
  const bare = /^(?:[\da-f]{3}|[\da-f]{6})$/i.test(words);
  tell('colour-unreadable', node, [words, key, ...(bare ? [`"#${words}"`] : [])], context);
  return undefined;
});

const observer: Shape<2 | 10 | undefined> = single('observer', (node, key, context) => {
  const words = readWords(node, key, context, 'observer');
  const degrees = /^(2|10)\s*(?:°|deg|degrees)?$/i.exec(words ?? '')?.[1];
  if (words !== undefined && degrees === undefined) tell('word-unknown', node, [words, key, '2', '10'], context);
  return degrees === undefined ? undefined : degrees === '2' ? 2 : 10;
});

// Our choice: CIELAB's a* and b* of surfaces stay within ±150, XYZ of anything reflecting within 0–200; wider is a slip.
const COLOUR_KEYS = {
  lab: three([
    [0, 100],
    [-200, 200],
    [-200, 200],
  ]),
  hex,
  xyz: three([
    [0, 200],
    [0, 200],
    [0, 200],
  ]),
  illuminant: text,
  observer,
  by: text,
};

/** A colour as the note states it: exactly one of lab, hex, xyz; lab and xyz need their conditions. */
export const colour: Shape<StatedColour | undefined> = group(
  COLOUR_KEYS,
  ({ lab, hex: code, xyz, illuminant, observer: degrees, by }, place) => {
    const given = (['lab', 'hex', 'xyz'] as const).filter(place.has);
    if (given.length !== 1) {
      place.report({
        code: 'colour-unreadable',
        severity: 'error',
        range: place.range,
        about: [given.join(', '), 'colour', 'lab', 'hex', 'xyz'],
      });
      return undefined;
    }
    if (lab === undefined && code === undefined && xyz === undefined) return undefined;
    const missing = ['illuminant', 'observer'].filter((key) => !place.has(key));
    if (code === undefined && missing.length > 0)
      place.report({ code: 'colour-conditions-missing', severity: 'warning', range: place.range, about: missing });
    return { range: place.range, lab, hex: code, xyz, illuminant, observer: degrees, by };
  },
);

/** A colour, or words for it. */
export const colourOrWords: Shape<StatedColour | string | undefined> = {
  ...colour,
  read: (node, key, context) => (node && 'items' in node ? colour.read(node, key, context) : readWords(node, key, context)),
};

/** A spectrum's file, and the sample within it. */
export const spectrum: Shape<SpectrumRef | undefined> = group(
  { file: text, sample: text },
  ({ file, sample }, { range, report }) => {
    if (file !== undefined) return { file, sample, range };
    report({ code: 'key-missing', severity: 'warning', range, about: ['file', 'spectrum'] });
    return undefined;
  },
  'file',
);
