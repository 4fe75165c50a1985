import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { Gathered } from './gathered.ts';
import type { Columns } from './match-columns.ts';
import { readNotebookJsonLd } from './read-notebook-jsonld.ts';
import { readPeriods } from './read-periods.ts';
import { readPlaces } from './read-places.ts';
import { type GatheredTextiles, readTextiles, type TextileColumn } from './read-textiles.ts';

/** What somebody else's file can be read as. */
export const GATHER_FORMS = ['periods', 'places', 'textiles', 'notebook-jsonld'] as const;
export type GatherForm = (typeof GATHER_FORMS)[number];

/** A file read: what it would bring in, with the columns where it is a table. */
export type GatheredFile = Gathered & Partial<Pick<GatheredTextiles, 'headings' | 'columns'>>;

/** Reads a file as one of the forms; nothing is written by it. */
export function gather(base: EvidenceBase, form: GatherForm, text: string, columns: Columns<TextileColumn> = {}): GatheredFile {
  switch (form) {
    case 'periods':
      return plain(readPeriods(base, text));
    case 'places':
      return plain(readPlaces(base, text));
    case 'textiles':
      return readTextiles(base, text, columns);
    case 'notebook-jsonld':
      return readNotebookJsonLd(base, text);
  }
}

/** Plain values only: they may have to cross to another thread. */
const plain = ({ rows, messages, notes }: Gathered): Gathered => ({ rows, messages, notes });
