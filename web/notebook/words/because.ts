import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { formatYears } from '../../domain/date/format-date.ts';
import type { Candidate, ColourAnswer } from '../../domain/verdict/ask.ts';
import type { DyeAnswer } from '../../domain/verdict/ask-dye.ts';
import type { JudgedMaterial, RouteJudgement, RouteQuestion } from '../../domain/verdict/judge-route.ts';
import type { Change } from '../../domain/verdict/what-would-change.ts';
import type { RuleFinding } from '../../domain/verdict/rules-for.ts';
import { inSentence, shortClaim, titleOf } from './claim-line.ts';
import { classWords, originWords, verdictWords } from './verdict-words.ts';
import { inList } from './in-list.ts';

/** ΔE00 as people read it: one decimal. */
export const deltaText = (difference: number): string => difference.toFixed(1);

/** The reasons for a colour answer, the most telling first; plain sentences. */
export function becauseOfColour(base: EvidenceBase, answer: ColourAnswer): readonly string[] {
  const best = answer.candidates[0];
  const conditions =
    answer.question.colour.kind === 'bare-lab'
      ? ['The asked Lab came without conditions; it was compared in the conditions of each trial.']
      : [];
  if (!best) {
    const closest = answer.closest
      ? `The closest colour is ${nameOf(base, answer.closest)}, ΔE00 ${deltaText(answer.closest.deltaE00)} away; its own verdict is ${verdictWords[answer.closest.judgement.verdict].word.toLowerCase()}.`
      : 'These notes hold no sample or undyed cloth with a colour on such a fibre.';
    return [`No colour in these notes comes within ΔE00 ${answer.question.tolerance} of the asked one.`, closest, ...conditions];
  }
  const near = `${nameOf(base, best)} comes nearest among the best: ΔE00 ${deltaText(best.deltaE00)} (${best.closeness.replace('-', ' ')}).`;
  const others = answer.candidates.slice(1);
  const dyed = others.filter(({ colourFrom }) => colourFrom !== 'predicted').length;
  const more = dyed > 0 ? [`${dyed} other ${dyed === 1 ? 'cloth comes' : 'cloths come'} within ΔE00 ${answer.question.tolerance}.`] : [];
  return [...becauseOfRoute(base, best.judgement, answer.question), near, ...more, ...conditions];
}

/** The reasons for a dyestuff's standing. */
export function becauseOfDye(base: EvidenceBase, answer: DyeAnswer): readonly string[] {
  return becauseOfRoute(base, answer.judgement, answer.question);
}

/** "Madder on alum (wool)", "fleece grey (Wool)". */
export const nameOf = (base: EvidenceBase, { judgement: { route } }: Candidate): string => titleOf(base, route.recipe ?? route.id);

/** Why a route has its verdict: first one plain sentence, then what it rests on and what was taken into account. */
export function becauseOfRoute(base: EvidenceBase, judgement: RouteJudgement, question: RouteQuestion): readonly string[] {
  const sentences: string[] = [];
  const wasToHand = ['local', 'imported', 'on-cloth'].includes(judgement.standing);
  const weakest = judgement.materials.filter(({ material }) => judgement.weakest.includes(material.id));
  const telling = (wasToHand ? judgement.materials : weakest).filter(({ everyday }) => !everyday).sort(dyesFirst);
  if (judgement.materials.length === 0) sentences.push('The recipe names no material, so nothing can be judged.');
  if (wasToHand && judgement.route.dyes.length > 0) sentences.push(witnessSentence(base, judgement));
  for (const one of telling.length > 0 ? telling : weakest.slice(0, 1)) sentences.push(standingSentence(base, one, question));
  if (judgement.cappedBy === 'on-another-fibre')
    sentences.push('The trial was dyed on another fibre of the same class, so plausible is the best it can be.');
  if (judgement.cappedBy === 'undeclared-deviation')
    sentences.push(
      'The trial used something its recipe does not ask for and does not say what it stands for, so it shows no attested colour; plausible is the best it can be.',
    );
  if (judgement.cappedBy === 'predicted') sentences.push('The colour is predicted, not dyed, so plausible is the best it can be.');
  if (judgement.dyeingPlaceUnknown) {
    sentences.push(
      'Where it was dyed is unknown: it came dyed, so mordant, helpers and fibre were judged for the whole world at that date.',
    );
  }
  if (judgement.classes.length > 0) {
    const count = judgement.classes.length;
    const behind = judgement.classesOf === undefined ? '' : ` behind ${inSentence(base, judgement.classesOf)}`;
    sentences.push(
      `${count === 1 ? 'One independent class' : `${count} independent classes`} of evidence${behind}: ${judgement.classes.map((one) => classWords[one]).join(', ')}.`,
    );
  }
  for (const one of judgement.materials) if (one.subSpans.length > 1) sentences.push(subSpanSentence(base, one));
  for (const { id, usedInstead } of judgement.route.materials) {
    if (usedInstead !== undefined)
      sentences.push(`${titleOf(base, usedInstead)} stands in for ${inSentence(base, id)}, which is what was judged.`);
  }
  return sentences;
}

const dyesFirst = (a: JudgedMaterial, b: JudgedMaterial): number => Number(b.material.role === 'dye') - Number(a.material.role === 'dye');

/** One sentence on how one material stands, with the claim that says so. */
export function standingSentence(base: EvidenceBase, one: JudgedMaterial, question: RouteQuestion): string {
  const name = titleOf(base, one.material.id);
  const first = one.carriedBy[0];
  const by = first ? shortClaim(base, first) : '';
  const where = one.judgedFor === question.region ? titleOf(base, question.region) : titleOf(base, one.judgedFor);
  const others = one.origins.slice(1).map((origin) => originWords[origin]);
  const beside = others.length > 0 ? ` Also ${others.join(', ')}.` : '';
  switch (one.standing) {
    case 'local':
      return one.everyday ? `${name} is an everyday material and needs no evidence.` : `${name} was to hand: ${by}.${beside}`;
    case 'imported':
      return `${name} was imported: ${by}.${beside}`;
    case 'cloth-only':
      return `${name} is known there only in finished cloth: ${by}.${beside}`;
    case 'on-cloth':
      return `${name} was on cloth found there; where it was dyed is not known: ${by}.`;
    case 'perhaps':
      return `${name} was perhaps to hand; the evidence is soft or its dates only may reach: ${by}.`;
    case 'nearby':
      return `${name} is recorded nearby, in time or place: ${by}.`;
    case 'contested': {
      const against = one.carriedBy.find(({ placed }) => placed.claim.status === 'absent');
      return `The notes disagree on ${inSentence(base, one.material.id)}. For it: ${by}. Against it: ${against ? shortClaim(base, against) : 'an absence'}.`;
    }
    case 'not-yet':
      return `Not yet: the notes first have ${inSentence(base, one.material.id)} in ${by}.`;
    case 'no-longer':
      return `No longer: the notes last have ${inSentence(base, one.material.id)} in ${by}.`;
    case 'absent':
      return one.onlyAsCloth
        ? `${name} came only as finished cloth (${by}), so it was not dyed there.`
        : `${name} is known to have been absent: ${by}.`;
    case 'unrecorded':
      return `Nothing in the notes puts ${inSentence(base, one.material.id)} in ${where} in ${formatYears(question.span)}.${nearestText(base, one)}`;
  }
}

function nearestText(base: EvidenceBase, { nearest: { before, after }, claims }: JudgedMaterial): string {
  if (claims.length === 0) return ' No note makes any claim about it.';
  const parts = [before && `before that in ${shortClaim(base, before)}`, after && `after that in ${shortClaim(base, after)}`].filter(
    (part) => part !== undefined,
  );
  return parts.length > 0 ? ` The nearest records are ${parts.join(' and ')}.` : ' Its claims speak of other places.';
}

function witnessSentence(base: EvidenceBase, { witnesses, route }: RouteJudgement): string {
  const dyes = inList(route.dyes.map((dye) => inSentence(base, dye)));
  const fibre = route.fibre === undefined ? '' : ` on ${inSentence(base, route.fibre)}`;
  const first = witnesses[0];
  if (!first) return `Everything was to hand, but no textile or text in these notes shows exactly ${dyes}${fibre} there and then.`;
  const more = witnesses.length > 1 ? ` and ${witnesses.length - 1} more` : '';
  return `${dyes.charAt(0).toUpperCase()}${dyes.slice(1)}${fibre} is recorded there and then: ${titleOf(base, first.note)}${first.where === undefined ? '' : `, ${first.where}`}${more}.`;
}

function subSpanSentence(base: EvidenceBase, one: JudgedMaterial): string {
  const parts = one.subSpans.map(({ from, to, standing }) => `${standing} ${formatYears({ from, to })}`);
  return `Over the asked years ${inSentence(base, one.material.id)} changes: ${parts.join(', ')}.`;
}

/** What would change a verdict, one sentence each. */
export function changeSentence(base: EvidenceBase, change: Change): string {
  switch (change.kind) {
    case 'a-witness':
      return `A textile or text with exactly ${inList(change.dyes.map((dye) => inSentence(base, dye)))} on that fibre, there and then, would make it attested.`;
    case 'a-firm-claim':
      return `A firm record of ${inSentence(base, change.material)} for the place and date itself (analysis, remains, text, trade or law, without doubt) would raise it.`;
    case 'the-dispute-settled':
      return `It changes when the dispute over ${inSentence(base, change.material)} is settled: one of the two claims withdrawn, dated or doubted.`;
    case 'an-earlier-record':
      return `An earlier dated record of ${inSentence(base, change.material)} would change it.`;
    case 'a-later-record':
      return `A later dated record of ${inSentence(base, change.material)} would change it.`;
    case 'the-absence-overturned':
      return `A firm record of ${inSentence(base, change.material)} inside the absence would make it disputed.`;
    case 'a-trial-on-the-fibre':
      return 'A trial on the asked fibre itself would lift the limit.';
    case 'a-trial-by-the-recipe':
      return 'A trial by the recipe, or one that declares what each thing stands for, would lift the limit.';
    case 'a-trial':
      return 'A trial that was really dyed would lift the limit.';
    case 'dyeing-there':
      return `Evidence that ${inSentence(base, change.material)} came there as dyestuff, not only as cloth, would change it.`;
  }
}

/** A rule beside the verdict, in a sentence. */
export function ruleSentence(base: EvidenceBase, rule: RuleFinding, wearer: string | undefined): string {
  const what = rule.concerns.map((one) => titleOf(base, one)).join(', ');
  const who = wearer === undefined ? '' : titleOf(base, wearer).toLowerCase();
  const act = { wear: 'wearing', dye: 'dyeing with', import: 'importing', sell: 'selling' }[rule.act ?? 'wear'];
  const title = titleOf(base, rule.note);
  if (rule.touches === 'forbidden') return `${title} forbids ${act} ${what} (${who}).`;
  if (rule.touches === 'not-among-allowed') return `${title} allows ${act} ${what} only to others than ${who}.`;
  return `${title} also concerns ${what}, for other people or acts.`;
}
