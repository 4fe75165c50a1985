import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { decodeNote } from '../../domain/note/decode-note.ts';
import { gather, type GatheredFile, type GatherForm } from './gather.ts';
import { type GatherCode, MOST_CHARACTERS, nothingGathered } from './gathered.ts';
import type { Columns } from './match-columns.ts';
import { recogniseForms } from './recognise-forms.ts';

/** A file somebody chose, as it came. */
export interface GatherUpload {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What a reader says of it: as what to read it, and which column of a table holds what. */
export interface GatherChoice {
  readonly form?: GatherForm;
  readonly columns?: Columns<string>;
}

/** A file read, and as what; without a form it was read as nothing. */
export interface GatheredUpload extends GatheredFile {
  readonly form?: GatherForm;
}

/** Reads a chosen file as what it is, or as what its reader says it is; nothing is written by it. */
export function gatherUpload(base: EvidenceBase, { name, bytes }: GatherUpload, choice: GatherChoice = {}): GatheredUpload {
  const refused = refusalOf(name, bytes);
  if (refused) return nothingGathered(refused);
  const decoded = textOf(bytes);
  if (decoded.text === undefined) return nothingGathered('not-utf8', decoded.at);
  const { text } = decoded;
  const form = choice.form ?? recogniseForms(text)[0];
  if (!form) return nothingGathered(text.trim() === '' ? 'nothing-inside' : brokenOr(text));
  return { form, ...gather(base, form, text, choice.columns) };
}

function refusalOf(name: string, bytes: Uint8Array): GatherCode | undefined {
  if (bytes.length > 4 * MOST_CHARACTERS) return 'too-large';
  // "PK" begins every zip, spreadsheets among them.
  if (bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] ?? 0) < 9)
    return /\.(xlsx|ods|xlsm)$/i.test(name) ? 'is-a-spreadsheet' : 'is-a-zip';
  return /\.(md|markdown)$/i.test(name) ? 'is-a-note' : undefined;
}

/** Text by its byte order mark, else strictly UTF-8: a spreadsheet's "Unicode text" is UTF-16. */
function textOf(bytes: Uint8Array): { readonly text?: string; readonly at: string } {
  const mark = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : undefined;
  if (mark) return { text: new TextDecoder(mark).decode(bytes), at: '' };
  const { value, diagnostics } = decodeNote(bytes);
  const [fault] = diagnostics;
  return fault ? { at: `${Number(fault.about?.[0] ?? 0) + 1}` } : { text: value.text, at: '' };
}

/** A file that begins like JSON and is none says so; anything else was not recognised. */
function brokenOr(text: string): GatherCode {
  if (!/^\uFEFF?\s*[{[]/.test(text)) return 'not-recognised';
  try {
    JSON.parse(text.replace(/^\uFEFF/, ''));
    return 'not-recognised';
  } catch {
    return 'not-json';
  }
}
