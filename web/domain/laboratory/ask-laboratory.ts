import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { YearSpan } from '../date/date-span.ts';
import type { RegionId } from '../place/region-tree.ts';
import { type MaterialStanding, standingOf } from '../verdict/standing.ts';
import { explain, type LabAnswer, type LabContext } from './explain.ts';
import type { LabReport } from './findings.ts';
import { profilesOf } from './profiles-of.ts';
import { LAB_WEIGHTS, type LabWeights } from './tables/weights.ts';

/** A report on a thread and where it belongs; place and date only count together. */
export interface LabQuestion {
  readonly report: LabReport;
  readonly region?: RegionId;
  readonly span?: YearSpan;
  readonly fibre?: string;
}

/** The answer with the context it was reasoned in, so that reasons can be asked for afterwards. */
export interface LabReply {
  readonly answer: LabAnswer;
  readonly context: LabContext;
  /** How a dyestuff stands at the asked place and date; undefined where none is asked. */
  readonly standing: (dye: string) => MaterialStanding | undefined;
}

/** What a report may mean, given what the notebook says was to hand there and then. */
export function askLaboratory(base: EvidenceBase, question: LabQuestion, weights: LabWeights = LAB_WEIGHTS): LabReply {
  const { region, span, fibre } = question;
  const known = new Map<string, MaterialStanding>();
  const fibreLine = fibre === undefined ? [] : base.fibreLine(fibre);
  const standing = (dye: string): MaterialStanding | undefined => {
    if (region === undefined || !span) return undefined;
    const found =
      known.get(dye) ??
      standingOf(base.claimsOf(dye), { region, span, fibreLine }, { regions: base.regions, everyday: base.isEveryday(dye) });
    known.set(dye, found);
    return found;
  };
  const year = span && (span.to ?? span.from);
  const context: LabContext = {
    profiles: profilesOf(base),
    standingOf: (dye) => standing(dye)?.standing,
    ...(typeof year === 'number' && { ageYears: weights.presentYear - year }),
    weights,
  };
  return { answer: explain(question.report, context), context, standing };
}
