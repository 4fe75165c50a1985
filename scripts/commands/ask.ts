import type { EvidenceBase } from '../../web/domain/claim/evidence-base.ts';
import { formatSpan } from '../../web/domain/date/format-date.ts';
import { askColour, type Candidate, type ColourAnswer } from '../../web/domain/verdict/ask.ts';
import { askDye, type DyeAnswer } from '../../web/domain/verdict/ask-dye.ts';
import type { JudgedClaim } from '../../web/domain/verdict/judge-claim.ts';
import type { RouteJudgement } from '../../web/domain/verdict/judge-route.ts';
import { weighClaims } from '../../web/domain/verdict/weigh-claims.ts';
import { whatWouldChange } from '../../web/domain/verdict/what-would-change.ts';
import { colourAnswerJson, dyeAnswerJson } from '../../web/notebook/answer-json.ts';
import type { Notebook } from '../../web/notebook/notebook.ts';
import { type PosedQuestion, poseQuestion } from '../../web/notebook/pose-question.ts';
import { becauseOfColour, becauseOfDye, changeSentence, deltaText, nameOf, ruleSentence } from '../../web/notebook/words/because.ts';
import { claimLine, inSentence, titleOf } from '../../web/notebook/words/claim-line.ts';
import { byWearer } from '../../web/notebook/words/wearer-words.ts';
import { verdictWords } from '../../web/notebook/words/verdict-words.ts';
import { type Command, openFolder, readArgs, tellProblems, wrap } from './command.ts';

const OPTIONS = {
  colour: { type: 'string' },
  dye: { type: 'string' },
  region: { type: 'string' },
  when: { type: 'string' },
  fibre: { type: 'string' },
  wearer: { type: 'string' },
  'dyed-here': { type: 'boolean' },
  tolerance: { type: 'string' },
  json: { type: 'boolean' },
} as const;

/** `tenterground ask FOLDER …`: a verdict with its reasons. */
export const ask: Command = async (args) => {
  const read = readArgs(args, OPTIONS, 1);
  if (!read) return 2;
  const text = (option: keyof typeof OPTIONS): string | undefined => {
    const value = read.values[option];
    return typeof value === 'string' ? value : undefined;
  };
  const opened = await openFolder(read.words[0]);
  if (!opened) return 2;
  const { notebook } = opened;
  const optional = { colour: text('colour'), dye: text('dye'), fibre: text('fibre'), wearer: text('wearer'), tolerance: text('tolerance') };
  if (optional.colour !== undefined && optional.dye !== undefined) {
    console.error('Give --colour or --dye, not both.');
    return 2;
  }
  const typed = { ...optional, region: text('region') ?? '', when: text('when') ?? '', dyedHere: read.values['dyed-here'] === true };
  const { question, problems } = poseQuestion(notebook.base, typed, notebook.colours);
  if (!question) {
    tellProblems(problems);
    return 2;
  }
  const json = read.values['json'] === true;
  if (question.dye !== undefined) {
    const answer = askDye(notebook.base, { ...question.route, dye: question.dye });
    console.log(json ? JSON.stringify(dyeAnswerJson(notebook.base, answer), undefined, 2) : dyeText(notebook, question, answer));
  } else if (question.colour) {
    const answer = askColour(notebook.base, notebook.colours, {
      ...question.route,
      colour: question.colour,
      tolerance: question.tolerance,
    });
    console.log(json ? JSON.stringify(colourAnswerJson(notebook.base, answer), undefined, 2) : colourText(notebook, question, answer));
  }
  return 0;
};

function colourText(notebook: Notebook, question: PosedQuestion, answer: ColourAnswer): string {
  const { base } = notebook;
  const best = answer.candidates[0];
  return [
    heading(notebook, question),
    verdictWords[answer.verdict].word.toUpperCase(),
    wrap(verdictWords[answer.verdict].means),
    '',
    ...becauseOfColour(base, answer).map((line) => `  · ${wrap(line, '    ').trimStart()}`),
    ...(best ? evidence(notebook, best.judgement, question) : []),
    '',
    'Cloths that come near',
    ...(answer.candidates.length > 0 ? answer.candidates.slice(0, MOST_CLOTHS).map((one) => candidateText(notebook, one)) : ['  none']),
    ...(answer.candidates.length > MOST_CLOTHS ? [`  … and ${answer.candidates.length - MOST_CLOTHS} more`] : []),
    ...(answer.closest ? ['', 'Closest of all', candidateText(notebook, answer.closest)] : []),
    ...(answer.nearestAttested
      ? [
          '',
          `Nearest ${verdictWords[answer.nearestAttested.judgement.verdict].word.toLowerCase()}`,
          candidateText(notebook, answer.nearestAttested),
        ]
      : []),
  ].join('\n');
}

function dyeText(notebook: Notebook, question: PosedQuestion, answer: DyeAnswer): string {
  return [
    heading(notebook, question),
    verdictWords[answer.judgement.verdict].word.toUpperCase(),
    wrap(verdictWords[answer.judgement.verdict].means),
    '',
    ...becauseOfDye(notebook.base, answer).map((line) => `  · ${wrap(line, '    ').trimStart()}`),
    ...evidence(notebook, answer.judgement, question),
  ].join('\n');
}

function heading({ base }: Notebook, { route, when, dye, tolerance, colourNamed }: PosedQuestion): string {
  const colour = colourNamed ? `the colour of “${colourNamed.ids.map((id) => titleOf(base, id)).join('”, “')}”` : 'that colour';
  const what = dye === undefined ? `${colour} (within ΔE00 ${tolerance})` : inSentence(base, dye);
  const fibre = route.fibre === undefined ? '' : ` on ${titleOf(base, route.fibre).toLowerCase()}`;
  const wearer = route.wearer === undefined ? '' : ` by ${byWearer(titleOf(base, route.wearer))}`;
  const sentence = `Would ${what} be ${route.dyedHere ? 'dyed' : 'worn'}${fibre} in ${titleOf(base, route.region)}, ${formatSpan(when)}${wearer}?`;
  return `${wrap(sentence)}\n${colourNamed && !colourNamed.fits ? `${wrap(NOT_IN_USE)}\n` : ''}`;
}

const NOT_IN_USE = 'Your notes do not have that colour-word in use there and then: its colours elsewhere are taken.';

/** What matters of the claims behind a verdict, side by side with what is only counted. */
function evidence({ base }: Notebook, judgement: RouteJudgement, question: PosedQuestion): readonly string[] {
  const weighed = weighClaims(judgement);
  const claims = (title: string, judged: readonly JudgedClaim[]) =>
    section(title, [
      ...judged.slice(0, MOST_CLAIMS).map((one) => claimText(base, one, judgement)),
      ...(judged.length > MOST_CLAIMS ? [`  … and ${judged.length - MOST_CLAIMS} more`] : []),
    ]);
  const rules = judgement.rules
    .filter(({ touches }) => touches !== 'others')
    .map((rule) => ruleSentence(base, rule, question.route.wearer));
  const { others } = weighed;
  return [
    ...claims('What speaks for it', weighed.speaksFor),
    ...claims('What speaks against it', weighed.speaksAgainst),
    ...claims('The nearest records at other times', weighed.nearest),
    ...(others > 0 ? ['', `${others} more ${others === 1 ? 'claim speaks' : 'claims speak'} of other places or years.`] : []),
    ...section('Rules for this wearer', rules.map(hanging)),
    ...section(
      'What would change it',
      whatWouldChange(judgement).map((change) => hanging(changeSentence(base, change))),
    ),
  ];
}

/** A side of the evidence told in a terminal; the rest is counted, and all of it is in the JSON. Our choice: one screen. */
const MOST_CLAIMS = 12;
const MOST_CLOTHS = 12;

const section = (title: string, texts: readonly string[]): readonly string[] => (texts.length > 0 ? ['', title, ...texts] : []);

/** A text that begins two columns in and goes on four columns in. */
const hanging = (text: string): string => `  ${wrap(text, '    ').trimStart()}`;

function claimText(base: EvidenceBase, one: JudgedClaim, judgement: RouteJudgement): string {
  const line = claimLine(base, one, judgement);
  const parts = [line.region, line.years, line.timeRelation, line.placeRelation, line.evidence, line.sure, line.source, line.checked];
  return hanging(`${line.says}: ${parts.filter((part) => part !== '').join(' · ')}`);
}

function candidateText({ base }: Notebook, one: Candidate): string {
  const { judgement, nearest, colour } = one;
  const trial = nearest ? ` · ${nearest.sample.code ?? nearest.trial}` : ` · ${one.colourFrom}`;
  const other = one.onAnotherFibre ? ' · on another fibre' : '';
  return hanging(
    `${colour.hex}  ${nameOf(base, one)}${trial} · ΔE00 ${deltaText(one.deltaE00)} ${one.closeness.replace('-', ' ')} · ${verdictWords[judgement.verdict].word.toLowerCase()}${other}`,
  );
}
