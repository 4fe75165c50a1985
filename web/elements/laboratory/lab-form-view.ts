import { type CompoundFamily, COMPOUND_FAMILIES } from '../../domain/laboratory/compound.ts';
import { findCompound } from '../../domain/laboratory/find-compound.ts';
import type { Finding, Found } from '../../domain/laboratory/findings.ts';
import { COMPOUNDS } from '../../domain/laboratory/tables/compounds.ts';
import { MARKER_RATIOS } from '../../domain/laboratory/tables/marker-ratios.ts';
import type { LabMethod } from '../../domain/laboratory/tables/methods.ts';
import type { TypedLab } from '../../notebook/typed-lab.ts';

const FAMILY_WORDS: Readonly<Record<CompoundFamily, string>> = {
  anthraquinone: 'Reds of the madder family and kin',
  'insect-red': 'Insect reds',
  flavonoid: 'Yellows: flavonoids',
  isoflavone: 'Yellows: isoflavones',
  indigoid: 'Blues: indigoids',
  bromoindigoid: 'Shellfish purple',
  'indigo-sulfonate': 'Saxon blue',
  redwood: 'Redwoods',
  logwood: 'Logwood',
  'lichen-purple': 'Lichen purples',
  'lichen-acid': 'Lichen browns',
  tannin: 'Tannins',
  naphthoquinone: 'Naphthoquinones: walnut, henna, alkanet',
  carotenoid: 'Carotenoids: saffron, annatto',
  curcuminoid: 'Turmeric',
  alkaloid: 'Berberine and kin',
  safflower: 'Safflower',
  aurone: 'Young fustic',
  synthetic: 'Synthetic and other',
  element: 'Elements (mordants)',
};

/** The compounds of the tables, by family, with what is said of each so far. */
export const familiesToChoose = (): readonly { readonly title: string; readonly compounds: readonly string[] }[] =>
  COMPOUND_FAMILIES.map((family) => ({
    title: FAMILY_WORDS[family],
    compounds: COMPOUNDS.filter((one) => one.family === family).map(({ name }) => name),
  }));

/** Every name a compound can be typed by, CAS numbers among them. */
export const compoundNames = (): readonly string[] => COMPOUNDS.flatMap(({ name, names, cas }) => [name, ...names, ...(cas ? [cas] : [])]);

/** The ratios that can be reported. */
export const ratioNames = (): readonly string[] => MARKER_RATIOS.map(({ name }) => name);

/** A report with a line more; a compound that is there already is said anew. Words no table knows are kept as typed. */
export function withFinding(report: TypedLab, typed: string, found: Found): TypedLab {
  const name = findCompound(typed)?.name ?? typed.trim();
  if (name === '') return report;
  const line: Finding = { compound: name, found };
  const isThere = report.findings.some(({ compound }) => compound === name);
  return {
    ...report,
    findings: isThere ? report.findings.map((one) => (one.compound === name ? { ...one, found } : one)) : [...report.findings, line],
  };
}

/** A report without the line of a compound. */
export const withoutFinding = (report: TypedLab, compound: string): TypedLab => ({
  ...report,
  findings: report.findings.filter((one) => one.compound !== compound),
});

/** A report with a ratio; a value that is no number takes it out. */
export function withRatio(report: TypedLab, ratio: string, value: string, tolerance: string): TypedLab {
  const [v, t] = [value, tolerance].map((text) => Number(text.trim().replace(',', '.')));
  const others = report.ratios.filter((one) => one.ratio !== ratio);
  if (value.trim() === '' || v === undefined || !Number.isFinite(v) || v < 0) return { ...report, ratios: others };
  return { ...report, ratios: [...others, { ratio, value: v, ...(t !== undefined && t > 0 ? { tolerance: t } : {}) }] };
}

/** A report with a figure of the reader's own; what is no chance puts the tables' figure back. */
export function withFigure(
  report: TypedLab,
  { compound, method }: { readonly compound: string; readonly method: LabMethod },
  which: 'reach' | 'gone',
  typed: string,
): TypedLab {
  const chance = typed.trim() === '' ? NaN : Number(typed.trim().replace(',', '.'));
  const put = (held: Readonly<Record<string, number>> | undefined): Readonly<Record<string, number>> => {
    const { [compound]: _before, ...others } = held ?? {};
    return chance >= 0 && chance <= 1 ? { ...others, [compound]: chance } : others;
  };
  const { reach, gone } = report.figures ?? {};
  const figures = which === 'gone' ? { reach, gone: put(gone) } : { reach: { ...reach, [method]: put(reach?.[method]) }, gone };
  return { ...report, figures: { ...(figures.reach && { reach: figures.reach }), ...(figures.gone && { gone: figures.gone }) } };
}

/** A report to try it with: a green that might be weld or greenweed over woad; invented. */
export const EXAMPLE_LAB: TypedLab = {
  findings: [
    { compound: 'luteolin', found: 'present' },
    { compound: 'apigenin', found: 'trace' },
    { compound: 'indigotin', found: 'present' },
    { compound: 'alizarin', found: 'absent' },
  ],
  ratios: [],
  method: 'hplc-dad',
};
