import { MATERIAL_KINDS } from '../../domain/claim/evidence-base.ts';
import type { TrialRecord } from '../../domain/note/note.ts';
import { repeatability } from '../../domain/pot/repeatability.ts';
import { withoutDoses } from '../../domain/pot/without-doses.ts';
import { dyedRecipes } from '../../domain/verdict/cloths.ts';
import type { Notebook } from '../notebook.ts';
import { inSentence, titleOf } from '../words/claim-line.ts';
import { repeatabilityText } from '../words/trial-words.ts';
import { weaveOf } from './cloth-view.ts';

/** A trial in a list. */
export interface TrialEntry {
  readonly id: string;
  readonly title: string;
  readonly date: string;
  readonly by: string;
  readonly recipe: string;
  readonly recipeTitle: string;
  readonly dyes: readonly string[];
  readonly hex?: string;
  readonly weave: string;
  readonly codes: readonly string[];
}

/** A lot of something, with the pots it went into. */
export interface LotEntry {
  readonly text: string;
  readonly trials: readonly { readonly id: string; readonly title: string }[];
}

/** The trials of a notebook, or of a recipe or dyestuff in it. */
export interface TrialsView {
  /** What they are of; '' for all. */
  readonly of: string;
  readonly ofTitle: string;
  readonly trials: readonly TrialEntry[];
  readonly lots: readonly LotEntry[];
  /** Of one recipe: whether it comes out alike, and how its pots scatter. */
  readonly repeatable: string;
}

/** @param of a recipe's or a material's id; all trials where empty or neither. */
export function trialsView(notebook: Notebook, of: string): TrialsView {
  const { base, colours } = notebook;
  const trials = base
    .ofKind('trial')
    .map(({ id, title, file, record }): TrialEntry => {
      const first = record.samples.map((sample) => ({ sample, colour: colours.of(sample, file) })).find(({ colour }) => colour);
      const recipe = record.recipe ? base.resolve(record.recipe.text, ['recipe']) : '';
      const fibre = first?.sample.fibre && base.resolve(first.sample.fibre.text, ['fibre']);
      return {
        id,
        title: withoutDoses(base, title),
        date: record.date?.text ?? '',
        by: record.by ?? '',
        recipe,
        recipeTitle: recipe === '' ? '' : titleOf(base, recipe),
        dyes: materialsOf(notebook, record),
        ...(first?.colour && { hex: first.colour.hex }),
        weave: weaveOf(base, fibre),
        codes: record.samples.flatMap(({ code }) => code ?? []),
      };
    })
    .filter(({ recipe, dyes }) => of === '' || recipe === of || dyes.includes(of))
    .sort((a, b) => b.date.localeCompare(a.date, 'en') || a.id.localeCompare(b.id, 'en'));
  const isRecipe = base.note(of)?.record.kind === 'recipe';
  const samples = isRecipe ? (dyedRecipes(base, colours).find(({ recipe }) => recipe === of)?.samples ?? []) : [];
  return {
    of,
    ofTitle: of === '' ? '' : inSentence(base, of),
    trials,
    lots: lotsOf(notebook, new Set(trials.map(({ id }) => id))),
    repeatable: isRecipe ? repeatabilityText(repeatability(base, samples)) : '',
  };
}

const materialsOf = ({ base }: Notebook, record: TrialRecord): readonly string[] =>
  record.actual.flatMap(({ what, standsFor }) => [what, standsFor].flatMap((ref) => (ref ? [base.resolve(ref.text, MATERIAL_KINDS)] : [])));

/** Lots by the words the notes have for them; a lot spelled in two ways is two. */
function lotsOf({ base }: Notebook, wanted: ReadonlySet<string>): readonly LotEntry[] {
  const lots = new Map<string, { text: string; trials: { id: string; title: string }[] }>();
  for (const { id, title, record } of base.ofKind('trial')) {
    if (!wanted.has(id)) continue;
    for (const lot of record.lots) {
      const key = lot.trim().toLowerCase();
      const held = lots.get(key) ?? { text: withoutDoses(base, lot), trials: [] };
      held.trials.push({ id, title: withoutDoses(base, title) });
      lots.set(key, held);
    }
  }
  return [...lots.values()].sort((a, b) => a.text.localeCompare(b.text, 'en'));
}
