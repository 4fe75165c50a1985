import { describe, expect, test } from 'vitest';
import { trialComparisonView } from '../../../web/notebook/views/trial-comparison-view.ts';
import { trialsView } from '../../../web/notebook/views/trials-view.ts';
import { trialView } from '../../../web/notebook/views/trial-view.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const demo = await demoNotebook();

describe('trialView', () => {
  test('a stand-in, its light test and its kin are there', () => {
    expect(trialView(demo, 'wq25-001')?.materials).toContainEqual(
      expect.objectContaining({ id: 'american-cochineal', standsFor: 'kermes', amount: '8 %' }),
    );
    const brazil = trialView(demo, 'wq24-041');
    expect(brazil?.lightTests.map(({ sample, readings }) => [sample, readings.length])).toEqual([['WQ24-041-1', 4]]);
    expect(brazil?.lightTests[0]?.strips).toEqual(['Blue wool 2 had reached grey-scale 4.']);
    expect(trialView(demo, 'wq24-034')?.ties.map(({ id }) => id)).toContain('wq24-027');
    expect(trialView(demo, 'wq24-027')?.ties.map(({ id }) => id)).toContain('wq24-034');
  });

  test('the other pots of its recipe stand by distance, the nearest first', () => {
    const { others } = trialView(demo, 'wq25-001') ?? { others: [] };
    const apart = others.map((one) => Number(/ΔE00 ([\d.]+)/.exec(one.apart)?.[1]));
    expect(apart.length).toBeGreaterThan(0);
    expect([...apart].sort((a, b) => a - b)).toEqual(apart);
  });

  test('a lot leads to every pot it went into, from each of them', () => {
    const one = trialView(demo, 'wq25-001');
    const [lot] = one?.lots ?? [];
    expect(lot?.others.map(({ id }) => id)).toContain('wq25-003');
    for (const { id } of lot?.others ?? [])
      expect(trialView(demo, id)?.lots.flatMap(({ others }) => others.map((other) => other.id))).toContain('wq25-001');
  });

  test('every trial of the demonstration opens, and other notes do not', () => {
    for (const { id } of demo.base.ofKind('trial')) expect(trialView(demo, id)?.cautions.at(-1), id).toMatch(/safety data sheet/);
    expect(trialView(demo, 'madder')).toBeUndefined();
  });
});

describe('trialsView', () => {
  test('of a dyestuff: also those in which it stands in for another, or another for it', () => {
    const ids = trialsView(demo, 'kermes').trials.map(({ id }) => id);
    expect(ids).toContain('wq24-001');
    expect(ids).toContain('wq25-001');
    expect(trialsView(demo, '').trials).toHaveLength(demo.base.ofKind('trial').length);
  });

  test('of a recipe it says whether it comes out alike', () => {
    expect(trialsView(demo, 'madder-alum-wool').repeatable).toMatch(/^Repeatable: (?:yes|no|untested)\./);
    expect(trialsView(demo, 'madder').repeatable).toBe('');
  });
});

describe('trialComparisonView', () => {
  test('each row has a value for every pot; unknown ids are told', () => {
    const view = trialComparisonView(demo, ['wq25-001', 'wq25-003', 'wq24-001', 'nowhere']);
    expect(view.missing).toEqual(['nowhere']);
    expect(view.colours).toHaveLength(3);
    for (const { values } of [...view.differences, ...view.unsaid]) expect(values).toHaveLength(3);
    expect(view.differences[0]?.label).toMatch(/dyestuff/i);
  });

  test('one pot cannot be compared', () => {
    expect(trialComparisonView(demo, ['wq25-001'])).toMatchObject({ says: '', differences: [], colours: [] });
  });
});
