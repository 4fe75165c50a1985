import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import { coreOf } from '../domain/date/date-span.ts';
import { NOTE_KINDS } from '../domain/note/note.ts';
import { STANDINGS, type Standing } from '../domain/verdict/standing-words.ts';
import type { SearchFilter } from './filter-notes.ts';
import type { TypedFinding } from './ports-finding.ts';

/** What stands for several standings in the sentence. */
export const STANDING_CHOICES = {
  'to-hand': ['local', 'imported'],
  'as-cloth': ['cloth-only', 'on-cloth'],
  perhaps: ['perhaps', 'nearby'],
  'not-there': ['absent', 'not-yet', 'no-longer'],
  contested: ['contested'],
  unrecorded: ['unrecorded'],
} as const satisfies Readonly<Record<string, readonly Standing[]>>;
export type StandingChoice = keyof typeof STANDING_CHOICES;

/** A part of the sentence that could not be understood. */
export interface FindingProblem {
  readonly part: 'kind' | 'region' | 'when' | 'fibre' | 'mordant' | 'standing';
  readonly typed: string;
}

/** Understands the filters of a sentence; what cannot be understood narrows nothing and is told. */
export function poseFinding(
  base: EvidenceBase,
  typed: TypedFinding,
): { readonly filter: SearchFilter; readonly problems: readonly FindingProblem[] } {
  const problems: FindingProblem[] = [];
  const tell = (part: FindingProblem['part'], text: string): undefined => {
    problems.push({ part, typed: text });
    return undefined;
  };
  const read = <T>(part: FindingProblem['part'], text: string | undefined, find: (text: string) => T | undefined): T | undefined =>
    text === undefined || text === '' ? undefined : (find(text) ?? tell(part, text));
  const kind = read('kind', typed.kind, (text) => [...NOTE_KINDS, 'plain' as const].find((one) => one === text));
  const region = read('region', typed.region, (text) => base.regionId(text));
  const span = read('when', typed.when, (text) => base.spanOfText(text));
  const named = (of: 'fibre' | 'mordant') => (text: string) => {
    const found = base.find(text, [of]);
    return found.is === 'one' ? found.id : undefined;
  };
  const fibre = read('fibre', typed.fibre, named('fibre'));
  const mordant = read('mordant', typed.mordant, named('mordant'));
  const any = read('standing', typed.standing, (text): readonly Standing[] | undefined =>
    Object.hasOwn(STANDING_CHOICES, text)
      ? STANDING_CHOICES[text as StandingChoice]
      : STANDINGS.includes(text as Standing)
        ? [text as Standing]
        : undefined,
  );
  // How something stands can only be said of a place and a time.
  if (any && (region === undefined || !span)) tell('standing', typed.standing ?? '');
  return {
    filter: {
      ...(kind && { kinds: [kind] }),
      ...(region !== undefined && { region }),
      ...(span && { span: coreOf(span) }),
      ...(fibre !== undefined && { fibre }),
      ...(mordant !== undefined && { mordant }),
      ...(any && region !== undefined && span && { standing: { any, region, span: coreOf(span) } }),
    },
    problems,
  };
}
