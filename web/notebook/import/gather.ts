import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { Gathered } from './gathered.ts';
import type { Columns } from './match-columns.ts';
import { readNotebookJsonLd } from './read-notebook-jsonld.ts';
import { readPeriods } from './read-periods.ts';
import { readPlaces } from './read-places.ts';
import { readTextiles } from './read-textiles.ts';
import { readTrials } from './read-trials.ts';
import { TEXTILE_COLUMNS, TRIAL_COLUMNS } from './table-columns.ts';

/** What somebody else's file can be read as. */
export const GATHER_FORMS = ['periods', 'places', 'textiles', 'trials', 'notebook-jsonld'] as const;
export type GatherForm = (typeof GATHER_FORMS)[number];

/** The forms that are tables: the columns each can hold, and the headings a column goes by. */
export const GATHER_TABLES: Readonly<Partial<Record<GatherForm, Readonly<Record<string, readonly string[]>>>>> = {
  textiles: TEXTILE_COLUMNS,
  trials: TRIAL_COLUMNS,
};

/** A file read: what it would bring in, with the columns where it is a table. */
export interface GatheredFile extends Gathered {
  readonly headings?: readonly string[];
  readonly columns?: Columns<string>;
}

/**
 * Reads a file as one of the forms; nothing is written by it.
 *
 * @param columns of a table, matched by hand: the place of a heading, or -1 for none of them.
 */
export function gather(base: EvidenceBase, form: GatherForm, text: string, columns: Columns<string> = {}): GatheredFile {
  switch (form) {
    case 'periods':
      return plain(readPeriods(base, text));
    case 'places':
      return plain(readPlaces(base, text));
    case 'textiles':
      return readTextiles(base, text, columns);
    case 'trials':
      return readTrials(base, text, columns);
    case 'notebook-jsonld':
      return readNotebookJsonLd(base, text);
  }
}

/** Plain values only: they may have to cross to another thread. */
const plain = ({ rows, messages, notes }: Gathered): Gathered => ({ rows, messages, notes });
