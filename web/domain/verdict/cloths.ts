import type { EvidenceBase } from '../claim/evidence-base.ts';
import { perVersionWith } from '../claim/per-version.ts';
import type { SwatchColour } from '../colour/swatch-colour.ts';
import type { Ingredient, Note, NoteId, Sample, TrialRecord } from '../note/note.ts';
import type { SampleColours } from './sample-colours.ts';

/** One dyed sample with its colour. */
export interface DyedSample {
  readonly trial: NoteId;
  readonly nth: number;
  readonly sample: Sample;
  readonly fibre?: string;
  readonly colour: SwatchColour;
  /** What was used instead of what, as the trial declares. */
  readonly standIns: readonly Ingredient[];
}

/** The samples of one recipe. */
export interface DyedRecipe {
  readonly recipe: NoteId;
  readonly samples: readonly DyedSample[];
}

/** One undyed colour of a fibre. */
export interface UndyedCloth {
  readonly fibre: NoteId;
  readonly name: string;
  readonly colour: SwatchColour;
}

/** Every recipe with samples that have a colour, by id; its samples by trial. The same lists until a trial, a recipe or a name changes. */
export const dyedRecipes: (base: EvidenceBase, colours: SampleColours) => readonly DyedRecipe[] = perVersionWith(readDyedRecipes, {
  notes: ['trial', 'recipe'],
  names: ['fibre'],
});

function readDyedRecipes(base: EvidenceBase, colours: SampleColours): readonly DyedRecipe[] {
  const samplesOf = new Map<string, DyedSample[]>();
  for (const note of base.ofKind('trial')) {
    const { record } = note;
    const recipe = record.recipe && base.resolve(record.recipe.text, ['recipe']);
    if (recipe === undefined || base.note(recipe)?.record.kind !== 'recipe') continue;
    const list = samplesOf.get(recipe) ?? [];
    record.samples.forEach((sample, nth) => {
      const dyed = dyedSample(base, colours, note, record, nth, sample, recipe);
      if (dyed) list.push(dyed);
    });
    samplesOf.set(recipe, list);
  }
  return [...samplesOf]
    .filter(([, samples]) => samples.length > 0)
    .map(([recipe, samples]) => ({ recipe: recipe as NoteId, samples }))
    .sort((a, b) => (a.recipe < b.recipe ? -1 : 1));
}

function dyedSample(
  base: EvidenceBase,
  colours: SampleColours,
  note: Note,
  record: TrialRecord,
  nth: number,
  sample: Sample,
  recipe: string,
): DyedSample | undefined {
  const colour = colours.of(sample, note.file);
  if (!colour) return undefined;
  const fibre = sample.fibre ? base.resolve(sample.fibre.text, ['fibre']) : recipeFibres(base, recipe)[0];
  const standIns = record.actual.filter(({ standsFor }) => standsFor !== undefined);
  return { trial: note.id, nth, sample, ...(fibre === undefined ? {} : { fibre }), colour, standIns };
}

/** The fibres a recipe names, resolved. */
export function recipeFibres(base: EvidenceBase, recipe: string): readonly string[] {
  const record = base.note(recipe)?.record;
  return record?.kind === 'recipe' ? record.fibre.map(({ text }) => base.resolve(text, ['fibre'])) : [];
}

/** The fibre a recipe is judged on for samples of a fibre: the recipe's own where the two are kin, else the sample's. */
export function judgedFibre(base: EvidenceBase, recipe: string, fibre: string | undefined): string | undefined {
  const named = recipeFibres(base, recipe);
  if (fibre === undefined) return named[0];
  const line = base.fibreLine(fibre);
  return named.find((one) => line.includes(one) || base.fibreLine(one).includes(fibre)) ?? fibre;
}

/** Every undyed colour of the notebook's fibres. */
export const undyedCloths: (base: EvidenceBase, colours: SampleColours) => readonly UndyedCloth[] = perVersionWith(
  (base, colours) =>
    base.ofKind('fibre').flatMap(({ id, file, record }) =>
      record.undyed.flatMap((undyed): UndyedCloth[] => {
        const colour = colours.of(undyed, file);
        return colour ? [{ fibre: id, name: undyed.name, colour }] : [];
      }),
    ),
  { notes: ['fibre'] },
);
