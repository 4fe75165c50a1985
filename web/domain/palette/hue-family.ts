import { type Lab, labToLch } from '../colour/lab.ts';

/** Families of colour in the order they hang on a line. */
export const HUE_FAMILIES = [
  'white and grey',
  'yellow',
  'orange and tan',
  'red',
  'crimson and pink',
  'violet',
  'blue',
  'green',
  'brown',
  'black',
] as const;
export type HueFamily = (typeof HUE_FAMILIES)[number];

/**
 * The family a cloth's colour belongs to, from its Lab under D65/10°.
 *
 * @source our choice: limits set by eye over the demonstration's cloths; they sort and name gaps, and decide no verdict.
 */
export function hueFamily(lab: Lab): HueFamily {
  const { l, c, h = 0 } = labToLch(lab);
  if (l < 28 && c < 10) return 'black';
  if (c < 9 || (l > 78 && c < 22 && h > 60 && h < 110)) return 'white and grey';
  if (h >= 40 && h < 85 && (l < 45 || c < 32) && l < 62) return 'brown';
  if (h >= 85 && h < 112) return l < 42 ? 'brown' : 'yellow';
  if (h >= 112 && h < 205) return 'green';
  if (h >= 205 && h < 292) return 'blue';
  if (h >= 292 && h < 345) return 'violet';
  if (h >= 345 || h < 18) return 'crimson and pink';
  return h < 42 ? 'red' : 'orange and tan';
}
