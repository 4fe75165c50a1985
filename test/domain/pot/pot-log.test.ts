import { describe, expect, test } from 'vitest';
import {
  heldSince,
  lastWritten,
  logLine,
  minutesFrom,
  type Moment,
  readLogLine,
  timersIn,
  togetherLogged,
} from '../../../web/domain/pot/pot-log.ts';
import { fc } from '../../helpers/property.ts';

const DAY = '2026-11-28';
const at = (clock: string, day = DAY): Moment => ({ day, clock });
const moment = fc.date({ min: new Date('2026-01-01T00:00Z'), max: new Date('2027-12-31T00:00Z'), noInvalidDate: true }).map((date) => {
  const iso = date.toISOString();
  return { day: iso.slice(0, 10), clock: iso.slice(11, 16) };
});

describe('a line of the log', () => {
  test('at once: the time alone; on another day with its date; later: with when it was written', () => {
    expect(logLine('72 °C', at('11:40'), at('11:42'), DAY)).toBe('11:40 72 °C');
    expect(logLine('out', at('08:05', '2026-11-29'), at('08:05', '2026-11-29'), DAY)).toBe('2026-11-29 08:05 out');
    expect(logLine('in', at('11:05'), at('13:20'), DAY)).toBe('11:05 in (written down 13:20)');
    expect(logLine('in', at('23:50'), at('07:00', '2026-11-29'), DAY)).toBe('23:50 in (written down 2026-11-29 07:00)');
  });

  test('a clock that was set back since the entry before: the line says so, and is read again with it', () => {
    const before = at('11:40');
    expect(logLine('timer 60 min', at('10:20'), at('10:20'), DAY, before)).toBe('10:20 timer 60 min (clock set back from 11:40)');
    const late = logLine('out', at('08:00'), at('10:20'), DAY, at('11:40', '2026-11-29'));
    expect(late).toBe('08:00 out (clock set back from 2026-11-29 11:40) (written down 10:20)');
    expect(readLogLine(late, DAY)).toEqual({ at: at('08:00'), words: 'out', writtenAt: at('10:20'), clockWas: at('11:40', '2026-11-29') });
    const lines = ['11:40 in', '10:20 timer 60 min (clock set back from 11:40)'].map((line) => readLogLine(line, DAY));
    expect(timersIn(lines)).toEqual([{ at: at('10:20'), minutes: 60, what: '' }]);
    expect(lastWritten(lines)).toEqual(at('10:20'));
    // In the same minute and later, it went on.
    expect(logLine('out', before, before, DAY, before)).toBe('11:40 out');
  });

  test('what is written is read again, whatever the words', () => {
    fc.assert(
      fc.property(
        moment,
        fc.integer({ min: 0, max: 5000 }),
        fc.stringMatching(/^[^\s()][^\n\r()]*$/),
        moment,
        (then, later, words, { day }) => {
          const date = new Date(Date.parse(`${then.day}T${then.clock}Z`) + later * 60_000).toISOString();
          const now = { day: date.slice(0, 10), clock: date.slice(11, 16) };
          const read = readLogLine(logLine(words, then, now, day), day);
          expect(read.at).toEqual(then);
          expect(read.words).toBe(words.replace(/\s+/g, ' ').trim());
          expect(read.writtenAt).toEqual(minutesFrom(then, now) >= 5 ? now : undefined);
        },
      ),
    );
  });

  test('a line of any other kind stays as it is', () => {
    expect(readLogLine('dip 1: 5 min', DAY)).toEqual({ words: 'dip 1: 5 min' });
    expect(readLogLine('10:10 wetted wool in', undefined)).toEqual({ words: '10:10 wetted wool in' });
  });

  test('timers and the hold are read from the log itself', () => {
    const lines = ['09:00 60 °C', '10:00 in', '10:20 52 °C', '11:00 timer 60 min: hold', '11:05 69 °C', '11:30 71 °C'].map((line) =>
      readLogLine(line, DAY),
    );
    expect(timersIn(lines)).toEqual([{ at: at('11:00'), minutes: 60, what: 'hold' }]);
    // 69 °C is within three degrees of the 71 °C it came to; what was hot before the fibre went in does not count.
    expect(heldSince(lines)).toEqual(at('11:05'));
  });
});

describe('two logs as one', () => {
  test('by time, each line once', () => {
    expect(togetherLogged(['10:00 in', '11:00 70 °C', '12:00 out'], ['10:00 in', '10:30 pH 6', '12:00 out'], DAY)).toEqual([
      '10:00 in',
      '10:30 pH 6',
      '11:00 70 °C',
      '12:00 out',
    ]);
  });

  test('no line of either is lost or doubled, and merging again changes nothing', () => {
    const line = fc
      .tuple(fc.constantFrom('09:00', '09:30', '10:00', ''), fc.constantFrom('in', 'out', '70 °C', 'pH 5'))
      .map((parts) => parts.join(' ').trim());
    const log = fc.array(line, { maxLength: 8 });
    const count = (lines: readonly string[], one: string) => lines.filter((other) => other === one).length;
    fc.assert(
      fc.property(log, log, (mine, theirs) => {
        const both = togetherLogged(mine, theirs, DAY);
        for (const one of new Set([...mine, ...theirs])) expect(count(both, one)).toBe(Math.max(count(mine, one), count(theirs, one)));
        expect(togetherLogged(both, theirs, DAY)).toEqual(both);
      }),
    );
  });
});
