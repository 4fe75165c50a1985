import type { EvidenceBase } from '../claim/evidence-base.ts';
import { timeRelation } from '../date/time-relation.ts';
import type { Note, NoteId, Ref, WrittenDate } from '../note/note.ts';
import type { PlaceRelation } from '../place/region-tree.ts';
import type { Asked } from './judge-claim.ts';

/** A textile thread, or a text, that shows exactly this dyeing at the place and time. */
export interface Witness {
  readonly note: NoteId;
  readonly kind: 'textile' | 'text';
  /** Which thread, by its `where`. */
  readonly where?: string;
  readonly place: PlaceRelation;
  readonly time: 'throughout' | 'part';
}

/**
 * The witnesses for a set of dyestuffs: its dyes are exactly these, on the asked fibre, a kind it belongs to
 * or one that belongs to it, with place here, within or around and time throughout or part.
 * No dyestuffs have no witness: that none was detected does not say that none was used.
 */
export function witnessesFor(base: EvidenceBase, dyes: readonly string[], asked: Asked): readonly Witness[] {
  if (dyes.length === 0) return [];
  const wanted = [...new Set(dyes)].sort().join('\n');
  const sameDyes = (refs: readonly Ref[]) =>
    [...new Set(refs.map(({ text }) => base.resolve(text, ['dyestuff'])))].sort().join('\n') === wanted;
  const fits = (fibres: readonly Ref[]) =>
    asked.fibreLine.length === 0 || fibres.some(({ text }) => isKin(base, base.resolve(text, ['fibre']), asked));
  const seen = (region: Ref | undefined, when: WrittenDate | undefined) => seenFrom(base, region, when, asked);

  const fromTextiles = base.ofKind('textile').flatMap(({ id, record }): Witness[] => {
    const seenAt = seen(record.region, record.when);
    if (!seenAt) return [];
    return record.threads
      .filter((thread) => thread.tested === 'found' && sameDyes(thread.dyes) && fits(thread.fibre ? [thread.fibre] : []))
      .map((thread) => ({ note: id, kind: 'textile', ...(thread.where === undefined ? {} : { where: thread.where }), ...seenAt }));
  });
  const fromTexts = base.ofKind('text').flatMap(({ id, record }): Witness[] => {
    const seenAt = seen(record.region, record.when);
    return seenAt && sameDyes(record.dyes) && fits(record.fibre) ? [{ note: id, kind: 'text', ...seenAt }] : [];
  });
  return [...fromTextiles, ...fromTexts];
}

function isKin(base: EvidenceBase, fibre: string, { fibreLine }: Asked): boolean {
  const askedFibre = fibreLine[0];
  return fibreLine.includes(fibre) || (askedFibre !== undefined && base.fibreLine(fibre).includes(askedFibre));
}

function seenFrom(
  base: EvidenceBase,
  region: Ref | undefined,
  when: Note['reviewBy'],
  asked: Asked,
): Pick<Witness, 'place' | 'time'> | undefined {
  const at = region && base.regionId(region.text);
  const span = base.spanOf(when);
  if (at === undefined || !span) return undefined;
  const place = base.regions.relation(at, asked.region);
  const { relation: time } = timeRelation(span, asked.span);
  if (place === 'neighbour' || place === 'elsewhere' || (time !== 'throughout' && time !== 'part')) return undefined;
  return { place, time };
}
