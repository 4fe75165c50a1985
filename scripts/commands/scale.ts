import { parseFibreGrams } from '../../web/domain/note/amount.ts';
import { noteId } from '../../web/domain/note/note.ts';
import { scaleRecipe, type ScaledIngredient } from '../../web/domain/pot/scale-recipe.ts';
import type { Notebook } from '../../web/notebook/notebook.ts';
import { quantityText, recipeProblemWords, SCALE_CAUTION, scaleProblemWords } from '../../web/notebook/words/pot-words.ts';
import { titleOf } from '../../web/notebook/words/claim-line.ts';
import { type Command, openFolder, readArgs, wrap } from './command.ts';

/** `tenterground scale FOLDER RECIPE --fibre-mass 250g [--json]`: a recipe for a mass of fibre. */
export const scale: Command = async (args) => {
  const read = readArgs(args, { 'fibre-mass': { type: 'string' }, json: { type: 'boolean' } }, 2);
  if (!read) return 2;
  const [folder, name] = read.words;
  const opened = await openFolder(folder);
  if (!opened) return 2;
  const { base } = opened.notebook;
  if (name === undefined) {
    console.error('Name the recipe: tenterground scale FOLDER RECIPE --fibre-mass 250g');
    return 2;
  }
  const found = base.find(name, ['recipe']);
  if (found.is !== 'one') {
    const near = found.is === 'several' ? found.ids : found.nearest;
    console.error(`RECIPE "${name}" is not known here.${near.length > 0 ? ` Nearest known: ${near.join(', ')}.` : ''}`);
    return 2;
  }
  const mass = read.values['fibre-mass'];
  const grams = typeof mass === 'string' ? parseFibreGrams(mass) : undefined;
  if (typeof grams !== 'number') {
    console.error(
      mass === undefined
        ? '--fibre-mass is missing. Write for example --fibre-mass 250g.'
        : `--fibre-mass "${String(mass)}" ${grams === 'out-of-range' ? 'is not above 0 and at most 100 kg' : 'cannot be read'}. Write for example 250g or 2 lb.`,
    );
    return 2;
  }
  const scaled = scaleRecipe(base, noteId(found.id), grams);
  if (!scaled) return 2;
  if (read.values['json'] === true) {
    console.log(
      JSON.stringify(
        {
          ...scaled,
          ingredients: scaled.ingredients.map((one) => ({ ...one, says: one.problem ? scaleProblemWords[one.problem] : null })),
        },
        undefined,
        2,
      ),
    );
    return 0;
  }
  console.log(
    [
      `${titleOf(base, scaled.recipe)}, for ${grams} g of fibre, air-dry`,
      ...(scaled.liquor
        ? [
            `Bath ${quantityText(scaled.liquor)}, in a pot of at least ${(scaled.potMl ?? 0) / 1000 < 1 ? `${Math.ceil(scaled.potMl ?? 0)} ml` : `${Math.ceil((scaled.potMl ?? 0) / 100) / 10} L`}`,
          ]
        : []),
      '',
      ...scaled.ingredients.flatMap((one) => ingredientText(opened.notebook, one)),
      '',
      ...scaled.problems.flatMap((problem) => [wrap(recipeProblemWords[problem]), '']),
      wrap('Time and temperature do not scale:'),
      ...scaled.steps.map((step, at) => wrap(`${at + 1}. ${step}`, '   ').trimStart()),
      '',
      wrap(SCALE_CAUTION),
    ].join('\n'),
  );
  return 0;
};

function ingredientText({ base }: Notebook, one: ScaledIngredient): readonly string[] {
  const form = one.form === undefined ? '' : ` (${one.form})`;
  const stands = one.standsFor === undefined ? '' : `, for ${titleOf(base, one.standsFor)}`;
  const planned = one.asPlanned ? quantityText(one.asPlanned) : '—';
  return [
    `  ${planned.padEnd(14)} ${titleOf(base, one.what)}${form}${stands}`,
    wrap(`written ${one.asWritten === '' ? 'without an amount' : `“${one.asWritten}”`}; understood as ${one.asUnderstood}`, '      '),
    ...one.conversions.map((line) => wrap(line, '      ')),
    ...one.problems.map((problem) => wrap(scaleProblemWords[problem], '      ')),
    ...(one.possible ? [wrap(`It may mean: ${one.possible.join(', ')}.`, '      ')] : []),
  ];
}
