import { detection } from '../../../web/domain/laboratory/likelihood.ts';
import { findCompound as compoundNamed } from '../../../web/domain/laboratory/find-compound.ts';
import { describe, expect, test } from 'vitest';
import { genericName, genericNamesOf } from '../../../web/domain/laboratory/colour-index.ts';
import { explain, type LabContext } from '../../../web/domain/laboratory/explain.ts';
import type { Found, LabReport } from '../../../web/domain/laboratory/findings.ts';
import { furtherTests } from '../../../web/domain/laboratory/further-tests.ts';
import { notToldApart } from '../../../web/domain/laboratory/not-told-apart.ts';
import { profilesOf } from '../../../web/domain/laboratory/profiles-of.ts';
import { reasonsFor } from '../../../web/domain/laboratory/reasons.ts';
import { COLOUR_INDEX } from '../../../web/domain/laboratory/colour-index.ts';
import { DYE_PROFILES } from '../../../web/domain/laboratory/tables/dye-profiles.ts';
import type { LabMethod } from '../../../web/domain/laboratory/tables/methods.ts';
import type { Standing } from '../../../web/domain/verdict/standing-words.ts';
import { aNotebook, aNote } from '../../helpers/a-notebook.ts';

const context: LabContext = { profiles: DYE_PROFILES };
const aReport = (findings: Readonly<Record<string, Found>>, method: LabMethod = 'hplc-dad', more: Partial<LabReport> = {}): LabReport => ({
  method,
  findings: Object.entries(findings).map(([compound, found]) => ({ compound, found })),
  ratios: [],
  ...more,
});
const share = (report: LabReport, dye: string, within = context) =>
  explain(report, within).sources.find((one) => one.dye === dye)?.share ?? 0;
const standings = (of: Readonly<Record<string, Standing>>): LabContext => ({ ...context, standingOf: (dye) => of[dye] ?? 'unrecorded' });

describe('explain', () => {
  test('an absence costs as much as the method would have shown', () => {
    const found = (method: LabMethod) => share(aReport({ purpurin: 'present', alizarin: 'absent' }, method), 'madder');
    expect(found('hplc-ms')).toBeLessThan(found('tlc'));
    expect(found('tlc')).toBeLessThan(found('spot-test'));
    expect(found('spot-test')).toBeCloseTo(share(aReport({ purpurin: 'present' }, 'spot-test'), 'madder'), 1);
  });

  test('a method that cannot see a kind of compound makes its absence say nothing', () => {
    const blind = aReport({ indigotin: 'present', bromine: 'absent' }, 'hplc-dad');
    expect(share(blind, 'shellfish-purple')).toBeCloseTo(share(aReport({ indigotin: 'present' }), 'shellfish-purple'), 9);
    const seeing = {
      ...blind,
      findings: [
        { compound: 'indigotin', found: 'present' as const },
        { compound: 'bromine', found: 'absent' as const, method: 'sem-edx' as const },
      ],
    };
    expect(share(seeing, 'shellfish-purple')).toBeLessThan(share(blind, 'shellfish-purple'));
  });

  test('what age takes is missed less in an old thread', () => {
    const report = aReport({ luteolin: 'present', genistein: 'absent' });
    expect(share(report, 'dyers-greenweed', { ...context, ageYears: 10 })).toBeLessThan(
      share(report, 'dyers-greenweed', { ...context, ageYears: 400 }),
    );
  });

  test('absent and not yet are set aside and still shown; no longer is ranked low', () => {
    const within = standings({ logwood: 'not-yet', kermes: 'local', lac: 'absent', 'polish-cochineal': 'no-longer' });
    const haem = explain(aReport({ haematein: 'present' }), within);
    expect(haem.explanations).toEqual([]);
    expect(haem.ruledOut.map(({ dyes }) => dyes)).toEqual([['logwood']]);
    expect(explain(aReport({ 'flavokermesic acid': 'present' }), within).ruledOut.map(({ dyes }) => dyes)).toContainEqual(['lac']);
    expect(share(aReport({ 'kermesic acid': 'present' }), 'polish-cochineal', within)).toBeGreaterThan(0);
    expect(share(aReport({ 'kermesic acid': 'present' }), 'kermes', within)).toBeGreaterThan(
      share(aReport({ 'kermesic acid': 'present' }), 'polish-cochineal', within),
    );
  });

  test('a compound the tables do not know is told, not used', () => {
    const answer = explain(aReport({ alizarin: 'present', unobtainin: 'present' }), context);
    expect(answer.unknown.map(({ compound }) => compound)).toEqual(['unobtainin']);
    expect(answer.explanations).toEqual(explain(aReport({ alizarin: 'present' }), context).explanations);
  });

  test('nothing found explains nothing, and does not say undyed', () => {
    const answer = explain(aReport({ alizarin: 'absent', indigotin: 'absent' }), context);
    expect(answer.explanations).toEqual([]);
    expect(answer.sources).toEqual([]);
  });

  test('a report that looked for everything counts what it does not name', () => {
    const open = aReport({ luteolin: 'present', apigenin: 'present' });
    expect(share({ ...open, elseAbsent: true }, 'dyers-greenweed')).toBeLessThan(share(open, 'dyers-greenweed'));
  });

  test('three dyes for a black', () => {
    const black = aReport({
      indigotin: 'present',
      alizarin: 'present',
      purpurin: 'present',
      'gallic acid': 'present',
      'ellagic acid': 'present',
    });
    const best = explain(black, standings({ woad: 'local', madder: 'imported', 'oak-galls': 'imported' })).explanations[0];
    expect([...(best?.dyes ?? [])].sort()).toEqual(['madder', 'oak-galls', 'woad']);
  });
});

describe('reasonsFor', () => {
  test('names what was found, what is missing and how likely it would have been seen', () => {
    const report = aReport({ luteolin: 'present', genistein: 'absent', indigotin: 'present', '3-O-methylquercetin': 'absent' }, 'hplc-ms');
    const answer = explain(report, { ...context, ageYears: 20 });
    const find = (dye: string) => answer.explanations.find(({ dyes }) => dyes.join() === dye);
    const greenweed = find('dyers-greenweed');
    const sawwort = find('sawwort');
    if (!greenweed || !sawwort) throw new Error('both are candidates');
    const reasons = reasonsFor(greenweed, answer, report, { ...context, ageYears: 20 });
    expect(reasons.speaksFor).toContainEqual({
      kind: 'found',
      compound: 'luteolin',
      found: 'present',
      from: [{ dye: 'dyers-greenweed', strength: 'main' }],
    });
    expect(reasons.against).toContainEqual({ kind: 'unexplained', compound: 'indigotin', found: 'present' });
    expect(reasons.against).toContainEqual(expect.objectContaining({ kind: 'missing', compound: 'genistein', dye: 'dyers-greenweed' }));
    // An old sawwort would mostly have lost it: the same absence then says little.
    expect(reasonsFor(sawwort, answer, report, context).weak).toContainEqual(expect.objectContaining({ compound: '3-O-methylquercetin' }));
  });
});

describe('notToldApart and furtherTests', () => {
  const report = aReport({ indigotin: 'present' });
  const answer = explain(report, standings({ woad: 'local', indigo: 'not-yet' }));
  const woad = answer.explanations.find(({ dyes }) => dyes.join() === 'woad');

  test('the indigo plants never, and place alone sets one aside', () => {
    if (!woad) throw new Error('woad is a candidate');
    const from = notToldApart(woad, answer, report, standings({ woad: 'local', indigo: 'not-yet' }))[0]?.from ?? [];
    expect(from.find(({ dye }) => dye === 'indigo')).toMatchObject({ never: true, ruledOut: true });
    expect(from.find(({ dye }) => dye === 'dyers-knotweed')).toMatchObject({ never: true, ruledOut: false });
  });

  test('no test is offered where the tables know none', () => {
    const [a, b] = ['woad', 'indigo'].map((id) => DYE_PROFILES.find(({ dye }) => dye === id));
    if (!a || !b) throw new Error('both are in the tables');
    expect(furtherTests(a, b, answer, report, context)).toEqual([]);
  });

  test('the alizarin to purpurin ratio is offered for madder against bedstraw', () => {
    const reds = aReport({ alizarin: 'present', purpurin: 'present' });
    const [a, b] = ['madder', 'ladys-bedstraw'].map((id) => DYE_PROFILES.find(({ dye }) => dye === id));
    if (!a || !b) throw new Error('both are in the tables');
    expect(furtherTests(a, b, explain(reds, context), reds, context)).toContainEqual(
      expect.objectContaining({ kind: 'ratio', ratio: 'alizarin:purpurin' }),
    );
  });
});

describe('profilesOf', () => {
  test('a dyestuff of the notebook alone is known by the markers of its note', () => {
    const { base } = aNotebook({
      'dyestuffs/my-lichen.md': aNote('kind: dyestuff\ntitle: My lichen\nmarkers: [Orcein, no such thing]'),
      'dyestuffs/madder.md': aNote('kind: dyestuff\ntitle: Madder\nmarkers: [alizarin]'),
    });
    const profiles = profilesOf(base);
    expect(profiles.find(({ dye }) => dye === 'my-lichen')?.holds).toMatchObject([{ compound: 'orceins', strength: 'minor' }]);
    expect(profiles.find(({ dye }) => dye === 'madder')?.holds.length).toBeGreaterThan(3);
    expect(profiles).toHaveLength(2);
  });
});

describe('the Colour Index names', () => {
  test.each([
    ['C.I. Natural Red 8', 'madder'],
    ['natural red 8', 'madder'],
    ['CI Natural Black 1', 'logwood'],
  ])('%s', (typed, dye) => expect(genericName(typed)?.dyes).toContain(dye));

  test('speak only of dyestuffs of the tables', () => {
    const known = new Set(DYE_PROFILES.map(({ dye }) => dye));
    expect(COLOUR_INDEX.flatMap(({ dyes }) => dyes).filter((dye) => !known.has(dye))).toEqual([]);
    expect(genericNamesOf('weld').map(({ name }) => name)).toEqual(['C.I. Natural Yellow 2']);
    expect(genericName('C.I. Natural Red 999')).toBeUndefined();
  });
});

describe('figures of a reader’s own', () => {
  const luteolin = compoundNamed('luteolin');
  if (!luteolin) throw new Error('no luteolin');

  test('take the place of the tables’, for that compound and method alone', () => {
    const figures = { reach: { 'hplc-dad': { luteolin: 0.5 } }, gone: { luteolin: 0 } };
    // Carried by 0.97 of dyeings, nothing gone, half of it shown.
    expect(detection(luteolin, 'main', 'hplc-dad', 1, figures)).toBeCloseTo(0.97 * 0.5, 12);
    expect(detection(luteolin, 'main', 'hplc-ms', 0, figures)).toBe(detection(luteolin, 'main', 'hplc-ms', 0));
  });

  test('what is no chance counts as nothing', () => {
    for (const bad of [-1, 2, NaN]) {
      expect(detection(luteolin, 'main', 'tlc', 1, { reach: { tlc: { luteolin: bad } }, gone: { luteolin: bad } })).toBe(
        detection(luteolin, 'main', 'tlc', 1),
      );
    }
  });
});
