import { describe, expect, test } from 'vitest';
import { checkNote } from '../../../web/domain/claim/check-note.ts';
import type { Notebook } from '../../../web/notebook/notebook.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { notebookFindings } from '../../../web/notebook/check-notebook.ts';

/** What checking one file of a notebook finds: code, the words it stands at, what it is about. */
function found(notebook: Notebook, file: string, context: Parameters<typeof checkNote>[2] = {}) {
  const note = notebook.base.noteIn(file);
  if (!note) throw new Error(`${file} is not there`);
  return checkNote(notebook.base, note, context).map(({ code, severity, range, about }) => ({
    code,
    severity,
    at: note.source.slice(...range),
    about,
  }));
}

const CLAIM = 'region: england, when: 1200–1500, status: grown, known-by: text, source: book';
const base = {
  ...aWorld,
  'dyestuffs/madder.md': aDyestuff('Madder', CLAIM),
  'dyestuffs/weld.md': aDyestuff('Weld'),
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum\neveryday: true'),
};
const withNote = (text: string, more: Readonly<Record<string, string>> = {}) => aNotebook({ ...base, ...more, 'x/one.md': text });
const check = (text: string, more: Readonly<Record<string, string>> = {}, context: Parameters<typeof checkNote>[2] = {}) =>
  found(withNote(text, more), 'x/one.md', context);

describe('checkNote: materials of a recipe', () => {
  const recipe = (what: string, rest = '') =>
    aNote(`kind: recipe\nfibre: wool\ningredients:\n  - {what: alum, role: mordant}\n  - {what: ${what}, role: dye${rest}}`);

  test('says nothing of a material with claims, nor of an everyday one', () => {
    expect(check(recipe('madder'))).toEqual([]);
  });

  test('names a material whose note makes no claim, at the ingredient', () => {
    expect(check(recipe('Weld'))).toEqual([{ code: 'material-unrecorded', severity: 'warning', at: 'Weld', about: ['weld'] }]);
  });

  test('names a material without a note, beside the unknown reference', () => {
    expect(check(recipe('moonwort')).map(({ code, at, about }) => [code, at, about[0]])).toEqual([
      ['reference-unknown', 'moonwort', 'moonwort'],
      ['material-unrecorded', 'moonwort', 'moonwort'],
    ]);
  });

  test('names a material whose only claim takes no part', () => {
    const lost = { 'dyestuffs/lost.md': aDyestuff('Lost', CLAIM.replace('england', 'atlantis')) };
    expect(check(recipe('lost'), lost).map(({ code }) => code)).toEqual(['material-unrecorded']);
  });

  test('looks at what an ingredient stands for, not at what was used', () => {
    expect(check(recipe('weld', ', stands-for: madder'))).toEqual([]);
    expect(check(recipe('madder', ', stands-for: weld')).map(({ code, at }) => [code, at])).toEqual([['material-unrecorded', 'weld']]);
  });

  test('asks the same of the fibre', () => {
    const nettle = { 'fibres/nettle.md': aNote('kind: fibre\ntitle: Nettle') };
    expect(check(aNote('kind: recipe\nfibre: nettle'), nettle).map(({ code, at }) => [code, at])).toEqual([
      ['material-unrecorded', 'nettle'],
    ]);
  });
});

describe('checkNote: links of the body', () => {
  const withBody = (body: string): string => `${aNote('kind: text\ntitle: T')}${body}\n`;

  test('takes links to notes that are there, out of the notebook and within the note', () => {
    expect(
      check(
        withBody('[a](../dyestuffs/madder.md) [b](../dyestuffs/madder.md#how) [c](https://example.org/x.md) [d](#part) [e](../photo.jpg)'),
      ),
    ).toEqual([]);
  });

  test('names a link to a note that is not, where it stands', () => {
    expect(check(withBody('See [weld](../dyestuffs/woad.md).'))).toEqual([
      { code: 'link-broken', severity: 'warning', at: '[weld](../dyestuffs/woad.md)', about: ['../dyestuffs/woad.md'] },
    ]);
  });

  test('names a link that climbs out of the notebook, and one in a definition', () => {
    expect(check(withBody('[up](../../../etc/notes.md) and [that][1]\n\n[1]: gone.md')).map(({ about }) => about[0])).toEqual([
      '../../../etc/notes.md',
      'gone.md',
    ]);
  });

  test('is content once the note is there', () => {
    const notebook = withNote(withBody('[w](../dyestuffs/woad.md)'));
    expect(found(notebook, 'x/one.md')).toHaveLength(1);
    notebook.put({ path: 'dyestuffs/woad.md', bytes: new TextEncoder().encode(aDyestuff('Woad')) });
    expect(found(notebook, 'x/one.md')).toEqual([]);
  });
});

describe('checkNote: a review that is due', () => {
  const note = aNote('kind: text\ntitle: T\nreview-by: 2026-11-25');

  test('is overdue the day after, not on the day, and never without a clock', () => {
    expect(check(note, {}, { today: '2026-11-25' })).toEqual([]);
    expect(check(note, {}, { today: '2026-11-26' })).toEqual([
      { code: 'review-overdue', severity: 'warning', at: '2026-11-25', about: ['2026-11-25'] },
    ]);
    expect(check(note)).toEqual([]);
  });

  test('the notebook hands the day on', () => {
    const codes = (today?: string) => notebookFindings(withNote(note), today).map(({ diagnostic }) => diagnostic.code);
    expect(codes('2027-01-01')).toContain('review-overdue');
    expect(codes()).not.toContain('review-overdue');
  });
});

describe('checkNote: references', () => {
  test('tells unknown, of the wrong kind and ambiguous apart', () => {
    const twins = { 'dyestuffs/a.md': aDyestuff('Twin', CLAIM), 'dyestuffs/b.md': aDyestuff('Twin', CLAIM) };
    const recipe = aNote('kind: recipe\nfibre: [linnen, madder]\ningredients: [{what: twin, role: dye}]');
    expect(check(recipe, twins).filter(({ code }) => code !== 'material-unrecorded')).toEqual([
      { code: 'reference-unknown', severity: 'warning', at: 'linnen', about: ['linnen', 'fibre', 'linen'] },
      { code: 'reference-wrong-kind', severity: 'error', at: 'madder', about: ['madder', 'dyestuff', 'fibre'] },
      { code: 'name-ambiguous', severity: 'error', at: 'twin', about: ['twin', 'a', 'b'] },
    ]);
  });

  test('names a recipe that follows itself and a fibre that is a kind of itself', () => {
    const follows = { 'x/two.md': aNote('kind: recipe\nfollows: [one]') };
    expect(check(aNote('kind: recipe\nfollows: [two]'), follows)).toMatchObject([{ code: 'reference-loop', at: 'two' }]);
    const kinds = { 'x/two.md': aNote('kind: fibre\nis: one') };
    expect(check(aNote('kind: fibre\nis: two'), kinds)).toMatchObject([{ code: 'reference-loop' }]);
  });

  test('names a source only where there is a bibliography to look in', () => {
    const note = aDyestuff('Woad', CLAIM);
    expect(check(note)).toEqual([]);
    expect(check(note, {}, { citationKeys: new Set(['book']) })).toEqual([]);
    expect(check(note, {}, { citationKeys: new Set(['other']) })).toMatchObject([{ code: 'source-unknown', about: ['book'] }]);
  });

  test('names a spectral file that is not there', () => {
    const trial = aNote('kind: trial\nspectrum: {file: s/reds.csv, sample: A}');
    expect(check(trial, {}, { hasFile: () => false }).filter(({ code }) => code === 'spectrum-missing')).toHaveLength(1);
    expect(check(trial, {}, { hasFile: (path) => path === 's/reds.csv' }).filter(({ code }) => code === 'spectrum-missing')).toEqual([]);
  });
});
