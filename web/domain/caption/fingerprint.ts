import type { Claim } from '../claim/claim.ts';
import type { EvidenceBase } from '../claim/evidence-base.ts';
import { formatSpan } from '../date/format-date.ts';
import type { BoundClaim } from '../note/display-record.ts';
import type { Citation, Note, Ref, WrittenDate } from '../note/note.ts';

/** What a caption holds on to of a claim or a note, each value in words; the parts a change is told in. */
export const FINGERPRINT_PARTS = ['material', 'status', 'region', 'when', 'knownBy', 'sure', 'source'] as const;
export type FingerprintPart = (typeof FINGERPRINT_PARTS)[number];
export type Fingerprint = Readonly<Partial<Record<FingerprintPart, string>>>;

/** The address of a claim (`weld#12`) or of a note (`wq24-001`) inside a notebook. */
export interface BackingAddress {
  readonly note: string;
  /** Absent: the note itself, with its own date, place and source. */
  readonly nth?: number;
}

/** Reads the address a caption gives. */
export function backingAddress(text: string): BackingAddress {
  const found = /^(.+)#(\d{1,6})$/.exec(text.trim());
  return found ? { note: found[1] ?? '', nth: Number(found[2]) } : { note: text.trim() };
}

const sourceOf = (sources: readonly Citation[]): string =>
  sources.map(({ key, locator }) => (locator === undefined ? key : `${key}, ${locator}`)).join('; ');

/** A date by what it means, so that another way of writing it is no change and another period behind its name is one. */
function dateOf(base: EvidenceBase, when: WrittenDate | undefined): string {
  const span = base.spanOf(when);
  return span ? formatSpan(span) : (when?.text ?? '');
}

const regionOf = (base: EvidenceBase, region: Ref | undefined): string => (region ? (base.regionId(region.text) ?? region.text) : '');

/** A claim as it stands now. */
export function fingerprintOfClaim(base: EvidenceBase, claim: Claim): Fingerprint {
  const placed = base.place(claim);
  return filled({
    material: 'lacks' in placed ? claim.about : placed.material,
    status: claim.status,
    region: regionOf(base, claim.region),
    when: dateOf(base, claim.when),
    knownBy: claim.knownBy ?? '',
    sure: claim.sure,
    source: sourceOf(claim.sources),
  });
}

/** A note's own date, place and source as they stand now: a trial's day, a textile's or a text's years. */
export function fingerprintOfNote(base: EvidenceBase, { record, sources }: Note): Fingerprint {
  const source = sourceOf(sources);
  switch (record.kind) {
    case 'trial':
      return filled({
        material: record.recipe ? base.resolve(record.recipe.text, ['recipe']) : '',
        when: dateOf(base, record.date),
        source,
      });
    case 'textile':
    case 'text':
    case 'rule':
      return filled({ region: regionOf(base, record.region), when: dateOf(base, record.when), source });
    default:
      return filled({ source });
  }
}

const filled = (parts: Fingerprint): Fingerprint =>
  Object.fromEntries(FINGERPRINT_PARTS.flatMap((part) => (parts[part] ? [[part, parts[part]]] : [])));

/** What an address leads to as it stands now; undefined when there is none. */
export function fingerprintAt(base: EvidenceBase, { note: id, nth }: BackingAddress): Fingerprint | undefined {
  const note = base.note(id);
  if (!note) return undefined;
  if (nth === undefined) return fingerprintOfNote(base, note);
  const claim = base.claimsIn(note.file)[nth];
  return claim && fingerprintOfClaim(base, claim);
}

/** What a caption kept of a claim; a date that somebody wrote by hand counts by what it means. */
export function keptFingerprint(base: EvidenceBase, bound: BoundClaim): Fingerprint {
  const span = bound.when === undefined ? undefined : base.spanOfText(bound.when);
  return filled({
    material: bound.material ?? '',
    status: bound.status ?? '',
    region: bound.region ?? '',
    when: span ? formatSpan(span) : (bound.when ?? ''),
    knownBy: bound.knownBy ?? '',
    sure: bound.sure ?? '',
    source: bound.source ?? '',
  });
}

/** A binding as it is written into a display note: the address, the words that rest on it, and how it stands now. */
export function bindingOf(base: EvidenceBase, address: BackingAddress, says: string): Readonly<Record<string, string>> | undefined {
  const now = fingerprintAt(base, address);
  if (!now) return undefined;
  const { knownBy, ...rest } = now;
  const claim = address.nth === undefined ? address.note : `${address.note}#${address.nth}`;
  const { source, sure, ...first } = rest;
  return {
    claim,
    says,
    ...first,
    ...(knownBy === undefined ? {} : { 'known-by': knownBy }),
    ...(sure === undefined ? {} : { sure }),
    ...(source === undefined ? {} : { source }),
  };
}
