import { coreOf } from '../../domain/date/date-span.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { askColour } from '../../domain/verdict/ask.ts';
import { judgeSkein } from '../../domain/verdict/judge-skein.ts';
import type { Verdict } from '../../domain/verdict/standing-words.ts';
import type { Notebook } from '../notebook.ts';
import { poseCircumstances, readColour, type QuestionProblem } from '../pose-question.ts';
import { readSkeins } from '../read-skeins.ts';
import { becauseOfRoute, deltaText, ruleSentence } from '../words/because.ts';
import { inSentence, titleOf } from '../words/claim-line.ts';
import { verdictWords } from '../words/verdict-words.ts';

/** A table of skeins as it is asked about. */
export interface TypedTable {
  readonly list: string;
  readonly region: string;
  readonly when: string;
  readonly wearer?: string;
  readonly dyedHere?: boolean;
}

/** What a reviewer wants first: does it stand? */
export type TableAnswer = 'stands' | 'stands as cloth' | 'could' | 'disputed' | 'does not';

/** One line of the table, judged. */
export interface JudgedLine {
  readonly line: number;
  readonly name: string;
  readonly made: string;
  readonly answer: TableAnswer;
  readonly verdict: Verdict;
  readonly verdictWord: string;
  readonly classes: number;
  readonly because: readonly string[];
  readonly rules: readonly string[];
  readonly problems: readonly string[];
  readonly hex?: string;
  readonly weave: string;
  /** The nearest colour of the notebook that would stand, where this one does not. */
  readonly nearest?: string;
}

/** A table of skeins, judged. */
export interface TableView {
  readonly place: string;
  readonly reading: string;
  readonly lines: readonly JudgedLine[];
  readonly counts: readonly { readonly answer: TableAnswer; readonly count: number }[];
}

export type TableOrProblems = { readonly table: TableView } | { readonly problems: readonly QuestionProblem[] };

const ANSWER_OF: Readonly<Record<Verdict, TableAnswer>> = {
  attested: 'stands',
  'attested-as-cloth': 'stands as cloth',
  feasible: 'could',
  plausible: 'could',
  disputed: 'disputed',
  unsupported: 'does not',
  'out-of-period': 'does not',
  contradicted: 'does not',
};
const ANSWERS: readonly TableAnswer[] = ['stands', 'stands as cloth', 'could', 'disputed', 'does not'];

/** Whether something better is worth naming: what only could have been is only bettered by what was. */
const wantsNearest = (answer: TableAnswer, nearest: Verdict): boolean =>
  answer === 'does not' || answer === 'disputed' || (answer === 'could' && (nearest === 'attested' || nearest === 'attested-as-cloth'));

/** Judges a list of skeins for a place and date. */
export function tableView(notebook: Notebook, typed: TypedTable): TableOrProblems {
  const { base, colours } = notebook;
  const { question, problems } = poseCircumstances(base, typed);
  if (!question) return { problems };
  const asked = { ...question.route, span: coreOf(question.when) };
  const lines = readSkeins(base, typed.list).map(({ line, skein, colour, problems: unread }): JudgedLine => {
    const { fibre: _any, ...without } = asked;
    const judgement = judgeSkein(base, skein, without);
    const answer = ANSWER_OF[judgement.verdict];
    const askedColour = colour === undefined ? undefined : readColour(colour);
    const near =
      askedColour &&
      askColour(base, colours, {
        ...asked,
        ...(skein.fibre === undefined ? {} : { fibre: skein.fibre }),
        colour: askedColour,
        tolerance: 6,
      });
    const nearest = near?.nearestAttested;
    const hex = near
      ? near.question.colour.kind === 'swatches'
        ? near.question.colour.swatches[0]?.hex
        : near.closest?.colour.hex
      : undefined;
    return {
      line,
      name: skein.name,
      made:
        [...skein.dyes, ...skein.helpers.map(({ id }) => id)].map((id) => titleOf(base, id)).join(', ') +
        (skein.fibre === undefined ? '' : ` on ${inSentence(base, skein.fibre)}`),
      answer,
      verdict: judgement.verdict,
      verdictWord: verdictWords[judgement.verdict].word,
      classes: judgement.classes.length,
      because: becauseOfRoute(base, judgement, { ...asked, ...(skein.fibre === undefined ? {} : { fibre: skein.fibre }) }),
      rules: judgement.rules.filter(({ touches }) => touches !== 'others').map((rule) => ruleSentence(base, rule, asked.wearer)),
      problems: unread,
      ...(hex === undefined ? {} : { hex }),
      weave: skein.fibre === undefined ? 'wool' : (base.fibreLine(skein.fibre).at(-1) ?? 'wool'),
      ...(nearest && wantsNearest(answer, nearest.judgement.verdict)
        ? {
            nearest: `${titleOf(base, nearest.judgement.route.recipe ?? nearest.judgement.route.id)}, ${verdictWords[nearest.judgement.verdict].word.toLowerCase()}, ΔE00 ${deltaText(nearest.deltaE00)} away`,
          }
        : {}),
    };
  });
  return {
    table: {
      place: titleOf(base, asked.region),
      reading: formatSpan(question.when),
      lines,
      counts: ANSWERS.map((answer) => ({ answer, count: lines.filter((one) => one.answer === answer).length })).filter(
        ({ count }) => count > 0,
      ),
    },
  };
}
