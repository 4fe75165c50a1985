import type { Status } from '../note/note.ts';

/** How a material stands at a place and time, best first: the order in which a route takes its worst. */
export const STANDINGS = [
  'local',
  'imported',
  'cloth-only',
  'on-cloth',
  'perhaps',
  'nearby',
  'contested',
  'unrecorded',
  'no-longer',
  'not-yet',
  'absent',
] as const;
export type Standing = (typeof STANDINGS)[number];

/** Where a material came from, best first. */
export const ORIGINS = ['local', 'imported', 'cloth-only', 'on-cloth'] as const;
export type Origin = (typeof ORIGINS)[number];

/** The origin a positive status speaks of. */
export const originOf = (status: Exclude<Status, 'absent'>): Origin =>
  status === 'wild' || status === 'grown' || status === 'made' ? 'local' : status;

/** The worse of two standings. */
export const worse = (a: Standing, b: Standing): Standing => (STANDINGS.indexOf(a) >= STANDINGS.indexOf(b) ? a : b);

/** What can be said of a colour, best first: the table order. */
export const VERDICTS = [
  'attested',
  'attested-as-cloth',
  'feasible',
  'plausible',
  'disputed',
  'unsupported',
  'out-of-period',
  'contradicted',
] as const;
export type Verdict = (typeof VERDICTS)[number];

/** The verdict a route's standing earns, with or without a witness. */
export function verdictOf(standing: Standing, hasWitness: boolean): Verdict {
  switch (standing) {
    case 'local':
    case 'imported':
    case 'on-cloth':
      return hasWitness ? 'attested' : 'feasible';
    case 'cloth-only':
      return 'attested-as-cloth';
    case 'perhaps':
    case 'nearby':
      return 'plausible';
    case 'contested':
      return 'disputed';
    case 'unrecorded':
      return 'unsupported';
    case 'not-yet':
    case 'no-longer':
      return 'out-of-period';
    case 'absent':
      return 'contradicted';
  }
}
