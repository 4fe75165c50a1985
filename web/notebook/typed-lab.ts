import { coreOf } from '../domain/date/date-span.ts';
import { parseDate } from '../domain/date/parse-date.ts';
import type { LabQuestion } from '../domain/laboratory/ask-laboratory.ts';
import type { LabFigures } from '../domain/laboratory/figures.ts';
import type { Finding, RatioFinding } from '../domain/laboratory/findings.ts';
import { LAB_METHODS, type LabMethod } from '../domain/laboratory/tables/methods.ts';
import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import type { Found as FoundName } from '../domain/claim/name-index.ts';
import type { DateSpan } from '../domain/date/date-span.ts';
import type { QuestionProblem } from './pose-question.ts';

/** A laboratory's report as somebody typed it. */
export interface TypedLab {
  readonly findings: readonly Finding[];
  readonly ratios: readonly RatioFinding[];
  readonly method: LabMethod;
  readonly elseAbsent?: boolean;
  readonly region?: string;
  readonly when?: string;
  readonly fibre?: string;
  /** Where the report is printed: `citation key, page`. Only kept, not reasoned with. */
  readonly source?: string;
  /** Figures of the reader's own. */
  readonly figures?: LabFigures;
}

/** A report with nothing in it yet. */
export const EMPTY_LAB: TypedLab = { findings: [], ratios: [], method: 'hplc-dad' };

/** A report understood, with how its date was read. */
export interface PosedLab {
  readonly question: LabQuestion;
  readonly when?: DateSpan;
}

/** Understands a typed report against a notebook; what cannot be understood is told, none guessed. */
export function poseLab(base: EvidenceBase, typed: TypedLab): { readonly posed?: PosedLab; readonly problems: readonly QuestionProblem[] } {
  const problems: QuestionProblem[] = [];
  const take = (part: 'region' | 'fibre', text: string | undefined, find: (text: string) => FoundName): string | undefined => {
    if (text === undefined || text.trim() === '') return undefined;
    const found = find(text);
    if (found.is === 'one') return found.id;
    const nearest = found.is === 'several' ? found.ids : found.nearest;
    problems.push({ part, problem: found.is === 'several' ? 'ambiguous' : 'unknown', typed: text, nearest });
    return undefined;
  };
  const region = take('region', typed.region, (text) => base.findRegion(text));
  const fibre = take('fibre', typed.fibre, (text) => base.find(text, ['fibre']));
  const date = typed.when?.trim() ?? '';
  const when = date === '' ? undefined : base.spanOfText(date);
  if (date !== '' && !when) {
    problems.push({ part: 'when', problem: 'unreadable', typed: date, nearest: parseDate(date).problem?.suggestions ?? [] });
  }
  if (problems.length > 0) return { problems };
  const question: LabQuestion = {
    report: {
      method: LAB_METHODS.includes(typed.method) ? typed.method : 'not-said',
      findings: typed.findings,
      ratios: typed.ratios.filter(({ value }) => Number.isFinite(value) && value >= 0),
      ...(typed.elseAbsent && { elseAbsent: true }),
    },
    ...(region !== undefined && { region }),
    ...(when && { span: coreOf(when) }),
    ...(fibre !== undefined && { fibre }),
  };
  return { posed: { question, ...(when && { when }) }, problems };
}
