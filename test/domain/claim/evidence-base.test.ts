import { describe, expect, test } from 'vitest';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { notebookFindings } from '../../../web/notebook/check-notebook.ts';

const encoder = new TextEncoder();
const grown = (region: string, when: string) =>
  `region: ${region}, when: ${JSON.stringify(when)}, status: grown, known-by: text, source: book`;
const files = {
  ...aWorld,
  'dyestuffs/weld.md': aDyestuff('Weld', grown('england', '1200–1300')),
  'dyestuffs/madder.md': aDyestuff('Madder', grown('york', '1200–1300'), grown('europe', '1200–1300')),
  'textiles/hood.md': aNote('kind: textile\nregion: york\nwhen: 1250\nthreads: [{fibre: wool, dyes: [weld], tested: found}]'),
};

describe('EvidenceBase, note by note', () => {
  test('re-deriving one note touches only its own claims', () => {
    const notebook = aNotebook(files);
    const { base } = notebook;
    const before = base.derivedCount;
    const madder = base.claimsIn('dyestuffs/madder.md');
    const hood = base.claimsIn('textiles/hood.md');
    notebook.put({ path: 'dyestuffs/weld.md', bytes: encoder.encode(aDyestuff('Weld', grown('england', '1400'), grown('york', '1500'))) });
    expect(base.derivedCount).toBe(before + 1);
    expect(base.claimsIn('dyestuffs/madder.md')).toBe(madder);
    expect(base.claimsIn('textiles/hood.md')).toBe(hood);
    expect(base.claimsIn('dyestuffs/weld.md')).toHaveLength(2);
    expect(base.claimsOf('weld').map(({ claim }) => claim.status)).toEqual(['grown', 'grown', 'on-cloth']);
  });
  test('forgets a note that is taken out, and gives its id to its namesake', () => {
    const notebook = aNotebook({ ...files, 'z/weld.md': aDyestuff('Other weld', grown('ireland', '900')) });
    const { base } = notebook;
    expect(base.note('weld')?.file).toBe('dyestuffs/weld.md');
    expect(
      notebookFindings(notebook)
        .filter(({ diagnostic }) => diagnostic.code === 'id-clash')
        .map(({ file }) => file),
    ).toEqual(['z/weld.md']);
    notebook.remove('dyestuffs/weld.md');
    expect(base.note('weld')?.title).toBe('Other weld');
    expect(base.claimsOf('weld').map(({ region }) => region)).toEqual(['york', 'ireland']);
  });
  test('a region that comes later places the claims that waited for it', () => {
    const notebook = aNotebook({ 'dyestuffs/weld.md': aDyestuff('Weld', grown('Mercia', '800')) });
    expect(notebook.base.claimsOf('weld')).toEqual([]);
    notebook.put({ path: 'regions/mercia.md', bytes: encoder.encode(aNote('kind: region\ntitle: Mercia')) });
    expect(notebook.base.claimsOf('weld')).toHaveLength(1);
  });
});

describe('EvidenceBase, names and dates', () => {
  test('finds a region by id, title or any name, case and accents folded; two that fit are told', () => {
    const { base } = aNotebook({ ...aWorld, 'regions/albion.md': aNote('kind: region\ntitle: New Albion\nnames: [Albion, Ålbión]') });
    expect(base.regionId('england')).toBe('england');
    expect(base.regionId('ENGLAND')).toBe('england');
    expect(base.regionId('new albion')).toBe('albion');
    expect(base.findRegion('Albion')).toEqual({ is: 'one', id: 'albion' });
    expect(aNotebook(aWorld).base.regionId('Álbion')).toBe('england');
    const two = aNotebook({ ...aWorld, 'regions/x.md': aNote('kind: region\ntitle: X\nnames: [Albion]') });
    expect(two.base.findRegion('Albion')).toEqual({ is: 'several', ids: ['england', 'x'] });
  });
  test('a period serves as a date wherever one is asked', () => {
    const { base } = aNotebook({
      ...aWorld,
      'periods/viking-age.md': aNote('kind: period\ntitle: Viking Age\nwhen: 793–1066'),
      'dyestuffs/weld.md': aDyestuff('Weld', grown('england', 'viking age')),
    });
    expect(base.claimsOf('weld')[0]?.span).toMatchObject({ latestStart: 793, earliestEnd: 1066 });
  });
  test('extent is whole, but somewhere for a region directly under the world', () => {
    const { base } = aNotebook(files);
    expect(base.claimsOf('madder').map(({ region, extent }) => [region, extent])).toEqual([
      ['york', 'whole'],
      ['europe', 'somewhere'],
    ]);
  });
  test('a claim without a readable region or date takes no part, and says so', () => {
    const notebook = aNotebook({
      ...aWorld,
      'dyestuffs/weld.md': aDyestuff('Weld', grown('atlantis', '900'), grown('england', 'some day')),
    });
    expect(notebook.base.claimsOf('weld')).toEqual([]);
    const codes = notebookFindings(notebook).map(({ diagnostic }) => diagnostic.code);
    expect(codes.filter((code) => code === 'claim-takes-no-part')).toHaveLength(2);
    expect(codes).toContain('region-unknown');
    expect(codes).toContain('date-unreadable');
  });
});
