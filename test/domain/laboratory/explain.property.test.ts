import { describe, expect, test } from 'vitest';
import { explain, type LabAnswer } from '../../../web/domain/laboratory/explain.ts';
import { type Finding, FOUND, type LabReport } from '../../../web/domain/laboratory/findings.ts';
import { chancesOf } from '../../../web/domain/laboratory/likelihood.ts';
import { COMPOUNDS } from '../../../web/domain/laboratory/tables/compounds.ts';
import { DYE_PROFILES } from '../../../web/domain/laboratory/tables/dye-profiles.ts';
import { MARKER_RATIOS } from '../../../web/domain/laboratory/tables/marker-ratios.ts';
import { LAB_METHODS } from '../../../web/domain/laboratory/tables/methods.ts';
import { fc, runs } from '../../helpers/property.ts';

const ORGANIC = COMPOUNDS.filter(({ family }) => family !== 'element').map(({ name }) => name);
const holders = (compound: string) => DYE_PROFILES.filter(({ holds }) => holds.some((one) => one.compound === compound));
const ONLY_ONE = ORGANIC.filter((name) => holders(name).length === 1);
const finding = fc.record({ compound: fc.constantFrom(...ORGANIC), found: fc.constantFrom(...FOUND) });
const findings = fc.uniqueArray(finding, { minLength: 1, maxLength: 5, selector: ({ compound }) => compound });
const ratio = fc
  .constantFrom(...MARKER_RATIOS)
  .chain((one) =>
    fc.record({ ratio: fc.constant(one.name), value: fc.double({ min: 0.001, max: one.scale === 'share' ? 1 : 50, noNaN: true }) }),
  );
const report: fc.Arbitrary<LabReport> = fc.record({
  method: fc.constantFrom(...LAB_METHODS),
  findings,
  ratios: fc.uniqueArray(ratio, { maxLength: 2, selector: (one) => one.ratio }),
});
const context = { profiles: DYE_PROFILES };
const shareOf = (answer: LabAnswer, dye: string) => answer.sources.find((one) => one.dye === dye)?.share ?? 0;
const rankOf = (answer: LabAnswer, dye: string) => {
  const at = answer.sources.findIndex((one) => one.dye === dye);
  return at < 0 ? Infinity : at;
};

describe('explain', () => {
  test('a compound that only one source has never lowers that source', () => {
    fc.assert(
      fc.property(report, fc.constantFrom(...ONLY_ONE), fc.constantFrom('present' as const, 'trace' as const), (given, compound, found) => {
        fc.pre(!given.findings.some((one) => one.compound === compound));
        const dye = holders(compound)[0]?.dye ?? '';
        const before = explain(given, context);
        const after = explain({ ...given, findings: [...given.findings, { compound, found }] }, context);
        // A candidate already: its share may only grow. A trace of a main compound is still better than none at all.
        if (found === 'present') {
          expect(shareOf(after, dye)).toBeGreaterThanOrEqual(shareOf(before, dye) - 1e-9);
          expect(rankOf(after, dye)).toBeLessThanOrEqual(rankOf(before, dye));
        } else expect(shareOf(after, dye)).toBeGreaterThanOrEqual(shareOf(before, dye) * 0.999 - 1e-9);
      }),
      runs(150),
    );
  });

  test('the order of the findings and ratios does not matter', () => {
    fc.assert(
      fc.property(report, (given) => {
        const turned = { ...given, findings: [...given.findings].reverse(), ratios: [...given.ratios].reverse() };
        expect(explain(turned, context).explanations).toEqual(explain(given, context).explanations);
      }),
      runs(60),
    );
  });

  test('shares lie in 0–1 and those of all explanations add up to 1', () => {
    fc.assert(
      fc.property(report, (given) => {
        const { explanations, sources } = explain(given, context);
        for (const { share } of [...explanations, ...sources]) expect(share >= 0 && share <= 1).toBe(true);
        if (explanations.length > 0) expect(explanations.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      }),
      runs(60),
    );
  });

  test('a line not tested changes nothing', () => {
    fc.assert(
      fc.property(report, fc.constantFrom(...ORGANIC), (given, compound) => {
        fc.pre(!given.findings.some((one) => one.compound === compound));
        const line: Finding = { compound, found: 'not-tested' };
        expect(explain({ ...given, findings: [...given.findings, line] }, context).explanations).toEqual(
          explain(given, context).explanations,
        );
      }),
      runs(40),
    );
  });
});

describe('chancesOf', () => {
  test('are chances, together 1, and one dye more never makes a compound less likely to be found', () => {
    const dyes = fc.uniqueArray(fc.constantFrom(...DYE_PROFILES), { maxLength: 3, selector: ({ dye }) => dye });
    const all = fc.tuple(
      fc.constantFrom(...COMPOUNDS),
      dyes,
      fc.constantFrom(...DYE_PROFILES),
      fc.constantFrom(...LAB_METHODS),
      fc.double({ min: 0, max: 1, noNaN: true }),
    );
    fc.assert(
      fc.property(all, ([compound, some, one, method, aged]) => {
        const less = chancesOf(compound, some, method, aged);
        for (const chance of Object.values(less)) expect(chance >= 0 && chance <= 1).toBe(true);
        expect(less.present + less.trace + less.absent).toBeCloseTo(1, 12);
        const more = chancesOf(compound, [...some, one], method, aged);
        expect(more.absent).toBeLessThanOrEqual(less.absent + 1e-12);
      }),
    );
  });
});
