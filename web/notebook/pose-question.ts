import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../domain/claim/evidence-base.ts';
import type { Found } from '../domain/claim/name-index.ts';
import { swatchFromCss } from '../domain/colour/swatch-colour.ts';
import { parseColourText } from '../domain/colour/parse-colour.ts';
import { type DateSpan, coreOf } from '../domain/date/date-span.ts';
import { parseDate } from '../domain/date/parse-date.ts';
import type { NoteKind } from '../domain/note/note.ts';
import { DEFAULT_TOLERANCE } from '../domain/verdict/ask.ts';
import type { AskedColour } from '../domain/verdict/asked-colour.ts';
import type { RouteQuestion } from '../domain/verdict/judge-route.ts';

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
}

/** What could not be understood, and the nearest that can be. */
export interface QuestionProblem {
  readonly part: 'colour' | 'dye' | 'region' | 'when' | 'fibre' | 'wearer' | 'tolerance';
  readonly problem: 'missing' | 'unknown' | 'ambiguous' | 'unreadable';
  readonly typed: string;
  readonly nearest: readonly string[];
}

/** A question understood; the colour or the dye is there, whichever was typed. */
export interface PosedQuestion {
  readonly route: RouteQuestion;
  readonly when: DateSpan;
  readonly tolerance: number;
  readonly colour?: AskedColour;
  readonly dye?: string;
}

/** Understands a typed question against a notebook; every part that cannot be understood is told, none guessed. */
export function poseQuestion(
  base: EvidenceBase,
  typed: TypedQuestion,
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
  const colour = typed.colour === undefined ? undefined : readColour(typed.colour);
  if (typed.colour !== undefined && !colour) tell('colour', 'unreadable', typed.colour, ['#8f3b2e', '45,40,25']);
  if (typed.colour === undefined && typed.dye === undefined) tell('colour', 'missing', '');
  const tolerance = typed.tolerance === undefined ? DEFAULT_TOLERANCE : Number(typed.tolerance);
  if (!(tolerance > 0 && tolerance <= 100)) tell('tolerance', 'unreadable', typed.tolerance ?? '', [String(DEFAULT_TOLERANCE)]);

  if (problems.length > 0 || region === undefined || !when) return { problems };
  const route: RouteQuestion = {
    region,
    span: coreOf(when),
    ...(fibre === undefined ? {} : { fibre }),
    ...(wearer === undefined ? {} : { wearer }),
    dyedHere: typed.dyedHere ?? false,
  };
  return { question: { route, when, tolerance, ...(colour && { colour }), ...(dye === undefined ? {} : { dye }) }, problems };
}

/** A typed colour: CSS colours with their screen conditions, a Lab without any. */
export function readColour(text: string): AskedColour | undefined {
  const typed = parseColourText(text);
  if (typed?.kind === 'lab') return { kind: 'bare-lab', lab: typed.lab };
  const swatch = swatchFromCss(text);
  return swatch.ok ? { kind: 'swatches', swatches: [swatch.value] } : undefined;
}
