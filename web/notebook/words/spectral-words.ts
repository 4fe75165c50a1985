import type { MeasuredUnder, SpectralCode, SpectralFinding } from '../../domain/colour/spectral-file.ts';

const SPECTRAL_WORDS = {
  'spectral-empty': () => 'The file is empty.',
  'spectral-binary': () => 'This is no text file. Export the measurements as CGATS text or CSV.',
  'spectral-too-large': () => 'The file is larger than any set of skeins. Split it.',
  'spectral-not-a-table': () => 'No table of measurements was found. A first row must name the wavelengths, each further row is a sample.',
  'wavelengths-missing': () => 'No wavelengths were found among the columns: name them 380, 390 … or SPECTRAL_NM380 …',
  'wavelengths-unordered': (from, to) => `The wavelengths do not rise: ${to} nm follows ${from} nm.`,
  'wavelengths-uneven': (from, to) => `The wavelengths do not rise by one step: see ${from} and ${to} nm.`,
  'families-mixed': (one, other) => `The columns name wavelengths in two ways (${one} and ${other}): keep one.`,
  'row-short': (id, width, count) => `Sample ${id} has ${count} values where ${width} are named: it is left out.`,
  'row-long': (id, width, count) => `Sample ${id} has ${count} values where ${width} are named: it is left out.`,
  'value-not-a-number': (id, cell) => `Sample ${id} has “${cell}” where a number belongs: it is left out.`,
  'value-below-zero': (id, nm, value) => `Sample ${id} is below zero at ${nm} nm (${value}): calibrate again. It is left out.`,
  'value-fluorescent': (id, nm, value) =>
    `Sample ${id} gives back more light than it gets at ${nm} nm (${value}): it fluoresces, and reflectance says nothing. It is left out.`,
  'sample-twice': (id) => `Sample ${id} stands there twice: the first is taken.`,
  'value-above-one': (id, nm, value) => `Sample ${id} is above the white standard at ${nm} nm (${value}): taken as white there.`,
  'scale-doubtful': (largest) => `Taken as per cent, though the largest value is only ${largest}.`,
  'field-count-differs': (stated, found) => `The file announces ${stated} fields and has ${found}.`,
  'set-count-differs': (stated, found) => `The file announces ${stated} samples and has ${found}.`,
  'lab-disagrees': (id, difference) => `The Lab beside sample ${id} lies ΔE00 ${difference} from its own spectrum: the spectrum is taken.`,
} satisfies Record<SpectralCode, (...about: readonly string[]) => string>;

/** A finding about a spectral file in a sentence, with its line. */
export function spectralWords({ code, line, about }: SpectralFinding): string {
  const say: (...about: readonly string[]) => string = SPECTRAL_WORDS[code];
  return `Line ${line}: ${say(...about)}`;
}

/** Under what the samples were measured; what the file does not say is not stated. */
export function measuredUnderWords({ illuminant, observer, condition, geometry }: MeasuredUnder): string {
  const or = (text: string | undefined): string => text ?? 'not stated';
  return `Geometry ${or(geometry)}; illuminant ${or(illuminant)}; observer ${observer === undefined ? 'not stated' : `${observer}°`}; measurement condition ${or(condition)}.`;
}
