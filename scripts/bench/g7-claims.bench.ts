/** Claims of a whole notebook by place, years and status (G7). */
import { claimsAt, type ClaimFilter } from '../../web/domain/claim/claims-at.ts';
import type { PlacedClaim } from '../../web/domain/claim/claim.ts';
import { EvidenceBase } from '../../web/domain/claim/evidence-base.ts';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { type Status, STATUSES } from '../../web/domain/note/note.ts';
import { type RegionId, WORLD } from '../../web/domain/place/region-tree.ts';
import { alternate, cpuClock } from './alternate.ts';
import { benchOptions } from './bench-options.ts';
import { madeNotes } from './made/made-notes.ts';
import { noteChance } from './made/note-chance.ts';
import { type Figure, report, timedFigure } from './report.ts';

const QUERIES = 64;
/** A single pass is too short for the clock. */
const PASSES = { ours: 50, theirs: 5 };

/** The yardstick: regions numbered so that a region and its parts are a run, and every claim looked at in typed arrays. */
class TypedScan {
  readonly #runs = new Map<RegionId, readonly [first: number, last: number]>();
  readonly #regions: Int32Array;
  readonly #from: Float64Array;
  readonly #to: Float64Array;
  readonly #status: Uint8Array;
  readonly #found: Uint32Array;

  constructor(base: EvidenceBase, claims: readonly PlacedClaim[]) {
    const parts = new Map<RegionId, RegionId[]>();
    for (const id of base.regions.ids) {
      const [parent, ...others] = base.regions.parentsOf(id);
      if (others.length > 0) throw new Error(`${id} lies in several regions: it is no run`);
      if (parent !== undefined) parts.set(parent, [...(parts.get(parent) ?? []), id]);
    }
    const number = (id: RegionId, first: number): number => {
      const last = (parts.get(id) ?? []).reduce((at, part) => number(part, at + 1), first);
      this.#runs.set(id, [first, last]);
      return last;
    };
    number(WORLD, 0);
    this.#regions = Int32Array.from(claims, ({ region }) => this.#runs.get(region)?.[0] ?? NaN);
    this.#from = Float64Array.from(claims, ({ span }) => span.earliestStart ?? -Infinity);
    this.#to = Float64Array.from(claims, ({ span }) => span.latestEnd ?? Infinity);
    this.#status = Uint8Array.from(claims, ({ claim }) => bit(claim.status));
    this.#found = new Uint32Array(claims.length);
  }

  find({ region, span, statuses }: ClaimFilter): Uint32Array {
    const years = [this.#from, this.#to, span?.from ?? -Infinity, span?.to ?? Infinity] as const;
    const mask = (statuses ?? STATUSES).reduce((all, status) => all | bit(status), 0);
    const [status, found] = [this.#status, this.#found];
    if (region === undefined) return found.subarray(0, scanYears(...years, status, mask, found));
    const [first, last] = this.#runs.get(region) ?? [1, 0];
    return found.subarray(0, scanRegion(this.#regions, first, last - first, ...years, status, mask, found));
  }
}

// Two loops, each compiled for what it meets alone. Both write where the claims stand that hold, and give their number.

function scanRegion(
  regions: Int32Array,
  first: number,
  width: number,
  starts: Float64Array,
  ends: Float64Array,
  from: number,
  to: number,
  status: Uint8Array,
  mask: number,
  found: Uint32Array,
): number {
  let count = 0;
  for (let at = 0; at < regions.length; at += 1) {
    // One comparison for both ends: what lies before the first wraps round to a very high number.
    if (((regions[at] as number) - first) >>> 0 > width) continue;
    if ((starts[at] as number) > to || (ends[at] as number) < from || ((status[at] as number) & mask) === 0) continue;
    found[count++] = at;
  }
  return count;
}

function scanYears(
  starts: Float64Array,
  ends: Float64Array,
  from: number,
  to: number,
  status: Uint8Array,
  mask: number,
  found: Uint32Array,
): number {
  let count = 0;
  for (let at = 0; at < starts.length; at += 1) {
    if ((starts[at] as number) > to || (ends[at] as number) < from || ((status[at] as number) & mask) === 0) continue;
    found[count++] = at;
  }
  return count;
}

const ORDER = [...STATUSES, 'on-cloth'];
const bit = (status: string): number => 1 << ORDER.indexOf(status);
type Pair = readonly [Status, Status];
const PAIRS: readonly [Pair, ...Pair[]] = [
  ['grown', 'wild'],
  ['imported', 'cloth-only'],
  ['grown', 'absent'],
];

const figures: Figure[] = [];
const { sizes, repetitions } = benchOptions();
for (const [name, notes] of sizes) {
  const base = new EvidenceBase();
  for (const { path, text } of madeNotes(notes, { short: true })) base.put(parseNote(path, text).value);
  base.claimsOf('any');
  const start = cpuClock();
  const claims = claimsAt(base, {});
  console.log(`${claims.length} claims laid out by region and by start in ${(cpuClock() - start).toFixed(0)} ms`);
  const typed = new TypedScan(base, claims);
  const place = new Map(claims.map((claim, at) => [claim.claim, at]));

  const draw = noteChance(5, 1);
  const anywhere = Array.from({ length: QUERIES }, (): ClaimFilter => {
    const from = 700 + draw.below(1100);
    return { span: { from, to: from + draw.below(100) }, statuses: draw.pick(PAIRS) };
  });
  const regions = base.regions.ids.filter((id) => id !== WORLD);
  const somewhere = anywhere.map((filter): ClaimFilter => ({ ...filter, region: regions[draw.below(regions.length)] ?? WORLD }));

  for (const [what, filters, wanted] of [
    ['claims of some years and two statuses', anywhere, 1 / 4],
    ['claims of a region, some years and two statuses', somewhere, 1 / 40],
  ] as const) {
    let found = 0;
    for (const filter of filters) {
      const mine = claimsAt(base, filter)
        .map(({ claim }) => place.get(claim) ?? NaN)
        .sort((a, b) => a - b);
      if (mine.join() !== typed.find(filter).join()) throw new Error(`other claims: ${JSON.stringify(filter)}`);
      found += mine.length;
    }
    const passes = (times: number, ask: (filter: ClaimFilter) => unknown) => () => {
      for (let time = 0; time < times; time += 1) for (const filter of filters) ask(filter);
    };
    const [ours, theirs] = await alternate(
      [
        { name: 'kept by place and start', run: passes(PASSES.ours, (filter) => claimsAt(base, filter)) },
        { name: 'scan of typed arrays', run: passes(PASSES.theirs, (filter) => typed.find(filter)) },
      ],
      repetitions,
    );
    if (!ours || !theirs) continue;
    const each = (of: typeof ours, times: number) => ({ ...of, times: of.times.map((time) => time / times / QUERIES) });
    const at = `${name} notes, ${claims.length} claims, ${Math.round(found / QUERIES)} found`;
    figures.push(timedFigure({ goal: 'G7', what, at, wanted }, each(ours, PASSES.ours), each(theirs, PASSES.theirs)));
  }
}
report('claims', 'Claims by place, years and status, in Node (milliseconds of processor time a query)', figures);
