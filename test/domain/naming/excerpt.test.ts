import { describe, expect, it, test } from 'vitest';
import { excerptOf, isInLinkTarget } from '../../../web/domain/naming/excerpt.ts';

const around = (text: string, word: string) => {
  const start = text.indexOf(word);
  return excerptOf(text, start, start + word.length);
};

describe('an excerpt', () => {
  it('keeps to the item of the list it stands in', () => {
    const recipe = 'ingredients:\n  - { what: alum, amount: 10 % }\n  - { what: weld, amount: 50 % }\n  - { what: chalk }\n';
    expect(around(recipe, 'weld')).toEqual({ before: 'what: ', found: 'weld', after: ', amount: 50 %' });
  });

  it('keeps to its paragraph, over the ends of its lines', () => {
    const text = 'Of madder.\r\n\r\nThe dyer took\r\nweld at noon.\r\n\r\nOf woad.';
    expect(around(text, 'weld')).toEqual({ before: 'The dyer took ', found: 'weld', after: ' at noon.' });
  });

  it('takes a dash inside a line for no new item', () => {
    expect(around('dyed - with weld - and iron', 'weld')).toEqual({ before: 'dyed - with ', found: 'weld', after: ' - and iron' });
  });

  it('leaves the marks of Markdown out and cuts at the end of a word', () => {
    const { before, after } = around(`${'wool '.repeat(20)}*with* weld, [see](woad.md)`, 'weld');
    expect(before).toMatch(/^…(wool )+with $/);
    expect(after).toBe(', see');
  });

  it('says where a link leads behind what it says, when that is what was found', () => {
    const text = 'Violets with [the root](../dyestuffs/madder.md) and old blacks.';
    expect(around(text, 'madder')).toEqual({ before: 'Violets with the root (', found: 'madder', after: ') and old blacks.' });
    expect(around('[the root](madder.md "A red")', 'madder').before).toBe('the root (');
    expect(around('[the root](madder.md) (madder, said he)', 'madder, said').before).toBe('the root (');
  });
});

test.each([
  ['[root](madder.md)', true],
  ['[root](../dye/madder.md)', true],
  ['[madder](root.md)', false],
  ['[root](root.md) madder', false],
  ['(madder)', false],
])('whether %s leads to madder', (text, leads) => expect(isInLinkTarget(text, text.indexOf('madder'))).toBe(leads));
