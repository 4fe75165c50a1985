/** How far a loosely given year may be off, in steps that narrow as dating gets better. A setting of the notebook. */
export interface ReachTable {
  /** Oldest first; each holds up to and with its year. */
  readonly steps: readonly { readonly upTo: number; readonly years: number }[];
  /** Years of reach after the last step. */
  readonly after: number;
}

/** Our choice: written and dug-up dates get firmer century by century. */
export const usualReach: ReachTable = {
  steps: [
    { upTo: 500, years: 100 },
    { upTo: 1500, years: 50 },
    { upTo: 1700, years: 25 },
  ],
  after: 10,
};

/**
 * Reach at a year: how many years apart two dates may lie and still be spoken of together.
 *
 * @param year astronomical.
 * @returns years, whole.
 * @error none.
 * @source our choice, see `usualReach`.
 */
export const reachAt = (year: number, table: ReachTable = usualReach): number =>
  table.steps.find((step) => year <= step.upTo)?.years ?? table.after;

/** Half the reach, rounded down: what a "circa" adds on its side, in years. */
export const halfReachAt = (year: number, table: ReachTable = usualReach): number => Math.floor(reachAt(year, table) / 2);
