import type { EvidenceBase } from '../claim/evidence-base.ts';
import { coreOf, type YearSpan } from '../date/date-span.ts';
import type { Note } from '../note/note.ts';
import { type RegionId, WORLD } from '../place/region-tree.ts';

/** Where and when a note speaks of, as far as it says so. Both lists empty: it does not say. */
export interface NoteTimePlace {
  readonly regions: readonly RegionId[];
  readonly spans: readonly YearSpan[];
}

/**
 * The place and date of a note: those of its record; where it has none, those its tags name, a tagged period counting
 * with its region. A note that rests on texts (a recipe) or follows a recipe (a trial) has none of its own: its dyer lives today.
 */
export function noteTimePlace(base: EvidenceBase, note: Note): NoteTimePlace {
  const { record } = note;
  const region = 'region' in record && record.region ? base.regionId(record.region.text) : undefined;
  const when = 'when' in record ? base.spanOf(record.when) : undefined;
  const own = record.kind === 'region' ? [note.id] : region === undefined ? [] : [region];
  if (own.length > 0 || when) return { regions: own, spans: when ? [coreOf(when)] : [] };

  const regions = new Set<RegionId>();
  const spans: YearSpan[] = [];
  for (const tag of note.tags) {
    const tagged = base.regionId(tag);
    if (tagged !== undefined) {
      regions.add(tagged);
      continue;
    }
    const period = base.find(tag, ['period']);
    const found = period.is === 'one' ? base.note(period.id)?.record : undefined;
    if (found?.kind !== 'period') continue;
    if (found.when?.span) spans.push(coreOf(found.when.span));
    const where = found.region && base.regionId(found.region.text);
    if (where !== undefined) regions.add(where);
  }
  return { regions: [...regions], spans };
}

/** Every pair of place and span to ask for; an unknown place is the whole world, an unknown date is any. */
export function askedPairs({ regions, spans }: NoteTimePlace): readonly { readonly region: RegionId; readonly span: YearSpan }[] {
  const places = regions.length > 0 ? regions : [WORLD];
  const times = spans.length > 0 ? spans : [{ from: null, to: null }];
  return places.flatMap((region) => times.map((span) => ({ region, span })));
}
