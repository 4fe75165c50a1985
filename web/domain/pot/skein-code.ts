import { checkCharacter, isChecked } from './check-character.ts';

/** A skein's code: year, bath and skein, and a check character. Written `26-014-3-L`. */
export interface SkeinCode {
  /** Two digits. */
  readonly year: number;
  /** Bath of the year, from 1. */
  readonly bath: number;
  /** Skein of the bath, from 1. */
  readonly skein: number;
}

const plain = ({ year, bath, skein }: SkeinCode): string =>
  `${String(year % 100).padStart(2, '0')}${String(bath).padStart(3, '0')}${skein}`;

/** The code as it stands on a tag; undefined when a number is out of range (year 0–99, bath 1–999, skein 1–99). */
export function printSkeinCode(code: SkeinCode): string | undefined {
  const { year, bath, skein } = code;
  const whole = [year, bath, skein].every(Number.isInteger);
  if (!whole || year < 0 || bath < 1 || bath > 999 || skein < 1 || skein > 99) return undefined;
  const check = checkCharacter(plain(code));
  return check === undefined ? undefined : `${String(year % 100).padStart(2, '0')}-${String(bath).padStart(3, '0')}-${skein}-${check}`;
}

/**
 * Reads a code as typed or scanned: case, spaces and hyphens do not matter; O for 0 and I for 1 are mended where the check
 * character then agrees.
 *
 * @returns undefined when it is no code, or its check character says that something is wrong.
 */
export function readSkeinCode(typed: string): SkeinCode | undefined {
  const bare = typed.toUpperCase().replace(/[\s-]/g, '');
  return codeOf(bare) ?? codeOf(bare.slice(0, -1).replaceAll('O', '0').replaceAll('I', '1') + bare.slice(-1));
}

function codeOf(bare: string): SkeinCode | undefined {
  const found = /^(\d{2})(\d{3})(\d{1,2})[0-9A-Z*]$/.exec(bare);
  if (!found || !isChecked(bare)) return undefined;
  return { year: Number(found[1]), bath: Number(found[2]), skein: Number(found[3]) };
}

/** The next bath of a year that no code of the notebook has. */
export const nextBath = (codes: readonly string[], year: number): number =>
  1 +
  Math.max(
    0,
    ...codes
      .map(readSkeinCode)
      .filter((code) => code !== undefined && code.year === year % 100)
      .map((code) => code?.bath ?? 0),
  );
