import type { LabFigures } from '../figures.ts';
import type { Standing } from '../../verdict/standing-words.ts';

/** Numbers that steer the ranking and belong to no compound, and a reader's own figures for compounds. */
export interface LabWeights {
  /** How much place and date speak for a source before anything is measured. */
  readonly ofStanding: Readonly<Record<Standing, number>>;
  /** The same where no place or date is asked, or the notes say nothing of the source at all. */
  readonly unasked: number;
  /** What each dye beyond the first costs: how seldom one particular second dye is used with a given first. */
  readonly perFurtherDye: number;
  readonly mostDyes: 1 | 2 | 3;
  /** Two sources are not told apart while neither explains the findings this many times better. */
  readonly tellsFrom: number;
  /** Years after which ageing has taken what the table of losses says. */
  readonly agedAfterYears: number;
  /** From which year back age is counted; the tables know no clock. */
  readonly presentYear: number;
  /** Density of a ratio where a mixture or unknown source leaves it open, per unit of its scale: `times` (log 10), `share`. */
  readonly openRatio: { readonly times: number; readonly share: number };
  readonly figures?: LabFigures;
}

/** The standings that set a source aside: shown with what it would explain, not ranked. */
export const RULED_OUT: ReadonlySet<Standing> = new Set<Standing>(['absent', 'not-yet']);

/** @source our judgement throughout, fixed before the published cases were entered. */
export const LAB_WEIGHTS: LabWeights = {
  ofStanding: {
    local: 1,
    imported: 1,
    'on-cloth': 0.8,
    'cloth-only': 0.6,
    perhaps: 0.5,
    nearby: 0.4,
    contested: 0.3,
    unrecorded: 0.15,
    'no-longer': 0.02,
    'not-yet': 0.005,
    absent: 0.005,
  },
  unasked: 0.5,
  perFurtherDye: 0.06,
  mostDyes: 3,
  tellsFrom: 3,
  agedAfterYears: 250,
  presentYear: 1950,
  openRatio: { times: 0.25, share: 1 },
};
