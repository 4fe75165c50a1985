import { coreOf } from '../../domain/date/date-span.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { compareMaterials, type MaterialChange } from '../../domain/palette/compare-materials.ts';
import { comparePalettes, type PaletteChange } from '../../domain/palette/compare-palettes.ts';
import { type PaletteColour, paletteOf, sortPalette, USUAL_VERDICTS } from '../../domain/palette/palette.ts';
import type { JudgedMaterial, RouteQuestion } from '../../domain/verdict/judge-route.ts';
import type { Notebook } from '../notebook.ts';
import { poseCircumstances, type QuestionProblem } from '../pose-question.ts';
import type { TypedPalette } from '../typed-palette.ts';
import { standingSentence } from '../words/because.ts';
import { titleOf } from '../words/claim-line.ts';
import { changeDetail } from '../words/palette-words.ts';
import { clothOf, type PaletteCloth } from './palette-view.ts';
import { type SourceLine, sourceLines } from './source-lines.ts';

/** One side of a comparison. */
export interface ComparedSide {
  readonly heading: string;
  readonly cloths: readonly PaletteCloth[];
}

/** A colour that is not the same on both sides, in a sentence. */
export interface ComparedColour {
  readonly kind: PaletteChange['kind'];
  readonly says: string;
}

/** A dyestuff or helper that does not stand alike on both sides, and the claims that say so. */
export interface ComparedMaterial {
  readonly kind: MaterialChange['kind'];
  readonly id: string;
  readonly title: string;
  readonly before: string;
  readonly now: string;
}

/** Two palettes side by side. */
export interface CompareView {
  readonly before: ComparedSide;
  readonly now: ComparedSide;
  readonly colours: readonly ComparedColour[];
  readonly materials: readonly ComparedMaterial[];
  /** Every source the materials' claims name, in full. */
  readonly sources: readonly SourceLine[];
  /** Colours that hang on both with the same verdict and origin. */
  readonly same: number;
}

/** A comparison, or what could not be understood of it; `inOther` where only the other notebook does not understand it. */
export type CompareOrProblems =
  { readonly compare: CompareView } | { readonly problems: readonly QuestionProblem[]; readonly inOther?: true };

const KINDS: readonly PaletteChange['kind'][] = ['came', 'went', 'origin', 'verdict'];

/**
 * Two places, dates, wearers or notebooks compared: what came, what went, what changed, and why.
 *
 * @param other a second notebook, where two notebooks are compared: it is the side before; else both sides are of the first.
 */
export function compareView(notebook: Notebook, before: TypedPalette, now: TypedPalette, other: Notebook = notebook): CompareOrProblems {
  const is = sideOf(notebook, now);
  if (is.problems) return { problems: is.problems };
  const was = sideOf(other, other === notebook ? before : asOtherKnows(notebook, other, before));
  if (was.problems) return { problems: was.problems, ...(other === notebook ? {} : { inOther: true as const }) };
  const shown = ({ judgement }: PaletteColour) => USUAL_VERDICTS.includes(judgement.verdict);
  // Only when two wearers are compared does a rule decide what hangs: the verdict itself never knows of it.
  const allowed = ({ judgement }: PaletteColour) => !judgement.rules.some(({ touches }) => touches !== 'others');
  const counts = before.wearer === now.wearer ? shown : (one: PaletteColour) => shown(one) && allowed(one);
  const changes = comparePalettes(was.all, is.all, counts);
  const materials = compareMaterials({ base: other.base, question: was.question }, { base: notebook.base, question: is.question });
  const bases = { before: other.base, now: notebook.base };
  return {
    compare: {
      before: { heading: was.heading, cloths: cloths(other, was.all.filter(counts)) },
      now: { heading: is.heading, cloths: cloths(notebook, is.all.filter(counts)) },
      colours: KINDS.flatMap((kind) =>
        changes.filter((change) => change.kind === kind).map((change) => ({ kind, says: changeDetail(bases, change) })),
      ),
      materials: materials.map(({ kind, id, before: earlier, now: later }) => ({
        kind,
        id,
        title: titleOf(notebook.base.note(id) ? notebook.base : other.base, id),
        before: standingSentence(other.base, earlier, was.question),
        now: standingSentence(notebook.base, later, is.question),
      })),
      sources: sourcesOf(notebook, other, materials),
      same: is.all.filter(counts).length - changes.filter(({ kind }) => kind !== 'went').length,
    },
  };
}

/** The place and wearer as the other notebook has them: by id, and where it has no such id, by title. */
function asOtherKnows({ base }: Notebook, other: Notebook, typed: TypedPalette): TypedPalette {
  const { region, wearer } = typed;
  return {
    ...typed,
    region: other.base.regionId(region) === undefined && base.note(region) ? titleOf(base, region) : region,
    ...(wearer !== undefined && !other.base.note(wearer) && base.note(wearer) ? { wearer: titleOf(base, wearer) } : {}),
  };
}

/** The sources behind what changed; of both notebooks where there are two, each once. */
function sourcesOf(notebook: Notebook, other: Notebook, materials: readonly MaterialChange[]): readonly SourceLine[] {
  const keysOf = ({ carriedBy }: JudgedMaterial) => ({
    keys: carriedBy.flatMap(({ placed }) => placed.claim.sources.map(({ key }) => key)),
  });
  const now = sourceLines(
    notebook,
    materials.map((one) => keysOf(one.now)),
  );
  const known = new Set(now.map(({ key }) => key));
  const before = sourceLines(
    other,
    materials.map((one) => keysOf(one.before)),
  );
  return [...now, ...before.filter(({ key }) => !known.has(key))].toSorted((a, b) => a.key.localeCompare(b.key, 'en'));
}

const cloths = ({ base }: Notebook, all: readonly PaletteColour[]): readonly PaletteCloth[] =>
  sortPalette(all, 'hue').map((one) => clothOf(base, one, 'family'));

type Side =
  | { readonly problems: readonly QuestionProblem[] }
  | {
      readonly problems?: undefined;
      readonly heading: string;
      readonly question: RouteQuestion;
      readonly all: readonly PaletteColour[];
    };

function sideOf({ base, colours }: Notebook, typed: TypedPalette): Side {
  const { question, problems } = poseCircumstances(base, typed);
  if (!question) return { problems };
  const wearer = question.route.wearer === undefined ? '' : `, ${titleOf(base, question.route.wearer).toLowerCase()}`;
  const asked = { ...question.route, span: coreOf(question.when) };
  return {
    heading: `${titleOf(base, question.route.region)}, ${formatSpan(question.when)}${wearer}`,
    question: asked,
    all: paletteOf(base, colours, asked),
  };
}
