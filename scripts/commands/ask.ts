import { formatSpan } from '../../web/domain/date/format-date.ts';
import { askColour, type Candidate, type ColourAnswer } from '../../web/domain/verdict/ask.ts';
import { askDye, type DyeAnswer } from '../../web/domain/verdict/ask-dye.ts';
import type { RouteJudgement } from '../../web/domain/verdict/judge-route.ts';
import { whatWouldChange } from '../../web/domain/verdict/what-would-change.ts';
import { colourAnswerJson, dyeAnswerJson } from '../../web/notebook/answer-json.ts';
import type { Notebook } from '../../web/notebook/notebook.ts';
import { type PosedQuestion, poseQuestion } from '../../web/notebook/pose-question.ts';
import { becauseOfColour, becauseOfDye, changeSentence, deltaText, nameOf, ruleSentence } from '../../web/notebook/words/because.ts';
import { claimLine, titleOf } from '../../web/notebook/words/claim-line.ts';
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
  const read = readArgs(args, OPTIONS);
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
    ...(answer.candidates.length > 0 ? answer.candidates.map((one) => candidateText(notebook, one)) : ['  none']),
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
  const what = dye === undefined ? `${colour} (within ΔE00 ${tolerance})` : titleOf(base, dye);
  const fibre = route.fibre === undefined ? '' : ` on ${titleOf(base, route.fibre).toLowerCase()}`;
  const wearer = route.wearer === undefined ? '' : ` by ${titleOf(base, route.wearer).toLowerCase()}`;
  return `Would ${what} be ${route.dyedHere ? 'dyed' : 'worn'}${fibre} in ${titleOf(base, route.region)}, ${formatSpan(when)}${wearer}?\n${colourNamed && !colourNamed.fits ? `${NOT_IN_USE}\n` : ''}`;
}

const NOT_IN_USE = 'Your notes do not have that colour-word in use there and then: its colours elsewhere are taken.';

function evidence({ base }: Notebook, judgement: RouteJudgement, question: PosedQuestion): readonly string[] {
  const lines = judgement.materials.flatMap(({ claims }) =>
    claims
      .filter(
        (one) =>
          one.place !== 'elsewhere' &&
          (one.speaks || one.place === 'neighbour' || one.placed.claim.status === 'absent' || one.place === 'around'),
      )
      .map((one) => {
        const line = claimLine(base, one);
        const parts = [line.region, line.years, line.timeRelation, line.placeRelation, line.evidence, line.sure, line.source, line.checked];
        return {
          against: one.placed.claim.status === 'absent',
          text: `  ${wrap(`${line.says}: ${parts.filter((part) => part !== '').join(' · ')}`, '    ').trimStart()}`,
        };
      }),
  );
  const changes = whatWouldChange(judgement).map((change) => `  ${wrap(changeSentence(base, change), '    ').trimStart()}`);
  const rules = judgement.rules
    .filter(({ touches }) => touches !== 'others')
    .map((rule) => `  ${wrap(ruleSentence(base, rule, question.route.wearer), '    ').trimStart()}`);
  const section = (title: string, texts: readonly string[]) => (texts.length > 0 ? ['', title, ...texts] : []);
  return [
    ...section(
      'The notes say',
      lines.filter(({ against }) => !against).map((one) => one.text),
    ),
    ...section(
      'Against it',
      lines.filter(({ against }) => against).map((one) => one.text),
    ),
    ...section('Rules for this wearer', rules),
    ...section('What would change it', changes),
  ];
}

function candidateText({ base }: Notebook, one: Candidate): string {
  const { judgement, nearest, colour } = one;
  const trial = nearest ? ` · ${nearest.sample.code ?? nearest.trial}` : ' · undyed';
  const other = one.onAnotherFibre ? ' · on another fibre' : '';
  return `  ${colour.hex}  ${nameOf(base, one)}${trial} · ΔE00 ${deltaText(one.deltaE00)} ${one.closeness.replace('-', ' ')} · ${verdictWords[judgement.verdict].word.toLowerCase()}${other}`;
}
