import { describe, expect, test } from 'vitest';
import { seeded } from '../../../web/elements/shared/seeded.ts';
import { weaveKindOf, weaveOf } from '../../../web/elements/swatch/weave.ts';

describe('weaveKindOf', () => {
  test.each([
    ['wool', 'twill'],
    ['fine-wool', 'twill'],
    ['linen', 'slubbed'],
    ['nettle', 'slubbed'],
    ['silk', 'lustrous'],
    ['cotton', 'plain'],
    ['alum-tawed-skin', 'smooth'],
    ['something-else', 'plain'],
  ])('%s is drawn %s', (fibre, kind) => {
    expect(weaveKindOf(fibre)).toBe(kind);
  });
});

describe('weaveOf', () => {
  test.each(['twill', 'slubbed', 'lustrous', 'plain', 'smooth'] as const)('%s: light and shadow of every tile cancel out', (kind) => {
    for (const seed of ['a', 'b', 'madder-3']) {
      for (const { marks, size } of weaveOf(kind, seeded(seed)).tiles) {
        expect(marks.length).toBeGreaterThan(10);
        const sum = marks.reduce((total, { k, area }) => total + k * area, 0);
        expect(Math.abs(sum / size ** 2)).toBeLessThan(1e-9);
      }
    }
  });

  test('one seed gives one cloth, another gives another', () => {
    expect(weaveOf('twill', seeded('a'))).toEqual(weaveOf('twill', seeded('a')));
    expect(weaveOf('twill', seeded('a'))).not.toEqual(weaveOf('twill', seeded('b')));
  });
});
