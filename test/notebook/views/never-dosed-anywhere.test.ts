import { describe, expect, test } from 'vitest';
import { excerptOf } from '../../../web/domain/naming/excerpt.ts';
import { undosedExcerpt } from '../../../web/domain/naming/undosed-excerpt.ts';
import { noteId } from '../../../web/domain/note/note.ts';
import { scaleRecipe } from '../../../web/domain/pot/scale-recipe.ts';
import { NO_DOSE } from '../../../web/domain/pot/without-doses.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

// Amounts that stand nowhere else in this notebook, so that any trace of one is a leak.
const SECRETS = ['3.71', '4.83', '5.92', '6.17', '7.29', '8.31', '9.47'];
const FILES = {
  ...aWorld,
  'dyestuffs/weld.md': aDyestuff('Weld'),
  'mordants/red-salt.md': aNote('kind: mordant\ntitle: Red salt\nnames: [potassium dichromate]\nformula: K2Cr2O7'),
  'recipes/olive.md': `---
kind: recipe
title: Olive
fibre: wool
liquor: "30:1"
ingredients:
  - { what: weld, role: dye, amount: 50 % }
  - { what: red-salt, role: mordant, amount: 3.71 %, form: dichromate solution of 4.83 g/L }
steps:
  - "Dissolve 5.92 g of the red salt and enter the wool."
as-written: "Take of bichromate 6.17 ounces to the pound of wool."
---

Old books give 7.29 g of dichromate for a skein.
`,
  'trials/pot.md': `---
kind: trial
title: Pot one
recipe: olive
fibre: wool
fibre-mass: 50 g
code: A-1
actual:
  - { what: weld, role: dye, amount: 50 % }
  - { what: red-salt, role: mordant, amount: 3.71 %, form: 4.83 g/L dichromate }
log: ["dichromate 8.31 g in"]
deviations: ["9.47 g of red salt, not 3.71 g"]
colour: { lab: [60, -5, 40], illuminant: D65, observer: 10 }
---
`,
  'trials/other.md': `---
kind: trial
title: Pot two
recipe: olive
fibre: wool
actual: [{ what: weld, role: dye, amount: 50 % }, { what: red-salt, role: mordant, amount: 7.29 %, form: "5.92 g/L" }]
colour: { lab: [58, -5, 40], illuminant: D65, observer: 10 }
---
`,
} as const;

async function opened(): Promise<LocalEngine> {
  const engine = new LocalEngine();
  const encoder = new TextEncoder();
  await engine.open(Object.entries(FILES).map(([path, text]) => ({ path, bytes: encoder.encode(text) })));
  return engine;
}

const leaks = (shown: unknown): readonly string[] => {
  const text = JSON.stringify(shown);
  return SECRETS.filter((secret) => text.includes(secret));
};

describe('an amount of what is never dosed', () => {
  test.each<[string, (engine: LocalEngine) => Promise<unknown>]>([
    ['the recipe page', (engine) => engine.recipe('olive', 100)],
    ['the recipe’s note', (engine) => engine.note('olive')],
    ['the trial’s page', (engine) => engine.trial('pot')],
    ['the trial’s note', (engine) => engine.note('pot')],
    ['the list of trials', (engine) => engine.trials('')],
    ['trials compared', (engine) => engine.compareTrials(['pot', 'other'])],
    ['where it is named', (engine) => engine.namings('weld')],
    ['the dyestuff’s page', (engine) => engine.dyestuff('weld')],
    ['the answer', (engine) => engine.answer({ colour: '60,-5,40', region: 'york', when: '950', fibre: 'wool' })],
    ['the palette', (engine) => engine.palette({ region: 'york', when: '950', all: true })],
    ['textiles as a table', (engine) => engine.dataOut('textiles-csv')],
  ])('is not on %s', async (_, ask) => {
    const shown = await ask(await opened());
    expect(shown).toBeDefined();
    expect(leaks(shown)).toEqual([]);
  });

  test('is not in a scaled recipe, whoever asks', () => {
    const { base } = aNotebook(FILES);
    for (const audience of ['public', 'staff'] as const) {
      const scaled = scaleRecipe(base, noteId('olive'), 100, audience);
      expect(leaks(scaled)).toEqual([]);
      expect(scaled?.steps[0]).toContain(NO_DOSE);
      expect(scaled?.ingredients[0]?.asPlanned).toEqual({ from: 50, to: 50, unit: 'g' });
    }
  });

  test('is not in an excerpt, even where its name is cut off', () => {
    const { base } = aNotebook(FILES);
    const text = `Weld with 7.29 g for a skein, stirred well and rinsed in the river until the water ran clear, says an old book of bichromate.`;
    expect(excerptOf(text, 0, 4).after).toContain('7.29');
    expect(leaks(undosedExcerpt(base, text, 0, 4))).toEqual([]);
  });

  test('stands as its author wrote it where the note itself is written', async () => {
    expect((await (await opened()).noteText('olive'))?.text).toBe(FILES['recipes/olive.md']);
  });
});
