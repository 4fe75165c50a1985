import { dyedYearOf, standInsOf } from '../../domain/caption/caption-subject.ts';
import { bindingOf } from '../../domain/caption/fingerprint.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { coreOf, outerOf } from '../../domain/date/date-span.ts';
import { formatYears } from '../../domain/date/format-date.ts';
import type { DateSpan } from '../../domain/date/date-span.ts';
import type { HueFamily } from '../../domain/palette/hue-family.ts';
import type { DyedSample } from '../../domain/verdict/cloths.ts';
import type { JudgedClaim } from '../../domain/verdict/judge-claim.ts';
import type { JudgedMaterial, RouteJudgement } from '../../domain/verdict/judge-route.ts';
import { inSentence, titleOf } from './claim-line.ts';
import { knownByWords, statusWords } from './verdict-words.ts';
import { inList } from './in-list.ts';

/** What a caption is drafted from. */
export interface DraftFrom {
  readonly judgement: RouteJudgement;
  readonly family: HueFamily;
  readonly fibre?: string;
  /** The sample that is shown; absent for undyed cloth. */
  readonly sample?: DyedSample;
  readonly region: string;
  /** The asked date as written, such as "c. 1370". */
  readonly when: string;
}

/** A first caption in English, for people to edit, its statements bound to what they rest on. */
export interface CaptionDraft {
  readonly headline: string;
  readonly text: string;
  /** As they are written into a display note. */
  readonly claims: readonly Readonly<Record<string, string>>[];
}

const COLOURS: Readonly<Record<HueFamily, string>> = {
  'white and grey': 'Pale',
  yellow: 'Yellow',
  'orange and tan': 'Tan',
  red: 'Red',
  'crimson and pink': 'Crimson',
  violet: 'Violet',
  blue: 'Blue',
  green: 'Green',
  brown: 'Brown',
  black: 'Black',
};

interface Statement {
  readonly text: string;
  /** What it rests on; several where one sentence rests on several. */
  readonly on: readonly { readonly says: string; readonly note: string; readonly nth?: number }[];
}

/** Drafts a caption from a judged colour: the cloth, the record behind its weakest dye, what is not known, the sample. */
export function draftCaption(base: EvidenceBase, from: DraftFrom): CaptionDraft {
  const statements = [clothSentence(base, from), recordSentence(base, from), doubtSentence(from), sampleSentence(base, from)];
  const claims = statements.flatMap(({ on }) =>
    on.flatMap(({ says, note, nth }) => {
      const binding = bindingOf(base, { note, ...(nth === undefined ? {} : { nth }) }, says);
      return binding ? [binding] : [];
    }),
  );
  const fibre = from.fibre === undefined ? 'cloth' : titleOf(base, from.fibre).toLowerCase();
  const undyed = from.judgement.route.undyed;
  return {
    headline: undyed === undefined ? `${COLOURS[from.family]} ${fibre}` : capital(`undyed ${fibre}`),
    text: statements.map(({ text }) => text).join(' '),
    claims,
  };
}

function clothSentence(base: EvidenceBase, { judgement, family, fibre, sample }: DraftFrom): Statement {
  const { route } = judgement;
  const cloth = fibre === undefined ? 'cloth' : titleOf(base, fibre).toLowerCase();
  if (route.undyed !== undefined)
    return {
      text: `${capital(route.undyed.includes(cloth) ? route.undyed : `${route.undyed} ${cloth}`)}, as it comes, without dye.`,
      on: [],
    };
  const other = standInsOf(base, judgement, sample).some(({ meant }) => route.dyes.includes(meant));
  const says = `${other ? 'dyed as with' : 'dyed with'} ${inList(route.dyes.map((dye) => withLatin(base, dye)))}`;
  return { text: `${COLOURS[family]} ${cloth} ${says}.`, on: sample ? [{ says, note: sample.trial }] : [] };
}

function withLatin(base: EvidenceBase, dye: string): string {
  const record = base.note(dye)?.record;
  const latin = record?.kind === 'dyestuff' ? record.latin[0] : undefined;
  return latin === undefined ? inSentence(base, dye) : `${inSentence(base, dye)} (${latin})`;
}

/** The record behind the dye that stands worst, or behind the cloth itself where it is undyed. */
function recordSentence(base: EvidenceBase, { judgement, region, when }: DraftFrom): Statement {
  const place = placeInSentence(base, region);
  const told = judgement.materials.filter(({ material, everyday }) => !everyday && ['dye', 'fibre', 'undyed'].includes(material.role));
  const weakest = told.filter(({ material }) => judgement.weakest.includes(material.id));
  const one =
    weakest.find(({ material }) => material.role === 'dye') ??
    weakest[0] ??
    told.find(({ material }) => material.role === 'dye') ??
    told[0];
  if (!one) return { text: `${where(place)}, ${when}, it was everyday cloth, of which we keep no record.`, on: [] };
  const witness = judgement.witnesses[0];
  if (witness && judgement.verdict === 'attested') {
    const says = `${where(place)}, ${when}, such a dyeing is recorded: ${titleOf(base, witness.note)}`;
    const claim = one.carriedBy.find(({ placed }) => placed.claim.note === witness.note)?.placed.claim;
    return { text: `${says}.`, on: [{ says, note: witness.note, ...(claim ? { nth: claim.nth } : {}) }] };
  }
  return standingStatement(base, one, place, when, judgement.route.dyes.length === 1);
}

function standingStatement(base: EvidenceBase, one: JudgedMaterial, place: string, when: string, only: boolean): Statement {
  const name = inSentence(base, one.material.id);
  const claim = one.carriedBy[0];
  const against = one.carriedBy.find(({ placed }) => placed.claim.status === 'absent');
  const bound = (says: string, ...claims: readonly JudgedClaim[]): Statement => ({
    text: `${says}.`,
    on: claims.map(({ placed }) => ({ says, note: placed.claim.note, nth: placed.claim.nth })),
  });
  if (!claim) return { text: `For ${place}, ${when}, nothing on ${only ? 'it' : name} is recorded.`, on: [] };
  const { status } = claim.placed.claim;
  switch (one.standing) {
    case 'local':
    case 'imported':
    case 'cloth-only':
    case 'on-cloth':
      return bound(`${where(place)}, ${when}, ${name} ${statusWords[status]} (${howAndWhen(claim)})`, claim);
    case 'contested':
      return bound(
        `For ${place}, ${when}, one source says that ${name} ${statusWords[status]} (${howAndWhen(claim)}), another denies it${against ? ` (${howAndWhen(against)})` : ''}`,
        claim,
        ...(against && against !== claim ? [against] : []),
      );
    case 'absent':
      return bound(`${where(place)}, ${when}, ${name} was not to be had (${howAndWhen(claim)})`, claim);
    case 'perhaps':
      return bound(
        `${where(place)}, ${when}, ${claim.placed.claim.sure === 'yes' ? 'it seems' : claim.placed.claim.sure === 'likely' ? 'it is likely' : 'it is possible'} that ${name} ${statusWords[status]} (${howAndWhen(claim)})`,
        claim,
      );
    default:
      return bound(
        `For ${place}, ${when}, the nearest record of ${name} is from ${placeInSentence(base, claim.placed.region)} (${howAndWhen(claim)})`,
        claim,
      );
  }
}

/** "trade record, 1301–1500". */
function howAndWhen({ placed: { claim, span } }: JudgedClaim): string {
  const parts = [claim.knownBy && knownByWords[claim.knownBy], yearsOf(span)];
  return parts.filter((part) => part !== undefined).join(', ');
}

/** Core years where there is a core, the wider ones else. */
function yearsOf(span: DateSpan): string {
  const { from, to } = coreOf(span);
  return from !== null && to !== null && from > to ? formatYears(outerOf(span)) : formatYears({ from, to });
}

function doubtSentence({ judgement: { verdict, dyeingPlaceUnknown, route } }: DraftFrom): Statement {
  const say = (text: string): Statement => ({ text, on: [] });
  if (route.undyed !== undefined) return say('Its exact shade then is not known.');
  switch (verdict) {
    case 'attested':
      return say(dyeingPlaceUnknown ? 'Where it was dyed is not known.' : 'Its exact shade when new is not known.');
    case 'attested-as-cloth':
      return say('It came ready dyed; where it was dyed is not known.');
    case 'feasible':
      return say('All that it needs was to hand, but no such cloth is recorded.');
    case 'plausible':
      return say('That comes near, but it is not certain.');
    case 'disputed':
      return say('The sources disagree; both are kept.');
    case 'unsupported':
      return say('Silence does not mean that it was unknown.');
    case 'out-of-period':
      return say('It is shown to compare, and no such cloth is recorded for this time.');
    case 'contradicted':
      return say('It is shown to compare, and no such cloth is recorded here.');
  }
}

function sampleSentence(base: EvidenceBase, { judgement, sample }: DraftFrom): Statement {
  if (!sample) return { text: 'Modern cloth, chosen to be near.', on: [] };
  const year = dyedYearOf(base, sample);
  const swaps = inList(
    standInsOf(base, judgement, sample).map(({ used, meant }) => `${inSentence(base, used)} instead of ${inSentence(base, meant)}`),
  );
  const says = `${year === undefined ? 'dyed' : `dyed ${year}`}${swaps === '' ? '' : ` with ${swaps}`}`;
  return { text: `Modern sample, ${says}.`, on: [{ says, note: sample.trial }] };
}

/** "In the Hanse towns", "On the Baltic shore". */
const where = (place: string): string => `${/(?:shore|coast)$/i.test(place) ? 'On' : 'In'} ${place}`;

/** A region's title inside a sentence: lands, towns and shores take their article. */
export function placeInSentence(base: EvidenceBase, region: string): string {
  const title = titleOf(base, region);
  if (/^the /i.test(title)) return `the ${title.slice(4)}`;
  return /(?:towns|lands|countries|isles|shore|coast|andes|^caribbean|^levant.*)$/i.test(title) ? `the ${title}` : title;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
