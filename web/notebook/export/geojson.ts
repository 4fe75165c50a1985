import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { DateSpan } from '../../domain/date/date-span.ts';
import type { Ref } from '../../domain/note/note.ts';
import { WORLD } from '../../domain/place/region-tree.ts';
import { sourceText, titleOf } from '../words/claim-line.ts';
import { gYear, type Json } from './time-span-nodes.ts';

/** A GeoJSON point, longitude first; `null` where the notebook knows no position. */
function geometryOf(base: EvidenceBase, region: string | undefined): Json {
  const record = region === undefined ? undefined : base.note(region)?.record;
  return record?.kind === 'region' && record.point ? { type: 'Point', coordinates: [record.point[1], record.point[0]] } : null;
}

/** Four bounds as Linked Places has them. */
function whenOf(span: DateSpan | undefined): { readonly [key: string]: Json } {
  if (!span) return {};
  const side = (low: number | null, high: number | null, a: string, b: string): Json => ({
    ...(low === null ? {} : { [a]: gYear(low) }),
    ...(high === null ? {} : { [b]: gYear(high) }),
  });
  return {
    when: {
      timespans: [
        {
          start: side(span.earliestStart, span.latestStart, 'earliest', 'latest'),
          end: side(span.earliestEnd, span.latestEnd, 'earliest', 'latest'),
        },
      ],
    },
  };
}

const collection = (features: readonly Json[]): string => `${JSON.stringify({ type: 'FeatureCollection', features }, undefined, 1)}\n`;

/**
 * Textiles at the point of the region they were found in.
 *
 * @source RFC 7946; `when` as in the Linked Places format. The point is the region's, not the find's own spot, and says so.
 */
export function textilesGeoJson(base: EvidenceBase): string {
  return collection(
    base.ofKind('textile').map((note): Json => {
      const { record } = note;
      const region = record.region && base.regionId(record.region.text);
      const ids = (refs: readonly Ref[], kind: 'dyestuff' | 'fibre') => [...new Set(refs.map(({ text }) => base.resolve(text, [kind])))];
      return {
        type: 'Feature',
        id: note.id,
        geometry: geometryOf(base, region),
        properties: {
          title: note.title,
          region: region ?? record.region?.text ?? null,
          place: region === undefined ? null : titleOf(base, region),
          positionOf: 'region',
          date: record.when?.text ?? null,
          fibres: ids(
            record.threads.flatMap(({ fibre }) => fibre ?? []),
            'fibre',
          ),
          dyes: ids(
            record.threads.flatMap(({ dyes }) => dyes),
            'dyestuff',
          ),
          markers: [...new Set(record.threads.flatMap(({ markers }) => markers))],
          source: sourceText(note.sources),
          invented: note.invented,
        },
        ...whenOf(base.spanOf(record.when)),
      };
    }),
  );
}

/** Regions as Linked Places, with what `readPlaces` reads back: title, names, the regions they lie within, the point. */
export function placesGeoJson(base: EvidenceBase): string {
  return collection(
    base.ofKind('region').map((note): Json => {
      const within = base.regions.parentsOf(note.id).filter((one) => one !== WORLD);
      return {
        type: 'Feature',
        '@id': note.id,
        geometry: geometryOf(base, note.id),
        properties: { title: note.title },
        names: [
          { toponym: note.title },
          ...note.names.map(({ name, lang }) => ({ toponym: name, ...(lang === undefined ? {} : { lang }) })),
        ],
        relations: within.map((parent) => ({ relationType: 'gvp:broaderPartitive', relationTo: parent, label: titleOf(base, parent) })),
      };
    }),
  );
}
