import { SCREEN } from '../../domain/colour/conditions.ts';
import { hueAndDepth } from '../../domain/colour/hue-and-depth.ts';
import { labToScreen } from '../../domain/colour/screen.ts';
import { carryColour } from '../../notebook/typed-colour.ts';

/** Words for hue angles, each the middle of its share of the circle. */
const HUES: readonly (readonly [degrees: number, word: string])[] = [
  [10, 'crimson'],
  [35, 'red'],
  [60, 'orange'],
  [90, 'yellow'],
  [115, 'yellow-green'],
  [150, 'green'],
  [200, 'blue-green'],
  [265, 'blue'],
  [305, 'violet'],
  [340, 'purple'],
];
const DEPTHS = ['a first dip', 'pale', 'middling', 'full', 'deep', 'as deep as it goes'] as const;

/** A colour set by hue and depth. */
export interface EyeColour {
  readonly hex: string;
  readonly hueWord: string;
  readonly depthWord: string;
  readonly lab: string;
  readonly text: string;
}

/**
 * The colour of two sliders.
 *
 * @param hue degrees 0–359. @param depth per cent.
 */
export function eyeColour(hue: number, depth: number): EyeColour {
  const lab2 = hueAndDepth(hue, depth / 100);
  const away = (degrees: number): number => Math.min(Math.abs(degrees - hue), 360 - Math.abs(degrees - hue));
  const hueWord = [...HUES].sort(([a], [b]) => away(a) - away(b))[0]?.[1] ?? '';
  return {
    hex: labToScreen(lab2).hex,
    hueWord,
    depthWord: DEPTHS[Math.min(DEPTHS.length - 1, Math.floor((depth / 100) * DEPTHS.length))] ?? '',
    lab: `L* ${lab2[0].toFixed(0)}, a* ${lab2[1].toFixed(0)}, b* ${lab2[2].toFixed(0)} (D65, 2°)`,
    text: carryColour({ lab: lab2, ...SCREEN, by: 'eye' }),
  };
}
