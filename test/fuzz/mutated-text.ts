import { fc } from '../helpers/property.ts';

/** One change to a text; places are parts of a million of its length, so that they fit every text. */
interface Change {
  readonly at: number;
  readonly span: number;
  readonly how: 'cut' | 'double' | 'put' | 'repeat' | 'splice' | 'move' | 'end';
  readonly word: string;
}

/** What breaks readers of text: ends of nothing, signs of other formats, odd letters, numbers at the edge, names every object has. */
const AWKWARD: readonly string[] = [
  ['', ' ', '\n', '\r', '\r\n', '\t', '\u0000', '\uFEFF', '\u2028', '\uD800', '\u202E', '\u00a0', 'é', 'e\u0301', '茜', '🧶'],
  ['---', '- ', ': ', '[', ']', '{', '}', '(', ')', '"', "'", '`', '&a ', '*a', '|', '>', '#', ',', ';', '?', '!t ', '%', '<', '\\', '='],
  ['0', '-1', '1e999', '00', '9'.repeat(30), '0x1F', '1,000', '½', '1/0', 'NaN', 'Infinity', '−5', '10:75', '2026-02-30'],
  ['__proto__', 'constructor', 'toString', 'null', 'true', '~', '<script>', 'javascript:', '../', 'a'.repeat(300), '[['.repeat(40)],
].flat();

const changeTo = (words: readonly string[]): fc.Arbitrary<Change> =>
  fc.record({
    at: fc.nat(1_000_000),
    span: fc.oneof({ arbitrary: fc.nat(2_000), weight: 3 }, { arbitrary: fc.nat(200_000), weight: 1 }),
    how: fc.constantFrom('put', 'put', 'put', 'cut', 'double', 'repeat', 'splice', 'move', 'end'),
    word: fc.oneof(
      { arbitrary: fc.constantFrom(...AWKWARD, ...words), weight: 5 },
      { arbitrary: fc.string({ unit: 'binary', maxLength: 4 }), weight: 1 },
    ),
  });

function changed(text: string, { at, span, how, word }: Change, other: string): string {
  const placeIn = (whole: string, part: number) => Math.floor((whole.length * Math.min(part, 1_000_000)) / 1_000_000);
  const from = placeIn(text, at);
  const to = Math.max(from, placeIn(text, at + span));
  const [before, taken, after] = [text.slice(0, from), text.slice(from, to), text.slice(to)];
  switch (how) {
    case 'cut':
      return before + after;
    case 'double':
      return before + taken + taken + after;
    case 'put':
      return before + word + text.slice(from);
    case 'repeat':
      return before + word.slice(0, 20).repeat(20) + after;
    case 'splice':
      return before + other.slice(placeIn(other, at), placeIn(other, at + span)) + after;
    case 'move':
      return after + taken + before;
    default:
      return before;
  }
}

/**
 * Texts near the given ones: each a sample with up to eight changes, a piece of another sample among them; now and then any text at all.
 *
 * @param samples texts a reader takes; the nearer to them, the deeper a case goes.
 * @param words what the format itself is made of.
 */
export const mutatedText = (samples: readonly string[], words: readonly string[]): fc.Arbitrary<string> =>
  fc.oneof(
    {
      arbitrary: fc
        .tuple(fc.constantFrom(...samples), fc.constantFrom(...samples), fc.array(changeTo(words), { maxLength: 8 }))
        .map(([text, other, changes]) => changes.reduce((now, change) => changed(now, change, other).slice(0, 20_000), text)),
      weight: 8,
    },
    { arbitrary: fc.array(fc.constantFrom(...AWKWARD, ...words), { maxLength: 40 }).map((parts) => parts.join('')), weight: 1 },
    { arbitrary: fc.string({ unit: 'binary', maxLength: 80 }), weight: 1 },
  );
