import type { EvidenceBase } from '../claim/evidence-base.ts';
import { type NoteEntry, perNote } from '../claim/per-note.ts';
import type { DateSpan } from '../date/date-span.ts';
import { timeRelation } from '../date/time-relation.ts';
import type { NoteId, Ref } from '../note/note.ts';
import type { PlaceRelation, RegionId } from '../place/region-tree.ts';
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
  const fits = (fibres: readonly string[]) => asked.fibreLine.length === 0 || fibres.some((fibre) => isKin(base, fibre, asked));
  return dyeings(base, keyOf(dyes)).flatMap(({ note, kind, where, fibres, region, span }): readonly Witness[] => {
    const place = base.regions.relation(region, asked.region);
    const { relation: time } = timeRelation(span, asked.span);
    if (place === 'neighbour' || place === 'elsewhere' || (time !== 'throughout' && time !== 'part')) return [];
    return fits(fibres) ? [{ note, kind, ...(where === undefined ? {} : { where }), place, time }] : [];
  });
}

/** A thread or text that names its dyes, where its place and date can be read. */
interface Dyeing {
  readonly note: NoteId;
  readonly kind: 'textile' | 'text';
  readonly where?: string;
  readonly fibres: readonly string[];
  readonly region: RegionId;
  readonly span: DateSpan;
}

const keyOf = (dyes: readonly string[]): string => [...new Set(dyes)].sort().join('\n');

/** Every thread and text of the notebook by the set of its dyes, textiles first, by id. */
const dyeings = perNote<Dyeing>({
  kinds: ['textile', 'text'],
  order: ({ id, record }) => (record.kind === 'textile' ? `1 ${id}` : `2 ${id}`),
  derive(base, { id: note, record }) {
    if (record.kind !== 'textile' && record.kind !== 'text') return [];
    const region = record.region && base.regionId(record.region.text);
    const span = base.spanOf(record.when);
    if (region === undefined || !span) return [];
    const entry = (dyes: readonly Ref[], fibres: readonly Ref[], where?: string): NoteEntry<Dyeing> => ({
      key: keyOf(dyes.map(({ text }) => base.resolve(text, ['dyestuff']))),
      value: {
        note,
        kind: record.kind,
        ...(where === undefined ? {} : { where }),
        fibres: fibres.map(({ text }) => base.resolve(text, ['fibre'])),
        region,
        span,
      },
    });
    if (record.kind === 'text') return [entry(record.dyes, record.fibre)];
    return record.threads
      .filter(({ tested }) => tested === 'found')
      .map(({ where, fibre, dyes }) => entry(dyes, fibre ? [fibre] : [], where));
  },
});

function isKin(base: EvidenceBase, fibre: string, { fibreLine }: Asked): boolean {
  const askedFibre = fibreLine[0];
  return fibreLine.includes(fibre) || (askedFibre !== undefined && base.fibreLine(fibre).includes(askedFibre));
}
