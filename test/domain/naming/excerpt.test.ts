import { describe, expect, it } from 'vitest';
import { excerptOf } from '../../../web/domain/naming/excerpt.ts';

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
});
