import { NOTE_KINDS, type NoteKind } from '../../domain/note/note.ts';
import { SEARCH_FIELDS } from '../search-options.ts';

/** Fields by number, in the order of `SEARCH_FIELDS`. */
export const FIELD_COUNT = SEARCH_FIELDS.length;
/** The field most words stand in. */
export const BODY_FIELD = SEARCH_FIELDS.indexOf('body');

/** A kind of note as one byte; 255 is none of them, a plain note. */
export const kindNumber = (kind: NoteKind): number => NOTE_KINDS.findIndex((one) => one === kind) & 0xff;
/** The kind of such a byte. */
export const kindOfNumber = (number = 0xff): NoteKind => NOTE_KINDS[number] ?? 'plain';
