import { expect, test } from 'vitest';
import { WordRecords } from '../../../web/search/frozen/word-records.ts';
import { wordsOf } from '../../../web/search/search-options.ts';
import { fc } from '../../helpers/property.ts';

/** The words it finds in a text, one record each. */
function found(words: WordRecords, text: string): string[] {
  return Array.from(words.read(text), (record) => words.wordOf(record));
}

const known = () => {
  const told: string[] = [];
  const words = new WordRecords((word) => told.push(word));
  return { words, told };
};

test.each([
  ['Weld, woad; madder.', ['Weld', 'woad', 'madder']],
  ["dyer's broom, l’écarlate ‘kermes’", ["dyer's", 'broom', 'l’écarlate', 'kermes']],
  ['co\u00ADchi\u00ADneal 1,5 %', ['co\u00ADchi\u00ADneal', '1', '5']],
  ['茜草で𐌰𐌱染める', ['茜草で𐌰𐌱染める']],
  ['', []],
])('finds the words of “%s”', (text, words) => {
  expect(found(known().words, text)).toEqual(words);
  expect(wordsOf(text)).toEqual(words);
});

test('finds in any text the words that the rule finds', () => {
  const sign = fc.oneof(
    fc.constantFrom(..."aé9ß\u0301\u00AD'’‘-_ .\n—\u200D"),
    fc.constantFrom('\uD800', '\uDF30', '\u{10330}', '\u{1F600}', 'ʿ', 'ﷺ'),
    fc.string({ unit: 'binary', minLength: 1, maxLength: 2 }),
  );
  const { words, told } = known();
  fc.assert(
    fc.property(fc.array(sign, { maxLength: 40 }), (signs) => {
      const text = signs.join('');
      expect(found(words, text)).toEqual(wordsOf(text));
    }),
    { numRuns: 600, seed: 4 },
  );
  expect(new Set(told).size).toBe(told.length);
});

test('asks the rule about every sign alike, alone and between letters', () => {
  const { words } = known();
  for (let unit = 0; unit < 0x1_0000; unit += 1) {
    const text = `${String.fromCharCode(unit)} a${String.fromCharCode(unit)}a`;
    const [mine, rule] = [found(words, text), wordsOf(text)];
    if (mine.join('\n') !== rule.join('\n')) expect(mine, unit.toString(16)).toEqual(rule);
  }
});

test('knows a word again among very many, and one that is very long', () => {
  const { words, told } = known();
  const many = Array.from({ length: 20_000 }, (_, nth) => `w${nth}`);
  const first = [...words.read(many.join(' '))];
  expect([...words.read(many.join('/'))]).toEqual(first);
  expect(told).toEqual(many);
  const long = 'x'.repeat(100_001);
  expect(found(words, `${long} ${long}y`)).toEqual([long, `${long}y`]);
});
