import { describe, expect, test } from 'vitest';
import { isNear, mayBeginNear } from '../../../web/search/frozen/near-terms.ts';
import { fc, runs } from '../../helpers/property.ts';

/** Few letters, so that they repeat: where a letter stands twice, it is not to be told which of the two is the slip. */
const words = fc.string({ unit: fc.constantFrom('a', 'b', 'ä', 'ʿ'), minLength: 1, maxLength: 7 });

describe('whether a term that begins so may be one letter off', () => {
  test('is never denied of a term that is', () => {
    fc.assert(
      fc.property(words, words, (word, term) => {
        fc.pre(isNear(word, term));
        for (let length = 0; length <= term.length; length += 1) expect(mayBeginNear(word, term.slice(0, length))).toBe(true);
      }),
      runs(2000),
    );
  });

  test.each([
    ['madder', 'we', false],
    ['madder', 'mo', true],
    ['madder', 'moo', false],
    ['madder', 'add', true],
    ['madder', 'xma', true],
    ['madder', 'mader', true],
    ['madder', 'maddersx', false],
    ['madder', '', true],
  ])('of %s: %s, %s', (word, beginning, may) => {
    expect(mayBeginNear(word, beginning)).toBe(may);
  });
});
