import type { Choice, ChoicesView } from '../../notebook/views/choices-view.ts';
import { byWearer } from '../../notebook/words/wearer-words.ts';
import type { QuestionProblem, TypedQuestion } from '../../notebook/pose-question.ts';
import { carriedInWords } from '../../notebook/typed-colour.ts';

/** A word of the question that can be opened. */
export type QuestionPart = 'subject' | 'state' | 'act' | 'fibre' | 'region' | 'when' | 'wearer';

/** The years the thread can be drawn along. Our choice: from the Hallstatt textiles to the first synthetic dyes. */
export const YEARS = { from: -800, to: 1900 } as const;

/** The words of the question as they stand in the sentence. */
export function questionWords(question: TypedQuestion, choices: ChoicesView | undefined): Readonly<Record<QuestionPart, string>> {
  const title = (list: readonly Choice[] | undefined, id: string) => list?.find((one) => one.id === id)?.title ?? id;
  return {
    subject: subjectWord(question, choices),
    state: question.asFound === true ? 'as found' : 'as new',
    act: question.dyedHere === true ? 'dyed' : 'worn',
    fibre: question.fibre === undefined ? 'any fibre' : title(choices?.fibres, question.fibre).toLowerCase(),
    region: question.region === '' ? 'a place' : title(choices?.regions, question.region),
    when: question.when === '' ? 'a date' : question.when,
    wearer: question.wearer === undefined ? 'anyone' : byWearer(title(choices?.wearers, question.wearer)),
  };
}

function subjectWord({ colour, dye }: TypedQuestion, choices: ChoicesView | undefined): string {
  if (dye !== undefined) return choices?.dyestuffs.find((one) => one.id === dye)?.title.toLowerCase() ?? dye;
  if (colour === undefined) return 'a colour';
  const carried = carriedInWords(colour);
  if (carried !== undefined) return carried;
  const cloth = choices?.cloths.find((one) => one.id === colour || one.lab === colour);
  return cloth ? `${cloth.title.charAt(0).toLowerCase()}${cloth.title.slice(1)}` : /^[a-z]/i.test(colour) ? `“${colour}”` : colour;
}

/**
 * The year the thread stands at, held inside its range: the typed year itself, else the middle of what the date was read as.
 *
 * @param read the middle year of the last date that could be read.
 */
export function threadYear(when: string, read?: number): number {
  const year = /^\s*-?\d{1,4}\s*$/.test(when) ? Number(when) : (read ?? FIRST_YEAR);
  return Math.min(YEARS.to, Math.max(YEARS.from, year));
}

/** Where the thread stands before any date was read. Our choice: between the three houses of the demonstration. */
const FIRST_YEAR = 1370;

const PART_OF: Readonly<Record<QuestionProblem['part'], QuestionPart>> = {
  colour: 'subject',
  dye: 'subject',
  region: 'region',
  when: 'when',
  fibre: 'fibre',
  wearer: 'wearer',
  tolerance: 'subject',
};

/** A problem in a sentence, with what to write instead. */
export function problemSentence({ part, problem, typed, nearest }: QuestionProblem): string {
  const near =
    nearest.length > 0
      ? ` ${problem === 'ambiguous' ? 'It fits' : problem === 'unreadable' ? 'Write for example' : 'The nearest known'}: ${nearest.join(', ')}.`
      : '';
  const name = { subject: 'colour', state: 'state', act: 'act', fibre: 'fibre', region: 'place', when: 'date', wearer: 'wearer' }[
    PART_OF[part]
  ];
  if (problem === 'missing') return `Choose a ${name}.`;
  if (problem === 'colourless')
    return `“${typed}” is in this notebook, but states no colour.${nearest.length > 0 ? ` Write for example ${nearest.join(' or ')}.` : ''}`;
  if (problem === 'ambiguous') return `“${typed}” names more than one ${name}.${near}`;
  return problem === 'unreadable' ? `“${typed}” cannot be read as a ${name}.${near}` : `This notebook knows no ${name} “${typed}”.${near}`;
}
