import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { claimsCsv } from './claims-csv.ts';
import { placesGeoJson, textilesGeoJson } from './geojson.ts';
import { notebookJsonLd } from './notebook-jsonld.ts';
import { textilesCsv } from './textiles-csv.ts';

/** The forms in which a notebook's data can leave it, beside the notes themselves. */
export const DATA_FORMS = ['notebook-jsonld', 'claims-csv', 'textiles-csv', 'textiles-geojson', 'places-geojson'] as const;
export type DataForm = (typeof DATA_FORMS)[number];

/** A file to hand out. */
export interface DataFile {
  readonly name: string;
  readonly type: string;
  readonly text: string;
}

const MAKERS: Readonly<Record<DataForm, { readonly name: string; readonly type: string; readonly make: (base: EvidenceBase) => string }>> =
  {
    'notebook-jsonld': { name: 'notebook.jsonld', type: 'application/ld+json', make: notebookJsonLd },
    'claims-csv': { name: 'claims.csv', type: 'text/csv', make: claimsCsv },
    'textiles-csv': { name: 'textiles.csv', type: 'text/csv', make: textilesCsv },
    'textiles-geojson': { name: 'textiles.geojson', type: 'application/geo+json', make: textilesGeoJson },
    'places-geojson': { name: 'places.geojson', type: 'application/geo+json', make: placesGeoJson },
  };

/** The notebook's data in one of its forms. */
export function dataOut(base: EvidenceBase, form: DataForm): DataFile {
  const { name, type, make } = MAKERS[form];
  return { name, type, text: make(base) };
}
