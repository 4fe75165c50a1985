import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { Strength } from '../../domain/laboratory/compound.ts';
import { FOUND, type Found } from '../../domain/laboratory/findings.ts';
import type { FurtherTest } from '../../domain/laboratory/further-tests.ts';
import type { NotToldApart } from '../../domain/laboratory/not-told-apart.ts';
import type { Reason } from '../../domain/laboratory/reasons.ts';
import type { LabMethod } from '../../domain/laboratory/tables/methods.ts';
import { verdictOf } from '../../domain/verdict/standing-words.ts';
import type { TypedLab } from '../typed-lab.ts';
import { inSentence, titleOf } from './claim-line.ts';
import { standingWords, verdictWords } from './verdict-words.ts';
import { inList } from './in-list.ts';

/** How a thread was examined, as a report's reader says it. */
export const methodWords = {
  'hplc-ms': 'HPLC with mass spectrometry',
  'hplc-dad': 'HPLC with diode array',
  tlc: 'thin-layer chromatography',
  fors: 'reflectance spectrum (FORS)',
  'spot-test': 'spot test',
  'sem-edx': 'XRF or SEM-EDX',
  'not-said': 'a method not said',
} as const satisfies Record<LabMethod, string>;

/** What a report says of a compound. */
export const foundWords = {
  present: 'present',
  trace: 'trace',
  absent: 'not found',
  'not-tested': 'not tested',
} as const satisfies Record<Found, string>;

/** What a report says, in one line: "Present: luteolin, indigotin. Not found: alizarin. alizarin:purpurin 3." */
export function reportedWords({ findings, ratios, elseAbsent }: TypedLab): string {
  const byFound = FOUND.flatMap((found) => {
    const names = findings.filter((one) => one.found === found).map(({ compound }) => compound);
    return names.length > 0 ? [`${capital(foundWords[found])}: ${names.join(', ')}.`] : [];
  });
  const measured = ratios.map(({ ratio, value, tolerance }) => `${ratio} ${figure(value)}${tolerance ? ` ± ${figure(tolerance)}` : ''}.`);
  return [...byFound, ...measured, ...(elseAbsent === true ? ['Everything else was looked for and not found.'] : [])].join(' ');
}

const strengthWords = { main: 'much', minor: 'some', trace: 'a trace' } as const satisfies Record<Strength, string>;

/** A chance as words: one in so many, never more exact than the judgement behind it. */
export function chanceWords(chance: number): string {
  if (chance >= 0.85) return 'nearly always';
  if (chance >= 0.65) return 'mostly';
  if (chance >= 0.4) return 'about every second time';
  if (chance >= 0.15) return 'now and then';
  return 'hardly ever';
}

/** How an explanation stands among the others. */
export function shareWord(share: number): string {
  if (share >= 0.9) return 'Almost alone';
  if (share >= 0.6) return 'Likeliest by far';
  if (share >= 0.3) return 'Likely';
  if (share >= 0.08) return 'Possible';
  return 'Less likely';
}

/** "about 75 %", "under 1 %". */
export const sharePercent = (share: number): string => {
  if (share < 0.01) return 'under 1 %';
  if (share > 0.99) return 'over 99 %';
  return `about ${Math.round(share * 100)} %`;
};

/** Dyes together, as a title. */
export const mixtureTitle = (base: EvidenceBase, dyes: readonly string[]): string => {
  const [first = '', ...rest] = dyes;
  return rest.length === 0 ? titleOf(base, first) : `${titleOf(base, first)} with ${inList(rest.map((dye) => inSentence(base, dye)))}`;
};

/** One thing for or against, as a sentence. */
export function reasonSentence(base: EvidenceBase, reason: Reason): string {
  switch (reason.kind) {
    case 'found': {
      const from = inList(reason.from.map(({ dye, strength }) => `${inSentence(base, dye)} gives ${strengthWords[strength]}`));
      return `${capital(reason.compound)}, ${foundWords[reason.found]}: ${from}.`;
    }
    case 'unexplained':
      return `${capital(reason.compound)}, ${foundWords[reason.found]}, has no source in it: it would have to have strayed in.`;
    case 'missing':
      return `${capital(reason.compound)} was not found; ${inSentence(base, reason.dye)} holds ${strengthWords[reason.strength]}, and this method would have shown it ${chanceWords(reason.chance)}.`;
    case 'ratio':
      return `${capital(reason.ratio)} is ${figure(reason.value)}; ${inSentence(base, reason.dye)} usually gives ${figure(reason.low)}–${figure(reason.high)}${
        reason.off < 0.05 ? '' : reason.off < 1.5 ? ', not far off' : ', so this lies well outside'
      }.`;
    case 'standing':
      return `${titleOf(base, reason.dye)}: ${standingWords[reason.standing]} (${verdictWords[verdictOf(reason.standing, false)].word.toLowerCase()} there and then, by your notes).`;
  }
}

/** An absence that says little, as a sentence. */
export const weakSentence = (base: EvidenceBase, reason: Reason): string =>
  reason.kind === 'missing'
    ? `${capital(reason.compound)} was not found, which says little about ${inSentence(base, reason.dye)}: after this long, this method would show it ${chanceWords(reason.chance)}.`
    : reasonSentence(base, reason);

/** Which sources the findings leave open, as sentences. */
export function notToldSentences(base: EvidenceBase, { dye, from }: NotToldApart): readonly string[] {
  const names = (list: NotToldApart['from']) =>
    inList(
      list.map((one) => inSentence(base, one.dye)),
      'or',
    );
  const kept = from.filter(({ ruledOut }) => !ruledOut);
  const never = kept.filter((one) => one.never);
  const now = kept.filter((one) => !one.never);
  const out = from.filter(({ ruledOut }) => ruledOut);
  return [
    ...(never.length > 0 ? [`No compound in these tables tells ${inSentence(base, dye)} from ${names(never)}.`] : []),
    ...(now.length > 0 ? [`These findings do not tell ${inSentence(base, dye)} from ${names(now)}.`] : []),
    ...(out.length > 0 ? [`Only place and date set ${names(out)} aside, not the findings.`] : []),
  ];
}

/** A further test, as a sentence. @param others every source it would tell the first of its pair from. */
export function testSentence(base: EvidenceBase, test: FurtherTest, others: readonly string[]): string {
  const pair = `${inSentence(base, test.between[0])} from ${inList(
    others.map((dye) => inSentence(base, dye)),
    'and',
  )}`;
  if (test.kind === 'ratio') return `Have the ${test.ratio} measured: it would help to tell ${pair}.`;
  const points =
    test.points === test.between[0] ? inSentence(base, test.points) : others.length === 1 ? inSentence(base, test.points) : 'one of those';
  return `Look for ${test.compound} by ${methodWords[test.method]}: found, it points to ${points}, and so helps to tell ${pair}.`;
}

/** A number without false exactness. */
export const figure = (value: number): string => String(Number(value.toPrecision(3)));

const capital = (text: string): string => (/^\p{Ll}{3}/u.test(text) ? text.charAt(0).toUpperCase() + text.slice(1) : text);
