import { describe, expect, test } from 'vitest';
import { ciede2000 } from '../../../web/domain/colour/ciede2000.ts';
import { metamerismIndex } from '../../../web/domain/colour/metamerism.ts';
import { clothById } from '../../../web/notebook/cloth-by-id.ts';
import { lookedIds, lookSetting } from '../../../web/notebook/looking-address.ts';
import { lookingView } from '../../../web/notebook/views/looking-view.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const demo = await demoNotebook();
const nms = Array.from({ length: 36 }, (_, i) => 380 + i * 10);
const row = (id: string, at: (nm: number) => number) => [id, ...nms.map((nm) => at(nm).toFixed(4))].join(',');
/** Two greens that agree in daylight only roughly, one with a second hump in the red. */
const spectra = `sample,${nms.join(',')}\n${row('M1', (nm) => 0.08 + 0.3 * Math.exp(-(((nm - 530) / 50) ** 2)))}\n${row(
  'M2',
  (nm) => 0.06 + 0.28 * Math.exp(-(((nm - 520) / 45) ** 2)) + 0.4 * Math.exp(-(((nm - 730) / 50) ** 2)),
)}\n`;
const measured = (sample: string) =>
  aNote(`kind: trial\nrecipe: r\nfibre: wool\ncode: ${sample}\nspectrum: {file: spectra/s.csv, sample: ${sample}}`);
const own = aNotebook({
  ...aWorld,
  'dyestuffs/woad.md': aDyestuff('Woad'),
  'recipes/r.md': aNote('kind: recipe\ntitle: Green\nfibre: wool\ningredients: [{what: woad, role: dye}]'),
  'trials/m1.md': measured('M1'),
  'trials/m2.md': measured('M2'),
  'trials/plain.md': aNote('kind: trial\nrecipe: r\nfibre: wool\ncolour: {lab: [45, -20, 10], illuminant: D65, observer: 10}'),
  'spectra/s.csv': spectra,
});

describe('clothById', () => {
  const of = (id: string) => clothById(demo.base, demo.colours, id);
  test.each([
    ['madder-alum-wool|wool', 'recipe', 'madder-alum-wool'],
    ['madder-alum-wool', 'recipe', 'madder-alum-wool'],
    ['wq23-001', 'sample', 'wq23-001'],
    ['WQ23-001-1', 'sample', 'wq23-001'],
    ['wq23-001 0', 'sample', 'wq23-001'],
    ['wool/fleece white|wool', 'undyed', 'wool'],
    ['#8f3b2e', 'colour', undefined],
    ['45,40,25 D65/2 photo', 'colour', undefined],
  ])('%s is a %s', (id, is, note) => {
    expect(of(id)).toMatchObject({ is });
    expect(of(id)?.note).toBe(note);
  });
  test('an over-dye of a palette is found as predicted', () => {
    const found = of('brazil-alum-wool + weld-alum-wool|wool');
    expect(found).toMatchObject({ is: 'predicted', fibre: 'wool' });
    expect(found?.colour.spectrumIs).toBe('predicted');
  });
  test('nothing is found of what is not there', () => {
    expect(of('no-such-recipe|wool')).toBeUndefined();
    expect(of('one + other|wool')).toBeUndefined();
  });
});

describe('lookingView of a prediction', () => {
  test('says how far off it may be, learned and by chance, and the same on every visit', () => {
    const detail = () => lookingView(demo, ['brazil-alum-wool + weld-alum-wool|wool']).cloths[0]?.detail ?? '';
    const [, learned = '', chance = ''] =
      /likely spread ΔE00 ([\d.]+).*of 200 dyeings of these two lie within ΔE00 ([\d.]+)$/.exec(detail()) ?? [];
    expect(Number(learned)).toBeGreaterThan(0);
    expect(Number(chance)).toBeGreaterThan(1);
    expect(detail()).toBe(detail());
  });
});

describe('lookingView', () => {
  test('lays cloths out in three lights, and every two are compared', () => {
    const { cloths, pairs, unknown } = lookingView(demo, ['madder-alum-wool|wool', 'woad-wool|wool', 'wq23-001', 'nobody']);
    expect(cloths.map(({ id }) => id)).toEqual(['madder-alum-wool|wool', 'woad-wool|wool', 'wq23-001']);
    expect(pairs.map(({ one, other }) => `${one} ${other}`)).toHaveLength(3);
    expect(unknown).toEqual(['nobody']);
    const { daylight, lamp } = cloths[0]?.lights ?? {};
    // By the lamp a red goes yellower and lighter.
    expect(Number(lamp?.lab.split(', ')[2])).toBeGreaterThan(Number(daylight?.lab.split(', ')[2]));
    expect(lamp?.hex).not.toBe(daylight?.hex);
  });

  test('in daylight a cloth has the very screen colour it has everywhere else', () => {
    const { cloths } = lookingView(demo, ['woad-wool|wool']);
    expect(cloths[0]?.lights.daylight.hex).toBe(clothById(demo.base, demo.colours, 'woad-wool|wool')?.colour.hex);
  });

  test('the sentence has the word, the figure and the direction', () => {
    const { pairs } = lookingView(own, ['45,-20,10 D65/10', '52,-20,10 D65/10']);
    const expected = ciede2000([45, -20, 10], [52, -20, 10]).toFixed(1);
    expect(pairs[0]?.says.daylight).toEqual([
      `In daylight they are of the same family, ΔE00 ${expected}: that cloth is lighter than this cloth.`,
    ]);
  });

  test('metamerism is said of two measured spectra only', () => {
    const both = lookingView(own, ['m1', 'm2']).pairs[0]?.says.lamp.join(' ') ?? '';
    const of = (id: string) => clothById(own.base, own.colours, id)?.colour.spectrum ?? { startNm: 0, stepNm: 0, values: [] };
    const index = metamerismIndex(of('m1'), of('m2'), { illuminant: 'A', observer: 10 }).deltaE00;
    expect(index).toBeGreaterThan(1);
    expect(both).toContain(`ΔE00 ${index.toFixed(1)} by the lamp (metamerism`);
    expect(both).toContain('M1 and M2');
    const one = lookingView(own, ['m1', 'plain']).pairs[0]?.says.lamp.join(' ') ?? '';
    expect(one).not.toContain('CIE 15');
    expect(one).toContain('cannot be said');
  });
});

describe('after a dose of light', () => {
  const after = (id: string, megaluxHours: number) => lookingView(demo, [id], { megaluxHours, uv: 'removed' }).cloths[0]?.after;
  test('a cloth becomes a range, wider for more light, and never one colour', () => {
    const few = after('kermes-alum-wool|wool', 1);
    expect(few?.range?.best.hex).not.toBe(few?.range?.worst.hex);
    expect(few?.says[0]).toMatch(/between \d+ % and \d+ %/);
    const of = (dose: number) => Number(/between (\d+)/.exec(after('kermes-alum-wool|wool', dose)?.says[0] ?? '')?.[1]);
    expect(of(10)).toBeLessThan(of(1));
  });
  test('where nothing is known of the dye nothing is drawn', () => {
    expect(after('#8f3b2e', 1)).toMatchObject({ says: [expect.stringContaining('Nothing is known')] });
    expect(after('#8f3b2e', 1)?.range).toBeUndefined();
    expect(lookingView(own, ['m1'], { megaluxHours: 1, uv: 'rich' }).cloths[0]?.after?.says[0]).toContain('Woad');
  });
  test('a class the reader assumes is said to be theirs, and a published one is not overruled', () => {
    const with12 = (id: string) =>
      lookingView(demo, [id], { megaluxHours: 1, uv: 'removed', assumed: { from: 1, to: 2 } }).cloths[0]?.after;
    expect(after('weld-alum-wool|wool', 1)?.range).toBeUndefined();
    expect(with12('weld-alum-wool|wool')?.range).toBeDefined();
    expect(with12('weld-alum-wool|wool')?.says.join(' ')).toContain('your own assumption');
    expect(with12('indigo-wool|wool')).toEqual(after('indigo-wool|wool', 1));
  });
  test('without a dose it is not spoken of', () => expect(after('weld-alum-wool|wool', 0)).toBeUndefined());
});

describe('lookSetting', () => {
  test('and back', () => {
    const ids = ['madder-alum-wool|wool', '45,40,25 D65/2 photo', 'a + b|wool'];
    expect(lookedIds(lookSetting(ids))).toEqual(ids);
    expect(lookedIds(undefined)).toEqual([]);
  });
});
