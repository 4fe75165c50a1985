import type { DataForm } from '../export/data-out.ts';

/** What goes out, what is in it, and whether it can be read in again. */
export const dataWords = {
  'notebook-jsonld': {
    title: 'The whole notebook, JSON-LD',
    says: 'Every note and claim in the terms of CIDOC-CRM and SKOS, with each note’s own text. Read in again it is the same notebook, word for word; photos are not in it.',
  },
  'claims-csv': {
    title: 'The claims, CSV',
    says: 'A line for each claim: what, where, when with its four bounds, how it is known, from which source. For counting and charts; it is not read in again.',
  },
  'textiles-csv': {
    title: 'The textiles, CSV',
    says: 'A line for each thread. It can be read in again; measured colours and the notes’ own words are not in it.',
  },
  'textiles-geojson': {
    title: 'The textiles on a map, GeoJSON',
    says: 'Each textile at the point of the region it was found in. For map programs; it is not read in again as textiles.',
  },
  'places-geojson': {
    title: 'The places, GeoJSON (Linked Places)',
    says: 'Each region with its names, its point and what it lies within. It can be read in again.',
  },
} as const satisfies Record<DataForm, { readonly title: string; readonly says: string }>;
