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

test('a region may stand in the world and in another; the world stands in none', () => {
  const both = regionTree([
    { id: 'europe', parents: [], near: [] },
    { id: 'norse', parents: [WORLD, 'europe'], near: [] },
  ]);
  expect(both.parentsOf('norse')).toEqual([WORLD, 'europe']);
  expect([both.parentsOf(WORLD), [...both.ancestorsOf(WORLD)]]).toEqual([[], []]);
});

test('a region that no note names has no place: it lies in nothing, and elsewhere', () => {
  expect([tree.parentsOf('nowhere'), [...tree.ancestorsOf('nowhere')], tree.within('nowhere')]).toEqual([[], [], ['nowhere']]);
  expect(tree.relation('nowhere', 'york')).toBe('elsewhere');
});

test('a region near itself, or near the world, borders nobody by that', () => {
  const odd = regionTree([
    { id: 'england', parents: [], near: ['england', WORLD] },
    { id: 'york', parents: ['england'], near: [] },
    { id: 'kent', parents: ['england'], near: [] },
    { id: 'ireland', parents: [], near: [] },
  ]);
  expect(odd.relation('kent', 'york')).toBe('elsewhere');
  expect([odd.relation('ireland', 'england'), odd.relation('england', 'ireland')]).toEqual(['elsewhere', 'elsewhere']);
});

test('what holds a region in very many ways is told once, and told at all', () => {
  const levels = Array.from({ length: 40 }, (_, level) => [`left-${level}`, `right-${level}`]);
  const lattice = regionTree(
    levels.flatMap((pair, level) => pair.map((id) => ({ id, parents: level === 0 ? [] : (levels[level - 1] ?? []), near: [] }))),
  );
  expect(lattice.within('right-37').toSorted()).toEqual(['left-38', 'left-39', 'right-37', 'right-38', 'right-39']);
  expect([...lattice.ancestorsOf('left-39')].toSorted()).toEqual([...levels.slice(0, 39).flat(), WORLD].toSorted());
});

describe('regionTree, its regions', () => {
  test('hold themselves and whatever lies within them, as relation has it', () => {
    for (const id of tree.ids) {
      const held = tree.ids.filter((one) => ['here', 'within'].includes(tree.relation(one, id)));
      expect(tree.within(id).toSorted(), id).toEqual(held.toSorted());
    }
    expect(tree.within('england').toSorted()).toEqual(['danelaw', 'england', 'york']);
  });

  test('are the given ones and the world, and no others', () => {
    expect(tree.ids).toEqual(expect.arrayContaining([WORLD, 'york', 'lost']));
    expect([WORLD, 'york', 'nowhere'].map((id) => tree.has(id))).toEqual([true, true, false]);
  });
});
