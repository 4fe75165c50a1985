import type { EvidenceBase } from '../claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../claim/evidence-base.ts';
import { namesOf } from '../claim/name-index.ts';
import type { Ingredient, NoteId, RecipeRecord } from '../note/note.ts';
import { fold } from '../text/fold.ts';
import { timesIn } from './step-figures.ts';

/** What is done in a bath: `after` is a mordant or modifier that follows the dye; `vat` a vat that is kept. */
export type StageKind = 'mordant' | 'dye' | 'vat' | 'after';

/** Minutes at least and at most. */
export interface MinuteRange {
  readonly from: number;
  readonly to: number;
}

/** One bath of a recipe. Ingredients stand in a recipe in the order they are used. */
export interface Stage {
  readonly recipe: NoteId;
  readonly kind: StageKind;
  /** Which of the recipe's ingredients go in. */
  readonly ingredients: readonly number[];
  /** The mordant, dye or modifier the bath is about, as ids. */
  readonly materials: readonly string[];
  /** Steps that speak of it, from 0. */
  readonly steps: readonly number[];
  /** Stated time that somebody stands by it; absent where none is stated. */
  readonly tend?: MinuteRange;
  /** Stated waits of eight hours and more: soaking, resting, fermenting, drying. */
  readonly wait?: MinuteRange;
}

/** From here on a time is a wait and nobody stands by. Our choice: a night. */
const WAIT_MINUTES = 8 * 60;

/** The baths of a recipe in their order; those of the recipes it follows are not among them. */
export function recipeStages(base: EvidenceBase, recipe: NoteId): readonly Stage[] {
  const record = base.note(recipe)?.record;
  if (record?.kind !== 'recipe') return [];
  const ids = record.ingredients.map(({ what }) => (what ? base.resolve(what.text, MATERIAL_KINDS) : ''));
  const mentions = record.steps.map((step) => mentionsIn(base, step, record.ingredients, ids));
  const drafts = draftStages(record, ids, mentions);
  return drafts.map(({ kind, ingredients }, nth) => {
    const { steps, tend, wait } = timesOf(record.steps, mentions, drafts, nth);
    return {
      recipe,
      kind,
      ingredients,
      materials: ingredients.filter((at) => isMain(record.ingredients[at])).map((at) => ids[at] ?? ''),
      steps,
      ...(tend && { tend }),
      ...(wait && { wait }),
    };
  });
}

interface Mention {
  readonly ingredient: number;
  readonly at: number;
}
interface Draft {
  readonly kind: StageKind;
  readonly ingredients: readonly number[];
}

const isMain = (one: Ingredient | undefined): boolean => one?.role === 'mordant' || one?.role === 'dye' || one?.role === 'modifier';

function draftStages(record: RecipeRecord, ids: readonly string[], mentions: readonly (readonly Mention[])[]): readonly Draft[] {
  const all = record.ingredients.map((_, at) => at);
  const isVat = /^vat$/i.test(record.liquor ?? '') || ids.some((id) => /\bvat\b/.test(fold(id)));
  if (isVat) return all.length > 0 ? [{ kind: 'vat', ingredients: all }] : [];
  const stages: { kind: StageKind; ingredients: number[] }[] = [];
  const waiting: number[] = [];
  for (const at of all) {
    const role = record.ingredients[at]?.role;
    const last = stages.at(-1);
    if (role === 'mordant' || role === 'modifier') {
      const afterDye = stages.some(({ kind }) => kind !== 'mordant');
      stages.push({ kind: afterDye || role === 'modifier' ? 'after' : 'mordant', ingredients: [...waiting.splice(0), at] });
    } else if (role === 'dye') {
      const joins =
        last !== undefined &&
        (last.kind === 'dye'
          ? !apart(last.ingredients, at, mentions)
          : last.kind === 'mordant' && together(last.ingredients, at, mentions));
      if (last && joins) {
        last.kind = 'dye';
        last.ingredients.push(...waiting.splice(0), at);
      } else stages.push({ kind: 'dye', ingredients: [...waiting.splice(0), at] });
    } else if (last) last.ingredients.push(at);
    else waiting.push(at);
  }
  if (waiting.length > 0) stages.push({ kind: 'dye', ingredients: waiting });
  return stages;
}

const stepsNaming = (ingredient: number, mentions: readonly (readonly Mention[])[]): readonly number[] =>
  mentions.flatMap((list, step) => (list.some((one) => one.ingredient === ingredient) ? [step] : []));

/** Two dyes go into baths of their own where the steps speak of each by itself. */
function apart(held: readonly number[], next: number, mentions: readonly (readonly Mention[])[]): boolean {
  const mine = stepsNaming(next, mentions);
  const theirs = held.flatMap((one) => stepsNaming(one, mentions));
  return mine.length > 0 && theirs.length > 0 && !mine.some((step) => theirs.includes(step));
}

/** A mordant and a dye share one bath where no step speaks of the mordant without the dye. */
function together(held: readonly number[], next: number, mentions: readonly (readonly Mention[])[]): boolean {
  const mine = stepsNaming(next, mentions);
  const theirs = held.flatMap((one) => stepsNaming(one, mentions));
  return theirs.length > 0 && theirs.every((step) => mine.includes(step));
}

/** Words of a form that say nothing about which material it is. */
const PLAIN_FORM = new Set(
  'dried fresh ground crushed chopped bought powder powdered potassium whole crystals flowering ready made only given here'.split(' '),
);

/** Where a step names the recipe's ingredients, in the order of the text. */
function mentionsIn(base: EvidenceBase, step: string, ingredients: readonly Ingredient[], ids: readonly string[]): readonly Mention[] {
  const text = ` ${fold(step).replace(/[^\p{L}\p{N} ]/gu, ' ')} `;
  const firstDye = ingredients.findIndex(({ role }) => role === 'dye');
  return ingredients
    .flatMap(({ form = '' }, ingredient): Mention[] => {
      const id = ids[ingredient] ?? '';
      const note = base.note(id);
      const forms = fold(form)
        .split(/[^\p{L}]+/u)
        .filter((word) => word.length > 3 && !PLAIN_FORM.has(word));
      const names = [id, ...(note ? namesOf(note) : []), ...lastWord(id), ...forms].map(fold).filter((name) => name.length > 2);
      const places = names.flatMap((name) => ['', 's'].map((end) => text.indexOf(` ${name}${end} `))).filter((at) => at >= 0);
      // "Dye at 90 °C": the dye is meant, unnamed.
      if (ingredient === firstDye && places.length === 0) places.push(...[text.search(/ dye (?:at|for|with) /)].filter((at) => at >= 0));
      return places.length === 0 ? [] : [{ ingredient, at: Math.min(...places) }];
    })
    .sort((a, b) => a.at - b.at);
}

/** "greenweed" of `dyers-greenweed`, "galls" of `oak-galls`. */
const lastWord = (id: string): readonly string[] =>
  id.includes('-') ? [id.split('-').at(-1) ?? ''].filter((word) => word.length > 4) : [];

/** The steps and times of one stage: a time belongs to the material named last before it, a step without one to the stage before. */
function timesOf(
  steps: readonly string[],
  mentions: readonly (readonly Mention[])[],
  stages: readonly Draft[],
  nth: number,
): { readonly steps: readonly number[]; readonly tend?: MinuteRange; readonly wait?: MinuteRange } {
  const mine: number[] = [];
  let current = 0;
  let tend: MinuteRange | undefined;
  let wait: MinuteRange | undefined;
  steps.forEach((text, step) => {
    const named = (mentions[step] ?? []).map(({ ingredient, at }) => ({
      at,
      stage: stages.findIndex(({ ingredients }) => ingredients.includes(ingredient)),
    }));
    const [first] = named;
    if (first) current = first.stage;
    const spoken = new Set(named.length > 0 ? named.map(({ stage }) => stage) : [current]);
    if (spoken.has(nth)) mine.push(step);
    for (const time of timesIn(text)) {
      const owner = named.filter(({ at }) => at <= time.at).at(-1)?.stage ?? current;
      if (owner !== nth) continue;
      const { fromMinutes, toMinutes } = time;
      if (fromMinutes >= WAIT_MINUTES) wait = sum(wait, fromMinutes, toMinutes);
      else tend = sum(tend, fromMinutes, toMinutes);
    }
    current = named.at(-1)?.stage ?? current;
  });
  return { steps: mine, ...(tend && { tend }), ...(wait && { wait }) };
}

const sum = (held: MinuteRange | undefined, from: number, to: number): MinuteRange => ({
  from: (held?.from ?? 0) + from,
  to: (held?.to ?? 0) + to,
});
