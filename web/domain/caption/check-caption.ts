import type { DisplayCaption } from '../note/display-record.ts';
import { fold } from '../text/fold.ts';
import { HIGHEST_GRADE, readingGrade } from './reading-grade.ts';
import { type PhraseQuestion, questionedPhrases } from './questioned-phrases.ts';
import { clausesOf, sentencesOf, type TextPiece, wordsOf } from './words-and-sentences.ts';

/** Words of a caption, least and most. @source the specification of displays here; label guides give 20–150. */
export const CAPTION_WORDS = { least: 20, most: 60 } as const;
/** Words of a headline at most. @source label guides: titles of one to seven words. */
export const HEADLINE_WORDS = 7;

/** Everything a caption can be found wanting in. */
export type CaptionFault =
  | 'too-short'
  | 'too-long'
  | 'headline-long'
  | 'ideas-many'
  | 'no-date'
  | 'no-place'
  | 'no-latin'
  | 'no-source-word'
  | 'not-said-modern'
  | 'no-dyed-year'
  | 'no-uncertainty'
  | 'stand-in-unsaid'
  | 'reading-hard'
  | 'phrase-questioned'
  | 'amount-given'
  | 'clause-unbound'
  | 'words-gone'
  | 'comment-open';

/** One finding about a caption. */
export interface CaptionFinding {
  readonly code: CaptionFault;
  /** Where in the caption's text; absent where it is about the whole. */
  readonly range?: readonly [start: number, end: number];
  /** What the words need, plain strings. */
  readonly about: readonly string[];
  readonly why?: PhraseQuestion;
}

/** What a caption stands beside: what it must name. */
export interface CaptionSubject {
  /** Each dye by its everyday names, and its Latin names where the notes have them. */
  readonly dyes: readonly { readonly names: readonly string[]; readonly latin: readonly string[] }[];
  /** Names of which one must stand there as the place. */
  readonly placeNames: readonly string[];
  /** Names that make a clause a statement about the past: dyes, places, wearers. */
  readonly factNames: readonly string[];
  /** The year the sample was dyed; absent for undyed cloth. */
  readonly dyedYear?: string;
  /** What was used instead of what, by their everyday names. */
  readonly standIns: readonly { readonly used: readonly string[]; readonly meant: readonly string[] }[];
  /** A text as others may read it: without the amounts that are never shown. All of it where absent. */
  readonly shown?: (text: string) => string;
}

/** A caption weighed. */
export interface CaptionCheck {
  readonly words: number;
  readonly sentences: number;
  /** Flesch–Kincaid; absent where the language is not English. */
  readonly grade?: number;
  readonly findings: readonly CaptionFinding[];
  /** Checks that only know English and were left out. */
  readonly unchecked: readonly CaptionFault[];
}

const ENGLISH_ONLY: readonly CaptionFault[] = ['no-source-word', 'not-said-modern', 'no-uncertainty', 'reading-hard', 'ideas-many'];

const YEAR =
  /(?<![\d-])\d{3,4}(?:s\b|(?:[–/]\d{1,4})?)(?![\d-])|\b\d{1,2}(?:st|nd|rd|th)[ -]century\b|\b\d{1,2}\. Jahrhundert|\b[IVX]+e siècle/giu;
const SOURCE_WORD =
  /\b(?:analys[ei]s|accounts?|records?|recorded|texts?|recipes?|laws?|books?|letters?|trade|tolls?|wills?|inventor(?:y|ies)|pictures?|paintings?|finds?|found|remains|excavat\w+|surviv\w+|sources?|notes?|wr(?:ote|itten)|practice|inference|names? it)\b/i;
const MODERN = /\b(?:modern|present-day|new) (?:sample|skein|cloth|piece|swatch|copy|dyeing)\b|\breplica\b/i;
const UNCERTAIN =
  /\b(?:not (?:known|certain|sure|recorded|proven|clear)|unknown|uncertain|perhaps|probably|possibly|likely|unlikely|doubt\w*|disagree\w*|no such|no (?:cloth|textile|text|find|record|note)|nobody (?:wrote|recorded)|may|might|cannot (?:say|tell)|we do not|we keep no|only (?:in|as)|guess|approximate(?:ly)?|about how|silent)\b/i;
/** What says that nothing is known: no claim can stand behind it. */
const NOTHING_KNOWN =
  /\b(?:not (?:known|recorded|certain|proven|clear)|unknown|uncertain|no such|no (?:cloth|textile|text|find|record|note)|nothing|nobody (?:wrote|recorded)|we (?:do not|keep no)|disagree|silent|approximate)\b/i;

/** Weighs a caption: its length, what it must say, what should be asked about, and which clauses rest on no claim. */
export function checkCaption(caption: DisplayCaption, subject: CaptionSubject): CaptionCheck {
  const { text } = caption;
  const english = /^en\b/i.test(caption.lang);
  const words = wordsOf(text).length;
  const sentences = sentencesOf(text);
  const latin = subject.dyes.flatMap((dye) => dye.latin);
  const grade = english ? readingGrade(text, latin) : undefined;
  const findings: readonly (CaptionFinding | false)[] = [
    words < CAPTION_WORDS.least && { code: 'too-short', about: [`${words}`, `${CAPTION_WORDS.least}`] },
    words > CAPTION_WORDS.most && { code: 'too-long', about: [`${words}`, `${CAPTION_WORDS.most}`] },
    wordsOf(caption.headline ?? '').length > HEADLINE_WORDS && {
      code: 'headline-long',
      about: [`${wordsOf(caption.headline ?? '').length}`, `${HEADLINE_WORDS}`],
    },
    !hasPastDate(text, subject.dyedYear) && { code: 'no-date', about: [] },
    !subject.placeNames.some((name) => holds(text, name)) && { code: 'no-place', about: subject.placeNames.slice(0, 1) },
    ...subject.dyes.map(
      (dye): CaptionFinding | false =>
        dye.latin.length > 0 &&
        !dye.latin.some((name) => holds(text, name)) && { code: 'no-latin', about: [dye.names[0] ?? '', dye.latin[0] ?? ''] },
    ),
    subject.dyedYear !== undefined && !holds(text, subject.dyedYear) && { code: 'no-dyed-year', about: [subject.dyedYear] },
    ...subject.standIns.map(
      ({ used, meant }): CaptionFinding | false =>
        !(used.some((name) => holds(text, name)) && meant.some((name) => holds(text, name))) && {
          code: 'stand-in-unsaid',
          about: [used[0] ?? '', meant[0] ?? ''],
        },
    ),
    ...(english ? englishFindings(text, sentences, subject, grade) : []),
    ...questionedPhrases(text).map(({ why, text: phrase, range }): CaptionFinding => ({
      code: 'phrase-questioned',
      range,
      about: [phrase],
      why,
    })),
    [caption.headline ?? '', text].some((one) => (subject.shown?.(one) ?? one) !== one) && { code: 'amount-given', about: [] },
    ...bindingFindings(caption, subject),
    ...caption.review
      .filter(({ decision, reason }) => decision === undefined || (decision === 'declined' && !reason?.trim()))
      .map((comment): CaptionFinding => ({ code: 'comment-open', about: [comment.by ?? '', comment.says ?? ''] })),
  ];
  return {
    words,
    sentences: sentences.length,
    ...(grade === undefined ? {} : { grade }),
    findings: findings.filter((one) => one !== false),
    unchecked: english ? [] : ENGLISH_ONLY,
  };
}

function englishFindings(
  text: string,
  sentences: readonly TextPiece[],
  { dyedYear }: CaptionSubject,
  grade: number | undefined,
): readonly (CaptionFinding | false)[] {
  const ideas = sentences.filter((one) => !MODERN.test(one.text) && !UNCERTAIN.test(one.text));
  const third = ideas[MOST_STATEMENTS];
  return [
    third !== undefined && {
      code: 'ideas-many',
      range: [third.range[0], ideas.at(-1)?.range[1] ?? third.range[1]],
      about: [`${ideas.length}`],
    },
    !SOURCE_WORD.test(text) && { code: 'no-source-word', about: [] },
    dyedYear !== undefined && !MODERN.test(text) && { code: 'not-said-modern', about: [dyedYear] },
    !UNCERTAIN.test(text) && { code: 'no-uncertainty', about: [] },
    grade !== undefined && grade > HIGHEST_GRADE && { code: 'reading-hard', about: [grade.toFixed(1), `${HIGHEST_GRADE}`] },
  ];
}

/** Sentences about the past that still make one idea: it and what supports it. Our choice. */
const MOST_STATEMENTS = 2;

/** The clauses about the past that no claim is bound to, and bound words that the text no longer holds. */
function bindingFindings({ text, claims }: DisplayCaption, { factNames, dyedYear }: CaptionSubject): readonly CaptionFinding[] {
  const bound = claims.map(({ claim, says }) => ({ claim, says, at: says === undefined ? -1 : text.indexOf(says) }));
  const gone = bound
    .filter(({ says, at }) => says !== undefined && at < 0)
    .map(({ claim, says }): CaptionFinding => ({ code: 'words-gone', about: [says ?? '', claim] }));
  const isBound = ([start, end]: TextPiece['range']) =>
    bound.some(({ says, at }) => says !== undefined && says !== '' && at >= 0 && at < end && at + says.length > start);
  const unbound = clausesOf(text)
    .filter((clause) => isFact(clause.text, factNames, dyedYear) && !NOTHING_KNOWN.test(clause.text) && !isBound(clause.range))
    .map((clause): CaptionFinding => ({ code: 'clause-unbound', range: clause.range, about: [clause.text] }));
  return [...unbound, ...gone];
}

/** A clause states a fact when it names a date, a known dye, place or wearer, or says how something is known. */
const isFact = (clause: string, names: readonly string[], dyedYear: string | undefined): boolean =>
  hasPastDate(clause, undefined) ||
  (dyedYear !== undefined && holds(clause, dyedYear)) ||
  SOURCE_WORD.test(clause) ||
  names.some((name) => holds(clause, name));

/** A year or century that is not only the year the sample was dyed. */
function hasPastDate(text: string, dyedYear: string | undefined): boolean {
  return [...text.matchAll(YEAR)].some(([found]) => found !== dyedYear);
}

/** Whether a text holds a name as whole words, case and accents folded. */
function holds(text: string, name: string): boolean {
  const wanted = fold(name).trim();
  if (wanted === '') return false;
  const searched = fold(text);
  for (let at = searched.indexOf(wanted); at >= 0; at = searched.indexOf(wanted, at + 1)) {
    const before = searched[at - 1] ?? ' ';
    const after = searched.slice(at + wanted.length, at + wanted.length + 2);
    if (!/[\p{L}\p{N}]/u.test(before) && !/^(?!s(?![\p{L}\p{N}]))[\p{L}\p{N}]/u.test(after)) return true;
  }
  return false;
}
