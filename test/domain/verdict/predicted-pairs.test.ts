import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../web/domain/colour/delta-e.ts';
import { learnedSpread } from '../../../web/domain/colour/spread.ts';
import { predictedPairs } from '../../../web/domain/verdict/predicted-pairs.ts';
import { spreadWords } from '../../../web/notebook/words/spread-words.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const trial = (recipe: string, lab: string, more = '') =>
  aNote(`kind: trial\nrecipe: ${recipe}\nfibre: wool\ncolour: {lab: ${lab}, illuminant: D65, observer: 10}\n${more}`);
const files = {
  ...aWorld,
  'dyestuffs/woad.md': aDyestuff('Woad'),
  'dyestuffs/weld.md': aDyestuff('Weld'),
  'recipes/blue.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: woad, role: dye}]'),
  'recipes/yellow.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: weld, role: dye}]'),
  'recipes/green.md': aNote('kind: recipe\nfibre: wool\nfollows: blue\ningredients: [{what: weld, role: dye}]'),
  'trials/b1.md': trial('blue', '[40, -4, -28]'),
  'trials/b2.md': trial('blue', '[42, -4, -27]'),
  'trials/pale.md': trial('blue', '[65, -5, -12]'),
  'trials/y.md': trial('yellow', '[78, -6, 62]'),
  'trials/g1.md': trial('green', '[40, -28, 14]'),
  'trials/g2.md': trial('green', '[58, -25, 35]', 'onto: pale'),
};

describe('predictedPairs', () => {
  const { base, colours } = aNotebook(files);
  const pairs = predictedPairs(base, colours);

  test('an over-dye is foretold from the middle sample of each dye alone, or from the trial it was dyed onto', () => {
    // A ground that is a trial is no ground of its own: both greens count.
    expect(pairs.map(({ trial: note, from }) => [note, from])).toEqual([
      ['g1', ['y', 'b2']],
      ['g2', ['y', 'pale']],
    ]);
    expect(pairs[1]?.predicted[0]).toBeGreaterThan((pairs[0]?.predicted[0] ?? 100) + 5);
  });

  test('a foretold green is green, and stands within reach of the dyed one', () => {
    for (const { predicted, dyed } of pairs) {
      expect(predicted[1]).toBeLessThan(-10);
      expect(deltaE00(predicted, dyed)).toBeLessThan(25);
    }
  });

  test('nothing is foretold where a dye was never dyed alone', () => {
    const { 'trials/y.md': _, ...without } = files;
    const notebook = aNotebook(without);
    expect(predictedPairs(notebook.base, notebook.colours)).toEqual([]);
  });
});

describe('the spread of the demonstration notebook', () => {
  test('is learned from its own over-dyes, and said with their number', async () => {
    const { base, colours } = await demoNotebook();
    const pairs = predictedPairs(base, colours);
    const spread = learnedSpread(pairs);
    expect(pairs.length).toBeGreaterThanOrEqual(5);
    expect(spread).toMatchObject({ from: 'own-pairs', count: pairs.length });
    const within = pairs.filter(({ predicted, dyed }) => deltaE00(predicted, dyed) <= spread.deltaE00).length;
    expect(within / pairs.length).toBeGreaterThanOrEqual(0.8);
    expect(spreadWords(spread)).toContain(String(pairs.length));
    expect(spreadWords(learnedSpread(pairs.slice(0, 4)))).toMatch(/6\.0.*our choice/);
  });
});
