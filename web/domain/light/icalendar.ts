import { addDays, type IsoDay } from './iso-day.ts';

/** A day to be reminded of. */
export interface Reminder {
  /** Unique and lasting: the same reminder keeps it when it is written again. */
  readonly uid: string;
  readonly day: IsoDay;
  readonly summary: string;
  readonly description?: string;
}

/** `2026-05-01T12:30:00Z` or with parts of a second: when the file was written. */
export type UtcStamp = string;

/**
 * Reminders as an iCalendar file: one event of a whole day each, with an alarm on its morning.
 *
 * @param now UTC, ISO 8601; becomes DTSTAMP.
 * @returns text with CRLF line ends, no line longer than 75 octets.
 * @source RFC 5545, sections 3.1, 3.3.4, 3.3.11, 3.6.1, 3.6.6.
 */
export function icalendar(reminders: readonly Reminder[], now: UtcStamp, name: string): string {
  const stamp = `${now.slice(0, 19).replace(/[-:]/g, '')}Z`;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Tenterground//Light plan//EN',
    'CALSCALE:GREGORIAN',
    `X-WR-CALNAME:${escapeText(name)}`,
    ...reminders.flatMap((one) => eventLines(one, stamp)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${foldLine(line)}\r\n`).join('');
}

function eventLines({ uid, day, summary, description }: Reminder, stamp: string): readonly string[] {
  const next = addDays(day, 1);
  return [
    'BEGIN:VEVENT',
    `UID:${escapeText(uid)}`,
    `DTSTAMP:${stamp}`,
    `DTSTART;VALUE=DATE:${day.replaceAll('-', '')}`,
    ...(next ? [`DTEND;VALUE=DATE:${next.replaceAll('-', '')}`] : []),
    `SUMMARY:${escapeText(summary)}`,
    ...(description === undefined ? [] : [`DESCRIPTION:${escapeText(description)}`]),
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    'TRIGGER:PT9H',
    `DESCRIPTION:${escapeText(summary)}`,
    'END:VALARM',
    'END:VEVENT',
  ];
}

/** Text as a value: backslash, semicolon, comma and line break escaped, other control characters left out. @source RFC 5545, 3.3.11. */
export const escapeText = (text: string): string =>
  text
    .replace(/[\\;,]/g, (one) => `\\${one}`)
    .replace(/\r\n|\r|\n/g, '\\n')
    // eslint-disable-next-line no-control-regex -- control characters may not stand in a value
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '');

/**
 * A content line folded so that no line is longer than 75 octets of UTF-8, breaks and leading blanks not counted twice;
 * a character is never cut in two.
 *
 * @source RFC 5545, 3.1.
 */
export function foldLine(line: string): string {
  const parts: string[] = [];
  let part = '';
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character.codePointAt(0) ?? 0);
    if (octets + size > 75) {
      parts.push(part);
      part = ' ';
      octets = 1;
    }
    part += character;
    octets += size;
  }
  return [...parts, part].join('\r\n');
}

const octetsOf = (point: number): number => (point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4);
