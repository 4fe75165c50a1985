import { strToU8 } from 'fflate';
import { decodeNote } from '../domain/note/decode-note.ts';
import { failed, ok, type Result } from '../domain/result.ts';

/** What somebody remarked on a note. */
export interface Remark {
  /** Nobody else's; the same in every copy of the file. */
  readonly id: string;
  /** The id of the note it is about. */
  readonly note: string;
  /** The line of the note's file it is about, from 1; absent for the whole note. */
  readonly line?: number;
  readonly text: string;
  /** Who says so, in their own words. */
  readonly by: string;
  /** When it was made: ISO 8601 with its offset, or in UTC. */
  readonly at: string;
  /** True once somebody has dealt with it; it stays to be read. */
  readonly done?: boolean;
}

/** Where a notebook keeps its remarks, beside its notes. */
export const REMARKS_FILE = 'remarks.json';

const FORMAT = 'tenterground-remarks';
const VERSION = 1;

/** Remarks read from a file. */
export interface ReadRemarks {
  readonly remarks: readonly Remark[];
  /** Entries that are no remarks. */
  readonly unreadCount: number;
}

/**
 * Reads a file of remarks.
 *
 * @error `not-remarks` where it is another kind of file; `newer` where a later version of the format is asked for.
 */
export function readRemarks(bytes: Uint8Array): Result<ReadRemarks, 'not-remarks' | 'newer'> {
  const file = parsed(decodeNote(bytes).value.text.replace(/^\uFEFF/, ''));
  if (!isGroup(file) || file['format'] !== FORMAT || !Array.isArray(file['remarks'])) return failed('not-remarks');
  if (typeof file['version'] === 'number' && file['version'] > VERSION) return failed('newer');
  const remarks = file['remarks'].flatMap((entry: unknown) => remarkOf(entry) ?? []);
  return ok({ remarks, unreadCount: file['remarks'].length - remarks.length });
}

/** The file of these remarks: the same remarks give the same bytes, and each has lines of its own, so that version control can merge them. */
export function remarksFile(remarks: readonly Remark[]): Uint8Array {
  const inOrder = remarks.toSorted((a, b) => compare(a.at, b.at) || compare(a.id, b.id));
  return strToU8(`${JSON.stringify({ format: FORMAT, version: VERSION, remarks: inOrder.map(plain) }, undefined, 2)}\n`);
}

/**
 * Two collections of remarks as one, by id.
 *
 * A remark that is done in either is done. Should two different remarks have one id, both stay: the other's under an id of its own,
 * which is the same however often it is merged in.
 */
export function mergeRemarks(mine: readonly Remark[], theirs: readonly Remark[]): readonly Remark[] {
  const merged = new Map(mine.map((remark) => [remark.id, remark]));
  for (const remark of theirs) {
    let id = remark.id;
    for (let number = 2; merged.has(id) && !saysTheSame(merged.get(id), remark); number++) id = `${remark.id}.${number}`;
    const isDone = merged.get(id)?.done === true || remark.done === true;
    merged.set(id, { ...remark, id, ...(isDone && { done: true }) });
  }
  return [...merged.values()].toSorted((a, b) => compare(a.at, b.at) || compare(a.id, b.id));
}

const saysTheSame = (a: Remark | undefined, b: Remark): boolean =>
  a?.note === b.note && a.line === b.line && a.text === b.text && a.by === b.by && a.at === b.at;

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Only its own keys, in one order. */
const plain = ({ id, note, line, text, by, at, done }: Remark): Remark => ({
  id,
  note,
  ...(line !== undefined && { line }),
  text,
  by,
  at,
  ...(done === true && { done }),
});

function remarkOf(entry: unknown): Remark | undefined {
  if (!isGroup(entry)) return undefined;
  const { id, note, line, text, by, at, done } = entry;
  if (typeof id !== 'string' || typeof note !== 'string' || typeof text !== 'string' || typeof by !== 'string') return undefined;
  if (typeof at !== 'string' || Number.isNaN(Date.parse(at)) || id === '' || note === '' || text.trim() === '') return undefined;
  const isLine = typeof line === 'number' && Number.isInteger(line) && line > 0;
  return plain({ id, note, text, by, at, ...(isLine && { line }), ...(done === true && { done }) });
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
