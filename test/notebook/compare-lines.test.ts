import { describe, expect, test } from 'vitest';
import { compareLines } from '../../web/notebook/compare-lines.ts';
import { fc } from '../helpers/property.ts';

const lines = fc.array(fc.constantFrom('a', 'b', 'c', ''), { maxLength: 12 });

describe('compareLines', () => {
  test('same and gone lines are the earlier text, same and new lines the later', () => {
    fc.assert(
      fc.property(lines, lines, (a, b) => {
        const compared = compareLines(a.join('\n'), b.join('\r\n'));
        const side = (one: 'gone' | 'new') => compared.filter(({ is }) => is === 'same' || is === one);
        expect(side('gone').map(({ text }) => text)).toEqual(a.length === 0 ? [''] : a);
        expect(side('new').map(({ text }) => text)).toEqual(b.length === 0 ? [''] : b);
        expect(side('gone').map(({ before }) => before)).toEqual(side('gone').map((_, at) => at + 1));
        expect(side('new').map(({ after }) => after)).toEqual(side('new').map((_, at) => at + 1));
      }),
    );
  });

  test('a changed line is gone and new; the lines around it stay', () => {
    expect(compareLines('a\nb\nc', 'a\nx\nc').map(({ is, text }) => `${is} ${text}`)).toEqual(['same a', 'gone b', 'new x', 'same c']);
  });

  test('a line put in does not make the rest new', () => {
    expect(compareLines('a\nb\nc\nd', 'a\nx\nb\nd').filter(({ is }) => is !== 'same')).toHaveLength(2);
  });
});
