import { describe, expect, test } from 'vitest';
import { boardGroups } from '../../../web/domain/display/board-order.ts';
import { alikeNeighbours } from '../../../web/domain/display/neighbours.ts';
import { notThen } from '../../../web/domain/display/not-then.ts';
import { swatchFromCss } from '../../../web/domain/colour/swatch-colour.ts';
import { paletteOf } from '../../../web/domain/palette/palette.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const recipe = (dye: string) => aNote(`kind: recipe\ntitle: ${dye} wool\nfibre: wool\ningredients: [{what: ${dye}, role: dye}]`);
const trial = (dye: string, lab: string) =>
  aNote(`kind: trial\nrecipe: ${dye}-wool\ncolour: {lab: [${lab}], illuminant: D65, observer: 10}\nfibre: wool`);

const { base, colours } = aNotebook({
  ...aWorld,
  'regions/zeeland.md': aNote('kind: region\ntitle: Zeeland\nwithin: europe'),
  'wearers/merchant.md': aNote('kind: wearer\ntitle: Merchant\nwithin: everyone'),
  'dyestuffs/madder.md': aDyestuff(
    'Madder',
    'region: england, when: 1200–1500, status: imported, known-by: trade, source: a',
    'region: zeeland, when: 1200–1500, status: grown, known-by: text, source: b',
  ),
  'dyestuffs/woad.md': aDyestuff('Woad', 'region: england, when: 1200–1500, status: grown, known-by: text, source: c'),
  'dyestuffs/kermes.md': aDyestuff('Kermes', 'region: england, when: 1200–1500, status: cloth-only, known-by: trade, source: d'),
  'dyestuffs/mauveine.md': aDyestuff(
    'Mauveine',
    'region: world, when: 1856–1900, status: made, known-by: text, start: known, extent: whole, source: e',
  ),
  'recipes/madder-wool.md': recipe('madder'),
  'recipes/woad-wool.md': recipe('woad'),
  'recipes/kermes-wool.md': recipe('kermes'),
  'recipes/mauveine-wool.md': recipe('mauveine'),
  'trials/t1.md': trial('madder', '42, 44, 28'),
  'trials/t2.md': trial('woad', '35, -4, -24'),
  'trials/t3.md': trial('kermes', '39, 47, 10'),
  'trials/t4.md': trial('mauveine', '30, 35, -30'),
  'rules/r.md': aNote(
    'kind: rule\ntitle: The grain law\nregion: england\nwhen: 1300–1400\nact: wear\nconcerns: [kermes]\nforbids: [merchant]',
  ),
});
const palette = paletteOf(base, colours, {
  region: 'england',
  span: { from: 1350, to: 1350 },
  fibre: 'wool',
  wearer: 'merchant',
  dyedHere: false,
});
const shown = palette.filter(({ judgement }) => judgement.verdict !== 'out-of-period');
const keys = (order: Parameters<typeof boardGroups>[2]) =>
  boardGroups(base, shown, order).map(({ key, colours: own }) => [key, own.map(({ id }) => id.split('|')[0])]);

describe('boardGroups', () => {
  test('by hue', () => {
    expect(keys('hue')).toEqual([
      ['white and grey', ['wool/white']],
      ['red', ['madder-wool']],
      ['crimson and pink', ['kermes-wool']],
      ['blue', ['woad-wool']],
    ]);
  });

  test('by source', () => {
    expect(keys('source').map(([key]) => key)).toEqual(expect.arrayContaining(['madder', 'woad', 'kermes', 'undyed']));
  });

  test('by origin, what was to hand first', () => {
    expect(keys('origin').map(([key]) => key)).toEqual(['local', 'imported', 'cloth-only', 'undyed']);
  });

  test('by route: from where it was grown, when it was not to hand', () => {
    expect(keys('route')).toEqual([
      ['local', ['woad-wool']],
      ['cloth-only', ['kermes-wool']],
      ['zeeland', ['madder-wool']],
      ['undyed', ['wool/white']],
    ]);
  });

  test('as placed is one group in the order given', () => {
    expect(boardGroups(base, shown, 'as-placed').map(({ colours: own }) => own.map(({ id }) => id))).toEqual([shown.map(({ id }) => id)]);
    expect(boardGroups(base, [], 'as-placed')).toEqual([]);
  });
});

describe('notThen', () => {
  test('what came later, and what a rule keeps from the asked wearer', () => {
    expect(notThen(palette).map(({ colour, why, rules }) => [colour.id.split('|')[0], why, rules.map(({ note }) => note)])).toEqual([
      ['mauveine-wool', 'out-of-period', []],
      ['kermes-wool', 'forbidden', ['r']],
    ]);
  });
});

describe('alikeNeighbours', () => {
  const swatch = (css: string) => {
    const made = swatchFromCss(css);
    if (!made.ok) throw new Error(css);
    return made.value;
  };
  const laid = (id: string, x: number, y = 0) => ({ id, fixed: false, cloth: { x, y, widthMm: 40, heightMm: 50 } });

  test('two reds side by side are alike to everybody, apart on the board they are not told', () => {
    const found = new Map([
      ['a', swatch('#a03030')],
      ['b', swatch('#a23131')],
    ]);
    expect(alikeNeighbours([laid('a', 0), laid('b', 48)], found)).toMatchObject([{ one: 'a', other: 'b', to: 'everybody' }]);
    expect(alikeNeighbours([laid('a', 0), laid('b', 200)], found)).toEqual([]);
    expect(alikeNeighbours([laid('a', 0), laid('b', 0, 90)], found)).toHaveLength(1);
  });

  test('a madder red and an olive of the same lightness are alike without middle or long cones only', () => {
    // Found by walking olives beside rgb(150 90 60): apart for most people, close for deutan vision.
    const found = new Map([
      ['a', swatch('rgb(150 95 60)')],
      ['b', swatch('rgb(118 112 52)')],
    ]);
    const [pair] = alikeNeighbours([laid('a', 0), laid('b', 48)], found);
    expect(pair?.deltaE00).toBeGreaterThan(15);
    expect(pair?.to).toContain('deutan');
    expect(pair?.to).not.toContain('tritan');
  });

  test('yellow and blue are told apart by everybody', () => {
    expect(
      alikeNeighbours(
        [laid('a', 0), laid('b', 48)],
        new Map([
          ['a', swatch('#d8c040')],
          ['b', swatch('#304a78')],
        ]),
      ),
    ).toEqual([]);
  });
});
