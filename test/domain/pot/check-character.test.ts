import { describe, expect, test } from 'vitest';
import { checkCharacter, isChecked } from '../../../web/domain/pot/check-character.ts';
import { nextBath, printSkeinCode, readSkeinCode } from '../../../web/domain/pot/skein-code.ts';

const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const codes = Array.from({ length: 60 }, (_, n) => `26${String((n * 17) % 1000).padStart(3, '0')}${(n % 9) + 1}`);

describe('checkCharacter', () => {
  // ISBT 128 style number G123489654321 with check Y: the worked example of python-stdnum's iso7064.mod_37_2 module (consulted).
  test('agrees with the published example', () => expect(checkCharacter('G123489654321')).toBe('Y'));
  test('is undefined for what it does not cover', () => {
    expect(checkCharacter('')).toBeUndefined();
    expect(checkCharacter('26-014')).toBeUndefined();
  });
  test('catches every single wrong character', () => {
    for (const code of codes) {
      const whole = code + (checkCharacter(code) ?? '');
      expect(isChecked(whole)).toBe(true);
      for (let at = 0; at < whole.length; at++)
        for (const sign of `${SIGNS}${at === whole.length - 1 ? '*' : ''}`)
          if (sign !== whole[at]) expect(isChecked(whole.slice(0, at) + sign + whole.slice(at + 1))).toBe(false);
    }
  });
  test('catches every swap of neighbours', () => {
    for (const code of codes) {
      const whole = code + (checkCharacter(code) ?? '');
      for (let at = 0; at < whole.length - 1; at++) {
        const [one = '', other = ''] = [whole[at], whole[at + 1]];
        if (one !== other) expect(isChecked(whole.slice(0, at) + other + one + whole.slice(at + 2))).toBe(false);
      }
    }
  });
});

describe('skein codes', () => {
  test('print and read back', () => {
    for (let bath = 1; bath < 1000; bath += 37)
      for (const skein of [1, 9, 12]) {
        const printed = printSkeinCode({ year: 26, bath, skein }) ?? '';
        expect(readSkeinCode(printed)).toEqual({ year: 26, bath, skein });
        expect(readSkeinCode(` ${printed.toLowerCase().replaceAll('-', ' ')} `)).toEqual({ year: 26, bath, skein });
      }
  });
  test('mend O for 0 only where the check agrees, and refuse the rest', () => {
    const printed = printSkeinCode({ year: 26, bath: 100, skein: 3 }) ?? '';
    expect(readSkeinCode(printed.replace('100', '1OO'))).toEqual({ year: 26, bath: 100, skein: 3 });
    expect(readSkeinCode(printed.replace('100', '101'))).toBeUndefined();
    expect(printSkeinCode({ year: 26, bath: 0, skein: 1 })).toBeUndefined();
  });
  test('give the next free bath of the year', () => {
    const printed = [printSkeinCode({ year: 26, bath: 14, skein: 1 }), printSkeinCode({ year: 25, bath: 90, skein: 1 })].map(String);
    expect(nextBath(printed, 2026)).toBe(15);
    expect(nextBath([], 2026)).toBe(1);
  });
});
