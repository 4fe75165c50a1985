import { TEXTILE } from '../../domain/colour/conditions.ts';
import { explainFound, type FoundExplanation } from '../../domain/colour/explain-found.ts';
import { possibleOriginalsByDye } from '../../domain/colour/possible-originals.ts';
import type { Spectrum } from '../../domain/colour/spectrum.ts';
import { unmix } from '../../domain/colour/unmix.ts';
import { type SwatchColour, swatchFromLab, swatchFromSpectrum } from '../../domain/colour/swatch-colour.ts';
import { type PaletteColour, paletteOf } from '../../domain/palette/palette.ts';
import { askMany, type BriefAnswer } from '../../domain/verdict/ask-many.ts';
import type { AskedColour } from '../../domain/verdict/asked-colour.ts';
import { groundsByFibre } from '../../domain/verdict/predicted-cloths.ts';
import { middleSample } from '../../domain/verdict/predicted-pairs.ts';
import type { Verdict } from '../../domain/verdict/standing-words.ts';
import { addressOf, settingsOf } from '../address.ts';
import type { Notebook } from '../notebook.ts';
import { type PosedQuestion, poseQuestion, type TypedQuestion } from '../pose-question.ts';
import { carryColour } from '../typed-colour.ts';
import { AS_FOUND_CAUTION, hypothesisSentence, lossWords, stripSentence } from '../words/as-found-words.ts';
import { inSentence, titleOf } from '../words/claim-line.ts';
import { deltaText } from '../words/because.ts';
import { verdictWords } from '../words/verdict-words.ts';
import { weaveOf } from './cloth-view.ts';

/** One colour a faded cloth may have had, asked as new. */
export interface PossibleOriginalView {
  readonly hex: string;
  /** CSS `color()` for a wide screen, where an ordinary one cannot show it. */
  readonly wide?: string;
  readonly inScreenGamut: boolean;
  /** "half lost". */
  readonly loss: string;
  readonly verdict: Verdict | 'nothing-near';
  readonly verdictWord: string;
  /** The cloth it is judged by, and how near it lies; empty where nothing comes near. */
  readonly by: string;
  /** Where it is asked in full. */
  readonly address: string;
}

/** Possible originals for several losses of one dye, or of all alike. */
export interface OriginalsStrip {
  readonly says: string;
  readonly pieces: readonly PossibleOriginalView[];
}

/** What the cloth is taken to have been dyed with. */
export interface FoundHypothesis {
  readonly recipes: readonly string[];
  readonly says: string;
  readonly strips: readonly OriginalsStrip[];
}

/** A colour as found, with what it may have been: never one colour. */
export interface AsFoundView {
  readonly hex: string;
  readonly weave: string;
  readonly hypotheses: readonly FoundHypothesis[];
  /** Single dyeings that a reader can name instead. */
  readonly dyeings: readonly { readonly id: string; readonly title: string }[];
  /** Dyeings the place and date rule out; only those named by the reader come back. */
  readonly leftOut: readonly string[];
  readonly caution: string;
}

/** Our choice: what one can compare without scrolling far. */
const MOST_HYPOTHESES = 4;
const RULED_OUT: readonly Verdict[] = ['out-of-period', 'contradicted'];

/**
 * What the asked colour, taken as found on an old cloth, may have been: for each hypothesis of dyes a strip of possible originals
 * dye by dye, each asked in turn as new at the question's place and date.
 *
 * @param named recipes of single dyes the reader takes it for; without them the colour itself suggests some.
 * @returns undefined where the question is not understood, asks for no colour, or no single dye was tried on such a fibre.
 */
export function asFoundView(notebook: Notebook, typed: TypedQuestion, named: readonly string[] = []): AsFoundView | undefined {
  const { base, colours } = notebook;
  const { question } = poseQuestion(base, typed, colours);
  const found = question?.colour && foundSwatch(question.colour);
  if (!question || !found) return undefined;
  const single = singleDyeings(notebook, question);
  const fibre = question.route.fibre ?? usualFibre(single);
  const ground = fibre === undefined ? undefined : groundsByFibre(base, colours).get(fibre);
  if (fibre === undefined || !ground) return undefined;
  const onFibre = single.filter((one) => one.fibre !== undefined && base.fibreLine(one.fibre).includes(fibre));
  const open = onFibre.filter(({ judgement }) => !RULED_OUT.includes(judgement.verdict));
  const dyeings = new Map(onFibre.flatMap((one) => dyeingOf(notebook, one)));
  if (dyeings.size === 0) return undefined;
  const explanations = explanationsOf(found.spectrum, ground, dyeings, named, open);
  const ask = askMany(base, colours, { ...question.route, tolerance: question.tolerance });
  return {
    hex: found.hex,
    weave: weaveOf(base, fibre),
    hypotheses: explanations.map((one) => hypothesis(notebook, typed, { found: found.spectrum, ground, dyeings, ask }, one)),
    dyeings: [...dyeings.keys()].map((id) => ({ id, title: titleOf(base, id) })).sort((a, b) => (a.title < b.title ? -1 : 1)),
    leftOut: [...new Set(onFibre.filter((one) => !open.includes(one)).flatMap(({ judgement }) => judgement.route.recipe ?? []))].map((id) =>
      titleOf(base, id),
    ),
    caution: AS_FOUND_CAUTION,
  };
}

/** The colour as found; of a colour-word with several, the first. */
function foundSwatch(colour: AskedColour): SwatchColour | undefined {
  if (colour.kind === 'swatches') return colour.swatches[0];
  const swatch = swatchFromLab(colour.lab, TEXTILE, 'lab');
  return swatch.ok ? swatch.value : undefined;
}

const singleDyeings = ({ base, colours }: Notebook, { route }: PosedQuestion): readonly PaletteColour[] =>
  paletteOf(base, colours, route).filter(({ judgement }) => judgement.route.dyes.length === 1);

/** The fibre most single dyes were tried on. */
function usualFibre(single: readonly PaletteColour[]): string | undefined {
  const counts = new Map<string, number>();
  for (const { fibre } of single) if (fibre !== undefined) counts.set(fibre, (counts.get(fibre) ?? 0) + 1);
  return [...counts].sort(([a, many], [b, few]) => few - many || (a < b ? -1 : 1))[0]?.[0];
}

function dyeingOf({ base }: Notebook, { judgement, samples }: PaletteColour): readonly (readonly [string, Spectrum])[] {
  const sample = middleSample(base, samples);
  return judgement.route.recipe !== undefined && sample ? [[judgement.route.recipe, sample.colour.spectrum]] : [];
}

function explanationsOf(
  found: Spectrum,
  ground: Spectrum,
  dyeings: ReadonlyMap<string, Spectrum>,
  named: readonly string[],
  open: readonly PaletteColour[],
): readonly FoundExplanation[] {
  const known = named.filter((id) => dyeings.has(id));
  // What the reader names is taken whole, however badly it fits: the colours need not agree with the laboratory.
  if (known.length > 0) return [{ ids: known, depths: [], deltaE00: NaN }];
  const usable = [...new Set(open.flatMap(({ judgement }) => judgement.route.recipe ?? []))];
  return explainFound(
    found,
    ground,
    usable.flatMap((id) => {
      const dyed = dyeings.get(id);
      return dyed ? [{ id, dyed }] : [];
    }),
    MOST_HYPOTHESES,
  );
}

interface Ground {
  readonly found: Spectrum;
  readonly ground: Spectrum;
  readonly dyeings: ReadonlyMap<string, Spectrum>;
  readonly ask: (lab10: SwatchColour['lab10']) => BriefAnswer;
}

function hypothesis(
  notebook: Notebook,
  typed: TypedQuestion,
  { found, ground, dyeings, ask }: Ground,
  { ids, deltaE00 }: FoundExplanation,
): FoundHypothesis {
  const { base } = notebook;
  const spectra = ids.flatMap((id) => dyeings.get(id) ?? []);
  const differs = Number.isNaN(deltaE00) ? (explainAll(found, ground, spectra)?.deltaE00 ?? NaN) : deltaE00;
  const dyes = ids.map((id) => dyeWord(notebook, id));
  const strips = possibleOriginalsByDye(found, ground, spectra);
  return {
    recipes: ids,
    says: hypothesisSentence(
      ids.map((id) => inSentence(base, id)),
      differs,
    ),
    strips: strips.map((strip, at) => ({
      says: stripSentence(dyes, at < ids.length ? at : 'all'),
      pieces: strip.map(({ lefts, spectrum }) => {
        const swatch = swatchFromSpectrum(spectrum, 'predicted');
        const answer = ask(swatch.lab10);
        const { asFound: _, ...asNew } = typed;
        const colour = carryColour({ lab: swatch.lab10, ...TEXTILE, by: 'predicted' });
        return {
          hex: swatch.hex,
          ...(swatch.wide === undefined ? {} : { wide: swatch.wide }),
          inScreenGamut: swatch.inScreenGamut,
          loss: lossWords(Math.min(...lefts)),
          verdict: answer.verdict,
          verdictWord: verdictWords[answer.verdict].word,
          by: byWords(notebook, answer),
          address: addressOf({ view: 'ask', settings: settingsOf({ ...asNew, colour }) }),
        };
      }),
    })),
  };
}

/** The cloth a piece is judged by, and how near it lies. */
function byWords({ base }: Notebook, { best }: BriefAnswer): string {
  if (!best) return '';
  const { route } = best.judgement;
  const name = best.predicted
    ? `${route.id
        .split(' + ')
        .map((recipe) => inSentence(base, recipe))
        .join(' with ')}, predicted`
    : inSentence(base, route.recipe ?? route.id);
  return `${name}, ΔE00 ${deltaText(best.deltaE00)}`;
}

const explainAll = (found: Spectrum, ground: Spectrum, spectra: readonly Spectrum[]): { readonly deltaE00: number } | undefined =>
  spectra.length === 0 ? undefined : unmix(found, ground, spectra);

/** The dye of a single dyeing, as it stands in a sentence. */
function dyeWord({ base }: Notebook, recipe: string): string {
  const record = base.note(recipe)?.record;
  const dye = record?.kind === 'recipe' ? record.ingredients.find(({ role }) => role === 'dye')?.what?.text : undefined;
  return dye === undefined ? inSentence(base, recipe) : inSentence(base, base.resolve(dye, ['dyestuff']));
}
