import { describe, expect, test } from 'vitest';
import { overDye } from '../../../web/domain/colour/kubelka-munk.ts';
import { spectrumToLab10 } from '../../../web/domain/colour/xyz-lab.ts';
import { couldBeTried } from '../../../web/domain/palette/palette.ts';
import type { AskedColour } from '../../../web/domain/verdict/asked-colour.ts';
import { askColour } from '../../../web/domain/verdict/ask.ts';
import { predictedCloths } from '../../../web/domain/verdict/predicted-cloths.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const grown = 'region: england, when: 1000–1900, status: grown, known-by: text, source: book';
const trial = (recipe: string, lab: string, fibre = 'wool') =>
  aNote(`kind: trial\nrecipe: ${recipe}\nfibre: ${fibre}\ncolour: {lab: ${lab}, illuminant: D65, observer: 10}`);
const files = {
  ...aWorld,
  'dyestuffs/woad.md': aDyestuff('Woad', grown),
  'dyestuffs/weld.md': aDyestuff('Weld', grown),
  'dyestuffs/logwood.md': aDyestuff('Logwood', 'region: europe, when: until 1500, status: absent, reason: other-continent, source: book'),
  'recipes/blue.md': aNote('kind: recipe\ntitle: Blue\nfibre: wool\ningredients: [{what: woad, role: dye}]'),
  'recipes/yellow.md': aNote('kind: recipe\ntitle: Yellow\nfibre: wool\ningredients: [{what: weld, role: dye}]'),
  'recipes/black.md': aNote('kind: recipe\ntitle: Black\nfibre: wool\ningredients: [{what: logwood, role: dye}]'),
  'trials/b.md': trial('blue', '[45, -4, -25]'),
  'trials/y.md': trial('yellow', '[78, -6, 62]'),
  'trials/k.md': trial('black', '[25, 2, -4]'),
  'trials/l.md': trial('yellow', '[80, -4, 50]', 'linen'),
};
const question = { region: 'england', span: { from: 1300, to: 1300 }, dyedHere: false, fibre: 'wool', tolerance: 6 };

describe('predictedCloths', () => {
  test('foretells each pair of single dyes on one fibre, by Kubelka–Munk on its undyed colour', () => {
    const { base, colours } = aNotebook(files);
    const found = predictedCloths(base, colours);
    expect(found.map(({ id }) => id)).toEqual(['black + blue|wool', 'black + yellow|wool', 'blue + yellow|wool']);
    const [blue, yellow] = found[2]?.samples ?? [];
    const record = base.note('wool')?.record;
    const white = record?.kind === 'fibre' && record.undyed[0] ? colours.of(record.undyed[0], 'fibres/wool.md') : undefined;
    if (!blue || !yellow || !white) throw new Error('the samples are there');
    const ground = white.spectrum;
    const byHand = spectrumToLab10(
      overDye(ground, [
        { dyed: yellow.colour.spectrum, ground },
        { dyed: blue.colour.spectrum, ground },
      ]),
    );
    expect(found[2]?.lab10[0]).toBeCloseTo(byHand[0], 6);
    expect(found[2]?.lab10[1]).toBeLessThan(-10);
  });
  test('leaves out what a recipe of the notebook already makes', () => {
    const made = {
      'recipes/green.md': aNote('kind: recipe\nfibre: wool\nfollows: blue\ningredients: [{what: weld, role: dye}]'),
      'trials/g.md': trial('green', '[45, -30, 15]'),
    };
    const { base, colours } = aNotebook({ ...files, ...made });
    expect(predictedCloths(base, colours).map(({ id }) => id)).not.toContain('blue + yellow|wool');
  });
});

describe('askColour with predictions', () => {
  const { base, colours } = aNotebook(files);
  const green = predictedCloths(base, colours).find(({ id }) => id.startsWith('blue + yellow'))?.lab10;
  const asked: AskedColour = { kind: 'bare-lab', lab: [green?.[0] ?? 0, green?.[1] ?? 0, green?.[2] ?? 0] as const };
  test('a predicted colour is never above plausible, and names both recipes', () => {
    const answer = askColour(base, colours, { ...question, colour: asked });
    expect(answer.candidates.map(({ colourFrom, judgement, overDye: pair }) => [colourFrom, judgement.verdict, pair])).toEqual([
      ['predicted', 'plausible', ['blue', 'yellow']],
    ]);
    expect(answer.candidates[0]?.judgement.cappedBy).toBe('predicted');
  });
  test('without predictions nothing comes near', () => {
    expect(askColour(base, colours, { ...question, colour: asked, predictions: false }).verdict).toBe('nothing-near');
  });
  test('what could be tried leaves out what a dye contradicts', () => {
    expect(couldBeTried(base, colours, question).map(({ id }) => id)).toEqual(['blue + yellow|wool']);
  });
});
