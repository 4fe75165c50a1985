import type { GreyScaleChange } from './grey-scale.ts';
import { greyScaleChange, JUST_NOTICEABLE } from './grey-scale.ts';
import type { KsCurve } from './kubelka-munk.ts';
import { dyeTerm, ksToSpectrum, spectrumToKs } from './kubelka-munk.ts';
import type { Spectrum } from './spectrum.ts';
import { WORKING_BANDS } from './spectrum.ts';
import { spectrumToLab10 } from './xyz-lab.ts';

/** What light has done to a dyed cloth. */
export interface LightLoss {
  /** Share of the dye left, 0 < left ≤ 1. */
  readonly left: number;
  /** K/S that yellowing has added to the fibre at 400 nm, ≥ 0; default 0. */
  readonly yellowing?: number;
}

/** K/S at 400 nm that a wholly faded cloth has gained. Our choice: measured fadings dull at both ends, and a range is shown. */
export const FULL_YELLOWING = 0.15;
/** Yellowing falls off by a factor e for so many nm. Our choice: gone by the orange, as on aged wool and linen. */
const YELLOWING_LENGTH_NM = 60;

/** K/S that yellowing adds, band by band, for 1 at 400 nm. */
const YELLOWING: KsCurve = Array.from({ length: WORKING_BANDS.count }, (_, i) => {
  const nm = WORKING_BANDS.startNm + i * WORKING_BANDS.stepNm;
  return Math.exp(-(nm - 400) / YELLOWING_LENGTH_NM);
});

/**
 * One dyed cloth after a loss: the dye's K/S shrinks, the fibre yellows.
 *
 * @returns predicted, on the working bands, inside 0–1.
 * @source first order: light destroys dye, and K/S is in proportion to dye. Real fading also shifts hue: show a range.
 */
export function fade(dyed: Spectrum, ground: Spectrum, loss: LightLoss): Spectrum {
  return fadeDyes(ground, [{ dyed, left: loss.left }], loss.yellowing);
}

/** An over-dyed cloth whose dyes fade each in its own measure; each `dyed` is that dye alone on the same ground. */
export function fadeDyes(ground: Spectrum, dyes: readonly { readonly dyed: Spectrum; readonly left: number }[], yellowing = 0): Spectrum {
  const terms = dyes.map(({ dyed, left }) => ({ term: dyeTerm(dyed, ground), left: share(left) }));
  const ks = spectrumToKs(ground).map(
    (under, i) => under + yellowing * (YELLOWING[i] ?? 0) + terms.reduce((sum, { term, left }) => sum + left * (term[i] ?? 0), 0),
  );
  return ksToSpectrum(ks);
}

/**
 * What a faded colour would have been, had this share of one dye been left: the inverse of `fade`.
 *
 * @returns one of many possible originals: never show it alone.
 */
export function unfade(found: Spectrum, ground: Spectrum, loss: LightLoss): Spectrum {
  const under = spectrumToKs(ground);
  const ks = spectrumToKs(found).map((value, i) => {
    const base = under[i] ?? 0;
    return base + Math.max(0, value - base - (loss.yellowing ?? 0) * (YELLOWING[i] ?? 0)) / share(loss.left);
  });
  return ksToSpectrum(ks);
}

/** Light doses in Mlx·h: to the first just noticeable fade, and the one asked about. */
export interface LightDose {
  readonly justNoticeable: number;
  readonly dose: number;
}

/** A swatch after light. */
export interface AfterLight {
  readonly spectrum: Spectrum;
  readonly left: number;
  readonly change: GreyScaleChange;
}

/**
 * A dyed cloth after a light dose. The dye decays exponentially, at the rate that makes its first just noticeable fade
 * (grey scale 4) come at the stated dose; yellowing grows with the share lost.
 *
 * @param light in one unit, such as Mlx·h.
 * @param fullYellowing K/S at 400 nm once all dye is gone.
 */
export function afterLight(dyed: Spectrum, ground: Spectrum, light: LightDose, fullYellowing = FULL_YELLOWING): AfterLight {
  const original = spectrumToLab10(fade(dyed, ground, { left: 1 }));
  const stateAt = (left: number): AfterLight => {
    const spectrum = fade(dyed, ground, { left, yellowing: fullYellowing * (1 - left) });
    return { spectrum, left, change: greyScaleChange(original, spectrumToLab10(spectrum)) };
  };
  if (!(light.dose > 0) || !(light.justNoticeable > 0)) return stateAt(1);
  // A dye so pale that even its whole loss is not noticeable fades as if half of it were the first step.
  let [kept, lost] = [1, 1e-3];
  let atFirstStep = 0.5;
  if (stateAt(lost).change.deltaEF > JUST_NOTICEABLE) {
    for (let i = 0; i < 40; i++) {
      atFirstStep = (kept + lost) / 2;
      if (stateAt(atFirstStep).change.deltaEF > JUST_NOTICEABLE) lost = atFirstStep;
      else kept = atFirstStep;
    }
  }
  return stateAt(Math.max(1e-6, atFirstStep ** (light.dose / light.justNoticeable)));
}

const share = (left: number): number => Math.min(1, Math.max(1e-6, left));
