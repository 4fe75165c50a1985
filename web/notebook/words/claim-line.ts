import { evidenceClassOf } from '../../domain/claim/evidence-class.ts';
import { type EvidenceBase, MATERIAL_KINDS } from '../../domain/claim/evidence-base.ts';
import { perVersion } from '../../domain/claim/per-version.ts';
import { formatSpan } from '../../domain/date/format-date.ts';
import { withoutDoses } from '../../domain/pot/without-doses.ts';
import type { Checked, Citation, KnownBy } from '../../domain/note/note.ts';
import { WORLD } from '../../domain/place/region-tree.ts';
import type { RouteJudgement } from '../../domain/verdict/judge-route.ts';
import type { JudgedClaim } from '../../domain/verdict/judge-claim.ts';
import { classWords, knownByWords, placeWords, statusWords } from './verdict-words.ts';

/** One claim as a reader meets it: each part a piece of plain text. */
export interface ClaimLine {
  /** "Madder was imported". */
  readonly says: string;
  /** "England". */
  readonly region: string;
  /** "the wider region". */
  readonly placeRelation: string;
  /** "1150–1450". */
  readonly years: string;
  /** "covers the asked years", "12 years later". */
  readonly timeRelation: string;
  /** "physical: dye analysis". */
  readonly evidence: string;
  /** "munro-2007, p. 53"; several joined. */
  readonly source: string;
  /** The keys of its sources. */
  readonly keys: readonly string[];
  readonly checked: string;
  readonly sure: string;
  readonly note: string;
  readonly remark: string;
}

/** The title of a note, or its id where there is no such note; `fibre/undyed name` as "name fibre". */
export function titleOf(base: EvidenceBase, id: string): string {
  if (id === WORLD) return 'the world';
  const pair = base.note(id) ? undefined : id.split(' + ');
  if (pair?.length === 2) return pair.map((one) => titleOf(base, one)).join(' with ');
  const slash = id.indexOf('/');
  if (slash > 0 && !base.note(id)) return `${id.slice(slash + 1)} (${titleOf(base, id.slice(0, slash))})`;
  return titlesShown(base)(base.note(id)?.title ?? id);
}

/** A palette that follows a dragged year asks for the same titles again and again. */
const titlesShown = perVersion(
  (base) => {
    const kept = new Map<string, string>();
    return (title: string): string => {
      const known = kept.get(title);
      if (known !== undefined) return known;
      const shown = withoutDoses(base, title);
      kept.set(title, shown);
      return shown;
    };
  },
  { notes: MATERIAL_KINDS },
);

/**
 * A title inside a sentence: a common noun begins small, an adjective of a place or people keeps its capital.
 */
export function inSentence(base: EvidenceBase, id: string): string {
  const title = titleOf(base, id);
  return PROPER.test(title) ? title : title.charAt(0).toLowerCase() + title.slice(1);
}

/** Adjectives of places and people that stand first in names of dyestuffs and keep their capital in English. */
const PROPER =
  /^(?:American|Armenian|Polish|Indian|Japanese|Chinese|Asian|European|Mexican|Persian|Pacific|Prussian|Saxon|Turkey|St\b|Amur|Canada|Northern\b(?= [A-Z])|[A-Z]{2})/;

/** "key, locator; key". */
export const sourceText = (sources: readonly Citation[]): string =>
  sources.map(({ key, locator }) => (locator === undefined ? key : `${key}, ${locator}`)).join('; ');

const CHECKED_WORDS = {
  'read-whole': 'read whole',
  excerpt: 'read in excerpt',
  'quoted-elsewhere': 'quoted elsewhere',
  'from-memory': 'from memory, not looked up',
} as const satisfies Record<Checked, string>;

/**
 * A judged claim in words.
 *
 * @param judgement what it was judged in: a material judged for the world, because the place of dyeing is unknown, says so.
 */
export function claimLine(base: EvidenceBase, judged: JudgedClaim, judgement?: Pick<RouteJudgement, 'materials'>): ClaimLine {
  const { claim, region, span, material } = judged.placed;
  const knownBy = claim.knownBy;
  const judgedFor = judgement?.materials.find((one) => one.material.id === material)?.judgedFor;
  return {
    says: `${titleOf(base, material)} ${statusWords[claim.status]}`,
    region: titleOf(base, region),
    placeRelation: judgedFor === WORLD && judged.place === 'within' ? 'anywhere in the world' : placeWords[judged.place],
    years: formatSpan(span),
    timeRelation: timeText(judged),
    evidence: knownBy ? evidenceText(knownBy) : 'evidence not stated',
    source: sourceText(claim.sources) || 'no source given',
    keys: claim.sources.map(({ key }) => key),
    checked: claim.checked ? CHECKED_WORDS[claim.checked] : '',
    sure: claim.sure === 'yes' ? '' : claim.sure,
    note: claim.note,
    remark: claim.remark ?? '',
  };
}

/** "physical: dye analysis"; an inference is its own class and is said once. */
function evidenceText(knownBy: KnownBy): string {
  const [group, kind] = [classWords[evidenceClassOf(knownBy)], knownByWords[knownBy]];
  return group === kind ? kind : `${group}: ${kind}`;
}

function timeText({ time, gapYears }: JudgedClaim): string {
  const years = gapYears === 1 ? '1 year' : `${gapYears} years`;
  switch (time) {
    case 'throughout':
      return 'covers the asked years';
    case 'part':
      return 'covers part of the asked years';
    case 'perhaps':
      return 'only its doubtful years reach';
    case 'later':
      return `${years} later`;
    case 'earlier':
      return `${years} earlier`;
  }
}

/** "Scandinavia, 850–1100 (dye analysis, brandenburgh-2010)". */
export function shortClaim(base: EvidenceBase, judged: JudgedClaim): string {
  const { claim, region, span } = judged.placed;
  const how = [
    claim.knownBy && knownByWords[claim.knownBy],
    claim.sure === 'yes' ? undefined : claim.sure,
    sourceText(claim.sources) || undefined,
  ];
  return `${titleOf(base, region)}, ${formatSpan(span)} (${how.filter((part) => part !== undefined).join(', ')})`;
}
