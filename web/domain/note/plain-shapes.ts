import { isScalar } from 'yaml';
import type { Node } from 'yaml';
import { nearestNames } from '../text/nearest-names.ts';
import { parseAmount, parseFibreGrams } from './amount.ts';
import { parseCitation } from './citation.ts';
import type { Amount, Citation, NoteKind, Ref } from './note.ts';
import { single, tell, tellWrongType, wordsOf } from './shape.ts';
import type { Form, ReadContext, Shape } from './shape.ts';

/** The words of a scalar; undefined, told, for anything else, and untold where they are empty. */
export function readWords(node: Node, key: string, context: ReadContext, wanted: Form = 'text'): string | undefined {
  if (!isScalar(node)) {
    tellWrongType(node, key, wanted, context);
    return undefined;
  }
  const words = wordsOf(node);
  return words === '' ? undefined : words;
}

/** Any words, as they stand in the note. */
export const text: Shape<string | undefined> = single('text', readWords);

/** Kept in the note and read by others, or by nobody yet. */
export const anything: Shape<undefined> = { ...single<never>('anything', () => undefined), absent: undefined };

/** One of a closed list of words; capitals do not count. */
export const word = <const W extends string>(words: readonly W[]): Shape<W | undefined> =>
  single(
    'word',
    (node, key, context) => {
      const found = readWords(node, key, context, 'word');
      const known = words.find((each) => each === found?.toLowerCase());
      if (found !== undefined && known === undefined) tell('word-unknown', node, [found, key, ...suggest(found, words)], context);
      return known;
    },
    { words },
  );

/** The nearest words of a list, or all of a short one. */
function suggest(found: string, words: readonly string[]): readonly string[] {
  const near = nearestNames(found, words, 2);
  return near.length > 0 ? near : words.length <= 9 ? words : [];
}

const YES_NO: Readonly<Record<string, boolean>> = { true: true, yes: true, false: false, no: false };

/** Yes or no: `true`, `false`, `yes`, `no`; no where absent. */
export const flag: Shape<boolean> = {
  form: 'yes-no',
  list: false,
  needed: false,
  absent: false,
  read: (node, key, context) => {
    const found = isScalar(node) ? wordsOf(node).toLowerCase() : '';
    if (Object.hasOwn(YES_NO, found)) return YES_NO[found] ?? false;
    tellWrongType(node, key, 'yes-no', context);
    return false;
  },
};

/** A number from `least` to `most`, both in it. */
export const number = (least: number, most: number, whole = false): Shape<number | undefined> =>
  single('number', (node, key, context) => readNumber(node, key, context, least, most, whole));

/** Reads one number between two bounds. */
export function readNumber(
  node: Node | undefined,
  key: string,
  context: ReadContext,
  least: number,
  most: number,
  whole = false,
): number | undefined {
  if (node === undefined) return undefined;
  const words = isScalar(node) ? wordsOf(node) : '';
  const value = /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?$/i.test(words) ? Number(words) : NaN;
  if (Number.isNaN(value) || (whole && !Number.isInteger(value))) {
    tellWrongType(node, key, whole ? 'whole number' : 'number', context);
    return undefined;
  }
  if (value >= least && value <= most) return value;
  tell('number-out-of-range', node, [words, key, String(least), String(most)], context);
  return undefined;
}

/** A note of one of these kinds, by id, title or name. */
export const reference = (...kinds: readonly NoteKind[]): Shape<Ref | undefined> =>
  single(
    'reference',
    (node, key, context) => {
      const words = readWords(node, key, context, 'reference');
      return words === undefined ? undefined : { text: words, range: context.range(node) };
    },
    { kinds },
  );

/** `citation-key, locator`. */
export const citation: Shape<Citation | undefined> = single('citation', (node, key, context) => {
  const words = readWords(node, key, context, 'citation');
  if (words === undefined) return undefined;
  const read = parseCitation(words, context.range(node));
  if (read === undefined) tellWrongType(node, key, 'citation', context);
  return read;
});

/** An amount; words without a figure are an amount in words, a figure that cannot be read is told. */
export const amount: Shape<Amount | undefined> = single('amount', (node, key, context) => {
  const words = readWords(node, key, context, 'amount');
  if (words === undefined) return undefined;
  const read = parseAmount(words);
  if (read.value === undefined && /\d/.test(words)) tell('amount-unreadable', node, [words, key], context, 'warning');
  return read;
});

/** A mass of fibre, in grams. */
export const grams: Shape<number | undefined> = single('mass', (node, key, context) => {
  const words = readWords(node, key, context, 'mass');
  if (words === undefined) return undefined;
  const read = parseFibreGrams(words);
  if (read === 'unreadable') tell('amount-unreadable', node, [words, key, ...(/^\d+$/.test(words) ? [`${words} g`] : [])], context);
  else if (read === 'out-of-range') tell('number-out-of-range', node, [words, key, '0 g', '100 kg'], context);
  else return read;
  return undefined;
});
