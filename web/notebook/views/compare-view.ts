import { type PaletteColour, paletteOf, sortPalette, USUAL_VERDICTS } from '../../domain/palette/palette.ts';
import { coreOf } from '../../domain/date/date-span.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import type { Notebook } from '../notebook.ts';
import { poseCircumstances, type QuestionProblem } from '../pose-question.ts';
import type { TypedPalette } from '../typed-palette.ts';
import { titleOf } from '../words/claim-line.ts';
import { changesBetween, clothOf, type PaletteCloth } from './palette-view.ts';

/** One side of a comparison. */
export interface ComparedSide {
  readonly heading: string;
  readonly cloths: readonly PaletteCloth[];
}

/** Two palettes side by side. */
export interface CompareView {
  readonly before: ComparedSide;
  readonly now: ComparedSide;
  readonly changes: readonly string[];
  /** Colours that hang on both with the same verdict and origin. */
  readonly same: number;
}

export type CompareOrProblems = { readonly compare: CompareView } | { readonly problems: readonly QuestionProblem[] };

/**
 * Two places, dates or wearers compared: what came, what went, what changed.
 *
 * @param other a second notebook, where two notebooks are compared; else both sides are of the first.
 */
export function compareView(notebook: Notebook, before: TypedPalette, now: TypedPalette, other: Notebook = notebook): CompareOrProblems {
  const [was, is] = [side(other, before), side(notebook, now)];
  if (was.problems) return { problems: was.problems };
  if (is.problems) return { problems: is.problems };
  const shown = ({ judgement }: PaletteColour) => USUAL_VERDICTS.includes(judgement.verdict);
  // Only when two wearers are compared does a rule decide what hangs: the verdict itself never knows of it.
  const allowed = ({ judgement }: PaletteColour) => !judgement.rules.some(({ touches }) => touches !== 'others');
  const counts = before.wearer === now.wearer ? shown : (one: PaletteColour) => shown(one) && allowed(one);
  const changes = changesBetween(notebook.base, was.all, is.all, counts);
  return {
    compare: {
      before: { heading: was.heading, cloths: cloths(other, was.all.filter(counts)) },
      now: { heading: is.heading, cloths: cloths(notebook, is.all.filter(counts)) },
      changes,
      same: is.all.filter(counts).length - changes.filter((sentence) => !sentence.startsWith('Went')).length,
    },
  };
}

const cloths = ({ base }: Notebook, all: readonly PaletteColour[]): readonly PaletteCloth[] =>
  sortPalette(all, 'hue').map((one) => clothOf(base, one, 'family'));

type Side =
  | { readonly problems: readonly QuestionProblem[] }
  | { readonly problems?: undefined; readonly heading: string; readonly all: readonly PaletteColour[] };

function side({ base, colours }: Notebook, typed: TypedPalette): Side {
  const { question, problems } = poseCircumstances(base, typed);
  if (!question) return { problems };
  const wearer = question.route.wearer === undefined ? '' : `, ${titleOf(base, question.route.wearer).toLowerCase()}`;
  return {
    heading: `${titleOf(base, question.route.region)}, ${formatSpan(question.when)}${wearer}`,
    all: paletteOf(base, colours, { ...question.route, span: coreOf(question.when) }),
  };
}
