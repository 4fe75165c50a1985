import { toCelsius, temperatureUnit } from './temperature.ts';

/** A time a step states, in minutes. `overnight` and the like are reckoned, and say so. */
export interface StatedTime {
  readonly fromMinutes: number;
  readonly toMinutes: number;
  /** As it stands in the step. */
  readonly text: string;
  /** True for words such as "overnight" or "some days" whose minutes are our choice. */
  readonly reckoned: boolean;
  readonly at: number;
}

/** A temperature a step states, °C. */
export interface StatedTemperature {
  readonly fromCelsius: number;
  readonly toCelsius: number;
  readonly text: string;
  readonly at: number;
}

const WORD_NUMBERS: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
  fifteen: 15,
  twenty: 20,
  thirty: 30,
  forty: 40,
  'forty-five': 45,
  fifty: 50,
  sixty: 60,
  ninety: 90,
};
const UNIT_MINUTES: Readonly<Record<string, number>> = { min: 1, minute: 1, hour: 60, hr: 60, h: 60, day: 1440, week: 10080, month: 43200 };
const WORDS = Object.keys(WORD_NUMBERS)
  .sort((a, b) => b.length - a.length)
  .join('|');
const FIGURE = String.raw`(?<!\d)\d+(?:[.,]\d+)?(?:\s?[½¼¾])?|[½¼¾]|\b(?:${WORDS})\b`;
const TIME = new RegExp(
  String.raw`(${FIGURE})(\s+and\s+a\s+half)?(?:\s*(?:–|—|-|to|or)\s*(${FIGURE})(\s+and\s+a\s+half)?)?\s*(?:full\s+)?\b(min|minute|hour|hr|h|day|week|month)s?\b`,
  'giu',
);
/** Parts of an hour or a day in words, in minutes. */
const PARTS: readonly (readonly [RegExp, number])[] = [
  [/\b(?:an|one) hour and a half\b/giu, 90],
  [/\bhalf an hour\b/giu, 30],
  [/\b(?:a )?quarter of an hour\b/giu, 15],
  [/\bthree quarters of an hour\b/giu, 45],
  [/\bhalf a day\b/giu, 12 * 60],
];
/** Our choice, because nobody sleeps to the minute. */
const LOOSE: readonly (readonly [RegExp, number, number])[] = [
  [/\b(?:overnight|over night)\b/giu, 8 * 60, 16 * 60],
  [/\b(?:some|a few|several) hours\b/giu, 2 * 60, 6 * 60],
  [/\b(?:some|a few|several) days\b/giu, 2 * 1440, 5 * 1440],
  [/\b(?:some|a few|several) weeks\b/giu, 2 * 10080, 5 * 10080],
];

/**
 * The times a step states: `45 minutes`, `one to two hours`, `1½ h`, `half an hour`, `overnight`. Other words state none.
 *
 * @returns in the order of the text; a stretch of it is read once.
 */
export function timesIn(step: string): readonly StatedTime[] {
  const found: StatedTime[] = [];
  const add = (at: number, text: string, from: number, to: number, reckoned: boolean) => {
    const overlaps = found.some((one) => at < one.at + one.text.length && one.at < at + text.length);
    if (!overlaps && to >= from && from > 0) found.push({ fromMinutes: from, toMinutes: to, text, reckoned, at });
  };
  for (const [pattern, minutes] of PARTS) for (const match of step.matchAll(pattern)) add(match.index, match[0], minutes, minutes, false);
  for (const [pattern, from, to] of LOOSE) for (const match of step.matchAll(pattern)) add(match.index, match[0], from, to, true);
  for (const match of step.matchAll(TIME)) {
    const [text, first = '', half, second, otherHalf, unit = ''] = match;
    const minutes = UNIT_MINUTES[unit.toLowerCase()] ?? 0;
    const from = (numberOf(first) + (half === undefined ? 0 : 0.5)) * minutes;
    const to = second === undefined ? from : (numberOf(second) + (otherHalf === undefined ? 0 : 0.5)) * minutes;
    add(match.index, text, from, to, false);
  }
  return found.sort((a, b) => a.at - b.at);
}

function numberOf(text: string): number {
  const word = WORD_NUMBERS[text.toLowerCase()];
  if (word !== undefined) return word;
  const part = { '½': 0.5, '¼': 0.25, '¾': 0.75 }[text.slice(-1)];
  return part === undefined ? Number(text.replace(',', '.')) : Number(text.slice(0, -1).trim() || 0) + part;
}

const TEMPERATURE = /(?<!\d)(\d+(?:[.,]\d+)?)(?:\s*(?:–|—|-|to)\s*(\d+(?:[.,]\d+)?))?\s*((?:°|º)\s?(?:C|F|Ré|R)\b)/giu;

/** The temperatures a step states, in °C, in the order of the text. */
export function temperaturesIn(step: string): readonly StatedTemperature[] {
  return [...step.matchAll(TEMPERATURE)].flatMap((match): StatedTemperature[] => {
    const [text, first = '', second, sign = ''] = match;
    const unit = temperatureUnit(sign);
    if (!unit) return [];
    const from = toCelsius(Number(first.replace(',', '.')), unit).value;
    const to = second === undefined ? from : toCelsius(Number(second.replace(',', '.')), unit).value;
    return from > to ? [] : [{ fromCelsius: from, toCelsius: to, text, at: match.index }];
  });
}

/** A temperature over time as the steps state it: the corners of a curve. Steps without a temperature add none. */
export interface CurvePoint {
  readonly minutes: number;
  readonly celsius: number;
  readonly step: number;
}

/**
 * The temperature curve of steps: it climbs to each stated temperature and holds for the time stated behind it in the same step.
 * Where no time is stated, none is added. A drawing of what is written, not a measurement.
 */
export function temperatureCurve(steps: readonly string[]): readonly CurvePoint[] {
  const points: CurvePoint[] = [];
  let minutes = 0;
  steps.forEach((text, step) => {
    const times = timesIn(text).filter(({ toMinutes }) => toMinutes < 1440);
    const degrees = temperaturesIn(text);
    degrees.forEach(({ fromCelsius, toCelsius: upper, at }, nth) => {
      const celsius = (fromCelsius + upper) / 2;
      const end = degrees[nth + 1]?.at ?? Infinity;
      const mine = times.filter((time) => time.at >= (nth === 0 ? 0 : at) && time.at < end);
      // "over an hour" is the climb; any other time is the hold.
      const climb = mine.find((time) => /\bover\s*$/i.test(text.slice(0, time.at)));
      minutes += climb ? (climb.fromMinutes + climb.toMinutes) / 2 : 0;
      points.push({ minutes, celsius, step });
      const hold = mine.filter((time) => time !== climb).reduce((sum, time) => sum + (time.fromMinutes + time.toMinutes) / 2, 0);
      if (hold > 0) points.push({ minutes: (minutes += hold), celsius, step });
    });
  });
  return points;
}
