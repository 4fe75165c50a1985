import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../domain/claim/evidence-base.ts';
import type { Found } from '../domain/claim/name-index.ts';
import { swatchFromCss } from '../domain/colour/swatch-colour.ts';
import { parseColourText } from '../domain/colour/parse-colour.ts';
import { type DateSpan, type YearSpan, coreOf } from '../domain/date/date-span.ts';
import { parseDate } from '../domain/date/parse-date.ts';
import type { NoteKind } from '../domain/note/note.ts';
import { type ColourQuestion, DEFAULT_TOLERANCE } from '../domain/verdict/ask.ts';
import type { AskedColour } from '../domain/verdict/asked-colour.ts';
import type { RouteQuestion } from '../domain/verdict/judge-route.ts';
import type { SampleColours } from '../domain/verdict/sample-colours.ts';
import { type ColourNamed, colourOfWords } from './colour-of-words.ts';
import { swatchOfCarried } from './swatch-of-carried.ts';
import { readCarriedColour } from './typed-colour.ts';

/** A question as somebody typed it. */
export interface TypedQuestion {
  readonly colour?: string;
  readonly dye?: string;
  readonly region: string;
  readonly when: string;
  readonly fibre?: string;
  readonly wearer?: string;
  readonly dyedHere?: boolean;
  readonly tolerance?: string;
  /** The colour is that of an old cloth as it was found, faded. */
  readonly asFound?: boolean;
}

/** The part of a question that is about no colour and no dye: where, when, on what, by whom. */
export type TypedCircumstances = Pick<TypedQuestion, 'region' | 'when' | 'fibre' | 'wearer' | 'dyedHere'>;

/** What could not be understood, and the nearest that can be. */
export interface QuestionProblem {
  readonly part: 'colour' | 'dye' | 'region' | 'when' | 'fibre' | 'wearer' | 'tolerance';
  /** `colourless`: a note of that name is there, but it states no colour. */
  readonly problem: 'missing' | 'unknown' | 'ambiguous' | 'unreadable' | 'colourless';
  readonly typed: string;
  readonly nearest: readonly string[];
}

/** A question understood; the colour or the dye is there, whichever was typed. */
export interface PosedQuestion {
  readonly route: RouteQuestion & Pick<ColourQuestion, 'colourWords'>;
  readonly when: DateSpan;
  readonly tolerance: number;
  readonly colour?: AskedColour;
  /** Where the colour was named by words: what they named, and whether a colour-word among them was in use here and then. */
  readonly colourNamed?: ColourNamed;
  readonly dye?: string;
}

/**
 * Understands a typed question against a notebook; every part that cannot be understood is told, none guessed.
 *
 * @param colours lets a recipe, a trial or an undyed fibre be asked for as a colour; without it only colour-words can.
 */
export function poseQuestion(
  base: EvidenceBase,
  typed: TypedQuestion,
  colours?: SampleColours,
): { readonly question?: PosedQuestion; readonly problems: readonly QuestionProblem[] } {
  return pose(base, typed, colours, true);
}

/** Understands where, when, on what and by whom: the question of whoever asks for every colour at once. */
export function poseCircumstances(
  base: EvidenceBase,
  { region, when, fibre, wearer, dyedHere }: TypedCircumstances,
): { readonly question?: PosedQuestion; readonly problems: readonly QuestionProblem[] } {
  const typed = { region, when, ...(fibre === undefined ? {} : { fibre }), ...(wearer === undefined ? {} : { wearer }) };
  return pose(base, { ...typed, dyedHere: dyedHere ?? false }, undefined, false);
}

function pose(
  base: EvidenceBase,
  typed: TypedQuestion,
  colours: SampleColours | undefined,
  wantsSubject: boolean,
): { readonly question?: PosedQuestion; readonly problems: readonly QuestionProblem[] } {
  const problems: QuestionProblem[] = [];
  const tell = (part: QuestionProblem['part'], problem: QuestionProblem['problem'], text: string, nearest: readonly string[] = []) => {
    problems.push({ part, problem, typed: text, nearest });
    return undefined;
  };
  const take = (part: QuestionProblem['part'], text: string, found: Found): string | undefined => {
    if (found.is === 'one') return found.id;
    return found.is === 'several' ? tell(part, 'ambiguous', text, found.ids) : tell(part, 'unknown', text, found.nearest);
  };
  const named = (part: QuestionProblem['part'], text: string | undefined, kinds: readonly NoteKind[]) =>
    text === undefined || text.trim() === '' ? undefined : take(part, text, base.find(text, kinds));

  const region = typed.region.trim() === '' ? tell('region', 'missing', '') : take('region', typed.region, base.findRegion(typed.region));
  const when = base.spanOfText(typed.when);
  if (!when) {
    const { problem } = parseDate(typed.when);
    tell('when', typed.when.trim() === '' ? 'missing' : 'unreadable', typed.when, [
      ...(problem?.suggestions ?? []),
      ...(base.find(typed.when, ['period']).is === 'none' ? base.nearestNames(typed.when, ['period']) : []),
    ]);
  }
  const fibre = named('fibre', typed.fibre, ['fibre']);
  const wearer = named('wearer', typed.wearer, ['wearer']);
  const dye = named('dye', typed.dye, MATERIAL_KINDS);
  const asked = region !== undefined && when ? { region, span: coreOf(when) } : undefined;
  const read = typed.colour === undefined ? undefined : readAskedColour(base, typed.colour, asked, colours);
  if (read && 'problem' in read) tell('colour', read.problem, typed.colour ?? '', read.nearest);
  const understood = read && !('problem' in read) ? read : undefined;
  if (wantsSubject && typed.colour === undefined && typed.dye === undefined) tell('colour', 'missing', '');
  const tolerance = typed.tolerance === undefined ? DEFAULT_TOLERANCE : Number(typed.tolerance);
  if (!(tolerance > 0 && tolerance <= 100)) tell('tolerance', 'unreadable', typed.tolerance ?? '', [String(DEFAULT_TOLERANCE)]);

  if (problems.length > 0 || region === undefined || !when) return { problems };
  const route: PosedQuestion['route'] = {
    region,
    span: coreOf(when),
    ...(fibre === undefined ? {} : { fibre }),
    ...(wearer === undefined ? {} : { wearer }),
    dyedHere: typed.dyedHere ?? false,
    ...(understood && understood.colourWords.length > 0 ? { colourWords: understood.colourWords } : {}),
  };
  const ofColour = understood && { colour: understood.colour, ...(understood.named && { colourNamed: understood.named }) };
  return { question: { route, when, tolerance, ...ofColour, ...(dye === undefined ? {} : { dye }) }, problems };
}

interface UnderstoodColour {
  readonly colour: AskedColour;
  readonly colourWords: readonly string[];
  readonly named?: ColourNamed;
}

/**
 * A typed colour with the notebook beside it. Words that are a CSS colour and also a colour-word in use here and then
 * ("purple") ask for both: the nearest of all these colours counts.
 */
function readAskedColour(
  base: EvidenceBase,
  text: string,
  asked: { readonly region: string; readonly span: YearSpan } | undefined,
  colours: SampleColours | undefined,
): UnderstoodColour | { readonly problem: QuestionProblem['problem']; readonly nearest: readonly string[] } {
  const plain = readColour(text);
  const isWords = /\p{L}/u.test(text) && !text.trim().startsWith('#') && readCarriedColour(text) === undefined;
  const words = isWords ? colourOfWords(base, text, asked, colours) : undefined;
  if (words?.is === 'colour') {
    const { swatches, named } = words;
    const colourWords = named.by === 'colour-word' ? named.ids : [];
    if (plain?.kind !== 'swatches') return { colour: { kind: 'swatches', swatches }, colourWords, named };
    const both = named.fits ? [...plain.swatches, ...swatches] : plain.swatches;
    return { colour: { kind: 'swatches', swatches: both }, colourWords, named };
  }
  if (plain) return { colour: plain, colourWords: words?.is === 'colourless' ? words.ids : [] };
  if (words?.is === 'colourless') return { problem: 'colourless', nearest: ['#8f3b2e', '45,40,25'] };
  if (words?.is === 'several') return { problem: 'ambiguous', nearest: words.ids };
  return { problem: 'unreadable', nearest: ['#8f3b2e', '45,40,25', ...(words?.is === 'none' ? words.nearest.slice(0, 2) : [])] };
}

/** A typed colour: CSS colours with their screen conditions, a Lab with those behind it (`45,40,25 D65/10`) or without any. */
export function readColour(text: string): AskedColour | undefined {
  const carried = readCarriedColour(text);
  const carriedSwatch = carried && swatchOfCarried(carried);
  if (carriedSwatch) return { kind: 'swatches', swatches: [carriedSwatch] };
  const typed = parseColourText(text);
  if (typed?.kind === 'lab') return { kind: 'bare-lab', lab: typed.lab };
  const swatch = swatchFromCss(text);
  return swatch.ok ? { kind: 'swatches', swatches: [swatch.value] } : undefined;
}
