import { type Color, converter, formatHex, parse, toGamut } from 'culori';
import type { Lab, Lab2 } from './lab.ts';
import { asLab2 } from './lab.ts';

// `lab65` and not `lab`: the latter is CSS Lab on D50, and culori adapts it before every use.
const toRgb = converter('rgb');
const toLab65 = converter('lab65');
const intoScreen = toGamut('rgb', 'oklch');

/** Half a step of an 8-bit channel: what is nearer than this to the gamut's edge prints the same hex. */
const CHANNEL_SLACK = 0.5 / 255;

/** A colour as a screen can show it. */
export interface ScreenColour {
  /** `#rrggbb`. */
  readonly hex: string;
  /** False where the hex is the nearest colour inside the screen's gamut, not the colour itself. */
  readonly inGamut: boolean;
}

const carrier = ([l, a, b]: Lab) => ({ mode: 'lab65' as const, l, a, b });

/** The screen colour (sRGB) of a D65, 2 degree value; reduced in chroma where the screen cannot show it (CSS Color 4 mapping). */
export function labToScreen(lab: Lab2): ScreenColour {
  const rgb = toRgb(carrier(lab));
  const inGamut = [rgb.r, rgb.g, rgb.b].every((v) => v >= -CHANNEL_SLACK && v <= 1 + CHANNEL_SLACK);
  return { hex: formatHex(inGamut ? rgb : intoScreen(carrier(lab))), inGamut };
}

/** The library throws at some broken notations, such as `oklch(60% 0.1 3A0deg)`. */
function parsed(text: string): Color | undefined {
  try {
    return parse(text);
  } catch {
    return undefined;
  }
}

/**
 * D65, 2 degree Lab of a CSS colour (CSS Color 4: hex, names, rgb(), hsl(), hwb(), lab(), lch(), oklab(), oklch(), color()).
 *
 * @returns undefined when it is no colour, or not opaque: cloth is.
 */
export function cssToLab2(text: string): Lab2 | undefined {
  const colour = parsed(text.trim());
  if (!colour || (colour.alpha ?? 1) < 1) return undefined;
  const { l, a, b } = toLab65(colour);
  return [l, a, b].every(Number.isFinite) ? asLab2([l, a, b]) : undefined;
}
