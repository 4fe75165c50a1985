import { converter, toGamut } from 'culori';
import type { Lab2 } from './lab.ts';

const toP3 = converter('p3');
const intoP3 = toGamut('p3', 'oklch');
const CHANNEL_SLACK = 0.5 / 255;

/** A colour as a wide screen (Display P3) can show it. */
export interface WideScreenColour {
  /** CSS `color(display-p3 r g b)`. */
  readonly css: string;
  /** False where even this is only the nearest colour a wide screen can show. */
  readonly inGamut: boolean;
}

/** The wide-screen colour of a D65, 2 degree value; for screens that are narrower, `labToScreen`. */
export function labToWideScreen([l, a, b]: Lab2): WideScreenColour {
  const colour = { mode: 'lab65' as const, l, a, b };
  const exact = toP3(colour);
  const inGamut = [exact.r, exact.g, exact.b].every((v) => v >= -CHANNEL_SLACK && v <= 1 + CHANNEL_SLACK);
  const shown = inGamut ? exact : toP3(intoP3(colour));
  const channel = (v: number): string => String(Math.round(Math.min(1, Math.max(0, v)) * 10000) / 10000);
  return { css: `color(display-p3 ${channel(shown.r)} ${channel(shown.g)} ${channel(shown.b)})`, inGamut };
}
