import type { EvidenceBase } from '../domain/claim/evidence-base.ts';
import { DEFAULT_TOLERANCE, type Candidate, type ColourAnswer } from '../domain/verdict/ask.ts';
import type { DyeAnswer } from '../domain/verdict/ask-dye.ts';
import type { JudgedClaim } from '../domain/verdict/judge-claim.ts';
import type { JudgedMaterial, RouteJudgement, RouteQuestion } from '../domain/verdict/judge-route.ts';
import { whatWouldChange } from '../domain/verdict/what-would-change.ts';
import { becauseOfColour, becauseOfDye, changeSentence, ruleSentence } from './words/because.ts';
import { sourceText, titleOf } from './words/claim-line.ts';

/** Field names are stable API: what `ask --json` prints. */
export function colourAnswerJson(base: EvidenceBase, answer: ColourAnswer) {
  const best = answer.candidates[0];
  return {
    verdict: answer.verdict,
    because: becauseOfColour(base, answer),
    question: {
      ...questionJson(answer.question),
      tolerance: answer.question.tolerance,
      conditions: answer.question.colour.kind === 'bare-lab' ? "the trials' own" : 'D65/10',
      colourWords: answer.question.colourWords ?? [],
    },
    candidates: answer.candidates.map((one) => candidateJson(base, one)),
    closest: answer.closest ? candidateJson(base, answer.closest) : null,
    nearestAttested: answer.nearestAttested ? candidateJson(base, answer.nearestAttested) : null,
    rules: best ? rulesJson(base, best.judgement, answer.question) : [],
    wouldChange: best ? whatWouldChange(best.judgement).map((change) => changeSentence(base, change)) : [],
    settings:
      answer.question.tolerance === DEFAULT_TOLERANCE ? [] : [`tolerance ${answer.question.tolerance} instead of ${DEFAULT_TOLERANCE}`],
  };
}

/** What `ask --dye --json` prints. */
export function dyeAnswerJson(base: EvidenceBase, answer: DyeAnswer) {
  const { judgement, dye } = answer;
  return {
    verdict: judgement.verdict,
    because: becauseOfDye(base, answer),
    question: { ...questionJson(answer.question), dye: answer.question.dye },
    dye: {
      id: answer.question.dye,
      standing: dye.standing,
      origins: dye.origins,
      claims: dye.claims.map(claimJson),
      subSpans: dye.subSpans,
    },
    witnesses: judgement.witnesses,
    classes: judgement.classes.length,
    evidence: judgement.classes,
    candidates: [],
    closest: null,
    nearestAttested: null,
    rules: rulesJson(base, judgement, answer.question),
    wouldChange: whatWouldChange(judgement).map((change) => changeSentence(base, change)),
    settings: [],
  };
}

function questionJson(question: RouteQuestion) {
  return {
    region: question.region,
    from: question.span.from,
    to: question.span.to,
    fibre: question.fibre ?? null,
    wearer: question.wearer ?? null,
    dyedHere: question.dyedHere,
  };
}

const round = (value: number, digits: number): number => Number(value.toFixed(digits));

/** One candidate as JSON. */
export function candidateJson(base: EvidenceBase, one: Candidate) {
  const { judgement, nearest } = one;
  return {
    ...(judgement.route.undyed === undefined ? { recipe: judgement.route.id } : { undyed: judgement.route.id }),
    title: titleOf(base, judgement.route.recipe ?? judgement.route.id),
    trial: nearest?.trial ?? null,
    code: nearest?.sample.code ?? null,
    fibre: nearest?.fibre ?? judgement.route.fibre ?? null,
    colourFrom: one.colourFrom,
    ...(one.overDye ? { overDye: one.overDye } : {}),
    lab: one.lab.map((value) => round(value, 2)),
    hex: one.colour.hex,
    inScreenGamut: one.colour.inScreenGamut,
    deltaE00: round(one.deltaE00, 4),
    closeness: one.closeness,
    onAnotherFibre: one.onAnotherFibre,
    ...judgementJson(judgement),
    standIns: [
      ...judgement.route.materials.flatMap(({ id, usedInstead }) => (usedInstead === undefined ? [] : [{ used: usedInstead, for: id }])),
      ...(nearest?.standIns ?? []).map(({ what, standsFor }) => ({ used: what?.text ?? null, for: standsFor?.text ?? null })),
    ],
  };
}

/** A route's verdict with everything it rests on, as JSON. */
export function judgementJson(judgement: RouteJudgement) {
  return {
    verdict: judgement.verdict,
    standing: judgement.standing,
    weakest: judgement.weakest,
    witnesses: judgement.witnesses,
    classes: judgement.classes.length,
    evidence: judgement.classes,
    dyeingPlaceUnknown: judgement.dyeingPlaceUnknown,
    ...(judgement.cappedBy ? { cappedBy: judgement.cappedBy } : {}),
    materials: judgement.materials.map(materialJson),
  };
}

function materialJson(one: JudgedMaterial) {
  return {
    id: one.material.id,
    role: one.material.role,
    standing: one.standing,
    origins: one.origins,
    everyday: one.everyday,
    judgedFor: one.judgedFor,
    subSpans: one.subSpans,
    claims: one.claims.map(claimJson),
  };
}

function claimJson({ placed: { claim, region, span }, place, time, gapYears, hard, firm }: JudgedClaim) {
  return {
    note: claim.note,
    status: claim.status,
    region,
    from: span.latestStart,
    to: span.earliestEnd,
    place,
    time,
    gapYears,
    knownBy: claim.knownBy ?? null,
    sure: claim.sure,
    source: sourceText(claim.sources) || null,
    checked: claim.checked ?? null,
    hard,
    firm,
    ...(claim.wearers.length > 0 ? { wearers: claim.wearers.map(({ text }) => text) } : {}),
    ...(claim.usual === undefined ? {} : { usual: claim.usual }),
    ...(claim.price === undefined ? {} : { price: claim.price }),
  };
}

/** The rules that touch the asked wearer, as JSON; a rule for others is left out. */
function rulesJson(base: EvidenceBase, judgement: RouteJudgement, question: RouteQuestion) {
  return judgement.rules
    .filter(({ touches }) => touches !== 'others')
    .map((rule) => ({ ...rule, says: ruleSentence(base, rule, question.wearer) }));
}
