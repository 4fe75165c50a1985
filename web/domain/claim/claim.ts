import type { DateSpan } from '../date/date-span.ts';
import type { TextRange } from '../diagnostic.ts';
import type { AvailabilityEntry, Checked, Citation, KnownBy, NoteId, Ref, Status, Sure, WrittenDate } from '../note/note.ts';
import type { RegionId } from '../place/region-tree.ts';

/** One statement of one note about one material, as derived from that note alone; nothing resolved yet. */
export interface Claim {
  /** The note that says it. */
  readonly note: NoteId;
  /** Counts the claims of a note from 0. */
  readonly nth: number;
  readonly range: TextRange;
  /** The material: the note's own id, or the dyestuff as a thread names it. */
  readonly about: string;
  /** The undyed colour's name, where the claim is about that colour of a fibre alone. */
  readonly undyed?: string;
  readonly status: Status;
  readonly reason?: AvailabilityEntry['reason'];
  readonly knownBy?: KnownBy;
  readonly sure: Sure;
  readonly sources: readonly Citation[];
  readonly checked?: Checked;
  readonly startKnown: boolean;
  readonly endKnown: boolean;
  readonly extent?: 'whole' | 'somewhere';
  readonly use: AvailabilityEntry['use'];
  readonly on: readonly Ref[];
  readonly wearers: readonly Ref[];
  readonly usual?: AvailabilityEntry['usual'];
  readonly price?: string;
  readonly restsOn?: Citation;
  readonly remark?: string;
  readonly region?: Ref;
  readonly when?: WrittenDate;
}

/** A claim whose region, date and fibres could be read: only these take part. */
export interface PlacedClaim {
  readonly claim: Claim;
  readonly material: string;
  readonly region: RegionId;
  readonly span: DateSpan;
  readonly extent: 'whole' | 'somewhere';
  readonly on: readonly string[];
}

/** `note#nth`: one claim's address inside a notebook. */
export const claimKey = (claim: Claim): string => `${claim.note}#${claim.nth}`;

/** Positive: it was to hand in some way. */
export const isPositive = (claim: Claim): boolean => claim.status !== 'absent';

const HARD: ReadonlySet<KnownBy> = new Set(['analysis', 'remains', 'text', 'trade', 'law']);

/** Hard: physical or documentary, without doubt, and about dyeing. Everything else is soft. */
export const isHard = (claim: Claim): boolean =>
  claim.knownBy !== undefined && HARD.has(claim.knownBy) && claim.sure === 'yes' && claim.use === 'dyeing';

/** What stands at the bottom of a claim: what it rests on, else its source, else the note itself. */
export const rootOf = (claim: Claim): string =>
  claim.restsOn ? `source ${claim.restsOn.key}` : claim.sources[0] ? `source ${claim.sources[0].key}` : `note ${claim.note}`;
