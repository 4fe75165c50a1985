import type { EvidenceBase } from '../claim/evidence-base.ts';
import type { DyestuffRecord, Note } from '../note/note.ts';
import type { DyeDayPlan } from './dye-day.ts';
import { freshOf, type GramRange, ratiosFor, type FreshDryRatio } from './fresh-dry.ts';
import type { Quantity } from './scale-recipe.ts';

/** What has to be settled with people and law before something is picked. Words stand elsewhere. */
export type GatherRule =
  'ask-owner' | 'no-uprooting' | 'protected' | 'felled-only' | 'take-little' | 'expert-only' | 'invasive' | 'poisonous';

/** One thing to gather. */
export interface Gathering {
  readonly dyestuff: string;
  readonly latin: readonly string[];
  readonly part?: string;
  readonly yearOfGrowth?: string;
  readonly note?: string;
  /** What the plan asks for, as the recipes state it (dried unless a form says fresh). */
  readonly needed?: Quantity;
  /** Fresh mass for it, by each ratio that may speak: the reader picks one or puts their own. */
  readonly fresh: readonly { readonly ratio: FreshDryRatio; readonly grams: GramRange }[];
  readonly rules: readonly GatherRule[];
}

/** A gathering list. */
export interface GatheringList {
  /** Months with something to gather, January first; a plant of several months stands in each. */
  readonly months: readonly { readonly month: number; readonly gather: readonly Gathering[] }[];
  /** Wanted, but the note names no month, or nothing that is gathered here. */
  readonly noMonth: readonly Gathering[];
  /** Never gathered on the strength of this list: lichens, and what is bought. */
  readonly notGathered: readonly { readonly dyestuff: string; readonly why: 'lichen' | 'bought' }[];
}

/** What to gather for a plan, by month. Lichens are named and never listed for gathering. */
export function gatheringList(base: EvidenceBase, plan: Pick<DyeDayPlan, 'shopping'>): GatheringList {
  const months = new Map<number, Gathering[]>();
  const noMonth: Gathering[] = [];
  const notGathered: GatheringList['notGathered'][number][] = [];
  const wanted = new Map<string, { readonly needed?: Quantity; readonly forms: readonly string[] }>();
  for (const { what, form, needed } of plan.shopping) {
    const held = wanted.get(what);
    wanted.set(what, {
      ...(needed && !held?.needed ? { needed } : held?.needed && { needed: sumOf(held.needed, needed) }),
      forms: [...(held?.forms ?? []), form ?? ''],
    });
  }
  for (const [dyestuff, { needed, forms }] of wanted) {
    const note = base.note(dyestuff);
    if (note?.record.kind !== 'dyestuff') continue;
    const { record } = note;
    if (record.matter === 'lichen') notGathered.push({ dyestuff, why: 'lichen' });
    else if (record.matter !== 'plant' && record.matter !== 'fungus') notGathered.push({ dyestuff, why: 'bought' });
    else {
      const one = gatheringOf(dyestuff, note, record, needed, forms);
      const listed = record.gather?.months ?? [];
      if (listed.length === 0) noMonth.push(one);
      for (const month of listed) months.set(month, [...(months.get(month) ?? []), one]);
    }
  }
  return {
    months: [...months].sort(([a], [b]) => a - b).map(([month, gather]) => ({ month, gather })),
    noMonth,
    notGathered,
  };
}

const sumOf = (a: Quantity, b: Quantity | undefined): Quantity =>
  b && b.unit === a.unit ? { from: a.from + b.from, to: a.to + b.to, unit: a.unit } : a;

function gatheringOf(
  dyestuff: string,
  note: Note,
  record: DyestuffRecord,
  needed: Quantity | undefined,
  forms: readonly string[],
): Gathering {
  const part = partOf(record.part ?? '');
  // A recipe that asks for fresh leaf needs no reckoning from dry.
  const isFresh = forms.some((form) => /\bfresh\b/i.test(form));
  const ratios = needed?.unit === 'g' && !isFresh ? ratiosFor(dyestuff, part).filter(({ claims }) => claims === 'mass') : [];
  return {
    dyestuff,
    latin: record.latin,
    ...(record.part === undefined ? {} : { part: record.part }),
    ...(record.gather?.yearOfGrowth === undefined ? {} : { yearOfGrowth: record.gather.yearOfGrowth }),
    ...(record.gather?.note === undefined ? {} : { note: record.gather.note }),
    ...(needed && { needed }),
    fresh: ratios.flatMap((ratio) => {
      const [least, most] = [freshOf(needed?.from ?? 0, ratio), freshOf(needed?.to ?? 0, ratio)];
      return least && most ? [{ ratio, grams: { from: least.from, to: most.to } }] : [];
    }),
    rules: rulesFor(note, record),
  };
}

/** The part of the plant a ratio may know. */
function partOf(words: string): FreshDryRatio['part'] | undefined {
  if (/\broot|rhizome/i.test(words)) return 'root';
  if (/\bbark\b/i.test(words)) return 'bark';
  if (/\bhusk|hull\b/i.test(words)) return 'husk';
  if (/\bberr|fruit/i.test(words)) return 'berry';
  if (/\bflower(?:s| heads?)?$/i.test(words.trim()) || /^flower heads?/i.test(words)) return 'flower';
  if (/\bwhole|herb|tops\b/i.test(words)) return 'whole-plant';
  return /\blea(?:f|ves)\b/i.test(words) ? 'leaf' : undefined;
}

function rulesFor(note: Note, record: DyestuffRecord): readonly GatherRule[] {
  const words = [record.part ?? '', record.gather?.note ?? '', ...record.cautions, ...note.tags].join(' ');
  const rules: GatherRule[] = ['ask-owner', 'take-little'];
  if (/\b(?:root|rhizome|tuber)s?\b/i.test(record.part ?? '')) rules.push('no-uprooting');
  if (/\bprotected\b/i.test(words)) rules.push('protected');
  if (/\bbark|wood\b/i.test(record.part ?? '')) rules.push('felled-only');
  if (record.matter === 'fungus') rules.push('expert-only');
  if (/\binvasive\b/i.test(words)) rules.push('invasive');
  if (/\b(?:poison\w*|toxic|deadly|purg\w+|harmful to eat)\b/i.test(words)) rules.push('poisonous');
  return rules;
}
