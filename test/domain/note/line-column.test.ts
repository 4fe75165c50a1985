import { describe, expect, test } from 'vitest';
import { lineColumn, lineStarts, startOf } from '../../../web/domain/note/line-column.ts';
import { fc } from '../../helpers/property.ts';

describe('lineColumn', () => {
  test.each<[string, string, number, number, number]>([
    ['the first place', 'ab\ncd', 0, 1, 1],
    ['the line end itself', 'ab\ncd', 2, 1, 3],
    ['after LF', 'ab\ncd', 3, 2, 1],
    ['after CRLF', 'ab\r\ncd', 4, 2, 1],
    ['between CR and LF', 'ab\r\ncd', 3, 1, 4],
    ['after a lone CR', 'ab\rcd', 3, 2, 1],
    ['the end of the text', 'ab\ncd', 5, 2, 3],
    ['a last empty line', 'ab\n', 3, 2, 1],
    ['a byte order mark is no column', '\uFEFFab\ncd', 1, 1, 1],
    ['before the first place', '\uFEFFab', 0, 1, 1],
    ['a wool emoji counts as two', '🧶x', 2, 1, 3],
    ['an empty text', '', 0, 1, 1],
  ])('%s', (_, text, offset, line, column) => {
    expect(startOf(text, [offset, offset])).toEqual({ line, column });
  });

  test('agrees with counting line ends, for any text', () => {
    const text = fc.array(fc.constantFrom('\r', '\n', '\r\n', 'a', 'bc')).map((parts) => parts.join(''));
    fc.assert(
      fc.property(text, fc.nat(), (source, at) => {
        const offset = at % (source.length + 1);
        // A CR whose LF lies at the offset has not ended its line yet.
        const before = source.slice(0, offset);
        const pending = before.endsWith('\r') && source[offset] === '\n' ? 1 : 0;
        const lines = before.split(/\r\n|\r|\n/).length - pending;
        expect(lineColumn(lineStarts(source), offset).line).toBe(lines);
      }),
      { numRuns: 2000, seed: 4 },
    );
  });
});
