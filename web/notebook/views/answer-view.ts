import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { TEXTILE } from '../../domain/colour/conditions.ts';
import { swatchFromLab } from '../../domain/colour/swatch-colour.ts';
import type { AskedColour } from '../../domain/verdict/asked-colour.ts';
import { coreOf, type DateSpan } from '../../domain/date/date-span.ts';
import { askColour, type Candidate, DEFAULT_TOLERANCE } from '../../domain/verdict/ask.ts';
import { askDye } from '../../domain/verdict/ask-dye.ts';
import type { JudgedClaim } from '../../domain/verdict/judge-claim.ts';
import type { RouteJudgement } from '../../domain/verdict/judge-route.ts';
import type { Verdict } from '../../domain/verdict/standing-words.ts';
import { weighClaims } from '../../domain/verdict/weigh-claims.ts';
import { whatWouldChange } from '../../domain/verdict/what-would-change.ts';
import type { Notebook } from '../notebook.ts';
import { type PosedQuestion, poseQuestion, type QuestionProblem, type TypedQuestion } from '../pose-question.ts';
import { carryColour } from '../typed-colour.ts';
import { becauseOfColour, becauseOfDye, changeSentence, ruleSentence } from '../words/because.ts';
import { type ClaimLine, claimLine, inSentence, titleOf } from '../words/claim-line.ts';
import { meaningSentences } from '../words/meaning-words.ts';
import { byWearer } from '../words/wearer-words.ts';
import { verdictWords } from '../words/verdict-words.ts';
import { type ClothView, clothView } from './cloth-view.ts';
import { spreadOfPredictions } from './spread-of-predictions.ts';
import { type SourceLine, sourceLines } from './source-lines.ts';

/** Everything the answer page shows, worked out: plain values that can cross to another thread or onto paper. */
export interface AnswerView {
  readonly sentence: string;
  /** How the date was read. */
  readonly reading: string;
  readonly verdict: Verdict | 'nothing-near';
  readonly word: string;
  readonly means: string;
  /** One plain sentence why. */
  readonly why: string;
  readonly because: readonly string[];
  readonly speaksFor: readonly ClaimLine[];
  readonly speaksAgainst: readonly ClaimLine[];
  /** What is missing: unrecorded materials, no witness. */
  readonly missing: readonly string[];
  readonly nearest: readonly ClaimLine[];
  readonly others: number;
  /** Who used it, how usual, at what price, as the claims say. */
  readonly forWhom: readonly string[];
  readonly rules: readonly string[];
  readonly changes: readonly string[];
  readonly cloths: readonly ClothView[];
  /** Over-dyes nobody dyed yet that come near. */
  readonly predicted: readonly ClothView[];
  readonly closest?: ClothView;
  readonly nearestAttested?: ClothView;
  /** What colour-words of the question meant here and then. */
  readonly meanings: readonly string[];
  readonly settings: readonly string[];
  /** The sources of the claims shown, in full. */
  readonly sources: readonly SourceLine[];
  /** The middle year of the asked core, where it has two ends: where a thread of years stands. */
  readonly year?: number;
  /** The asked colour for the screen, where one was asked. */
  readonly askedHex?: string;
  /** The asked colour as it is laid beside a cloth. */
  readonly askedLook?: string;
}

/** An answer, or what in the question could not be understood. */
export type AnswerOrProblems = { readonly answer: AnswerView } | { readonly problems: readonly QuestionProblem[] };

/** Answers a typed question against a notebook. */
export function answerView(notebook: Notebook, typed: TypedQuestion): AnswerOrProblems {
  const { base, colours } = notebook;
  const { question, problems } = poseQuestion(base, typed, colours);
  if (!question) return { problems };
  const shared = {
    sentence: questionSentence(base, question),
    reading: formatSpan(question.when),
    ...yearOf(question.when),
    meanings: typed.colour === undefined ? [] : meaningSentences(base, typed.colour, question.route),
  };
  if (question.dye !== undefined) {
    const answer = askDye(base, { ...question.route, dye: question.dye });
    return {
      answer: {
        ...shared,
        ...withSources(notebook, judgedView(base, answer.judgement, question, becauseOfDye(base, answer))),
        verdict: answer.judgement.verdict,
        ...wordsOf(answer.judgement.verdict),
        cloths: [],
        predicted: [],
        settings: [],
      },
    };
  }
  if (!question.colour) return { problems: [{ part: 'colour', problem: 'missing', typed: '', nearest: [] }] };
  const answer = askColour(base, colours, { ...question.route, colour: question.colour, tolerance: question.tolerance });
  const best = answer.candidates[0];
  const because = becauseOfColour(base, answer);
  const judged = best
    ? withSources(notebook, judgedView(base, best.judgement, question, because))
    : { ...NOTHING, why: because[0] ?? '', because };
  return {
    answer: {
      ...shared,
      ...judged,
      verdict: answer.verdict,
      ...wordsOf(answer.verdict),
      cloths: answer.candidates.filter(({ colourFrom }) => colourFrom !== 'predicted').map((one) => clothView(base, one)),
      predicted: predictedViews(notebook, answer.candidates),
      ...(answer.closest && { closest: clothView(base, answer.closest) }),
      ...(answer.nearestAttested && { nearestAttested: clothView(base, answer.nearestAttested) }),
      settings:
        question.tolerance === DEFAULT_TOLERANCE ? [] : [`The tolerance is ΔE00 ${question.tolerance} instead of ${DEFAULT_TOLERANCE}.`],
      ...askedOf(question.colour),
    },
  };
}

/** The predicted cloths, each with its likely spread. */
function predictedViews(notebook: Notebook, candidates: readonly Candidate[]): readonly ClothView[] {
  const predicted = candidates.filter(({ colourFrom }) => colourFrom === 'predicted');
  if (predicted.length === 0) return [];
  const spread = spreadOfPredictions(notebook);
  return predicted.map((one) => ({ ...clothView(notebook.base, one), spread }));
}

/** What the asked colour looks like on the screen, and as it is laid down; a bare Lab as cloth would have it. */
function askedOf(colour: AskedColour): Pick<AnswerView, 'askedHex' | 'askedLook'> {
  const bare = colour.kind === 'bare-lab' ? swatchFromLab(colour.lab, TEXTILE, 'eye') : undefined;
  const swatch = colour.kind === 'swatches' ? colour.swatches[0] : bare?.ok === true ? bare.value : undefined;
  return swatch ? { askedHex: swatch.hex, askedLook: carryColour({ lab: swatch.lab10, ...TEXTILE, by: swatch.origin }) } : {};
}

/** The words of a verdict. */
export const wordsOf = (verdict: Verdict | 'nothing-near') => verdictWords[verdict];

const NOTHING = {
  speaksFor: [],
  speaksAgainst: [],
  missing: [],
  nearest: [],
  others: 0,
  forWhom: [],
  rules: [],
  changes: [],
  sources: [],
} as const;

function yearOf(when: DateSpan): { readonly year?: number } {
  const { from, to } = coreOf(when);
  return from === null || to === null ? {} : { year: Math.round((from + to) / 2) };
}

/** What a judged route shows, whatever was asked. */
export function judgedView(base: EvidenceBase, judgement: RouteJudgement, question: PosedQuestion, because: readonly string[]) {
  const weighed = weighClaims(judgement);
  const lines = (claims: readonly JudgedClaim[]) => claims.map((one) => claimLine(base, one, judgement));
  return {
    why: because[0] ?? '',
    because,
    speaksFor: lines(weighed.speaksFor),
    speaksAgainst: lines(weighed.speaksAgainst),
    missing: missingOf(base, judgement),
    nearest: lines(weighed.nearest),
    others: weighed.others,
    forWhom: forWhomOf(base, weighed.speaksFor),
    rules: judgement.rules.map((rule) => ruleSentence(base, rule, question.route.wearer)),
    changes: whatWouldChange(judgement).map((change) => changeSentence(base, change)),
  };
}

/** The same with the sources of its claims in full. */
export const withSources = <J extends Pick<AnswerView, 'speaksFor' | 'speaksAgainst' | 'nearest'>>(notebook: Notebook, judged: J) => ({
  ...judged,
  sources: sourceLines(notebook, [...judged.speaksFor, ...judged.speaksAgainst, ...judged.nearest]),
});

function missingOf(base: EvidenceBase, { materials, witnesses, route }: RouteJudgement): readonly string[] {
  const unrecorded = materials
    .filter(({ standing }) => standing === 'unrecorded')
    .map(({ material }) => `${titleOf(base, material.id)}: nothing in the notes reaches this place and time.`);
  const dyes = route.dyes.map((dye) => inSentence(base, dye)).join(' and ');
  const witness = witnesses.length === 0 && route.dyes.length > 0 ? [`No textile or text with exactly ${dyes} there and then.`] : [];
  return [...unrecorded, ...witness];
}

function forWhomOf(base: EvidenceBase, claims: readonly JudgedClaim[]): readonly string[] {
  return [
    ...new Set(
      claims.flatMap(({ placed: { claim, material } }) => {
        const wearers = claim.wearers.map(({ text }) => titleOf(base, base.resolve(text, ['wearer'])).toLowerCase());
        const parts = [
          wearers.length > 0 ? `for ${wearers.join(', ')}` : undefined,
          claim.usual === undefined ? undefined : claim.usual.replace('-', ' '),
          claim.price === undefined ? undefined : `price: ${claim.price}`,
        ].filter((part) => part !== undefined);
        return parts.length > 0 ? [`${titleOf(base, material)}: ${parts.join('; ')} (${claim.sources[0]?.key ?? claim.note}).`] : [];
      }),
    ),
  ];
}

/** The question as a sentence. */
export function questionSentence(
  base: EvidenceBase,
  { route, when, dye }: { readonly route: PosedQuestion['route']; readonly when: DateSpan; readonly dye?: string },
): string {
  const what = dye === undefined ? 'this colour' : inSentence(base, dye);
  const fibre = route.fibre === undefined ? '' : ` on ${titleOf(base, route.fibre).toLowerCase()}`;
  const wearer = route.wearer === undefined ? '' : ` by ${byWearer(titleOf(base, route.wearer))}`;
  return `Would ${what} be ${route.dyedHere ? 'dyed' : 'worn'}${fibre} in ${titleOf(base, route.region)} about ${when.text}${wearer}?`;
}
