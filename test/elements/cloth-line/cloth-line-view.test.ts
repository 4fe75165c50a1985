import { describe, expect, test } from 'vitest';
import { hangCloths, neighbourOf, spokenName, type ClothItem } from '../../../web/elements/cloth-line/cloth-line-view.ts';

const cloth = (id: string, group?: string): ClothItem => ({ id, name: id, hex: '#a63d2b', fibre: 'wool', group });
const ids = (hung: ReturnType<typeof hangCloths>): string[] => hung.map(({ item, leaving }) => (leaving ? `(${item.id})` : item.id));

describe('hangCloths', () => {
  const before = hangCloths(
    [],
    ['a', 'b', 'c', 'd'].map((id) => cloth(id)),
    true,
  );

  test('new cloths hang in their order', () => {
    expect(
      ids(
        hangCloths(
          before,
          ['d', 'x', 'a'].map((id) => cloth(id)),
          false,
        ),
      ),
    ).toEqual(['d', 'x', 'a']);
  });

  test('what is no longer wanted leaves from where it hung', () => {
    expect(
      ids(
        hangCloths(
          before,
          ['a', 'd', 'e'].map((id) => cloth(id)),
          true,
        ),
      ),
    ).toEqual(['a', '(b)', '(c)', 'd', 'e']);
    expect(
      ids(
        hangCloths(
          before,
          ['b', 'c', 'd'].map((id) => cloth(id)),
          true,
        ),
      ),
    ).toEqual(['(a)', 'b', 'c', 'd']);
  });

  test('a cloth that comes back while it leaves is there again', () => {
    const leaving = hangCloths(before, [cloth('a')], true);
    expect(
      ids(
        hangCloths(
          leaving,
          ['a', 'b'].map((id) => cloth(id)),
          true,
        ),
      ),
    ).toEqual(['a', 'b', '(c)', '(d)']);
  });

  test('a change of group is a gap, and a leaving cloth makes none', () => {
    const line = hangCloths(before, [cloth('a', 'local'), cloth('e', 'local'), cloth('f', 'as cloth')], true);
    expect(line.filter(({ startsGroup }) => startsGroup).map(({ item }) => item.id)).toEqual(['a', 'f']);
    expect(line.filter(({ endsGroup, leaving }) => endsGroup && !leaving).map(({ item }) => item.id)).toEqual(['e']);
  });
});

describe('spokenName', () => {
  test('holds all that is seen', () => {
    const name = spokenName({ ...cloth('Murrey'), verdictWord: 'Plausible', predicted: true, detail: 'local' });
    for (const part of ['Murrey', 'Plausible', 'predicted', 'local']) expect(name).toContain(part);
  });
});

describe('neighbourOf', () => {
  // Two rows: a b c over d e.
  const places = [
    { id: 'a', left: 0, top: 0 },
    { id: 'b', left: 100, top: 0 },
    { id: 'c', left: 200, top: 0 },
    { id: 'd', left: 0, top: 300 },
    { id: 'e', left: 130, top: 300 },
  ];
  test.each([
    ['ArrowRight', 'c', 'd'],
    ['ArrowRight', 'e', undefined],
    ['ArrowLeft', 'd', 'c'],
    ['ArrowLeft', 'a', undefined],
    ['ArrowDown', 'c', 'e'],
    ['ArrowDown', 'd', undefined],
    ['ArrowUp', 'e', 'b'],
    ['Home', 'e', 'a'],
    ['End', 'a', 'e'],
    ['x', 'a', undefined],
    ['ArrowRight', 'gone', 'a'],
  ])('%s from %s leads to %s', (key, from, to) => {
    expect(neighbourOf(key, from, places)).toBe(to);
  });
});
