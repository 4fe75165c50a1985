import type { PlannedBath, TimelineRow } from './dye-day.ts';

/**
 * The baths one after the other, each beginning when the one before ends: what a single pair of hands needs at least. Two pots at
 * once shorten it; heating a large pot lengthens it. Stated waits of a night and more stand beside and are not added.
 */
export function timelineOf(baths: readonly PlannedBath[]): readonly TimelineRow[] {
  return (['ahead', 'day'] as const).flatMap((when) => {
    let [from, to] = [0, 0];
    return baths
      .filter((bath) => bath.when === when)
      .map((bath): TimelineRow => {
        const begins = { from, to };
        from += bath.tend?.from ?? 0;
        to += bath.tend?.to ?? 0;
        return { bath: bath.nth, when, begins, ends: { from, to }, stated: bath.tend !== undefined, ...(bath.wait && { wait: bath.wait }) };
      });
  });
}
