import type { SpectralReport } from './spectral-file.ts';

/** The columns of a table that hold reflectances, in order, on even steps. */
export interface SpectralBands {
  readonly columns: readonly number[];
  readonly startNm: number;
  readonly stepNm: number;
}

/**
 * Field names that hold a band: SPECTRAL_NM380, SPECTRAL_NM_380, SPECTRAL_380, SPEC_380, NM380, nm380, 380_NM, 380nm, R_380nm, R380, 380.
 * Between the first and last three digits of a wavelength nothing else may stand.
 */
const BAND = /^(|SPECTRAL_?(?:NM|DEC|PCT)?_?|SPEC_?|NM_?|R_?)(\d{3,4}(?:\.\d+)?)(_?NM)?$/i;
/** Outside these a number is no wavelength of reflected light: ultraviolet to near infrared, in nm. */
const SHORTEST = 200;
const LONGEST = 2500;

interface Named {
  readonly column: number;
  readonly nm: number;
  readonly family: string;
}

/**
 * Finds the bands of a table.
 *
 * @returns undefined, with one finding, when there are none, or they are mixed, out of order or uneven.
 */
export function findBands(fields: readonly string[], line: number, report: SpectralReport): SpectralBands | undefined {
  const named = fields.flatMap((field, column): Named[] => {
    const found = BAND.exec(field.trim());
    const nm = Number(found?.[2]);
    if (!found || nm < SHORTEST || nm > LONGEST) return [];
    return [{ column, nm, family: `${found[1] ?? ''}*${found[3] ?? ''}`.toUpperCase() }];
  });
  if (named.length < 2) {
    report('wavelengths-missing', 'error', line);
    return undefined;
  }
  const families = [...new Set(named.map(({ family }) => family))];
  if (families.length > 1) {
    report('families-mixed', 'error', line, ...families);
    return undefined;
  }
  const step = evenStep(
    named.map(({ nm }) => nm),
    line,
    report,
  );
  return step === undefined ? undefined : { columns: named.map(({ column }) => column), startNm: named[0]?.nm ?? 0, stepNm: step };
}

/** The one step of a list of wavelengths; undefined with a finding when they do not rise by one step. */
export function evenStep(nms: readonly number[], line: number, report: SpectralReport): number | undefined {
  const step = (nms[1] ?? 0) - (nms[0] ?? 0);
  for (let i = 1; i < nms.length; i++) {
    const here = (nms[i] ?? 0) - (nms[i - 1] ?? 0);
    if (here <= 0 || Math.abs(here - step) > 0.01) {
      report(here <= 0 ? 'wavelengths-unordered' : 'wavelengths-uneven', 'error', line, String(nms[i - 1]), String(nms[i]));
      return undefined;
    }
  }
  return step;
}
