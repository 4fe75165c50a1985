import type { EvidenceBase } from '../claim/evidence-base.ts';
import { parseAmount } from '../note/amount.ts';
import type { NoteId } from '../note/note.ts';
import type { SoundItem } from './dye-day.ts';
import { recipeStages, type Stage } from './recipe-stages.ts';

/** One item's need of one bath. */
export interface BathNeed {
  readonly item: number;
  readonly stage: Stage;
  readonly fibreGrams: number;
  readonly fibre: string | undefined;
  /** Everything done to the fibre before, as a text to compare by. */
  readonly ground: string;
  /** Chosen per cents that bear on this bath, as a text to compare by. */
  readonly chosen: string;
  /** The need of the same item just before, by place in the list of its needs. */
  readonly before: BathNeed | undefined;
  readonly exhaustOf?: number;
}

/** A bath and the needs it meets. */
export interface SharedBath {
  readonly needs: readonly BathNeed[];
  /** Places, in the list of baths, of those that come before. */
  readonly after: readonly number[];
  readonly exhausts?: number;
  readonly ahead: boolean;
}

/** The recipes one follows, in the order they are done, itself last; a circle is cut where it closes. */
export function chainOf(base: EvidenceBase, recipe: NoteId): { readonly chain: readonly NoteId[]; readonly inCircle: boolean } {
  const chain: NoteId[] = [];
  let inCircle = false;
  const visit = (id: NoteId, path: readonly NoteId[]) => {
    if (path.includes(id)) {
      inCircle = true;
      return;
    }
    const record = base.note(id)?.record;
    if (record?.kind !== 'recipe' || chain.includes(id)) return;
    for (const next of record.follows) visit(base.resolve(next.text, ['recipe']) as NoteId, [...path, id]);
    chain.push(id);
  };
  visit(recipe, []);
  return { chain, inCircle };
}

/** The baths one item goes through. */
export function needsOf(base: EvidenceBase, { at, item, recipe, chain, fibre }: SoundItem): readonly BathNeed[] {
  const needs: BathNeed[] = [];
  const done: string[] = [];
  for (const id of chain) {
    for (const stage of recipeStages(base, id)) {
      const chosen = stage.materials.map((one) => `${one}=${item.percent?.[one] ?? ''}`).join(' ');
      const isDye = stage.kind === 'dye' && id === recipe;
      needs.push({
        item: at,
        stage,
        fibreGrams: item.fibreGrams,
        fibre,
        ground: done.join(' > '),
        chosen,
        before: needs.at(-1),
        ...(isDye && item.exhaustOf !== undefined && { exhaustOf: item.exhaustOf }),
      });
      done.push(`${stage.kind} ${stage.materials.join('+')}`);
    }
  }
  return needs;
}

/** Puts needs that can go into one bath together, and the baths in the order to do them. */
export function shareBaths(base: EvidenceBase, needs: readonly BathNeed[]): readonly SharedBath[] {
  const groups: BathNeed[][] = [];
  for (const need of needs) {
    const group = groups.find((held) => held.every((one) => canShare(base, one, need)));
    if (group) group.push(need);
    else groups.push([need]);
  }
  const groupOf = (need: BathNeed) => groups.findIndex((group) => group.includes(need));
  const fullOf = (need: BathNeed | undefined) =>
    need?.exhaustOf === undefined
      ? -1
      : groups.findIndex((group) => group.some((one) => one.item === need.exhaustOf && sameStage(one, need)));
  const befores = groups.map((group) => [
    ...new Set(group.flatMap((need) => [need.before && groupOf(need.before), fullOf(need)]).filter((at) => at !== undefined && at >= 0)),
  ]) as readonly (readonly number[])[];
  const level = levels(befores);
  const order = groups.map((_, at) => at).sort((a, b) => (level[a] ?? 0) - (level[b] ?? 0) || rank(groups[a]) - rank(groups[b]) || a - b);
  const place = (at: number) => order.indexOf(at);
  return order.map((at): SharedBath => {
    const group = groups[at] ?? [];
    const full = fullOf(group[0]);
    return {
      needs: group,
      after: (befores[at] ?? []).map(place).sort((a, b) => a - b),
      ...(full >= 0 && { exhausts: place(full) }),
      ahead: group.every(isAhead),
    };
  });
}

/** Mordants on fibre that was not dyed yet may be done days before. */
const isAhead = (need: BathNeed): boolean => need.stage.kind === 'mordant' && (need.before === undefined || isAhead(need.before));

const sameStage = (a: BathNeed, b: BathNeed): boolean =>
  a.stage.recipe === b.stage.recipe && a.stage.ingredients.join() === b.stage.ingredients.join();

/** Mordants first within one level, then vats, which want the whole day. */
const rank = (group: readonly BathNeed[] | undefined): number =>
  ({ mordant: 0, vat: 1, dye: 2, after: 3 })[group?.[0]?.stage.kind ?? 'dye'];

/**
 * Whether two needs go into one bath: fibre of one class, the same done to it before, and the same bath of one recipe, or the
 * same mordant with the same company in amounts that meet.
 */
function canShare(base: EvidenceBase, a: BathNeed, b: BathNeed): boolean {
  if (a.item === b.item || a.exhaustOf !== undefined || b.exhaustOf !== undefined) return false;
  if (a.fibre === undefined || b.fibre === undefined || base.fibreClassOf(a.fibre) !== base.fibreClassOf(b.fibre)) return false;
  if (a.ground !== b.ground || a.chosen !== b.chosen) return false;
  if (sameStage(a, b)) return true;
  return a.stage.kind === 'mordant' && b.stage.kind === 'mordant' && commonAmounts(base, [a, b]) !== undefined;
}

/** One ingredient of a shared mordant bath with the per cents that suit all. */
export interface CommonAmount {
  readonly what: string;
  readonly form: string | undefined;
  readonly from: number;
  readonly to: number;
}

/** The per cents on which mordant baths of different recipes agree; undefined where they hold different things or do not meet. */
export function commonAmounts(base: EvidenceBase, needs: readonly BathNeed[]): readonly CommonAmount[] | undefined {
  const lists = needs.map(({ stage }) => {
    const record = base.note(stage.recipe)?.record;
    return record?.kind === 'recipe' ? stage.ingredients.map((at) => record.ingredients[at]) : [];
  });
  const [first = []] = lists;
  const common: CommonAmount[] = [];
  for (const [at, one] of first.entries()) {
    const what = one?.what ? base.resolve(one.what.text, ['mordant', 'dyestuff', 'assistant', 'process']) : '';
    let [from, to] = [0, Infinity];
    for (const list of lists) {
      const other = list[at];
      const amount = other?.amount && parseAmount(other.amount.text);
      const same =
        other?.what && base.resolve(other.what.text, ['mordant', 'dyestuff', 'assistant', 'process']) === what && other.form === one?.form;
      if (list.length !== first.length || !same || amount?.unit !== '%' || amount.value === undefined) return undefined;
      from = Math.max(from, amount.value);
      to = Math.min(to, amount.upTo ?? amount.value);
    }
    if (from > to) return undefined;
    common.push({ what, form: one?.form, from, to });
  }
  return common.length === 0 ? undefined : common;
}

/** How many baths must come before each. Needs of one item only look back, so there is no circle. */
function levels(befores: readonly (readonly number[])[]): readonly number[] {
  const known: number[] = befores.map(() => 0);
  for (let round = 0; round < befores.length; round++) {
    let moved = false;
    befores.forEach((list, at) => {
      const level = list.reduce((most, before) => Math.max(most, (known[before] ?? 0) + 1), 0);
      if (level > (known[at] ?? 0)) {
        known[at] = level;
        moved = true;
      }
    });
    if (!moved) break;
  }
  return known;
}
