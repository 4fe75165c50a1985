import { describe, expect, test } from 'vitest';
import { escapeText, foldLine, icalendar } from '../../../web/domain/light/icalendar.ts';
import type { IsoDay } from '../../../web/domain/light/iso-day.ts';
import { fc } from '../../helpers/property.ts';

const octets = (text: string) => new TextEncoder().encode(text).length;

describe('escapeText', () => {
  // RFC 5545, 3.3.11: the example of a text value over three lines.
  test('writes line breaks as the RFC does', () => {
    expect(escapeText('Project XYZ Final Review\nConference Room - 3B\nCome Prepared.')).toBe(
      'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
    );
  });

  test('escapes backslash, semicolon and comma, and leaves colons', () => {
    expect(escapeText('a\\b; c, d: e\r\nf')).toBe('a\\\\b\\; c\\, d: e\\nf');
  });

  test('no control character passes', () => {
    expect(escapeText('a\u0007b\u007fc\td')).toBe('abc\td');
  });
});

describe('foldLine', () => {
  test('75 octets stay whole, 76 do not', () => {
    expect(foldLine('x'.repeat(75))).toBe('x'.repeat(75));
    expect(foldLine('x'.repeat(76))).toBe(`${'x'.repeat(75)}\r\n x`);
  });

  test('folded lines are short, whole characters, and unfold to what they were', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 300 }).filter((text) => !/[\r\n]/.test(text)),
        (line) => {
          const folded = foldLine(line);
          expect(folded.split('\r\n').every((part) => octets(part) <= 75)).toBe(true);
          // RFC 5545, 3.1: unfolding removes CRLF and the one blank behind it.
          expect(folded.replaceAll('\r\n ', '')).toBe(line);
        },
      ),
    );
  });
});

describe('icalendar', () => {
  const file = icalendar(
    [
      {
        uid: 'house-2-board/kermes@tenterground',
        day: '2026-12-31' as IsoDay,
        summary: 'Take down kermes, WQ24-001-2',
        description: 'Class high; 15 000 lx·h spent',
      },
    ],
    '2026-11-25T10:00:00.000Z',
    'Light plan',
  );

  test('is one calendar with one event of a whole day, its end not in it', () => {
    expect(file.split('\r\n')).toEqual([
      'BEGIN:VCALENDAR',
      'VERSION:2.0',
      'PRODID:-//Tenterground//Light plan//EN',
      'CALSCALE:GREGORIAN',
      'X-WR-CALNAME:Light plan',
      'BEGIN:VEVENT',
      'UID:house-2-board/kermes@tenterground',
      'DTSTAMP:20261125T100000Z',
      'DTSTART;VALUE=DATE:20261231',
      'DTEND;VALUE=DATE:20270101',
      'SUMMARY:Take down kermes\\, WQ24-001-2',
      'DESCRIPTION:Class high\\; 15 000 lx·h spent',
      'TRANSP:TRANSPARENT',
      'BEGIN:VALARM',
      'ACTION:DISPLAY',
      'TRIGGER:PT9H',
      'DESCRIPTION:Take down kermes\\, WQ24-001-2',
      'END:VALARM',
      'END:VEVENT',
      'END:VCALENDAR',
      '',
    ]);
  });

  test('a line break in a title cannot add a property', () => {
    const sly = icalendar([{ uid: 'x', day: '2026-01-01' as IsoDay, summary: 'a\r\nATTENDEE:mailto:b' }], '2026-01-01T00:00:00Z', 'n');
    expect(sly.split('\r\n').some((line) => line.startsWith('ATTENDEE'))).toBe(false);
  });
});
