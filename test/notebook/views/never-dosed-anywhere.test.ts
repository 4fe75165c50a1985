import { describe, expect, test } from 'vitest';
import { excerptOf } from '../../../web/domain/naming/excerpt.ts';
import { undosedExcerpt } from '../../../web/domain/naming/undosed-excerpt.ts';
import { noteId } from '../../../web/domain/note/note.ts';
import { scaleRecipe } from '../../../web/domain/pot/scale-recipe.ts';
import { NO_DOSE } from '../../../web/domain/pot/without-doses.ts';
import type { TypedDyeDay } from '../../../web/notebook/dye-day-address.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import type { TextHit } from '../../../web/notebook/ports-finding.ts';
import { aNotebook } from '../../helpers/a-notebook.ts';
import { NEVER_DOSED_CODE, NEVER_DOSED_FILES, secretsIn } from '../../helpers/never-dosed-notes.ts';

const dayOf = (...recipes: readonly string[]): TypedDyeDay => ({
  items: recipes.map((recipe) => ({ recipe, fibreGrams: 100, skeins: 1 })),
  staff: false,
  begins: '09:00',
});

/** What the index of words gives for a word that stands in these notes. */
const hits = (word: string): readonly TextHit[] =>
  Object.keys(NEVER_DOSED_FILES).map((file) => ({
    file,
    near: false,
    why: [{ typed: word, term: word, how: 'whole', fields: ['body'] }],
    marks: [word],
  }));

async function opened(): Promise<LocalEngine> {
  const engine = new LocalEngine();
  const encoder = new TextEncoder();
  await engine.open(Object.entries(NEVER_DOSED_FILES).map(([path, text]) => ({ path, bytes: encoder.encode(text) })));
  return engine;
}

/** A display without what stands only in the form in which a caption is written. */
const withoutWritten = (shown: unknown): unknown =>
  JSON.parse(JSON.stringify(shown, (key, value: unknown) => (key === 'written' ? undefined : value)));

const leaks = (shown: unknown): readonly string[] => secretsIn(JSON.stringify(shown));

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
    ['the other recipe’s page', (engine) => engine.recipe('scarlet', 100)],
    ['the other recipe’s note', (engine) => engine.note('scarlet')],
    ['the other trial’s page', (engine) => engine.trial('scarlet-pot')],
    ['the other trial’s note', (engine) => engine.note('scarlet-pot')],
    ['the plan of a day', (engine) => engine.dyeDay(dayOf('olive', 'scarlet'))],
    ['the pots of a day as notes', (engine) => engine.potNotes(dayOf('olive', 'scarlet'), { day: '2026-11-28', clock: '08:30' })],
    ['the list of pots', (engine) => engine.pots()],
    ['a pot', (engine) => engine.pot('scarlet-pot')],
    ['a pot of what is refused', (engine) => engine.pot('pot')],
    ['tags', (engine) => engine.tags(['scarlet-pot', 'pot', 'other'])],
    ['what a code leads to', (engine) => engine.code(NEVER_DOSED_CODE)],
    ['the evidence for one colour', (engine) => engine.evidenceSheet('board', 'scarlet')],
    ['the evidence for another', (engine) => engine.evidenceSheet('board', 'olive')],
    ['the dossier', (engine) => engine.dossier('board')],
    ['a drafted caption', (engine) => engine.captionDraft('board', 'scarlet')],
    ['what is published', (engine) => engine.published('board', '2026-11-25T10:00:00Z')],
    ['the board and its captions', async (engine) => withoutWritten(await engine.display('board'))],
    ['the kept palette', (engine) => engine.keptPalette('reds')],
    ['what a word finds', (engine) => engine.found({ words: 'of' }, hits('of'))],
    ['what another finds', (engine) => engine.found({ words: 'salt' }, hits('salt'))],
    ['what a third finds', (engine) => engine.found({ words: 'skein' }, hits('skein'))],
    ['where tin is named', (engine) => engine.namings('tin-salt')],
    ['lines of samples', (engine) => engine.sampleLines()],
    ['samples side by side', (engine) => engine.looking(['scarlet-pot', 'pot'])],
  ])('is not on %s', async (_, ask) => {
    const shown = await ask(await opened());
    expect(shown).toBeDefined();
    expect(leaks(shown)).toEqual([]);
  });

  test('is not in a scaled recipe, whoever asks', () => {
    const { base } = aNotebook(NEVER_DOSED_FILES);
    for (const audience of ['public', 'staff'] as const) {
      const scaled = scaleRecipe(base, noteId('olive'), 100, audience);
      expect(leaks(scaled)).toEqual([]);
      expect(scaled?.steps[0]).toContain(NO_DOSE);
      expect(scaled?.ingredients[0]?.asPlanned).toEqual({ from: 50, to: 50, unit: 'g' });
    }
  });

  test('is not in an excerpt, even where its name is cut off', () => {
    const { base } = aNotebook(NEVER_DOSED_FILES);
    const text = `Weld with 7.29 g for a skein, stirred well and rinsed in the river until the water ran clear, says an old book of bichromate.`;
    expect(excerptOf(text, 0, 4).after).toContain('7.29');
    expect(leaks(undosedExcerpt(base, text, 0, 4))).toEqual([]);
  });

  test('in a caption is asked about; the form in which it is written keeps it', async () => {
    const display = await (await opened()).display('board');
    const captions = display?.colours.flatMap((colour) => colour.captions) ?? [];
    expect(captions).toHaveLength(2);
    for (const { text, written, notices } of captions) {
      expect(text).toContain(NO_DOSE);
      expect(secretsIn(written.text)).toHaveLength(1);
      expect(notices.map(({ code }) => code)).toContain('amount-given');
    }
  });

  test('stands as its author wrote it where the note itself is written', async () => {
    expect((await (await opened()).noteText('olive'))?.text).toBe(NEVER_DOSED_FILES['recipes/olive.md']);
  });
});
