import { describe, expect, test } from 'vitest';
import { regionTree, WORLD } from '../../../web/domain/place/region-tree.ts';

const tree = regionTree([
  { id: 'europe', parents: [], near: [] },
  { id: 'england', parents: ['europe'], near: ['ireland'] },
  { id: 'york', parents: ['england'], near: [] },
  { id: 'ireland', parents: ['europe'], near: [] },
  { id: 'dublin', parents: ['ireland'], near: [] },
  { id: 'scotland', parents: ['europe'], near: [] },
  { id: 'danelaw', parents: ['england', 'norse'], near: [] },
  { id: 'norse', parents: [], near: [] },
  { id: 'lost', parents: ['nowhere'], near: [] },
  { id: 'a', parents: ['b'], near: [] },
  { id: 'b', parents: ['a'], near: [] },
  { id: 'inside-circle', parents: ['a'], near: [] },
  { id: 'itself', parents: ['itself'], near: [] },
]);

describe('regionTree relation', () => {
  test.each([
    ['england', 'england', 'here'],
    ['york', 'england', 'within'],
    ['york', 'europe', 'within'],
    ['danelaw', 'norse', 'within'],
    ['europe', 'york', 'around'],
    ['norse', 'danelaw', 'around'],
    ['ireland', 'england', 'neighbour'],
    ['england', 'ireland', 'neighbour'],
    ['ireland', 'york', 'neighbour'],
    ['dublin', 'york', 'neighbour'],
    ['scotland', 'england', 'elsewhere'],
    ['york', WORLD, 'within'],
    [WORLD, WORLD, 'here'],
    [WORLD, 'york', 'around'],
    ['lost', WORLD, 'within'],
    ['a', WORLD, 'within'],
  ])('a claim of %s seen from %s is %s', (claim, asked, relation) => {
    expect(tree.relation(claim, asked)).toBe(relation);
  });

  test('puts regions without a readable parent, or in a circle, under world', () => {
    expect(tree.parentsOf('lost')).toEqual([WORLD]);
    expect(tree.parentsOf('a')).toEqual([WORLD]);
    expect(tree.parentsOf('itself')).toEqual([WORLD]);
    expect(tree.parentsOf('inside-circle')).toEqual(['a']);
    expect([...tree.inCircle].sort()).toEqual(['a', 'b', 'itself']);
  });
});

describe('regionTree, its regions', () => {
  test('are the given ones and the world, and no others', () => {
    expect(tree.ids).toEqual(expect.arrayContaining([WORLD, 'york', 'lost']));
    expect([WORLD, 'york', 'nowhere'].map((id) => tree.has(id))).toEqual([true, true, false]);
  });
});
