import type { Lab2 } from './lab.ts';
import { asLab2 } from './lab.ts';
import { cssToLab2, labToScreen } from './screen.ts';

/** Undyed cloth, and cloth dyed as deep as it goes, in L*. Our choice, after the spread of hand-dyed wool. */
const PALEST = 90;
const DEEPEST = 20;
/** Yellow dyes stay light however deep they are: by so much L* at the deepest. Our choice. */
const YELLOW_LIFT = 42;
const YELLOW_HUE = 95;
/** C* at its fullest. Our choice: few natural dyes go beyond it. */
const FULLEST_CHROMA = 62;

/**
 * A colour chosen by eye: which hue, and how deeply dyed. It runs as dyed cloth runs, from undyed over full to dark.
 *
 * @param hue CIELAB hue angle in degrees: 0 pinkish red, 90 yellow, 180 green, 270 blue.
 * @param depth 0–1.
 * @returns D65/2°, inside the screen's gamut: what is chosen is what was seen.
 */
export function hueAndDepth(hue: number, depth: number): Lab2 {
  const d = Math.min(1, Math.max(0, depth));
  const radians = (hue * Math.PI) / 180;
  const yellow = Math.max(0, Math.cos(((hue - YELLOW_HUE) * Math.PI) / 180));
  const l = PALEST - (PALEST - DEEPEST - YELLOW_LIFT * yellow) * d;
  // Full a little past the middle, and half of that again at the deepest.
  const c = FULLEST_CHROMA * Math.sin(Math.min(1, d / 0.6) * (Math.PI / 2)) * (d <= 0.6 ? 1 : 1 - ((d - 0.6) / 0.4) * 0.5 * (1 - yellow));
  const wanted = asLab2([l, c * Math.cos(radians), c * Math.sin(radians)]);
  return cssToLab2(labToScreen(wanted).hex) ?? wanted;
}
