import { parse } from 'yaml';
import { describe, expect, test } from 'vitest';
import { blockYaml, inlineYaml, literalYaml } from '../../../web/domain/note/yaml-text.ts';
import type { PlainValue, Quote } from '../../../web/domain/note/yaml-text.ts';
import { AWKWARD_WORDS } from '../../helpers/arbitrary-note.ts';
import { fc } from '../../helpers/property.ts';

const word = fc.oneof(
  fc.constantFrom(...AWKWARD_WORDS),
  fc.string({ unit: 'grapheme', maxLength: 12 }),
  fc.string({ unit: 'binary', maxLength: 6 }),
);
const { value } = fc.letrec<{ value: PlainValue }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 3 },
    word,
    fc.integer(),
    fc.boolean(),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(
      word.filter((key) => key !== '__proto__'),
      tie('value'),
      { maxKeys: 4, noNullPrototype: true },
    ),
  ),
}));
const quote = fc.constantFrom<Quote>('plain', 'single', 'double');

describe('inlineYaml', () => {
  test('reads back as what was written, between brackets and outside, in any quotes', () => {
    fc.assert(
      fc.property(value, quote, (written, quotes) => {
        expect(parse(`v: ${inlineYaml(written, false, quotes)} # remark\n`)).toEqual({ v: written });
        expect(parse(`v: [${inlineYaml(written, true, quotes)}, { k: ${inlineYaml(written, true, quotes)} }]\n`)).toEqual({
          v: [written, { k: written }],
        });
      }),
      { numRuns: 2000, seed: 6 },
    );
  });

  test.each<[PlainValue, string]>([
    ['Madder', 'Madder'],
    ['15 %', '15 %'],
    ['c. 1290–1350', 'c. 1290–1350'],
    ['yes', 'yes'],
    ['2025-05-14', '2025-05-14'],
    ['0700', '"0700"'],
    ['true', '"true"'],
    ['#8a2b2b', '"#8a2b2b"'],
    ['a: b', '"a: b"'],
    [{ what: 'alum', amounts: [1, 2] }, '{ what: alum, amounts: [1, 2] }'],
    [[], '[]'],
  ])('%j is written %s', (written, expected) => {
    expect(inlineYaml(written, false)).toBe(expected);
  });
});

describe('blockYaml', () => {
  test('reads back as what was written, at any column', () => {
    fc.assert(
      fc.property(value, fc.integer({ min: 0, max: 6 }), fc.constantFrom('\n', '\r\n'), (written, column, eol) => {
        expect(parse(`v:${eol}${' '.repeat(column + 1)}${blockYaml(written, column + 1, eol)}${eol}w: 1${eol}`)).toEqual({
          v: written,
          w: 1,
        });
      }),
      { numRuns: 1000, seed: 8 },
    );
  });
});

describe('literalYaml', () => {
  test('reads back as what was written, or leaves it to quotes', () => {
    let written = 0;
    const lines = fc
      .array(fc.constantFrom('', 'a', ' b', 'c: d', '# e', '- f', 'g ', '\th', 'ü'), { maxLength: 6 })
      .map((parts) => parts.join('\n'));
    fc.assert(
      fc.property(lines, fc.constantFrom('\n', '\r\n'), (text, eol) => {
        const literal = literalYaml(text, 2, eol);
        if (literal === undefined) return;
        written++;
        expect(parse(`v: ${literal}${eol}w: 1${eol}`)).toEqual({ v: text, w: 1 });
      }),
      { numRuns: 1000, seed: 9 },
    );
    expect(written).toBeGreaterThan(200);
  });
});
