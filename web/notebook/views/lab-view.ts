import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { askLaboratory, type LabReply } from '../../domain/laboratory/ask-laboratory.ts';
import { genericName, genericNamesOf } from '../../domain/laboratory/colour-index.ts';
import type { DyeProfile } from '../../domain/laboratory/compound.ts';
import type { Explanation } from '../../domain/laboratory/explain.ts';
import { nearestCompounds } from '../../domain/laboratory/find-compound.ts';
import type { LabReport } from '../../domain/laboratory/findings.ts';
import { type FurtherTest, furtherTests } from '../../domain/laboratory/further-tests.ts';
import { type NotToldApart, notToldApart } from '../../domain/laboratory/not-told-apart.ts';
import { reasonsFor } from '../../domain/laboratory/reasons.ts';
import { METHOD_REACH } from '../../domain/laboratory/tables/methods.ts';
import { LAB_WEIGHTS } from '../../domain/laboratory/tables/weights.ts';
import { verdictOf } from '../../domain/verdict/standing-words.ts';
import type { Notebook } from '../notebook.ts';
import type { QuestionProblem } from '../pose-question.ts';
import { poseLab, type TypedLab } from '../typed-lab.ts';
import { type ClaimLine, claimLine, inSentence, shortClaim, titleOf } from '../words/claim-line.ts';
import {
  foundWords,
  methodWords,
  mixtureTitle,
  notToldSentences,
  reasonSentence,
  sharePercent,
  shareWord,
  testSentence,
  weakSentence,
} from '../words/lab-words.ts';
import { inList } from '../words/in-list.ts';
import { standingWords, verdictWords } from '../words/verdict-words.ts';
import { type DraftNote, labNote } from '../lab-note.ts';
import { labFigures, type LabFigureRow, ownFigureLines, weightsOf } from './lab-figures.ts';
import { mordantLines } from './lab-mordants.ts';

/** A dye of an explanation. */
export interface LabDye {
  readonly id: string;
  readonly title: string;
  readonly latin: string;
  /** Colour Index generic names, from memory. */
  readonly generic: readonly string[];
  /** What the notes say of place and date, as claims; empty without a place and date. */
  readonly claims: readonly ClaimLine[];
}

/** One explanation as a reader meets it. */
export interface LabExplanation {
  readonly id: string;
  readonly dyes: readonly LabDye[];
  readonly title: string;
  readonly word: string;
  readonly share: string;
  readonly speaksFor: readonly string[];
  readonly against: readonly string[];
  readonly weak: readonly string[];
  readonly notTold: readonly string[];
}

/** What a report means, everything worked out. */
export interface LabView {
  /** The best explanation in large words. */
  readonly word: string;
  readonly why: string;
  readonly reading: string;
  readonly explanations: readonly LabExplanation[];
  /** How many more are less likely than those shown. */
  readonly others: number;
  readonly ruledOut: readonly string[];
  readonly tests: readonly string[];
  readonly mordants: readonly string[];
  readonly remarks: readonly string[];
  /** What it was reckoned with, compound by compound. */
  readonly figures: readonly LabFigureRow[];
  /** Figures of the reader's own, in words. */
  readonly ownFigures: readonly string[];
}

/** A meaning, or what in the report could not be understood. */
export type LabOrProblems = { readonly lab: LabView } | { readonly problems: readonly QuestionProblem[] };

/** How many explanations are laid out, and from which share. Our choice. */
const MOST = 5;
const LEAST_SHARE = 0.01;
const MOST_TESTS = 4;
const MOST_CLAIMS = 3;

/** Tells what a report may mean. */
export function labView({ base }: Notebook, typed: TypedLab): LabOrProblems {
  const { posed, problems } = poseLab(base, typed);
  if (!posed) return { problems };
  const { question } = posed;
  const reply = askLaboratory(base, question, weightsOf(typed));
  const { answer } = reply;
  const groups = foldAlike(reply, question.report);
  const shown = groups.slice(0, MOST).filter(({ share }, i) => i === 0 || share >= LEAST_SHARE);
  const best = shown[0];
  return {
    lab: {
      ...headline(base, best, answer.explanations.length > 0, typed),
      reading: posed.when ? formatSpan(posed.when) : '',
      explanations: shown.map((group) => explanationView(base, group, reply, question.report)),
      others: groups.length - shown.length,
      ruledOut: ruledOutLines(base, reply),
      tests: best ? testsOf(base, shown, reply, question.report) : [],
      mordants: mordantLines(base, question, answer.known),
      figures: labFigures(base, typed, profilesShown(reply, shown)),
      ownFigures: ownFigureLines(typed),
      remarks: remarksOf(base, typed, reply, question.region !== undefined && question.span !== undefined),
    },
  };
}

/** The dyes of what is laid out, each once. */
function profilesShown({ answer }: LabReply, groups: readonly Group[]): readonly DyeProfile[] {
  const ids = new Set(groups.flatMap(({ best }) => best.dyes));
  return answer.candidates.filter(({ dye }) => ids.has(dye));
}

/** Explanations that differ only in sources the findings do not tell apart, under the likeliest of them. */
interface Group {
  readonly best: Explanation;
  readonly share: number;
  readonly notTold: readonly NotToldApart[];
}

function foldAlike({ answer, context }: LabReply, report: LabReport): readonly Group[] {
  const groups: { best: Explanation; share: number; notTold: readonly NotToldApart[] }[] = [];
  const fits = new Map(answer.explanations.map(({ dyes, logFit }) => [[...dyes].sort().join('+'), logFit]));
  const slack = Math.log((context.weights ?? LAB_WEIGHTS).tellsFrom);
  // A dye more that adds nothing to the findings can never be excluded; it is not laid out either.
  const addsNothing = ({ dyes, logFit }: Explanation) =>
    dyes.length > 1 &&
    dyes.some(
      (dye) =>
        (fits.get(
          dyes
            .filter((one) => one !== dye)
            .sort()
            .join('+'),
        ) ?? -Infinity) >
        logFit - slack,
    );
  for (const explanation of answer.explanations) {
    if (addsNothing(explanation)) continue;
    const home = groups.find(({ best, notTold }) => standsIn(explanation.dyes, best.dyes, notTold));
    if (home) home.share += explanation.share;
    else if (groups.length < 40)
      groups.push({ best: explanation, share: explanation.share, notTold: notToldApart(explanation, answer, report, context) });
  }
  return groups.sort((a, b) => b.share - a.share);
}

/** Whether each dye is one of the others or stands in for one of them. */
function standsIn(dyes: readonly string[], others: readonly string[], notTold: readonly NotToldApart[]): boolean {
  if (dyes.length !== others.length) return false;
  const [first, ...rest] = dyes;
  if (first === undefined) return true;
  return others.some((other) => {
    const fits = first === other || notTold.some(({ dye, from }) => dye === other && from.some((one) => one.dye === first));
    return (
      fits &&
      standsIn(
        rest,
        others.filter((one) => one !== other),
        notTold,
      )
    );
  });
}

function headline(
  base: EvidenceBase,
  best: Group | undefined,
  anyFits: boolean,
  typed: TypedLab,
): { readonly word: string; readonly why: string } {
  const found = typed.findings.filter(({ found: one }) => one === 'present' || one === 'trace');
  if (found.length === 0) {
    return {
      word: 'Nothing found',
      why: `No compound was found. Not found is not undyed: say how it was looked for, and ask again with what was found.`,
    };
  }
  if (!best || !anyFits)
    return { word: 'No source fits', why: 'No dyestuff of your notebook that could be to hand there and then holds what was found.' };
  return {
    word: mixtureTitle(base, best.best.dyes),
    why: `${shareWord(best.share)} among what your notebook and the tables know: ${sharePercent(best.share)}${
      best.notTold.length > 0 ? ', together with the sources it is not told from' : ''
    }.`,
  };
}

function explanationView(
  base: EvidenceBase,
  { best, share, notTold }: Group,
  { answer, context, standing }: LabReply,
  report: LabReport,
): LabExplanation {
  const reasons = reasonsFor(best, answer, report, context);
  return {
    id: best.dyes.join('+'),
    title: mixtureTitle(base, best.dyes),
    word: shareWord(share),
    share: sharePercent(share),
    dyes: best.dyes.map((id): LabDye => {
      const note = base.note(id);
      const carried = standing(id)?.carriedBy ?? [];
      return {
        id,
        title: titleOf(base, id),
        latin: note?.record.kind === 'dyestuff' ? (note.record.latin[0] ?? '') : '',
        generic: genericNamesOf(id).map(({ name, doubtful }) => `${name}${doubtful ? ' (doubtful)' : ''}`),
        claims: carried.slice(0, MOST_CLAIMS).map((one) => claimLine(base, one)),
      };
    }),
    speaksFor: reasons.speaksFor.map((reason) => reasonSentence(base, reason)),
    against: reasons.against.map((reason) => reasonSentence(base, reason)),
    weak: reasons.weak.map((reason) => weakSentence(base, reason)),
    notTold: notTold.flatMap((one) => notToldSentences(base, one)),
  };
}

/** Sources that would explain something, set aside by place or date: each once, with its verdict and the claim that says so. */
function ruledOutLines(base: EvidenceBase, { answer, context, standing: standingOf }: LabReply): readonly string[] {
  return answer.ruledOut.flatMap(({ dyes }) => {
    const [dye] = dyes;
    const standing = dye === undefined ? undefined : context.standingOf?.(dye);
    if (dyes.length !== 1 || dye === undefined || !standing) return [];
    const profile = answer.candidates.find((one) => one.dye === dye);
    const held = answer.known.filter(
      ({ compound, finding }) =>
        (finding.found === 'present' || finding.found === 'trace') && profile?.holds.some((one) => one.compound === compound.name),
    );
    const by = standingOf(dye)?.carriedBy[0];
    const reason = by
      ? ` ${standing === 'not-yet' ? 'Your notes first have it in' : 'Your notes have it so for'} ${shortClaim(base, by)}.`
      : '';
    const compounds = inList(held.map(({ compound }) => compound.name));
    return [
      `${titleOf(base, dye)} would explain ${compounds}. ${verdictWords[verdictOf(standing, false)].word}: ${standingWords[standing]}.${reason}`,
    ];
  });
}

/** Tests that would tell the best explanation's dyes from what stands in for them, then from the next explanation. */
function testsOf(base: EvidenceBase, groups: readonly Group[], { answer, context }: LabReply, report: LabReport): readonly string[] {
  const profile = (id: string) => answer.candidates.find(({ dye }) => dye === id);
  const [best, ...next] = groups;
  if (!best) return [];
  const pairs = [
    ...best.notTold.flatMap(({ dye, from }) =>
      from.filter(({ ruledOut, never }) => !ruledOut && !never).map((other) => [dye, other.dye] as const),
    ),
    ...next.flatMap(({ best: other }) => {
      const mine = best.best.dyes.filter((dye) => !other.dyes.includes(dye));
      const theirs = other.dyes.filter((dye) => !best.best.dyes.includes(dye));
      return mine[0] !== undefined && theirs[0] !== undefined ? [[mine[0], theirs[0]] as const] : [];
    }),
  ];
  // One test may tell from several at once: said once.
  const tests = new Map<string, { readonly test: FurtherTest; readonly from: string[] }>();
  for (const [a, b] of pairs) {
    const [one, other] = [profile(a), profile(b)];
    const test = one && other && furtherTests(one, other, answer, report, context)[0];
    if (!test) continue;
    const key = `${a} ${test.kind === 'ratio' ? test.ratio : `${test.compound} ${test.points === a}`}`;
    const known = tests.get(key);
    if (!known) tests.set(key, { test, from: [b] });
    else if (!known.from.includes(b)) known.from.push(b);
  }
  return [...tests.values()].slice(0, MOST_TESTS).map(({ test, from }) => testSentence(base, test, from));
}

/** The report as a textile note, with the dyes its reader takes it for; undefined when it cannot be understood. */
export function labDraft(notebook: Notebook, typed: TypedLab, dyes: readonly string[]): DraftNote | undefined {
  const view = labView(notebook, typed);
  return 'lab' in view ? labNote(notebook.base, typed, view.lab, dyes) : undefined;
}

function remarksOf(base: EvidenceBase, typed: TypedLab, { answer }: LabReply, placed: boolean): readonly string[] {
  const unknown = answer.unknown.map(({ compound, found }) => {
    const source = genericName(compound)?.dyes.filter((dye) => base.note(dye) !== undefined) ?? [];
    if (source.length > 0)
      return `“${compound}” is the generic name of a source, ${inList(
        source.map((dye) => inSentence(base, dye)),
        'or',
      )}, and no compound: put in what was found.`;
    const near = nearestCompounds(compound);
    return `“${compound}” (${foundWords[found]}) is not in the tables and was left out.${near.length > 0 ? ` The nearest: ${near.join(', ')}.` : ''}`;
  });
  const doubtful = [...new Set(answer.sources.slice(0, 6).map(({ dye }) => dye))].filter((dye) => base.claimsOf(dye).length === 0);
  const own = ownFigureLines(typed);
  return [
    ...unknown,
    ...(own.length > 0 ? [`Reckoned with figures of your own: ${own.join('; ')}.`] : []),
    ...(placed ? [] : ['No place and date together: nothing was set aside by them, and every source counts alike.']),
    ...(doubtful.length > 0 && placed ? [`Your notes make no claim about ${inList(doubtful.map((dye) => inSentence(base, dye)))}.`] : []),
    ...(answer.explanations.length > 0
      ? ['A further dye that adds nothing to what was found can never be excluded; such mixtures are left out.']
      : []),
    `Not found is weighed by what ${methodWords[typed.method]} reaches (${METHOD_REACH[typed.method].basis.source}), and never read as not used.`,
    'How much of each compound a source gives, what age takes and how far a method reaches are graded by our judgement; the shares order the sources and are no measurement.',
  ];
}
