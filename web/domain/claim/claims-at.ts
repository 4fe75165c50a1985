import type { YearSpan } from '../date/date-span.ts';
import { type Status, STATUSES } from '../note/note.ts';
import { type RegionId, type RegionTree, WORLD } from '../place/region-tree.ts';
import type { PlacedClaim } from './claim.ts';
import type { EvidenceBase } from './evidence-base.ts';

/** Every status but absence. */
export const TO_HAND: readonly Status[] = [...STATUSES.filter((status) => status !== 'absent'), 'on-cloth'];

/** Where, when and how something was to hand; what is left out narrows nothing. */
export interface ClaimFilter {
  /** The claim's region is this one or lies in it. */
  readonly region?: RegionId;
  /** The claim's outer years meet these. */
  readonly span?: YearSpan;
  readonly statuses?: readonly Status[];
}

/** The claims of a whole notebook that a filter leaves, found without looking at most of the others; in no order. */
export function claimsAt(base: EvidenceBase, filter: ClaimFilter): readonly PlacedClaim[] {
  let laid = laidOut.get(base);
  if (!laid?.follow(base)) laidOut.set(base, (laid = new LaidClaims(base)));
  return laid.find(filter, base.regions);
}

const laidOut = new WeakMap<EvidenceBase, LaidClaims>();

/** Of so many materials one may have changed before everything is laid out anew. */
const CHANGED_OF = 16;
/** Years that claims begin in, on one shelf: short ones leave more shelves to visit, long ones more claims. */
const SHELF_YEARS = 25;

/**
 * A notebook's claims by region, and by the quarter of a century they begin in. A material whose claims changed since they
 * were laid out is passed over there, and looked through by itself.
 */
class LaidClaims {
  readonly #lists: ReadonlyMap<string, readonly PlacedClaim[]>;
  readonly #byRegion: Shelves<RegionId>;
  readonly #byStart: Shelves<number>;
  readonly #changed = new Set<string>();
  #loose: readonly PlacedClaim[] = [];
  #at: number;

  constructor(base: EvidenceBase) {
    this.#at = base.changes.length;
    this.#lists = new Map([...base.claimLists.keys()].map((material) => [material, base.claimLists.under(material)]));
    const claims = [...this.#lists.values()].flat();
    this.#byRegion = new Shelves(claims, ({ region }) => region);
    this.#byStart = new Shelves(claims, (one) => Math.floor(firstYear(one) / SHELF_YEARS));
  }

  /** Takes in what changed; false when that is so much that it is better laid out anew. */
  follow(base: EvidenceBase): boolean {
    if (base.changes.length === this.#at) return true;
    this.#at = base.changes.length;
    const { claimLists } = base;
    for (const material of new Set([...this.#lists.keys(), ...claimLists.keys()]))
      if (this.#lists.get(material) !== claimLists.under(material)) this.#changed.add(material);
    this.#loose = [...this.#changed].flatMap((material) => claimLists.under(material));
    return this.#changed.size * CHANGED_OF <= this.#lists.size;
  }

  find({ region = WORLD, span, statuses }: ClaimFilter, regions: RegionTree): readonly PlacedClaim[] {
    const asked: Asked = {
      from: span?.from ?? -Infinity,
      to: span?.to ?? Infinity,
      bits: statuses ? statuses.reduce((all, status) => all | bitOf(status), 0) : EVERY_BIT,
    };
    const found: PlacedClaim[] = [];
    if (region === WORLD) for (const start of this.#byStart.keys()) this.#byStart.gather(start, asked, found);
    else for (const part of regions.within(region)) this.#byRegion.gather(part, asked, found);
    if (this.#changed.size === 0) return found;
    const parts = new Set(regions.within(region));
    return [
      ...found.filter(({ material }) => !this.#changed.has(material)),
      ...this.#loose.filter(
        (one) =>
          parts.has(one.region) &&
          firstYear(one) <= asked.to &&
          lastYear(one) >= asked.from &&
          (bitOf(one.claim.status) & asked.bits) !== 0,
      ),
    ];
  }
}

/** A filter's years and statuses, as they are compared. */
interface Asked {
  readonly from: number;
  readonly to: number;
  readonly bits: number;
}

/** Claims in columns, those of one key together, by their last year: those that end too early are passed over in one step. */
class Shelves<K> {
  readonly #claims: readonly PlacedClaim[];
  readonly #firstYears: Float64Array;
  readonly #lastYears: Float64Array;
  readonly #bits: Uint8Array;
  readonly #shelves = new Map<K, { readonly start: number; readonly end: number; readonly opens: number }>();

  constructor(all: readonly PlacedClaim[], keyOf: (claim: PlacedClaim) => K) {
    const [keys, ends] = [all.map(keyOf), Float64Array.from(all, lastYear)];
    const [shelfOf, yearOf] = [ranks(keys), ranks(ends.toSorted())];
    // Shelf, year and place in one number, so that numbers are sorted and no claims compared.
    const sorted = ends
      .map((end, at) => ((shelfOf.get(keys[at] as K) ?? 0) * yearOf.size + (yearOf.get(end) ?? 0)) * all.length + at)
      .sort();
    this.#claims = Array.from(sorted, (one) => all[one % all.length] as PlacedClaim);
    this.#firstYears = Float64Array.from(this.#claims, firstYear);
    this.#lastYears = Float64Array.from(this.#claims, lastYear);
    this.#bits = Uint8Array.from(this.#claims, ({ claim }) => bitOf(claim.status));
    let start = 0;
    for (const [key, shelf] of shelfOf) {
      let [end, opens] = [start, Infinity];
      for (; end < sorted.length && (sorted[end] as number) < (shelf + 1) * yearOf.size * all.length; end += 1)
        opens = Math.min(opens, this.#firstYears[end] as number);
      this.#shelves.set(key, { start, end, opens });
      start = end;
    }
  }

  keys(): Iterable<K> {
    return this.#shelves.keys();
  }

  gather(key: K, { from, to, bits }: Asked, found: PlacedClaim[]): void {
    const shelf = this.#shelves.get(key);
    if (!shelf || shelf.opens > to) return;
    for (let at = this.#firstNotBefore(from, shelf.start, shelf.end); at < shelf.end; at += 1)
      if (((this.#bits[at] as number) & bits) !== 0 && (this.#firstYears[at] as number) <= to) found.push(this.#claims[at] as PlacedClaim);
  }

  #firstNotBefore(year: number, start: number, end: number): number {
    let [low, high] = [start, end];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#lastYears[middle] as number) < year) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/** Each thing with the number of others that came before it. */
function ranks<T>(all: Iterable<T>): ReadonlyMap<T, number> {
  const found = new Map<T, number>();
  for (const one of all) if (!found.has(one)) found.set(one, found.size);
  return found;
}

const firstYear = ({ span }: PlacedClaim): number => span.earliestStart ?? -Infinity;
const lastYear = ({ span }: PlacedClaim): number => span.latestEnd ?? Infinity;

const EVERY_STATUS: readonly Status[] = [...TO_HAND, 'absent'];
const bitOf = (status: Status): number => 1 << EVERY_STATUS.indexOf(status);
const EVERY_BIT = (1 << EVERY_STATUS.length) - 1;
