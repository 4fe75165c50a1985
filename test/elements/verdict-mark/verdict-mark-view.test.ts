import { describe, expect, test } from 'vitest';
import { VERDICTS } from '../../../web/domain/verdict/standing-words.ts';
import { MARK_BOX, verdictMarkView } from '../../../web/elements/verdict-mark/verdict-mark-view.ts';

/** Every absolute point of a path. */
const points = (d: string): readonly (readonly [number, number])[] =>
  [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)(?=[LQCSMZ ]|$|a)/g)].map((found) => [Number(found[1]), Number(found[2])]);

describe('verdictMarkView', () => {
  test.each(VERDICTS)('%s: the cloth lies inside the mark, and it has a word and a hem', (verdict) => {
    const { cloth, hem, word } = verdictMarkView(verdict, 2);
    expect(word).not.toBe('');
    expect(hem.length).toBeGreaterThan(0);
    expect(points(cloth).length).toBeGreaterThan(3);
    for (const [x, y] of points(cloth)) {
      expect(x >= 0 && x <= MARK_BOX.width && y >= 0 && y <= MARK_BOX.height).toBe(true);
    }
  });

  test('no two verdicts are drawn alike', () => {
    const drawn = VERDICTS.map((verdict) => {
      const { cloth, hem } = verdictMarkView(verdict, 0);
      return JSON.stringify([cloth, hem]);
    });
    expect(new Set(drawn).size).toBe(VERDICTS.length);
  });
});
