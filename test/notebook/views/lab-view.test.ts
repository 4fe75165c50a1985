import { describe, expect, test } from 'vitest';
import { labNote } from '../../../web/notebook/lab-note.ts';
import { type LabView, labView } from '../../../web/notebook/views/lab-view.ts';
import { EMPTY_LAB, type TypedLab } from '../../../web/notebook/typed-lab.ts';
import type { Found } from '../../../web/domain/laboratory/findings.ts';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';
import { textFindings } from '../../../web/notebook/check-notebook.ts';

const notebook = await demoNotebook();
const typed = (findings: Readonly<Record<string, Found>>, more: Partial<TypedLab> = {}): TypedLab => ({
  ...EMPTY_LAB,
  findings: Object.entries(findings).map(([compound, found]) => ({ compound, found })),
  ...more,
});
const view = (report: TypedLab): LabView => {
  const result = labView(notebook, report);
  if ('problems' in result) throw new Error(JSON.stringify(result.problems));
  return result.lab;
};
const hanse = { region: 'hanse-towns', when: 'c. 1370', fibre: 'wool' };

describe('labView', () => {
  test('folds the indigo plants under the likeliest and says that nothing tells them apart', () => {
    const lab = view(typed({ indigotin: 'present' }, hanse));
    expect(lab.explanations[0]?.dyes.map(({ id }) => id)).toEqual(['woad']);
    expect(lab.explanations.slice(1).some(({ id }) => ['indigo', 'dyers-knotweed'].includes(id))).toBe(false);
    expect(lab.explanations[0]?.notTold.join(' ')).toContain('No compound in these tables tells');
  });

  test('sets aside by place and date with the verdict of the notes, and names what it would explain', () => {
    const lab = view(typed({ 'carminic acid': 'present' }, { region: 'italy', when: '1350' }));
    expect(lab.ruledOut.join(' ')).toMatch(/American cochineal would explain carminic acid\. (Out of period|Contradicted)/);
    // The verdict's reason is a claim: place, years, evidence and source.
    expect(lab.ruledOut.find((line) => line.startsWith('American cochineal'))).toMatch(
      /Your notes (?:first have it in|have it so for) .*\d{3,4}.* \(.+\)\.$/,
    );
    expect(lab.explanations.some(({ dyes }) => dyes.some(({ id }) => id === 'american-cochineal'))).toBe(false);
  });

  test('names a further test for sources that are not told apart', () => {
    const lab = view(typed({ luteolin: 'present', apigenin: 'present' }, hanse));
    expect(lab.tests.join(' ')).toContain('genistein');
  });

  test('a place without a date sets nothing aside and says so', () => {
    const lab = view(typed({ haematein: 'present' }, { region: 'england' }));
    expect(lab.explanations[0]?.id).toBe('logwood');
    expect(lab.remarks.join(' ')).toContain('No place and date together');
  });

  test('nothing found is not undyed', () => {
    const lab = view(typed({ alizarin: 'absent' }, hanse));
    expect(lab.explanations).toEqual([]);
    expect(lab.why).toContain('not undyed');
  });

  test('an element is told as mordant with how it stands', () => {
    expect(view(typed({ alizarin: 'present', tin: 'present' }, { region: 'england', when: '1350' })).mordants.join(' ')).toMatch(
      /tin \((not yet known|known to be absent)\)/i,
    );
  });

  test('an unknown compound is told with the nearest, an unknown place is a problem', () => {
    expect(view(typed({ alizarine: 'present' })).remarks.join(' ')).toContain('alizarin');
    const result = labView(notebook, typed({ alizarin: 'present' }, { region: 'Atlantis', when: '1350' }));
    expect('problems' in result && result.problems[0]).toMatchObject({ part: 'region', problem: 'unknown' });
  });
});

describe('labNote', () => {
  const report = typed(
    { indigotin: 'present', luteolin: 'trace', alizarin: 'absent' },
    { ...hanse, source: 'crowfoot-1992, p. 200', ratios: [{ ratio: 'alizarin:purpurin', value: 2.2 }] },
  );

  test('is a textile without errors whose thread names compounds, and no dye unless one is taken', () => {
    const { path, text } = labNote(notebook.base, report, view(report));
    const { value, diagnostics } = parseNote(path, text);
    expect(diagnostics).toEqual([]);
    expect(value.record).toMatchObject({
      kind: 'textile',
      threads: [{ markers: ['indigotin', 'luteolin'], dyes: [], tested: 'found' }],
    });
    expect(textFindings(notebook, path, text).filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  test('carries the dyes that were taken, and takes a free id', () => {
    const { id, text } = labNote(notebook.base, report, view(report), ['woad', 'weld']);
    const { value } = parseNote('x.md', text);
    expect(value.record.kind === 'textile' && value.record.threads[0]?.dyes.map((one) => one.text)).toEqual(['woad', 'weld']);
    expect(notebook.base.note(id)).toBeUndefined();
  });

  test('nothing found is none-detected, and makes no claim', () => {
    const none = typed({ alizarin: 'absent' }, hanse);
    const { value } = parseNote('x.md', labNote(notebook.base, none, view(none)).text);
    expect(value.record.kind === 'textile' && value.record.threads[0]?.tested).toBe('none-detected');
  });
});
