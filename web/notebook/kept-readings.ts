import { strFromU8, strToU8 } from 'fflate';
import type { Diagnostic } from '../domain/diagnostic.ts';
import type { Note } from '../domain/note/note.ts';
import type { Version } from '../domain/ports.ts';
import { crc32 } from './import/crc-32.ts';

/** What reading a note gave, without its text. */
export interface KeptReading {
  /** Of the bytes that were read. */
  readonly version: Version;
  readonly note: Omit<Note, 'source'>;
  readonly diagnostics: readonly Diagnostic[];
  readonly readOnly: boolean;
}

/** Readings lie in packets of about this many bytes, since a browser reads few large records faster than many small ones. */
const PACKET_BYTES = 1024 * 1024;
const SUM_BYTES = 4;

/** Packs readings up; one that would not come back just as it is stays out, and its note is read again. */
export function packReadings(readings: Iterable<KeptReading>): readonly Uint8Array[] {
  const packets: Uint8Array[] = [];
  let lines: string[] = [];
  let length = 0;
  const close = () => {
    if (lines.length > 0) packets.push(sealed(`[${lines.join(',')}]`));
    lines = [];
    length = 0;
  };
  for (const reading of readings) {
    const line = comesBack(reading) ? JSON.stringify(reading) : '';
    if (line === '') continue;
    lines.push(line);
    length += line.length;
    if (length >= PACKET_BYTES) close();
  }
  close();
  return packets;
}

/** The readings of a packet; none where it is not whole. */
export function unpackReadings(packet: Uint8Array): readonly KeptReading[] {
  const words = packet.subarray(SUM_BYTES);
  if (packet.length <= SUM_BYTES || sumIn(packet) !== crc32(words)) return [];
  try {
    const read: unknown = JSON.parse(strFromU8(words));
    return Array.isArray(read) ? (read as readonly KeptReading[]) : [];
  } catch {
    return [];
  }
}

function sealed(text: string): Uint8Array {
  const words = strToU8(text);
  const packet = new Uint8Array(SUM_BYTES + words.length);
  new DataView(packet.buffer).setUint32(0, crc32(words));
  packet.set(words, SUM_BYTES);
  return packet;
}

const sumIn = (packet: Uint8Array): number => new DataView(packet.buffer, packet.byteOffset).getUint32(0);

/** Whether JSON has a form for all of it: it has none for some numbers, and none for a gap in a list. */
function comesBack(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value) && !Object.is(value, -0);
  if (Array.isArray(value)) return value.every((item) => item !== undefined && comesBack(item));
  if (typeof value !== 'object' || value === null) return true;
  return Object.values(value).every(comesBack);
}
