import type { Observer } from './conditions.ts';
import type { Lab } from './lab.ts';
import type { Spectrum } from './spectrum.ts';

/** Findings about a spectral file. Codes are API. */
export type SpectralCode =
  // the file as a whole: no samples come of it
  | 'spectral-empty'
  | 'spectral-binary'
  | 'spectral-too-large'
  | 'spectral-not-a-table'
  // a table: none of its samples are taken
  | 'wavelengths-missing'
  | 'wavelengths-unordered'
  | 'wavelengths-uneven'
  | 'families-mixed'
  // a sample: it is left out
  | 'row-short'
  | 'row-long'
  | 'value-not-a-number'
  | 'value-below-zero'
  | 'value-fluorescent'
  | 'sample-twice'
  // worth knowing: the sample is taken
  | 'value-above-one'
  | 'scale-doubtful'
  | 'field-count-differs'
  | 'set-count-differs'
  | 'lab-disagrees';

/** A finding: never thrown. `line` is 1-based; `about` holds what the words need, in reading order. */
export interface SpectralFinding {
  readonly code: SpectralCode;
  readonly severity: 'error' | 'warning';
  readonly line: number;
  readonly about: readonly string[];
}

/** Takes findings as they are made. */
export type SpectralReport = (code: SpectralCode, severity: SpectralFinding['severity'], line: number, ...about: readonly string[]) => void;

/** Whether a file writes 0–1 or 0–100. */
export type ReflectanceScale = 'fraction' | 'percent';

/** One measured sample. */
export interface SpectralSample {
  readonly id: string;
  readonly name?: string;
  /** Reflectance 0–1, whatever the file's scale. */
  readonly spectrum: Spectrum;
  /** As the file states it, under the file's conditions. */
  readonly lab?: Lab;
}

/** How the samples were measured, as far as the file says; what it does not say is absent, never filled in. */
export interface MeasuredUnder {
  readonly illuminant?: string;
  readonly observer?: Observer;
  /** ISO 13655 condition: M0, M1, M2 or M3. */
  readonly condition?: string;
  readonly geometry?: string;
  readonly instrument?: string;
  readonly originator?: string;
  readonly description?: string;
  readonly created?: string;
}

/** A spectral file, read. */
export interface SpectralFile {
  readonly samples: readonly SpectralSample[];
  readonly under: MeasuredUnder;
  /** As found, or as the caller said. */
  readonly scale: ReflectanceScale;
  readonly findings: readonly SpectralFinding[];
}

/** How the caller overrules what the reader would find. */
export interface ReadSpectralOptions {
  readonly scale?: ReflectanceScale;
}

/** The sample with an id, else with a name; case counts only when it must. */
export function findSample(samples: readonly SpectralSample[], key: string): SpectralSample | undefined {
  const folded = key.trim().toLowerCase();
  return (
    samples.find(({ id }) => id === key) ??
    samples.find(({ name }) => name === key) ??
    samples.find(({ id, name }) => id.toLowerCase() === folded || name?.toLowerCase() === folded)
  );
}
