import { describe, expect, test } from 'vitest';
import { changeBetween, type PlainChange, plainOffset, withChanges, withPlainEndings } from '../../web/notebook/line-endings.ts';
import { fc, runs } from '../helpers/property.ts';

const piece = fc.constantFrom('\r\n', '\n', '\r', 'a', 'b', ' ', 'é', '😀');
const anyText = fc.array(piece, { maxLength: 30 }).map((parts) => parts.join(''));
const plainPiece = fc.constantFrom('\n', 'a', 'x', '');

const applied = (text: string, changes: readonly PlainChange[]): string =>
  changes.toReversed().reduce((now, { from, to, insert }) => now.slice(0, from) + insert + now.slice(to), text);

/** Ordered changes inside a text of this length. */
const changesIn = (length: number) =>
  fc
    .array(
      fc.tuple(
        fc.nat(length),
        fc.nat(length),
        fc.array(plainPiece, { maxLength: 3 }).map((parts) => parts.join('')),
      ),
      { maxLength: 3 },
    )
    .map((raw): readonly PlainChange[] => {
      let at = 0;
      return raw
        .map(([a, b, insert]) => ({ from: Math.min(a, b), to: Math.max(a, b), insert }))
        .sort((a, b) => a.from - b.from || a.to - b.to)
        .filter(({ from, to }) => {
          const fits = from >= at;
          if (fits) at = to + 1;
          return fits;
        });
    });

describe('withChanges', () => {
  test('the plain form of the result is the changed plain form', () => {
    const cases = anyText.chain((text) => fc.tuple(fc.constant(text), changesIn(withPlainEndings(text).length)));
    fc.assert(
      fc.property(cases, ([text, changes]) => {
        expect(withPlainEndings(withChanges(text, changes))).toBe(applied(withPlainEndings(text), changes));
      }),
      runs(3000),
    );
  });

  test('lines nobody touched keep their endings', () => {
    const text = 'one\r\ntwo\nthree\rfour\r\n';
    const at = withPlainEndings(text).indexOf('three');
    expect(withChanges(text, [{ from: at, to: at + 5, insert: 'drei\nvier' }])).toBe('one\r\ntwo\ndrei\r\nvier\rfour\r\n');
  });

  test('no change gives the very text', () => {
    fc.assert(fc.property(anyText, (text) => withChanges(text, []) === text));
  });
});

describe('changeBetween', () => {
  test('turns one text into the other', () => {
    fc.assert(
      fc.property(anyText, anyText, (raw, other) => {
        const [before, after] = [withPlainEndings(raw), withPlainEndings(other)];
        const change = changeBetween(before, after);
        expect(change ? applied(before, [change]) : before).toBe(after);
      }),
    );
  });
});

describe('plainOffset', () => {
  test('counts a CRLF as one, before, in and behind it', () => {
    expect([0, 1, 2, 3, 4].map((offset) => plainOffset('a\r\nb', offset))).toEqual([0, 1, 1, 2, 3]);
  });
});
