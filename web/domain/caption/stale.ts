import type { EvidenceBase } from '../claim/evidence-base.ts';
import { formatSpan } from '../date/format-date.ts';
import type { BoundClaim, DisplayCaption } from '../note/display-record.ts';
import {
  type BackingAddress,
  backingAddress,
  type Fingerprint,
  fingerprintAt,
  FINGERPRINT_PARTS,
  fingerprintOfClaim,
  type FingerprintPart,
  keptFingerprint,
} from './fingerprint.ts';

/** Something behind a caption that is no longer as it was. */
export type CaptionChange =
  | { readonly kind: 'claim-changed'; readonly claim: string; readonly part: FingerprintPart; readonly was: string; readonly now: string }
  | { readonly kind: 'claim-gone'; readonly claim: string; readonly was: Fingerprint }
  | { readonly kind: 'question-changed'; readonly part: 'region' | 'when'; readonly was: string; readonly now: string }
  | { readonly kind: 'verdict-changed'; readonly was: string; readonly now: string };

/** How the colour is judged now, for the place and date the palette asks for. */
export interface CaptionToday {
  /** Absent when it cannot be judged any more. */
  readonly verdict?: string;
  readonly region?: string;
  /** The date by what it means (`formatSpan`). */
  readonly when?: string;
}

/**
 * What changed behind a caption since it was last held to its claims; nothing when it is fresh.
 * What the caption did not keep is not compared.
 */
export function staleness(base: EvidenceBase, caption: DisplayCaption, today: CaptionToday): readonly CaptionChange[] {
  return [
    ...caption.claims.flatMap((bound) => changesOf(base, bound)),
    ...(['region', 'when'] as const).flatMap((part): CaptionChange[] => {
      const was = caption[part];
      const now = today[part] ?? '';
      return was === undefined || was === now || readingOf(base, part, was) === now ? [] : [{ kind: 'question-changed', part, was, now }];
    }),
    ...(caption.verdict === undefined || caption.verdict === (today.verdict ?? '')
      ? []
      : [{ kind: 'verdict-changed' as const, was: caption.verdict, now: today.verdict ?? '' }]),
  ];
}

/** A date as people write it, by what it means; a place by its id. */
const readingOf = (base: EvidenceBase, part: 'region' | 'when', text: string): string => {
  const span = part === 'when' ? base.spanOfText(text) : undefined;
  return part === 'region' ? (base.regionId(text) ?? text) : span ? formatSpan(span) : text;
};

function changesOf(base: EvidenceBase, bound: BoundClaim): readonly CaptionChange[] {
  const kept = keptFingerprint(base, bound);
  const address = nearestBacking(base, bound);
  const now = address && fingerprintAt(base, address);
  if (!now) return [{ kind: 'claim-gone', claim: bound.claim, was: kept }];
  return differing(kept, now).map((part) => ({
    kind: 'claim-changed',
    claim: bound.claim,
    part,
    was: kept[part] ?? '',
    now: now[part] ?? '',
  }));
}

const differing = (kept: Fingerprint, now: Fingerprint): readonly FingerprintPart[] =>
  FINGERPRINT_PARTS.filter((part) => kept[part] !== undefined && kept[part] !== now[part]);

/**
 * The claim of a note that is most like the kept one: a claim is known by what it says, since claims move when others are
 * written in before them; of several alike, the one nearest to where it stood. One that differs in most of its parts
 * is another claim, and the kept one is gone.
 */
export function nearestBacking(base: EvidenceBase, bound: BoundClaim): BackingAddress | undefined {
  const address = backingAddress(bound.claim);
  const note = base.note(address.note);
  if (!note) return undefined;
  const { nth } = address;
  if (nth === undefined) return address;
  const kept = keptFingerprint(base, bound);
  const best = base
    .claimsIn(note.file)
    .map((claim) => ({
      nth: claim.nth,
      differs: differing(kept, fingerprintOfClaim(base, claim)).length,
      moved: Math.abs(claim.nth - nth),
    }))
    .sort((a, b) => a.differs - b.differs || a.moved - b.moved)[0];
  const counted = FINGERPRINT_PARTS.filter((part) => kept[part] !== undefined).length;
  return best && (best.differs === 0 || best.differs < counted / 2) ? { note: address.note, nth: best.nth } : undefined;
}
