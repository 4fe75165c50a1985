import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { NoteId } from '../note/note.ts';
import { printSkeinCode, readSkeinCode } from './skein-code.ts';

/** Where a code leads: the pot (a trial) and which of its skeins. */
export interface CodedSample {
  readonly trial: NoteId;
  readonly nth: number;
  /** As it stands in the note. */
  readonly code: string;
}

/** Every code in the notebook's trials, by trial. */
export function codedSamples(base: EvidenceBase): readonly CodedSample[] {
  return base
    .ofKind('trial')
    .flatMap(({ id, record }) => record.samples.flatMap(({ code }, nth) => (code === undefined ? [] : [{ trial: id, nth, code }])));
}

/** What a typed or scanned code led to. */
export type CodeFound =
  | { readonly is: 'one'; readonly sample: CodedSample }
  /** A code was given twice: a fault of the notes, shown and not settled here. */
  | { readonly is: 'several'; readonly samples: readonly CodedSample[] }
  /** Sound, but no trial has it yet: a tag printed ahead. */
  | { readonly is: 'free'; readonly code: string }
  /** No such code, and its check character, if it has one, does not agree. */
  | { readonly is: 'none' };

/**
 * Finds the skein of a code as typed or scanned. Case, spaces and hyphens do not matter; O for 0 and I for 1 are mended only
 * where the check character then agrees. A code of one's own, without a check character, must be typed as it is.
 */
export function findByCode(base: EvidenceBase, typed: string): CodeFound {
  const plain = bare(typed);
  const read = readSkeinCode(typed);
  const sound = read && printSkeinCode(read);
  const all = codedSamples(base);
  const exact = all.filter(({ code }) => bare(code) === plain);
  const meant = exact.length > 0 || sound === undefined ? exact : all.filter(({ code }) => bare(code) === bare(sound));
  const [first] = meant;
  if (first && meant.length === 1) return { is: 'one', sample: first };
  if (meant.length > 1) return { is: 'several', samples: meant };
  return sound === undefined ? { is: 'none' } : { is: 'free', code: sound };
}

/** Separators and case aside. Nothing of an empty text. */
const bare = (text: string): string => text.toUpperCase().replace(/[\s\-‐‑–—./]/g, '');

/**
 * The codes of the next pot of a year: one for each skein, for tags that are printed before dyeing.
 *
 * @param year as `2026`; @param skeins 1–99; @param printed codes handed out already that no trial has yet.
 * @returns empty where the year is full (999 pots) or a number is out of range.
 */
export function nextCodes(base: EvidenceBase, year: number, skeins: number, printed: readonly string[] = []): readonly string[] {
  const taken = [...codedSamples(base).map(({ code }) => code), ...printed]
    .map((code) => bathOf(code, year))
    .filter((bath) => bath !== undefined);
  const bath = 1 + Math.max(0, ...taken);
  if (!Number.isInteger(skeins) || skeins < 1 || skeins > 99) return [];
  return Array.from({ length: skeins }, (_, at) => printSkeinCode({ year: year % 100, bath, skein: at + 1 })).filter(
    (code) => code !== undefined,
  );
}

/** The pot of the year a code names; codes of one's own that look like `WQ25-014-1` count too, so that no number is used twice. */
function bathOf(code: string, year: number): number | undefined {
  const read = readSkeinCode(code);
  if (read) return read.year === year % 100 ? read.bath : undefined;
  const [, written, bath] = /(?:^|\D)(\d{2})[-–/ ](\d{3})(?:\D|$)/u.exec(code) ?? [];
  return written !== undefined && Number(written) === year % 100 ? Number(bath) : undefined;
}
