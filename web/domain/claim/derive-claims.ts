import type { AvailabilityEntry, Note, Thread } from '../note/note.ts';
import type { Claim } from './claim.ts';

/**
 * Every claim one note makes, derived from that note alone.
 * An availability entry without a status makes none; a thread where none was detected, or that nobody tested, makes none.
 */
export function deriveClaims(note: Note): readonly Claim[] {
  const { record } = note;
  const claims: Claim[] = [];
  const fromEntry = (entry: AvailabilityEntry, undyed?: string) => {
    const { status, note: remark } = entry;
    if (!status) return;
    // Spread once, and first: a notebook of ten years makes tens of thousands of these whenever it is opened.
    const claim: { -readonly [K in keyof Claim]: Claim[K] } = {
      ...entry,
      note: note.id,
      nth: claims.length,
      about: note.id,
      status,
      checked: entry.checked ?? note.checked,
      sources: entry.sources.length > 0 ? entry.sources : note.sources,
    };
    if (undyed !== undefined) claim.undyed = undyed;
    if (remark !== undefined) claim.remark = remark;
    claims.push(claim);
  };
  const fromThread = (thread: Thread) => {
    if (record.kind !== 'textile' || thread.tested !== 'found') return;
    for (const dye of thread.dyes) {
      claims.push({
        note: note.id,
        nth: claims.length,
        range: dye.range,
        about: dye.text,
        status: 'on-cloth',
        knownBy: 'analysis',
        sure: 'yes',
        sources: note.sources,
        checked: note.checked,
        startKnown: false,
        endKnown: false,
        use: 'dyeing',
        on: thread.fibre ? [thread.fibre] : [],
        wearers: record.wearer,
        region: record.region,
        when: record.when,
        ...(thread.where === undefined ? {} : { remark: thread.where }),
      });
    }
  };
  switch (record.kind) {
    case 'fibre':
      record.availability.forEach((entry) => fromEntry(entry));
      for (const undyed of record.undyed) undyed.availability.forEach((entry) => fromEntry(entry, undyed.name));
      break;
    case 'dyestuff':
    case 'mordant':
    case 'assistant':
    case 'process':
      record.availability.forEach((entry) => fromEntry(entry));
      break;
    case 'textile':
      record.threads.forEach(fromThread);
      break;
    default:
  }
  return claims;
}
