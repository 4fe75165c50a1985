import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import type { SwatchColour } from '../domain/colour/swatch-colour.ts';
import type { YearSpan } from '../domain/date/date-span.ts';
import { coloursOfMeanings, colourWordMeanings } from '../domain/naming/colour-word-meanings.ts';
import type { NoteId } from '../domain/note/note.ts';
import { meanColour } from '../domain/palette/mean-colour.ts';
import { type RegionId, WORLD } from '../domain/place/region-tree.ts';
import { dyedRecipes, undyedCloths } from '../domain/verdict/cloths.ts';
import type { SampleColours } from '../domain/verdict/sample-colours.ts';

/** A colour that was asked for by words of the notebook. */
export interface ColourNamed {
  readonly by: 'colour-word' | 'recipe' | 'trial' | 'undyed';
  /** The notes the words named. */
  readonly ids: readonly NoteId[];
  /** Whether a colour-word among them was in use here and then; true for cloth, which is there to be seen. */
  readonly fits: boolean;
}

/** What words led to. */
export type ColourOfWords =
  | { readonly is: 'colour'; readonly named: ColourNamed; readonly swatches: readonly SwatchColour[] }
  | { readonly is: 'colourless'; readonly ids: readonly NoteId[] }
  | { readonly is: 'several'; readonly ids: readonly NoteId[] }
  | { readonly is: 'none'; readonly nearest: readonly string[] };

/**
 * The colours that words stand for: a colour-word with all its meanings here and then, a recipe with its mean, a trial with all its
 * samples, an undyed fibre (`wool/white`).
 *
 * @param asked where and when; absent, everywhere and always.
 * @param colours absent, cloth has no colour to be found and only colour-words are looked for.
 */
export function colourOfWords(
  base: EvidenceBase,
  text: string,
  asked: { readonly region: RegionId; readonly span: YearSpan } = { region: WORLD, span: { from: null, to: null } },
  colours?: SampleColours,
): ColourOfWords {
  const cloth = colours && colourOfCloth(base, colours, text);
  if (cloth) return cloth;
  const meanings = colourWordMeanings(base, text, asked);
  if (meanings.length === 0) return { is: 'none', nearest: base.nearestNames(text, ['colour-word']) };
  const ids = [...new Set(meanings.map(({ word }) => word))];
  const { swatches, fits } = coloursOfMeanings(meanings);
  return swatches.length === 0 ? { is: 'colourless', ids } : { is: 'colour', named: { by: 'colour-word', ids, fits }, swatches };
}

function colourOfCloth(base: EvidenceBase, colours: SampleColours, text: string): ColourOfWords | undefined {
  const undyed = undyedCloths(base, colours).filter(({ fibre, name }) => `${fibre}/${name}` === text.trim());
  if (undyed[0])
    return { is: 'colour', named: { by: 'undyed', ids: [undyed[0].fibre], fits: true }, swatches: undyed.map(({ colour }) => colour) };
  const found = base.find(text, ['recipe', 'trial']);
  const isId = found.is === 'one' && found.id === text.trim();
  // A colour-word of the same name is likelier meant than the recipe that is called after it.
  if (found.is === 'none' || (!isId && base.find(text, ['colour-word']).is !== 'none')) return undefined;
  if (found.is === 'several') return { is: 'several', ids: found.ids };
  const by = base.note(found.id)?.record.kind === 'recipe' ? 'recipe' : 'trial';
  const swatches = by === 'recipe' ? ofRecipe(base, colours, found.id) : ofTrial(base, colours, found.id);
  return swatches.length === 0
    ? { is: 'colourless', ids: [found.id] }
    : { is: 'colour', named: { by, ids: [found.id], fits: true }, swatches };
}

/** The mean colour of a recipe on each fibre it was tried on: its colour on a swatch. */
const ofRecipe = (base: EvidenceBase, colours: SampleColours, id: NoteId): readonly SwatchColour[] =>
  dyedRecipes(base, colours)
    .filter(({ recipe }) => recipe === id)
    .flatMap(({ samples }) => {
      const fibres = [...new Set(samples.map(({ fibre }) => fibre))];
      return fibres.flatMap(
        (fibre) =>
          meanColour(
            base,
            samples.filter((one) => one.fibre === fibre),
          ) ?? [],
      );
    });

function ofTrial(base: EvidenceBase, colours: SampleColours, id: NoteId): readonly SwatchColour[] {
  const note = base.note(id);
  if (note?.record.kind !== 'trial') return [];
  return note.record.samples.flatMap((sample) => colours.of(sample, note.file) ?? []);
}
