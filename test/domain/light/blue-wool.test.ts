import { describe, expect, test } from 'vitest';
import { hullOf, readBlueWool } from '../../../web/domain/light/blue-wool.ts';

describe('readBlueWool', () => {
  test.each([
    ['3-4', 'ISO 105-B02', { from: 3, to: 4 }],
    ['5–6', 'blue wool, BS 1–8', { from: 5, to: 6 }],
    ['7', 'blue wool class', { from: 7, to: 7 }],
    ['6 to 4', '', { from: 4, to: 6 }],
    ['BW 2', undefined, { from: 2, to: 2 }],
  ])('reads %s on %s', (grade, scale, range) => {
    expect(readBlueWool(grade, scale)).toEqual(range);
  });

  test.each([
    ['below L2', 'AATCC blue wool, L2–L9', 'other-scale'],
    ['4', 'AATCC blue wool, L2–L9', 'other-scale'],
    ['L4', 'ISO 105-B02', 'other-scale'],
    ['4', 'grey scale, ISO 105-A02', 'other-scale'],
    ['4', 'stars', 'other-scale'],
    ['9', 'ISO 105-B02', 'unreadable'],
    ['poor', 'ISO 105-B02', 'unreadable'],
    ['', 'ISO 105-B02', 'no-grade'],
    [undefined, undefined, 'no-grade'],
  ])('%s on %s gives no class: %s', (grade, scale, reason) => {
    expect(readBlueWool(grade, scale)).toBe(reason);
  });
});

describe('hullOf', () => {
  test('holds every source', () => {
    expect(
      hullOf([
        { from: 4, to: 6 },
        { from: 3, to: 6 },
        { from: 5, to: 7 },
      ]),
    ).toEqual({ from: 3, to: 7 });
    expect(hullOf([])).toBeUndefined();
  });
});
