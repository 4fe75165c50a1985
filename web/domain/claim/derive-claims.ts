import type { AvailabilityEntry, Note, Thread } from '../note/note.ts';
import type { Claim } from './claim.ts';

/**
 * Every claim one note makes, derived from that note alone.
 * An availability entry without a status makes none; a thread where none was detected, or that nobody tested, makes none.
 */
export function deriveClaims(note: Note): readonly Claim[] {
  const { record } = note;
  const drafts: Omit<Claim, 'note' | 'nth'>[] = [];
  const fromEntry = (entry: AvailabilityEntry, undyed?: string) => {
    if (!entry.status) return;
    const { note: remark, region, when, range, status, ...rest } = entry;
    drafts.push({
      ...rest,
      range,
      about: note.id,
      status,
      checked: entry.checked ?? note.checked,
      sources: entry.sources.length > 0 ? entry.sources : note.sources,
      ...(undyed === undefined ? {} : { undyed }),
      ...(remark === undefined ? {} : { remark }),
      ...(region === undefined ? {} : { region }),
      ...(when === undefined ? {} : { when }),
    });
  };
  const fromThread = (thread: Thread) => {
    if (record.kind !== 'textile' || thread.tested !== 'found') return;
    for (const dye of thread.dyes) {
      drafts.push({
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
  return drafts.map((draft, nth) => ({ ...draft, note: note.id, nth }));
}
