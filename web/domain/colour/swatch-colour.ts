import type { StatedColour } from '../note/note.ts';
import type { Result } from '../result.ts';
import { failed, ok } from '../result.ts';
import type { Conditions, Observer } from './conditions.ts';
import { readIlluminant, SCREEN, TEXTILE } from './conditions.ts';
import type { Lab, Lab10, Lab2 } from './lab.ts';
import { asLab10, asLab2 } from './lab.ts';
import { parseColourText } from './parse-colour.ts';
import { reconstructFromLab } from './reconstruct.ts';
import { labToScreen } from './screen.ts';
import type { Spectrum } from './spectrum.ts';
import { whitePoint } from './spectrum-to-xyz.ts';
import { labToWideScreen } from './wide-screen.ts';
import { spectrumToLab10, spectrumToLab2, xyzToLab } from './xyz-lab.ts';

/** Where a colour comes from: how far it may be trusted follows from it. */
export type ColourOrigin = 'spectrum' | 'lab' | 'photo-with-chart' | 'photo' | 'eye' | 'predicted';

/** A colour as screens show it. */
export interface OnScreen {
  /** `#rrggbb`, brought inside an ordinary screen's gamut. */
  readonly hex: string;
  /** False where `hex` is only the nearest colour the screen can show. */
  readonly inScreenGamut: boolean;
  /** Where it lies outside an ordinary screen's gamut: CSS `color()` for a wide one. */
  readonly wide?: string;
}

/** The one colour value that everything else uses; `hex` and `wide` are of `lab2`. */
export interface SwatchColour extends OnScreen {
  /** For cloth: compare and judge with this. */
  readonly lab10: Lab10;
  /** For the screen: sort and draw with this. */
  readonly lab2: Lab2;
  /** Measured, or the smoothest curve that gives the stated colour. */
  readonly spectrum: Spectrum;
  /** How the spectrum was got; `nearest` means no surface can have the stated colour. */
  readonly spectrumIs: 'measured' | 'reconstructed' | 'nearest' | 'predicted';
  readonly origin: ColourOrigin;
  /** What was stated, nothing filled in: an absent condition was not stated, and D65/10° was assumed. */
  readonly stated: StatedConditions;
}

/** The conditions and Lab a note or a reader gave, as given. */
export interface StatedConditions {
  readonly illuminant?: string;
  readonly observer?: Observer;
  /** The Lab given, or of the XYZ given, under its own conditions. */
  readonly lab?: Lab;
}

/** Why no colour could be made of a stated one. */
export type SwatchProblem = 'nothing-stated' | 'illuminant-unknown' | 'colour-unreadable' | 'colour-out-of-range';

/** A swatch of a curve, measured or predicted. */
export function swatchFromSpectrum(
  spectrum: Spectrum,
  origin: 'spectrum' | 'predicted' = 'spectrum',
  stated: StatedConditions = {},
): SwatchColour {
  const lab2 = spectrumToLab2(spectrum);
  const spectrumIs = origin === 'spectrum' ? 'measured' : 'predicted';
  return { lab10: spectrumToLab10(spectrum), lab2, ...onScreens(lab2), spectrum, spectrumIs, origin, stated };
}

/**
 * A swatch of Lab numbers under known conditions: the other observer's value goes through a reconstructed spectrum.
 * The value given stays as it is; only the others are computed.
 *
 * @error `colour-out-of-range` when L* leaves 0–100 or a number is none.
 */
export function swatchFromLab(
  lab: Lab,
  conditions: Conditions,
  origin: ColourOrigin,
  stated: StatedConditions = {},
): Result<SwatchColour, 'colour-out-of-range'> {
  if (!lab.every(Number.isFinite) || lab[0] < 0 || lab[0] > 100.5 || Math.abs(lab[1]) > 200 || Math.abs(lab[2]) > 200)
    return failed('colour-out-of-range');
  const { spectrum, exact } = reconstructFromLab(lab, conditions);
  const isD65 = conditions.illuminant === 'D65';
  const lab10 = isD65 && conditions.observer === 10 ? asLab10(lab) : spectrumToLab10(spectrum);
  const lab2 = isD65 && conditions.observer === 2 ? asLab2(lab) : spectrumToLab2(spectrum);
  return ok({ lab10, lab2, ...onScreens(lab2), spectrum, spectrumIs: exact ? 'reconstructed' : 'nearest', origin, stated });
}

/** Of a colour, what a screen needs. */
export const onScreen = ({ hex, inScreenGamut, wide }: OnScreen): OnScreen => ({
  hex,
  inScreenGamut,
  ...(wide === undefined ? {} : { wide }),
});

/** What an ordinary screen shows of it, and a wide one where that is more. */
function onScreens(lab2: Lab2): OnScreen {
  const { hex, inGamut } = labToScreen(lab2);
  return { hex, inScreenGamut: inGamut, ...(inGamut ? {} : { wide: labToWideScreen(lab2).css }) };
}

/**
 * A swatch of a colour as a note states it: Lab or XYZ under its own conditions (D65/10° where not stated), or hex (D65/2°).
 * Lab is preferred to XYZ, and both to hex.
 *
 * @error `nothing-stated`: neither Lab, XYZ nor hex. `illuminant-unknown`: no table for it. `colour-unreadable`: a hex that is none.
 */
export function swatchFromStated(colour: StatedColour): Result<SwatchColour, SwatchProblem> {
  const stated: StatedConditions = {
    ...(colour.illuminant === undefined ? {} : { illuminant: colour.illuminant }),
    ...(colour.observer === undefined ? {} : { observer: colour.observer }),
  };
  if (!colour.lab && !colour.xyz)
    return colour.hex === undefined ? failed('nothing-stated') : swatchFromHex(colour.hex, originOf(colour.by, 'eye'), stated);
  const illuminant = colour.illuminant === undefined ? TEXTILE.illuminant : readIlluminant(colour.illuminant);
  if (!illuminant) return failed('illuminant-unknown');
  const conditions = { illuminant, observer: colour.observer ?? TEXTILE.observer };
  const lab = colour.lab ?? (colour.xyz && xyzToLab(colour.xyz, whitePoint(conditions.illuminant, conditions.observer)));
  return lab ? swatchFromLab(lab, conditions, originOf(colour.by, 'lab'), { ...stated, lab }) : failed('nothing-stated');
}

/**
 * A swatch of what somebody typed: a CSS colour (D65/2°) or `L,a,b`.
 *
 * @param labConditions under which a typed Lab is taken; by default the cloth's.
 */
export function swatchFromCss(
  text: string,
  labConditions: Conditions = TEXTILE,
): Result<SwatchColour, 'colour-unreadable' | 'colour-out-of-range'> {
  const typed = parseColourText(text);
  if (!typed) return failed('colour-unreadable');
  if (typed.kind === 'lab') return swatchFromLab(typed.lab, labConditions, 'lab', { lab: typed.lab });
  return swatchFromLab(typed.lab2, SCREEN, 'eye');
}

function swatchFromHex(hex: string, origin: ColourOrigin, stated: StatedConditions): Result<SwatchColour, SwatchProblem> {
  const typed = parseColourText(hex);
  return typed?.kind === 'screen' ? swatchFromLab(typed.lab2, SCREEN, origin, stated) : failed('colour-unreadable');
}

/** `by` in the words of a note. Other words leave the default: numbers were measured, a hex was picked by eye (our choice). */
function originOf(by: string | undefined, otherwise: ColourOrigin): ColourOrigin {
  if (by === 'photo-with-chart' || by === 'photo' || by === 'eye' || by === 'predicted') return by;
  // A Lab computed from a measured spectrum is a measured Lab: the spectrum itself is not here.
  return by === 'spectrum' || by === 'instrument' ? 'lab' : otherwise;
}
