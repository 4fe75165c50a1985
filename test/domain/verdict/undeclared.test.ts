import { describe, expect, test } from 'vitest';
import { standInsOf } from '../../../web/domain/caption/caption-subject.ts';
import { meanLab10 } from '../../../web/domain/colour/mean-colour.ts';
import { paletteOf } from '../../../web/domain/palette/palette.ts';
import { undeclaredIn } from '../../../web/domain/verdict/undeclared.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const row = 'region: york, when: 0900/1000, status: grown, known-by: text, source: x';
const WORLD = {
  ...aWorld,
  'dyestuffs/madder.md': aDyestuff('Madder', row),
  'dyestuffs/kermes.md': aDyestuff('Kermes', row),
  // Known there only long after: judged as itself it would be out of period.
  'dyestuffs/cochineal.md': aDyestuff(
    'Cochineal',
    'region: york, when: 1600/1700, status: imported, known-by: text, source: x, start: known',
  ),
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum\neveryday: true'),
  'mordants/iron.md': aNote('kind: mordant\ntitle: Iron\neveryday: true'),
  'recipes/red.md': aNote('kind: recipe\ntitle: Red\nfibre: wool\ningredients: [{what: alum, role: mordant}, {what: kermes, role: dye}]'),
  'textiles/find.md': aNote(
    'kind: textile\ntitle: Find\nregion: york\nwhen: 0900/1000\nthreads: [{where: weft, fibre: wool, dyes: [kermes], tested: found}]',
  ),
};
const pot = (actual: string, lab = '[40, 45, 20]', more = '') =>
  aNote(
    `kind: trial\ntitle: Pot\nrecipe: red\nfibre: wool\ncode: A\nactual: [${actual}]\ncolour: {lab: ${lab}, illuminant: D65, observer: 10}${more}`,
  );
const ALUM = '{what: alum, role: mordant, amount: 15 %}';
const KERMES = `${ALUM}, {what: kermes, role: dye, amount: 75 %}`;
const DECLARED = `${ALUM}, {what: cochineal, role: dye, amount: 8 %, stands-for: kermes}`;
const UNDECLARED = `${ALUM}, {what: cochineal, role: dye, amount: 8 %}`;

const undeclared = (trial: string) => {
  const { base } = aNotebook({ ...WORLD, 'trials/t.md': trial });
  const record = base.note('t')?.record;
  if (record?.kind !== 'trial') throw new Error('no trial');
  return undeclaredIn(base, record, 'red');
};

async function asked(trials: Readonly<Record<string, string>>) {
  const engine = new LocalEngine();
  const encoder = new TextEncoder();
  await engine.open(Object.entries({ ...WORLD, ...trials }).map(([path, text]) => ({ path, bytes: encoder.encode(text) })));
  const answer = await engine.answer({ colour: '40,45,20', region: 'york', when: '950', fibre: 'wool' });
  return JSON.stringify(answer);
}

describe('undeclaredIn', () => {
  test.each([
    ['what the recipe asks for', KERMES, []],
    ['a declared stand-in', DECLARED, []],
    ['an undeclared one', UNDECLARED, ['cochineal']],
    ['a mordant nobody asked for', `${KERMES}, {what: iron, role: modifier}`, ['iron']],
    ['a stand-in for what the recipe does not ask for', `${KERMES}, {what: cochineal, role: dye, stands-for: madder}`, ['cochineal']],
    ['silence', '', []],
    ['an assistant', `${KERMES}, {what: bran, role: assistant}`, []],
  ])('%s', (_, actual, expected) => expect(undeclared(pot(actual))).toEqual(expected));

  test('words among the deviations declare nothing', () => {
    expect(undeclared(pot(UNDECLARED, undefined, '\ndeviations: [cochineal used instead of kermes]'))).toEqual(['cochineal']);
  });

  test('what a followed recipe asks for is asked for', () => {
    const { base } = aNotebook({
      ...WORLD,
      'recipes/red.md': aNote('kind: recipe\ntitle: Red\nfibre: wool\nfollows: ground\ningredients: [{what: kermes, role: dye}]'),
      'recipes/ground.md': aNote('kind: recipe\ntitle: Ground\nfibre: wool\ningredients: [{what: alum, role: mordant}]'),
      'trials/t.md': pot(KERMES),
    });
    const record = base.note('t')?.record;
    expect(record?.kind === 'trial' && undeclaredIn(base, record, 'red')).toEqual([]);
  });

  test('no trial of the demonstration has one', async () => {
    const { base } = await demoNotebook();
    for (const { id, record } of base.ofKind('trial'))
      expect(record.recipe ? undeclaredIn(base, record, base.resolve(record.recipe.text, ['recipe'])) : [], id).toEqual([]);
  });
});

describe('an attested colour', () => {
  test('is shown by a pot of the thing itself, and by a declared stand-in, judged as what it stands for', async () => {
    expect(await asked({ 'trials/t.md': pot(KERMES) })).toContain('"verdict":"attested"');
    expect(await asked({ 'trials/t.md': pot(DECLARED) })).toContain('"verdict":"attested"');
  });

  test('is not shown by an undeclared one: plausible is the best that pot can get, and the answer says why', async () => {
    const answer = await asked({ 'trials/t.md': pot(UNDECLARED) });
    expect(answer).not.toContain('"verdict":"attested"');
    expect(answer).toContain('"verdict":"plausible"');
    expect(answer).toMatch(/does not ask for/);
  });

  test('beside honest pots an undeclared one counts neither as the nearest nor in the mean', async () => {
    const notebook = aNotebook({ ...WORLD, 'trials/t1.md': pot(KERMES, '[38, 47, 16]'), 'trials/t2.md': pot(UNDECLARED, '[40, 45, 20]') });
    const region = notebook.base.regionId('york');
    if (region === undefined) throw new Error('no question');
    const [red] = paletteOf(notebook.base, notebook.colours, { region, span: { from: 950, to: 950 }, dyedHere: false }).filter(
      ({ id }) => id === 'red|wool',
    );
    expect(red?.judgement.verdict).toBe('attested');
    expect(red?.samples.map(({ trial }) => trial)).toEqual(['t1']);
    expect(meanLab10(red ? [red.colour.lab10] : [])).toEqual([38, 47, 16]);
  });

  test('a declared stand-in reaches what its caption must name', () => {
    const notebook = aNotebook({ ...WORLD, 'trials/t.md': pot(DECLARED) });
    const region = notebook.base.regionId('york');
    if (region === undefined) throw new Error('no question');
    const [red] = paletteOf(notebook.base, notebook.colours, { region, span: { from: 950, to: 950 }, dyedHere: false }).filter(
      ({ id }) => id === 'red|wool',
    );
    expect(red && standInsOf(notebook.base, red.judgement, red.samples[0])).toEqual([{ used: 'cochineal', meant: 'kermes' }]);
  });
});
