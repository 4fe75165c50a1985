import { describe, expect, test } from 'vitest';
import { scale } from '../../scripts/commands/scale.ts';
import { DEMO_FOLDER } from '../helpers/demo-notebook.ts';
import { aFolder } from '../helpers/a-folder.ts';
import { aNote } from '../helpers/a-notebook.ts';
import { runCommand } from '../helpers/run-command.ts';

interface Scaled {
  readonly fibreGrams: number;
  readonly liquor?: { readonly from: number };
  readonly ingredients: readonly {
    readonly what: string;
    readonly asPlanned?: { readonly from: number; readonly to: number };
    readonly problem?: string;
    readonly asWritten: string;
  }[];
  readonly problems: readonly string[];
}
const json = async (folder: string, recipe: string, mass: string) => {
  const { code, out } = await runCommand(scale, folder, recipe, '--fibre-mass', mass, '--json');
  return { code, scaled: JSON.parse(out) as Scaled };
};

describe('tenterground scale', () => {
  // Alum 10–25 % and madder 35–100 % on 250 g, liquor 30:1: arithmetic on the definition of % of the weight of fibre.
  test('gives a recipe for a mass of fibre', async () => {
    const { code, scaled } = await json(DEMO_FOLDER, 'madder-alum-wool', '250g');
    expect(code).toBe(0);
    expect(scaled.ingredients.slice(0, 2).map(({ what, asPlanned }) => [what, asPlanned?.from, asPlanned?.to])).toEqual([
      ['alum', 25, 62.5],
      ['madder', 87.5, 250],
    ]);
    expect(scaled.liquor?.from).toBe(7500);
    expect(scaled.problems).toEqual([]);
  });
  test('takes a title, and a mass in other units', async () => {
    const { scaled } = await json(DEMO_FOLDER, 'Madder red on alumed wool', '0.25 kg');
    expect(scaled.fibreGrams).toBe(250);
  });
  test('an unknown recipe ends with 2 and names the nearest', async () => {
    const { code, out, err } = await runCommand(scale, DEMO_FOLDER, 'madder-alum-wol', '--fibre-mass', '250g');
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('madder-alum-wool');
  });
  test.each([
    [[]],
    [['--fibre-mass', '-5g']],
    [['--fibre-mass', '0 g']],
    [['--fibre-mass', '250']],
    [['--fibre-mass', 'plenty']],
    [['--fibre-mass', '250g', 'more']],
  ])('a missing or impossible mass ends with 2: %j', async (options) => {
    const { code, out, err } = await runCommand(scale, DEMO_FOLDER, 'madder-alum-wool', ...options);
    expect([code, out]).toEqual([2, '']);
    expect(err).not.toBe('');
  });
  test('says what it will not do, also as text', async () => {
    const folder = await aFolder({
      'mordants/chrome.md': aNote('kind: mordant\ntitle: Chrome'),
      'mordants/tin.md': aNote('kind: mordant\ntitle: Tin'),
      'recipes/old.md': aNote(
        'kind: recipe\ntitle: Old\nfollows: [old]\ningredients: [{what: chrome, role: mordant, amount: 3 %}, {what: tin, role: mordant, amount: 4 %}, {what: gum, role: assistant, amount: 2 lb}]',
      ),
    });
    try {
      const { scaled } = await json(folder.path, 'old', '100g');
      expect(scaled.ingredients.map(({ problem, asWritten }) => [problem, asWritten])).toEqual([
        ['never-dosed', ''],
        ['staff-only', ''],
        ['measure-ambiguous', '2 lb'],
      ]);
      expect(scaled.problems).toEqual(['chain-in-circle']);
      const { out } = await runCommand(scale, folder.path, 'old', '--fibre-mass', '100g');
      expect(out).not.toMatch(/\b[34] (?:g|%)/);
      expect(out).toContain('lb troy');
    } finally {
      await folder.remove();
    }
  });
});
