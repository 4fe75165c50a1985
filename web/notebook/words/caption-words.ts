import { counted } from './counted.ts';
import type { CaptionFault, CaptionFinding } from '../../domain/caption/check-caption.ts';
import type { FingerprintPart } from '../../domain/caption/fingerprint.ts';
import type { PhraseQuestion } from '../../domain/caption/questioned-phrases.ts';
import type { CaptionChange } from '../../domain/caption/stale.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { VERDICTS } from '../../domain/verdict/standing-words.ts';
import { titleOf } from './claim-line.ts';
import { knownByWords, statusWords, verdictWords } from './verdict-words.ts';

type Words = (about: readonly string[]) => string;

const FAULTS = {
  'too-short': ([words, least]) => `${counted(Number(words), 'word')}; a caption has ${least ?? ''} at least.`,
  'too-long': ([words, most]) => `${words ?? ''} words; a caption has ${most ?? ''} at most.`,
  'headline-long': ([words, most]) => `The headline has ${words ?? ''} words; ${most ?? ''} are enough.`,
  'ideas-many': ([ideas]) => `${ideas ?? ''} statements about the past: a caption has one idea. Take one out.`,
  'no-date': () => 'No date of the past: say when.',
  'no-place': ([place]) => `No place: say where${place === undefined || place === '' ? '' : `, such as “${place}”`}.`,
  'no-latin': ([dye, latin]) => `The Latin name of ${dye ?? ''} is missing: ${latin ?? ''}.`,
  'no-source-word': () => 'It does not say how it is known: a text, an account, an analysis, a find.',
  'not-said-modern': ([year]) => `It does not say that the sample is modern: “modern sample, dyed ${year ?? ''}”.`,
  'no-dyed-year': ([year]) => `The year the sample was dyed is missing: ${year ?? ''}.`,
  'no-uncertainty': () => 'Nothing says what is not known. One line is enough.',
  'stand-in-unsaid': ([used, meant]) => `${used ?? ''} stands in for ${meant ?? ''}, and the caption does not say so.`,
  'reading-hard': ([grade, highest]) =>
    `It reads at school grade ${grade ?? ''}; ${highest ?? ''} is the aim. Shorter words, shorter sentences.`,
  'phrase-questioned': ([phrase]) => `“${phrase ?? ''}”`,
  'amount-given': () =>
    'It gives an amount of what is never dosed in front of the public. Take it out: on board, sheet and published page a blank stands there.',
  'clause-unbound': ([clause]) => `No claim stands behind: “${clause ?? ''}”`,
  'words-gone': ([says, claim]) => `The words bound to ${claim ?? ''} are no longer in the text: “${says ?? ''}”.`,
  'comment-open': ([by, says]) => `A comment is open${by === '' ? '' : ` (${by ?? ''})`}: “${says ?? ''}”.`,
} as const satisfies Record<CaptionFault, Words>;

const PHRASES = {
  'claims-to-be-real': 'no sample of today is; say what is alike',
  'guess-as-fact': 'a guess told as a fact; say who says so, or that it is likely',
  'denies-fading': 'every colour fades; say how soon',
  'natural-as-safe': 'natural does not mean safe',
  'too-sure': 'surer than notes can be',
  'too-wide': 'more than the notes know',
  'undated-past': 'a date says more',
  jargon: 'a word of the workshop',
} as const satisfies Record<PhraseQuestion, string>;

/** A finding about a caption, in a sentence. */
export function captionFindingText({ code, about, why }: CaptionFinding): string {
  const says: Words = FAULTS[code];
  return why === undefined ? says(about) : `${says(about)}: ${PHRASES[why]}.`;
}

const PARTS = {
  material: 'what it is about',
  status: 'what it says',
  region: 'its place',
  when: 'its date',
  knownBy: 'how it is known',
  sure: 'how sure it is',
  source: 'its source',
} as const satisfies Record<FingerprintPart, string>;

/** What changed behind a caption, in a sentence: what it was and what it is. */
export function captionChangeText(base: EvidenceBase, change: CaptionChange): string {
  switch (change.kind) {
    case 'claim-changed':
      return `${claimName(base, change.claim)}: ${PARTS[change.part]} was ${partText(base, change.part, change.was)}, now ${partText(base, change.part, change.now)}.`;
    case 'claim-gone': {
      const { status, region, when, source } = change.was;
      const was = [status && partText(base, 'status', status), region && titleOf(base, region), when, source].filter((part) => part);
      return `${claimName(base, change.claim)}: the claim is gone${was.length > 0 ? ` (${was.join(', ')})` : ''}.`;
    }
    case 'question-changed':
      return change.part === 'region'
        ? `The palette was of ${titleOf(base, change.was)} and is of ${change.now === '' ? 'no known place' : titleOf(base, change.now)} now.`
        : `The palette was of ${change.was} and is of ${change.now === '' ? 'no known date' : change.now} now.`;
    case 'verdict-changed':
      return `The verdict was ${verdictText(change.was)} and is ${change.now === '' ? 'gone: it cannot be judged any more' : `${verdictText(change.now)} now`}.`;
  }
}

const claimName = (base: EvidenceBase, claim: string): string => titleOf(base, claim.replace(/#\d+$/, ''));

const lookUp = (table: Readonly<Record<string, string>>, word: string): string =>
  Object.hasOwn(table, word) ? (table[word] ?? word) : word;

function partText(base: EvidenceBase, part: FingerprintPart, value: string): string {
  if (value === '') return 'not said';
  switch (part) {
    case 'region':
    case 'material':
      return titleOf(base, value);
    case 'status':
      return `“${lookUp(statusWords, value)}”`;
    case 'knownBy':
      return lookUp(knownByWords, value);
    case 'sure':
      return value === 'yes' ? 'sure' : value;
    default:
      return value;
  }
}

const verdictText = (word: string): string => {
  const verdict = VERDICTS.find((one) => one === word);
  return (verdict ? verdictWords[verdict].word : word).toLowerCase();
};
