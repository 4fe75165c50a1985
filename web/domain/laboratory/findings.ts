import type { LabMethod } from './tables/methods.ts';

export const FOUND = ['present', 'trace', 'absent', 'not-tested'] as const;
/** What a report says of one compound. `absent` means not detected, never not used. */
export type Found = (typeof FOUND)[number];

/** One line of a report. */
export interface Finding {
  readonly compound: string;
  readonly found: Found;
  /** Where this line was got another way than the rest. */
  readonly method?: LabMethod;
}

/** A ratio as reported, with its tolerance as one standard deviation, both in the ratio's own figures. */
export interface RatioFinding {
  readonly ratio: string;
  readonly value: number;
  readonly tolerance?: number;
}

/** A report on one thread. */
export interface LabReport {
  readonly method: LabMethod;
  readonly findings: readonly Finding[];
  readonly ratios: readonly RatioFinding[];
  /** The report looked for everything the tables know and found nothing else; otherwise what it does not name was not tested. */
  readonly elseAbsent?: boolean;
}
