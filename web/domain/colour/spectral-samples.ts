import { ciede2000 } from './ciede2000.ts';
import { readIlluminant } from './conditions.ts';
import type { Lab } from './lab.ts';
import type { MeasuredUnder, ReadSpectralOptions, ReflectanceScale, SpectralReport, SpectralSample } from './spectral-file.ts';
import { spectrumToLab } from './xyz-lab.ts';

/** A sample as it stands in the file: numbers on the file's scale. */
export interface RawSample {
  readonly id: string;
  readonly name?: string;
  readonly startNm: number;
  readonly stepNm: number;
  readonly values: readonly number[];
  readonly lab?: Lab;
  readonly line: number;
}

/** A file is in percent when its largest value is above this: no undyed cloth reflects 150 %, and no cloth at all only 1.5 %. */
const PERCENT_ABOVE = 1.5;
/** Up to here a percent file would be of very black cloth, and a file of fractions fluorescent: say so. */
const DOUBTFUL_UP_TO = 4;
/** Below this a value is not noise around zero but a wrong calibration. */
const LOWEST = -0.02;
/** Above this a sample fluoresces: it gives back more light than falls on it at a wavelength, and reflectance says nothing. */
const FLUORESCENT_ABOVE = 1.2;
/** ΔE00 beyond which a file's own Lab does not belong to its spectra. Our choice: above any difference of method. */
const LAB_SLACK = 1;

/**
 * Samples with reflectance 0–1 out of raw ones: the scale is settled for the file as a whole, impossible values are refused.
 */
export function settleSamples(
  raws: readonly RawSample[],
  under: MeasuredUnder,
  options: ReadSpectralOptions,
  report: SpectralReport,
): { readonly samples: readonly SpectralSample[]; readonly scale: ReflectanceScale } {
  const largest = raws.reduce((top, { values }) => values.reduce((most, value) => Math.max(most, value), top), 0);
  const scale = options.scale ?? (largest > PERCENT_ABOVE ? 'percent' : 'fraction');
  if (!options.scale && largest > PERCENT_ABOVE && largest <= DOUBTFUL_UP_TO)
    report('scale-doubtful', 'warning', raws[0]?.line ?? 1, String(largest));
  const seen = new Set<string>();
  const samples: SpectralSample[] = [];
  for (const raw of raws) {
    if (seen.has(raw.id)) {
      report('sample-twice', 'error', raw.line, raw.id);
      continue;
    }
    seen.add(raw.id);
    const sample = settle(raw, scale, report);
    if (!sample) continue;
    samples.push(sample);
    compareLab(sample, under, raw.line, report);
  }
  return { samples, scale };
}

function settle(raw: RawSample, scale: ReflectanceScale, report: SpectralReport): SpectralSample | undefined {
  const unit = scale === 'percent' ? 100 : 1;
  const values = raw.values.map((value) => value / unit);
  const low = values.findIndex((value) => value < LOWEST);
  const high = values.reduce((best, value, i) => (value > (values[best] ?? -Infinity) ? i : best), 0);
  const nm = (index: number): string => String(raw.startNm + index * raw.stepNm);
  if (low >= 0) {
    report('value-below-zero', 'error', raw.line, raw.id, nm(low), String(raw.values[low]));
    return undefined;
  }
  const top = values[high] ?? 0;
  if (top > FLUORESCENT_ABOVE) {
    report('value-fluorescent', 'error', raw.line, raw.id, nm(high), String(raw.values[high]));
    return undefined;
  }
  if (top > 1) report('value-above-one', 'warning', raw.line, raw.id, nm(high), String(raw.values[high]));
  const spectrum = { startNm: raw.startNm, stepNm: raw.stepNm, values: values.map((value) => Math.min(1, Math.max(0, value))) };
  return { id: raw.id, ...(raw.name ? { name: raw.name } : {}), spectrum, ...(raw.lab ? { lab: raw.lab } : {}) };
}

function compareLab({ id, spectrum, lab }: SpectralSample, under: MeasuredUnder, line: number, report: SpectralReport): void {
  const illuminant = under.illuminant === undefined ? undefined : readIlluminant(under.illuminant);
  if (!lab || !illuminant || under.observer === undefined) return;
  const computed = spectrumToLab(spectrum, illuminant, under.observer).lab;
  const difference = ciede2000([lab[0], lab[1], lab[2]], [computed[0], computed[1], computed[2]]);
  if (difference > LAB_SLACK) report('lab-disagrees', 'warning', line, id, difference.toFixed(1));
}

/** A number with decimal point or comma; undefined for anything else. */
export function readDecimal(text: string): number | undefined {
  const trimmed = text.trim().replace('−', '-');
  if (!/^[-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[-+]?\d+)?$/i.test(trimmed)) return undefined;
  return Number(trimmed.replace(',', '.'));
}
