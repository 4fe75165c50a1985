import type { EvidenceBase } from '../claim/evidence-base.ts';
import { perVersion } from '../claim/per-version.ts';
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
  const fits = (fibres: readonly Ref[]) =>
    asked.fibreLine.length === 0 || fibres.some(({ text }) => isKin(base, base.resolve(text, ['fibre']), asked));
  return (dyeings(base).get(keyOf(dyes)) ?? []).flatMap(({ note, kind, where, fibres, region, when }): readonly Witness[] => {
    const seenAt = seenFrom(base, region, when, asked);
    return seenAt && fits(fibres) ? [{ note, kind, ...(where === undefined ? {} : { where }), ...seenAt }] : [];
  });
}

/** A thread or text that names its dyes. */
interface Dyeing {
  readonly note: NoteId;
  readonly kind: 'textile' | 'text';
  readonly where?: string;
  readonly fibres: readonly Ref[];
  readonly region?: Ref;
  readonly when?: WrittenDate;
}

const keyOf = (dyes: readonly string[]): string => [...new Set(dyes)].sort().join('\n');

/** Every thread and text of the notebook by the set of its dyes, textiles first, by id. */
const dyeings = perVersion((base) => {
  const byDyes = new Map<string, Dyeing[]>();
  const add = (dyes: readonly Ref[], dyeing: Dyeing) => {
    const key = keyOf(dyes.map(({ text }) => base.resolve(text, ['dyestuff'])));
    const list = byDyes.get(key);
    if (list) list.push(dyeing);
    else byDyes.set(key, [dyeing]);
  };
  const seen = ({ region, when }: Pick<Dyeing, 'region' | 'when'>) => ({ ...(region && { region }), ...(when && { when }) });
  for (const { id, record } of base.ofKind('textile')) {
    for (const { where, fibre, dyes, tested } of record.threads) {
      if (tested !== 'found') continue;
      const at = where === undefined ? {} : { where };
      add(dyes, { note: id, kind: 'textile', ...at, fibres: fibre ? [fibre] : [], ...seen(record) });
    }
  }
  for (const { id, record } of base.ofKind('text')) add(record.dyes, { note: id, kind: 'text', fibres: record.fibre, ...seen(record) });
  return byDyes;
});

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
