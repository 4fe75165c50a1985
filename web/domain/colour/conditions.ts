/** The lights a colour can be computed for: CIE names. */
export const ILLUMINANTS = ['D65', 'A', 'D50', 'LED-B3', 'FL2', 'FL11'] as const;
export type Illuminant = (typeof ILLUMINANTS)[number];

/** CIE standard observer, by its field of view in degrees: 2 (1931) or 10 (1964). */
export type Observer = 2 | 10;

/** Under what a colour was seen. A Lab without conditions is a number without a unit. */
export interface Conditions {
  readonly illuminant: Illuminant;
  readonly observer: Observer;
}

/** Cloth is measured and compared under these. */
export const TEXTILE = { illuminant: 'D65', observer: 10 } as const satisfies Conditions;

/** Screens (sRGB) live under these. */
export const SCREEN = { illuminant: 'D65', observer: 2 } as const satisfies Conditions;

const ALIASES: Readonly<Record<string, Illuminant>> = { F2: 'FL2', F11: 'FL11', LEDB3: 'LED-B3' };

/**
 * The illuminant an instrument or a note names.
 *
 * @param text such as `D65`, `d 65`, `CIE A`, `F11`, `LED-B3`.
 * @returns undefined when there is no table for it here.
 */
export function readIlluminant(text: string): Illuminant | undefined {
  const name = text
    .toUpperCase()
    .replace(/^\s*CIE\b/, '')
    .replace(/[\s_]+/g, '');
  return ILLUMINANTS.find((illuminant) => illuminant === name) ?? ALIASES[name.replaceAll('-', '')];
}
