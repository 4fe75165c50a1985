import type { TextPiece } from './words-and-sentences.ts';

/** Why a phrase is asked about. */
export type PhraseQuestion =
  /** "authentic": no sample of today is. */
  | 'claims-to-be-real'
  /** "would have been": a guess in the clothes of a fact. */
  | 'guess-as-fact'
  /** "never fades": everything does. */
  | 'denies-fading'
  /** "natural, so safe": some of the worst poisons are natural. */
  | 'natural-as-safe'
  /** "proves", "certainly". */
  | 'too-sure'
  /** "everyone", "always", "only", "first". */
  | 'too-wide'
  /** "traditional", "ancient": a date is missing. */
  | 'undated-past'
  /** "WOF", "ΔE": words of the workshop. */
  | 'jargon';

/** A phrase that should be looked at again, and where it stands. */
export interface QuestionedPhrase extends TextPiece {
  readonly why: PhraseQuestion;
}

/** What captions are struck out for, as label guides and reviewers have it (common practice); English, and a few words of German and French. */
const PHRASES: readonly (readonly [PhraseQuestion, RegExp])[] = [
  ['claims-to-be-real', /\b(?:authentic(?:ally|ity)?|genuine(?:ly)?|true[- ]to[- ]period|exactly as (?:it|they) (?:was|were|looked)|just as (?:it|they) (?:was|were)|original colou?rs?|authentisch\w*|originalgetreu\w*|authentique\w*)(?![\p{L}])/giu],
  ['guess-as-fact', /\b(?:would|must|could|might|will) have (?:been|worn|used|had|looked|dyed|seen|known|come)\b/giu],
  ['denies-fading', /\b(?:(?:never|not|n[o']t) (?:ever )?fades?|(?:never|doesn[’']t|does not|won[’']t|will not|cannot|can[’']t) (?:ever )?fade|fade[- ]?(?:proof|less|resistant)|colou?r[- ]?fast|light[- ]?fast|permanent colou?r|verblasst nie|lichtecht\w*)(?![\p{L}])/giu],
  ['natural-as-safe', /\bnatural(?:ly)?,? (?:and|so|therefore|thus|hence),? (?:\w+ )?(?:safe|harmless|healthy|gentle|non-?toxic)\b|\b(?:chemical[- ]free|non-?toxic|eco-?friendly|completely safe|safe because|harmless|no chemicals)\b/giu],
  ['too-sure', /\b(?:proves?|proven|proof|certainly|definitely|undoubtedly|without (?:a )?doubt|no doubt|obviously|clearly|of course|undeniabl[ey])\b/giu],
  ['too-wide', /\b(?:everyone|everybody|always|all (?:vikings?|women|men|people|dyers|peasants|nobles)|nobody|no one|the (?:very )?first|the oldest|the only)\b/giu],
  ['undated-past', /\b(?:traditional(?:ly)?|ancient|age[- ]old|time[- ]honou?red|since time immemorial|in (?:the )?olden (?:days|times)|in days gone by|long ago)\b/giu],
  ['jargon', /%\s?WOF|\bWOF\b|ΔE\d*|\bCIELAB\b|L\*|\bexhaust bath\b|\bliquor ratio\b|\bg\/L\b|\bchromophore\w*/gu],
]; // prettier-ignore

/** The phrases of a text that should be looked at again, in reading order; a phrase inside another is not told twice. */
export function questionedPhrases(text: string): readonly QuestionedPhrase[] {
  const found = PHRASES.flatMap(([why, pattern]) =>
    [...text.matchAll(pattern)].map((match): QuestionedPhrase => ({
      why,
      text: match[0],
      range: [match.index, match.index + match[0].length],
    })),
  ).sort((a, b) => a.range[0] - b.range[0] || b.range[1] - a.range[1]);
  return found.filter((one, at) => !found.slice(0, at).some(({ range }) => one.range[0] < range[1]));
}
