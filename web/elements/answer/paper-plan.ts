import type { AnswerView } from '../../notebook/views/answer-view.ts';
import type { ClaimLine } from '../../notebook/words/claim-line.ts';

/** How much of each part of an answer is shown; what is left out is counted where it would stand. */
export interface Shown {
  readonly because: number;
  readonly speaksFor: number;
  readonly speaksAgainst: number;
  readonly missing: number;
  readonly nearest: number;
  readonly meanings: number;
  readonly rules: number;
  readonly forWhom: number;
  readonly changes: number;
  readonly cloths: number;
  /** 1 where the closest and the nearest attested colour are shown. */
  readonly named: number;
}

/** On a screen the first few; the rest is one step away. */
export const ON_SCREEN: Shown = {
  because: Infinity,
  speaksFor: 6,
  speaksAgainst: 6,
  missing: Infinity,
  nearest: 4,
  meanings: Infinity,
  rules: 6,
  forWhom: 6,
  changes: Infinity,
  cloths: 6,
  named: 1,
};

/** What every printed answer has, however much there is to say. */
const LEAST: Shown = {
  because: 1,
  speaksFor: 1,
  speaksAgainst: 1,
  missing: 2,
  nearest: 0,
  meanings: 0,
  rules: 0,
  forWhom: 0,
  changes: 1,
  cloths: 0,
  named: 0,
};

/** What is added while there is room, in this order, then from the start again. */
const WISHES: readonly (keyof Shown)[] = [
  'because',
  'speaksFor',
  'speaksAgainst',
  'changes',
  'cloths',
  'cloths',
  'cloths',
  'rules',
  'nearest',
  'speaksFor',
  'speaksAgainst',
  'missing',
  'named',
  'because',
  'meanings',
  'forWhom',
];

/** Millimetres of an A4 sheet between its margins that an answer may fill, the question’s lines, head, foot and a reserve not counted. */
const ROOM = 259 - 6 - 12 - 5;

/**
 * What of an answer is printed, so that it fits one A4 sheet. Heights are estimated from the number of letters, on the safe side.
 *
 * @source the type sizes of this element's print styles; letters a line counted on printed sheets, less a tenth.
 */
export function paperPlan(answer: AnswerView, question = answer.sentence): Shown {
  const room = ROOM - linesOf(question, 56) * 7 - 3;
  let plan = LEAST;
  for (let added = true; added;) {
    added = false;
    for (const part of WISHES) {
      if (plan[part] >= lengthOf(answer, part)) continue;
      const more = { ...plan, [part]: plan[part] + 1 };
      if (paperHeight(answer, more) > room) continue;
      plan = more;
      added = true;
    }
  }
  return plan;
}

function lengthOf(answer: AnswerView, part: keyof Shown): number {
  if (part === 'named') return answer.closest || answer.nearestAttested ? 1 : 0;
  if (part === 'because') return answer.because.length - 1;
  return answer[part].length;
}

type PaperPart = 'verdict' | 'sides' | 'besides' | 'cloths' | 'settings' | 'sources';

/** Millimetres a printed answer takes. */
export const paperHeight = (answer: AnswerView, shown: Shown): number => sum(Object.values(paperHeights(answer, shown)));

/** Millimetres each printed part of an answer takes, gaps included. */
export function paperHeights(answer: AnswerView, shown: Shown): Readonly<Record<PaperPart, number>> {
  const rest = (part: keyof Shown): number => (lengthOf(answer, part) > shown[part] ? 4 : 0);
  const claims = (part: 'speaksFor' | 'speaksAgainst' | 'nearest') => sum(answer[part].slice(0, shown[part]).map(claimHeight)) + rest(part);
  const sentences = (part: 'missing' | 'meanings' | 'rules' | 'forWhom' | 'changes') =>
    sum(answer[part].slice(0, shown[part]).map((text) => linesOf(text, 46) * 4.3 + 2)) + rest(part);
  const besides = (['meanings', 'rules', 'forWhom', 'changes'] as const).filter((part) => shown[part] > 0 && answer[part].length > 0);
  const besideHeights = besides.map((part) => HEADING + sentences(part));

  const verdict = Math.max(
    answer.cloths.length + answer.predicted.length > 0 || answer.closest ? 46 : 0,
    17 +
      linesOf(answer.why, 62) * 5.7 +
      linesOf(answer.means, 72) * 4.3 +
      sum(answer.because.slice(1, 1 + shown.because).map((text) => linesOf(text, 71) * 4.3 + 0.6)) +
      rest('because'),
  );
  const forIt = HEADING + Math.max(6, claims('speaksFor'));
  const against =
    HEADING +
    Math.max(6, claims('speaksAgainst') + sentences('missing')) +
    (shown.nearest > 0 ? 5 : 0) +
    claims('nearest') +
    (answer.others > 0 ? 5 : 0);
  const cloths = answer.cloths.length === 0 || shown.cloths === 0 ? 0 : HEADING + Math.ceil(shown.cloths / 3) * 31 + rest('cloths');
  const named = shown.named === 0 ? 0 : HEADING + 3 + (isAllAbove(answer, shown) ? 6 : 31);
  return {
    verdict,
    sides: Math.max(forIt, against) + 6,
    besides: rowsOfTwo(besideHeights),
    cloths: cloths + named,
    settings: settingsHeight(answer),
    sources: sourcesHeight(answer, shown),
  };
}

/** A heading with its rule and the gap before it. */
const HEADING = 9.5;

const linesOf = (text: string, letters: number): number => Math.max(1, Math.ceil(text.length / letters));
const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);

function claimHeight({ says, region, years, sure, evidence, placeRelation, timeRelation, source, checked, note }: ClaimLine): number {
  const first = `${says}: ${region}, ${years} ${sure}`;
  const how = `${evidence} · ${placeRelation} · ${timeRelation}`;
  return linesOf(first, 49) * 4.3 + (linesOf(how, 63) + linesOf(`${source} · ${checked} · note ${note}`, 63)) * 3.5 + 2.2;
}

/** Sections stand two in a row; a row is as high as the higher. */
const rowsOfTwo = (heights: readonly number[]): number =>
  sum(heights.flatMap((height, n) => (n % 2 === 0 ? [Math.max(height, heights[n + 1] ?? 0)] : [])));

const isAllAbove = ({ closest, nearestAttested, cloths }: AnswerView, shown: Shown): boolean =>
  [closest, nearestAttested].every((one) => !one || cloths.slice(0, shown.cloths).some(({ id }) => id === one.id));

/** The keys whose sources are printed in full: those of the claims that are. */
export function keysShown(answer: AnswerView, shown: Shown): ReadonlySet<string> {
  const lines = (['speaksFor', 'speaksAgainst', 'nearest'] as const).flatMap((part) => answer[part].slice(0, shown[part]));
  return new Set(lines.flatMap(({ keys }) => keys));
}

function sourcesHeight(answer: AnswerView, shown: Shown): number {
  const keys = keysShown(answer, shown);
  const heights = answer.sources.filter(({ key }) => keys.has(key)).map(({ key, text }) => linesOf(`${key}: ${text}`, 64) * 3.3 + 0.5);
  return heights.length === 0 ? 0 : HEADING + (sum(heights) + Math.max(...heights)) / 2;
}

const settingsHeight = ({ settings }: AnswerView): number => (settings.length === 0 ? 0 : HEADING + settings.length * 6.5);
