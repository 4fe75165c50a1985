import type { NoteId, Role } from '../note/note.ts';
import type { NextBath, Uptake } from './exhaust.ts';
import type { RefusalReason } from './never-dosed.ts';
import type { MinuteRange, StageKind } from './recipe-stages.ts';
import type { Quantity, RecipeProblem, ScaleProblem } from './scale-recipe.ts';

/** One thing to dye on the day. */
export interface PlanItem {
  readonly recipe: string;
  /** Air-dry, g. */
  readonly fibreGrams: number;
  /** As id or name; the recipe's own where absent. */
  readonly fibre?: string;
  /** Per cent chosen out of the recipe's ranges, by material. */
  readonly percent?: Readonly<Record<string, number>>;
  /** Dyed in what is left of another item's bath: its place in the list, from 0. */
  readonly exhaustOf?: number;
  /** What the first bath's fibre took up, where the dyer has a figure. */
  readonly uptake?: Uptake;
}

/** What is weighed for a bath. */
export interface Weight {
  readonly what: string;
  readonly role?: Role;
  readonly form?: string;
  readonly planned?: Quantity;
  readonly problem?: ScaleProblem;
  readonly refused?: RefusalReason;
}

/** One bath of the day. */
export interface PlannedBath {
  /** From 1, in the order to do them. */
  readonly nth: number;
  readonly kind: StageKind;
  /** What the bath is about, as ids. */
  readonly materials: readonly string[];
  readonly recipes: readonly NoteId[];
  /** Items of the plan that go in, from 0. More than one share the bath. */
  readonly items: readonly number[];
  readonly fibreGrams: number;
  readonly weights: readonly Weight[];
  readonly liquor?: Quantity;
  readonly potMl?: number;
  readonly tend?: MinuteRange;
  readonly wait?: MinuteRange;
  /** Mordanting of undyed fibre and what needs nothing else that day can be done ahead. */
  readonly when: 'ahead' | 'day';
  /** Baths that come before, by number. */
  readonly after: readonly number[];
  /** The bath it finishes, by number, and what is left in it. */
  readonly exhausts?: number;
  readonly left?: NextBath;
}

/** A line of the shopping list; summed over all baths. */
export interface ShoppingLine {
  readonly what: string;
  readonly form?: string;
  /** Absent where no bath states an amount. */
  readonly needed?: Quantity;
  /** True where one of the baths states none: the sum is too small. */
  readonly more: boolean;
  /** Needs no buying as a rule: water, bran, wood ash. */
  readonly everyday: boolean;
}

/** A row of the timeline; minutes from the beginning of its part (ahead, day), one bath after the other. */
export interface TimelineRow {
  readonly bath: number;
  readonly when: 'ahead' | 'day';
  readonly begins: MinuteRange;
  readonly ends: MinuteRange;
  /** False where the recipe states no time: it then counts as none, and the day is longer than shown. */
  readonly stated: boolean;
  readonly wait?: MinuteRange;
}

/** Something in the asking that stands in the way, or that has to be settled. */
export interface PlanProblem {
  readonly code:
    | 'nothing-planned'
    | 'recipe-unknown'
    | 'fibre-unknown'
    | 'fibre-other-class'
    | 'exhaust-of-nothing'
    | 'nothing-to-weigh'
    | RecipeProblem
    | Extract<ScaleProblem, 'never-dosed' | 'staff-only'>;
  readonly item?: number;
  readonly about: readonly string[];
}

/** A day at the pots. */
export interface DyeDayPlan {
  readonly baths: readonly PlannedBath[];
  readonly shopping: readonly ShoppingLine[];
  /** Fibre to have ready, by id, g. */
  readonly fibres: readonly { readonly fibre: string | undefined; readonly grams: number }[];
  readonly timeline: readonly TimelineRow[];
  /** The largest pot needed, ml; absent where no bath has a liquor ratio. */
  readonly largestPotMl?: number;
  readonly problems: readonly PlanProblem[];
}

/** An item that can be planned: its recipe is known, its mass possible, its chain cut where it closes. */
export interface SoundItem {
  readonly at: number;
  readonly item: PlanItem;
  readonly recipe: NoteId;
  /** The recipes in the order they are done, the item's own last. */
  readonly chain: readonly NoteId[];
  readonly fibre: string | undefined;
}
