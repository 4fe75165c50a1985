import { readFileSync } from 'node:fs';
import type { EvidenceBase } from '../../web/domain/claim/evidence-base.ts';
import { coreOf } from '../../web/domain/date/date-span.ts';
import { askLaboratory, type LabReply } from '../../web/domain/laboratory/ask-laboratory.ts';
import type { Found, LabReport, RatioFinding } from '../../web/domain/laboratory/findings.ts';
import type { LabMethod } from '../../web/domain/laboratory/tables/methods.ts';

/** What a row of the laboratory's reference files states of a report. */
export interface LabRow {
  readonly id: string;
  readonly region?: string;
  readonly when?: string;
  readonly fibre?: string;
  readonly method?: LabMethod;
  readonly findings: Readonly<Record<string, Found>>;
  readonly ratios?: readonly RatioFinding[];
}

/** One list per dye of the source's identification; any id of a list will do. */
export type Identification = readonly (readonly string[])[];

export interface LabCase extends LabRow {
  readonly expect: Identification;
  readonly compoundsNamed: 'in-text' | 'from-dye-named';
  readonly sourceSays: string;
}

export interface LabStatement extends LabRow {
  readonly says: string;
  readonly source: string;
  readonly expect: {
    readonly before?: readonly [string, ...string[]];
    readonly first?: readonly string[];
    readonly notTold?: readonly [string, ...string[]];
    readonly possible?: readonly string[];
    readonly ruledOut?: readonly string[];
    readonly firstMixture?: Identification;
    readonly furtherTest?: string;
    readonly between?: readonly [string, string];
    readonly weakAbsence?: string;
  };
}

const read = (file: string): unknown => JSON.parse(readFileSync(new URL(`../reference/${file}`, import.meta.url), 'utf8'));

/** Published analyses with the identification of their authors. */
export const labCases = (): readonly LabCase[] => (read('lab-cases.json') as { readonly cases: readonly LabCase[] }).cases;

/** Statements of the literature on what compounds mean. */
export const labStatements = (): readonly LabStatement[] =>
  (read('lab-literature.json') as { readonly statements: readonly LabStatement[] }).statements;

/** The report a row states. */
export const reportOf = ({ findings, ratios, method }: LabRow): LabReport => ({
  method: method ?? 'hplc-dad',
  findings: Object.entries(findings).map(([compound, found]) => ({ compound, found })),
  ratios: ratios ?? [],
});

/** Asks a notebook what a row's report means, at its place and date where it has them. */
export function askRow(base: EvidenceBase, row: LabRow): LabReply {
  const span = row.when === undefined ? undefined : base.spanOfText(row.when);
  if (row.when !== undefined && !span) throw new Error(`${row.id}: date not read: ${row.when}`);
  const region = row.region === undefined ? undefined : base.regionId(row.region);
  if (row.region !== undefined && region === undefined) throw new Error(`${row.id}: no such region: ${row.region}`);
  return askLaboratory(base, {
    report: reportOf(row),
    ...(region !== undefined && { region }),
    ...(span && { span: coreOf(span) }),
    ...(row.fibre !== undefined && { fibre: row.fibre }),
  });
}

/** Whether a set of dyes is the source's identification: each list met by one dye, none left over. */
export function meets(dyes: readonly string[], identification: Identification): boolean {
  if (dyes.length !== identification.length) return false;
  const [first, ...rest] = identification;
  if (!first) return true;
  return dyes.some(
    (dye) =>
      first.includes(dye) &&
      meets(
        dyes.filter((other) => other !== dye),
        rest,
      ),
  );
}
