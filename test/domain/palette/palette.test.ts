import { describe, expect, test } from 'vitest';
import { comparePalettes } from '../../../web/domain/palette/compare-palettes.ts';
import { hueFamily } from '../../../web/domain/palette/hue-family.ts';
import { gapsIn, type PaletteColour, paletteOf, sortPalette, USUAL_VERDICTS } from '../../../web/domain/palette/palette.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const grown = (when: string, status = 'grown') => `region: england, when: ${when}, status: ${status}, known-by: text, source: book`;
const sample = (recipe: string, lab: string, more = '') =>
  aNote(`kind: trial\nrecipe: ${recipe}\nfibre: wool\ncolour: {lab: ${lab}, illuminant: D65, observer: 10}\n${more}`);
const files = {
  ...aWorld,
  'dyestuffs/madder.md': aDyestuff('Madder', grown('1000–1900')),
  'dyestuffs/weld.md': aDyestuff('Weld', grown('1200–1250')),
  'dyestuffs/logwood.md': aDyestuff('Logwood', grown('1600–1900', 'imported')),
  'dyestuffs/kermes.md': aDyestuff('Kermes', grown('1200–1400', 'cloth-only'), grown('1500–1600', 'imported')),
  'recipes/red.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: madder, role: dye}]'),
  'recipes/yellow.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: weld, role: dye}]'),
  'recipes/black.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: logwood, role: dye}]'),
  'recipes/scarlet.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: kermes, role: dye}]'),
  'trials/r1.md': sample('red', '[40, 50, 30]'),
  'trials/r2.md': sample('red', '[44, 46, 26]'),
  'trials/r3.md': sample('red', '[70, 20, 10]', 'bath: {nth: 3, after: r1}'),
  'trials/y1.md': sample('yellow', '[80, -5, 60]'),
  'trials/b1.md': sample('black', '[20, 1, -1]'),
  'trials/s1.md': sample('scarlet', '[38, 52, 16]'),
};
const at = (year: number, more: object = {}): readonly PaletteColour[] => {
  const { base, colours } = aNotebook(files);
  return paletteOf(base, colours, { region: 'england', span: { from: year, to: year }, dyedHere: false, ...more });
};
const shown = (one: PaletteColour) => USUAL_VERDICTS.includes(one.judgement.verdict);
const ids = (colours: readonly PaletteColour[]) => colours.filter(shown).map(({ id }) => id);

describe('paletteOf', () => {
  test('judges every recipe with samples and every undyed colour', () => {
    expect(ids(at(1300))).toEqual(['red|wool', 'scarlet|wool', 'wool/white|wool']);
    expect(ids(at(1220))).toContain('yellow|wool');
    expect(ids(at(1650))).toEqual(['black|wool', 'red|wool', 'wool/white|wool']);
  });
  test('the colour is the mean of first baths', () => {
    const red = at(1300).find(({ id }) => id === 'red|wool');
    expect(red?.colour.lab10[0]).toBeCloseTo(42, 6);
    expect(red?.samples).toHaveLength(3);
  });
  test('says where each colour came from', () => {
    const origins = Object.fromEntries(at(1300).map(({ id, origin }) => [id, origin]));
    expect(origins).toMatchObject({
      'red|wool': 'local',
      'scarlet|wool': 'cloth-only',
      'wool/white|wool': 'undyed',
      'black|wool': undefined,
    });
  });
  test('keeps to the asked fibre and its kinds', () => {
    expect(at(1300, { fibre: 'linen' })).toEqual([]);
    expect(at(1300, { fibre: 'wool' }).length).toBeGreaterThan(3);
  });
});

describe('sortPalette and gapsIn', () => {
  test('sorts by lightness, by dyestuff, by verdict; ties by id', () => {
    const palette = at(1300);
    expect(sortPalette(palette, 'lightness').map(({ colour }) => colour.lab10[0])).toEqual(
      palette.map(({ colour }) => colour.lab10[0]).sort((a, b) => b - a),
    );
    expect(sortPalette(palette, 'verdict')[0]?.judgement.verdict).toBe('attested-as-cloth');
    expect(sortPalette(palette, 'dyestuff').map(({ judgement }) => judgement.route.dyes.join())).toEqual([
      '',
      'kermes',
      'logwood',
      'madder',
      'weld',
    ]);
    expect(sortPalette([...palette].reverse(), 'hue')).toEqual(sortPalette(palette, 'hue'));
  });
  test('names the families no cloth reaches', () => {
    expect(gapsIn(at(1300))).toContain('green');
    expect(gapsIn(at(1300))).not.toContain('yellow');
  });
});

describe('hueFamily', () => {
  test.each([
    [[18, 1, -2], 'black'],
    [[88, 0, 8], 'white and grey'],
    [[78, -4, 62], 'yellow'],
    [[42, 48, 28], 'red'],
    [[36, 46, 2], 'crimson and pink'],
    [[36, 28, -18], 'violet'],
    [[40, -4, -24], 'blue'],
    [[46, -26, 16], 'green'],
    [[36, 9, 18], 'brown'],
    [[62, 24, 46], 'orange and tan'],
  ] as const)('%j is %s', (lab, family) => expect(hueFamily(lab)).toBe(family));
});

describe('comparePalettes', () => {
  test('tells what came, what went and what changed its origin or verdict', () => {
    const kinds = (before: number, now: number) =>
      comparePalettes(at(before), at(now), shown).map(({ kind, ...rest }) => [
        kind,
        ('now' in rest && rest.now ? rest.now : 'before' in rest ? rest.before : undefined)?.id,
      ]);
    expect(kinds(1220, 1650)).toEqual([
      ['came', 'black|wool'],
      ['went', 'scarlet|wool'],
      ['went', 'yellow|wool'],
    ]);
    expect(kinds(1300, 1550)).toEqual([['verdict', 'scarlet|wool']]);
    expect(kinds(1300, 1300)).toEqual([]);
  });
});
