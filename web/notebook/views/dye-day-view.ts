import { withoutDoses } from '../../domain/pot/without-doses.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { noteId, type NoteId } from '../../domain/note/note.ts';
import { type Caution, planCautions } from '../../domain/pot/cautions-for.ts';
import type { DyeDayPlan, PlannedBath, PlanProblem } from '../../domain/pot/dye-day.ts';
import { planDyeDay } from '../../domain/pot/dye-day-plan.ts';
import { type Gathering, type GatheringList, gatheringList } from '../../domain/pot/gathering-list.ts';
import { recipeStages } from '../../domain/pot/recipe-stages.ts';
import { scaleRecipe } from '../../domain/pot/scale-recipe.ts';
import type { TypedDyeDay, TypedItem } from '../dye-day-address.ts';
import type { Notebook } from '../notebook.ts';
import { inSentence, titleOf } from '../words/claim-line.ts';
import {
  bathTitle,
  clockText,
  gatherRuleWords,
  leftText,
  minutesText,
  MONTHS,
  notGatheredWords,
  planProblemWords,
  potText,
} from '../words/dye-day-words.ts';
import { cautionText } from '../words/pot-caution-words.ts';
import { quantityText, scaleProblemWords } from '../words/pot-words.ts';
import { refusalWords } from '../words/trial-words.ts';

/** A note to choose, by id and title. */
export interface NamedChoice {
  readonly id: string;
  readonly title: string;
}

/** A per cent that the recipe leaves open. */
export interface PercentChoice {
  readonly what: string;
  readonly title: string;
  readonly asWritten: string;
  readonly chosen?: number;
}

/** One dyeing of the day, as asked. */
export interface DayItemView {
  readonly recipe: string;
  readonly title: string;
  readonly isKnown: boolean;
  /** Its baths by number and name, in the order of the recipe. */
  readonly order: string;
  readonly percents: readonly PercentChoice[];
  /** Items whose bath it could finish, by place from 0. */
  readonly mayFinish: readonly number[];
  readonly problems: readonly string[];
}

/** A step with the care to take at it. */
export interface StepView {
  readonly text: string;
  readonly cautions: readonly string[];
}

/** One thing to weigh. */
export interface WeightView {
  readonly amount: string;
  readonly what: string;
  readonly form: string;
  readonly problem: string;
}

/** A bath of the day. */
export interface BathView {
  readonly nth: number;
  readonly title: string;
  readonly isAhead: boolean;
  /** "300 g: Madder red, Coral red". */
  readonly fibre: string;
  readonly isShared: boolean;
  readonly after: readonly number[];
  readonly weights: readonly WeightView[];
  readonly pot: string;
  readonly left: string;
  readonly time: string;
  readonly wait: string;
  readonly steps: readonly StepView[];
}

/** A row of the timeline; from and to as shares of the longest part, 0–1. */
export interface TimeView {
  readonly bath: number;
  readonly title: string;
  readonly isAhead: boolean;
  readonly clock: string;
  readonly from: number;
  readonly to: number;
}

/** A thing to gather. */
export interface GatherView {
  readonly id: string;
  readonly title: string;
  readonly latin: readonly string[];
  readonly part: string;
  readonly growth: string;
  /** "June, July"; empty where the note names none. */
  readonly months: string;
  readonly needed: string;
  /** Fresh mass by each ratio, with its source. */
  readonly fresh: readonly string[];
  readonly rules: readonly string[];
  readonly note: string;
}

/** Cautions under what they are about. */
export interface CareView {
  readonly about: string;
  readonly texts: readonly string[];
}

/** A day at the pots, for page and paper. */
export interface DyeDayView {
  readonly recipes: readonly NamedChoice[];
  readonly fibres: readonly NamedChoice[];
  readonly items: readonly DayItemView[];
  readonly problems: readonly string[];
  readonly baths: readonly BathView[];
  readonly timeline: readonly TimeView[];
  readonly fibresNeeded: readonly string[];
  readonly shopping: readonly { readonly what: string; readonly amount: string; readonly isEveryday: boolean }[];
  readonly largestPot: string;
  readonly months: readonly { readonly month: string; readonly gather: readonly { readonly title: string; readonly part: string }[] }[];
  /** Every plant once, with its months. */
  readonly plants: readonly GatherView[];
  readonly notGathered: readonly string[];
  readonly care: readonly CareView[];
  /** True where something is for staff only. */
  readonly hasStaffOnly: boolean;
}

/** Plans a day and says it in words. */
export function dyeDayView({ base }: Notebook, day: TypedDyeDay): DyeDayView {
  const audience = day.staff ? 'staff' : 'public';
  const plan = planDyeDay(base, day.items, audience);
  const cautions = planCautions(base, plan, audience);
  const gathering = gatheringList(base, plan);
  const plants = new Map(gathering.months.flatMap(({ gather }) => gather.map((one) => [one.dyestuff, one] as const)));
  return {
    recipes: choices(base, 'recipe'),
    fibres: choices(base, 'fibre'),
    items: day.items.map((item, at) => itemView(base, day, plan, item, at)),
    problems: plan.problems.filter(({ item }) => item === undefined).map((problem) => problemText(base, problem)),
    baths: plan.baths.map((bath) => bathView(base, day, bath, cautions)),
    timeline: timelineView(base, day, plan),
    fibresNeeded: plan.fibres.map(
      ({ fibre, grams }) =>
        `${quantityText({ from: grams, to: grams, unit: 'g' })} ${fibre === undefined ? 'fibre' : inSentence(base, fibre)}`,
    ),
    shopping: plan.shopping.map(({ what, form, needed, more, everyday }) => ({
      what: [titleOf(base, what), form].filter((part) => part !== undefined).join(', '),
      amount: needed ? `${quantityText(needed)}${more ? ' and more: one bath states no amount' : ''}` : 'no amount stated',
      isEveryday: everyday,
    })),
    largestPot: plan.largestPotMl === undefined ? '' : potText(plan.largestPotMl),
    months: gathering.months.map(({ month, gather }) => ({
      month: MONTHS[month - 1] ?? '',
      gather: gather.map(({ dyestuff, part, yearOfGrowth }) => ({
        title: titleOf(base, dyestuff),
        part: [part, yearOfGrowth && `${yearOfGrowth} year`].filter((text) => text !== undefined).join(', '),
      })),
    })),
    plants: [...plants.values(), ...gathering.noMonth].map((one) => gatherView(base, one, gathering)),
    notGathered: gathering.notGathered.map(({ dyestuff, why }) => `${titleOf(base, dyestuff)}: ${notGatheredWords[why]}`),
    care: careViews(base, cautions),
    hasStaffOnly: plan.problems.some(({ code }) => code === 'staff-only') || day.staff,
  };
}

const choices = (base: EvidenceBase, kind: 'recipe' | 'fibre'): readonly NamedChoice[] =>
  base
    .ofKind(kind)
    .map(({ id, title }) => ({ id: String(id), title }))
    .sort((a, b) => a.title.localeCompare(b.title, 'en'));

function itemView(base: EvidenceBase, day: TypedDyeDay, plan: DyeDayPlan, item: TypedItem, at: number): DayItemView {
  const id = base.resolve(item.recipe, ['recipe']);
  const scaled = scaleRecipe(base, noteId(id), item.fibreGrams, day.staff ? 'staff' : 'public');
  const mine = plan.baths.filter(({ items }) => items.includes(at));
  return {
    recipe: id,
    title: titleOf(base, id),
    isKnown: scaled !== undefined,
    order: mine.map((bath) => `${bath.nth} ${bathTitle(bath, (what) => inSentence(base, what)).toLowerCase()}`).join(', then '),
    percents: (scaled?.ingredients ?? []).flatMap(({ what, asWritten, asPlanned, problem }): PercentChoice[] => {
      if (!/%/.test(asWritten) || (!asPlanned && problem !== 'fibre-mass-missing') || asPlanned?.from === asPlanned?.to) return [];
      const chosen = item.percent?.[what];
      return [{ what, title: titleOf(base, what), asWritten, ...(chosen !== undefined && { chosen }) }];
    }),
    mayFinish: day.items.flatMap((other, nth) =>
      nth !== at && other.exhaustOf === undefined && base.resolve(other.recipe, ['recipe']) === id ? [nth] : [],
    ),
    problems: plan.problems.filter((problem) => problem.item === at).map((problem) => problemText(base, problem)),
  };
}

function problemText(base: EvidenceBase, { code, about }: PlanProblem): string {
  const words = planProblemWords[code];
  if (code === 'recipe-unknown' && about.length > 1)
    return `${words} Nearest: ${about
      .slice(1)
      .map((id) => titleOf(base, id))
      .join(', ')}.`;
  return code === 'never-dosed' || code === 'staff-only' ? `${about.map((id) => titleOf(base, id)).join(', ')}: ${words}` : words;
}

function bathView(base: EvidenceBase, day: TypedDyeDay, bath: PlannedBath, cautions: readonly Caution[]): BathView {
  const names = [...new Set(bath.items.map((at) => titleOf(base, base.resolve(day.items[at]?.recipe ?? '', ['recipe']))))];
  const { liquor, potMl, tend, wait } = bath;
  return {
    nth: bath.nth,
    title: bathTitle(bath, (what) => inSentence(base, what)),
    isAhead: bath.when === 'ahead',
    fibre: `${quantityText({ from: bath.fibreGrams, to: bath.fibreGrams, unit: 'g' })}: ${names.join(', ')}`,
    isShared: bath.items.length > 1,
    after: bath.after,
    weights: bath.weights
      .filter(({ what, planned }) => what !== 'water' || planned)
      .map(({ what, form, planned, problem, refused }) => ({
        amount: planned ? quantityText(planned) : '',
        what: titleOf(base, what),
        form: form ?? '',
        problem: refused ? refusalWords[refused] : problem ? scaleProblemWords[problem] : '',
      })),
    pot: liquor ? `${quantityText(liquor)} of liquor${potMl === undefined ? '' : `, ${potText(potMl)}`}` : '',
    left: bath.exhausts === undefined ? '' : leftText(bath.exhausts, bath.left),
    time: tend ? minutesText(tend) : '',
    wait: wait ? minutesText(wait) : '',
    steps: stepsOf(base, bath, cautions),
  };
}

/** What the bath's first recipe says is done in it, each step with its care. */
function stepsOf(base: EvidenceBase, bath: PlannedBath, cautions: readonly Caution[]): readonly StepView[] {
  const [recipe] = bath.recipes;
  const record = recipe === undefined ? undefined : base.note(recipe)?.record;
  if (recipe === undefined || record?.kind !== 'recipe') return [];
  const stage = recipeStages(base, recipe).find(({ kind, materials }) => kind === bath.kind && materials.join() === bath.materials.join());
  return (stage?.steps ?? []).map((step) => ({
    text: withoutDoses(base, record.steps[step] ?? ''),
    cautions: cautionsAtStep(cautions, recipe, step),
  }));
}

/** The care to take at one step of a recipe. */
export const cautionsAtStep = (cautions: readonly Caution[], recipe: NoteId, step: number): readonly string[] =>
  cautions.filter((one) => one.place === 'step' && one.recipe === recipe && one.step === step).map(cautionText);

function timelineView(base: EvidenceBase, day: TypedDyeDay, plan: DyeDayPlan): readonly TimeView[] {
  const longest = Math.max(1, ...plan.timeline.map(({ ends }) => ends.to));
  return plan.timeline.map(({ bath, when, begins, ends, stated }) => {
    const planned = plan.baths[bath - 1];
    return {
      bath,
      title: planned ? bathTitle(planned, (what) => inSentence(base, what)) : '',
      isAhead: when === 'ahead',
      clock: !stated
        ? 'the recipe states no time'
        : when === 'ahead'
          ? minutesText({ from: ends.from - begins.from, to: ends.to - begins.to })
          : clockText(day.begins, begins, ends),
      from: begins.from / longest,
      to: Math.max(ends.to, begins.from) / longest,
    };
  });
}

function gatherView(base: EvidenceBase, one: Gathering, { months }: GatheringList): GatherView {
  return {
    id: one.dyestuff,
    title: titleOf(base, one.dyestuff),
    latin: one.latin,
    part: one.part ?? '',
    growth: one.yearOfGrowth ?? '',
    months: months
      .filter(({ gather }) => gather.some(({ dyestuff }) => dyestuff === one.dyestuff))
      .map(({ month }) => MONTHS[month - 1] ?? '')
      .join(', '),
    needed: one.needed ? quantityText(one.needed) : '',
    fresh: one.fresh.map(
      ({ ratio, grams }) =>
        `about ${quantityText({ ...grams, unit: 'g' })} fresh, at ${ratio.from === ratio.to ? ratio.from : `${ratio.from}–${ratio.to}`}:1 (${ratio.source})`,
    ),
    rules: one.rules.map((rule) => gatherRuleWords[rule]),
    note: one.note ?? '',
  };
}

/** Cautions of substances under their names, then those of the cloth, then of the day. Steps have theirs beside them. */
function careViews(base: EvidenceBase, cautions: readonly Caution[]): readonly CareView[] {
  const groups = new Map<string, string[]>();
  for (const place of ['substance', 'tag', 'plan'] as const)
    for (const caution of cautions.filter((one) => one.place === place)) {
      const about =
        place === 'plan' ? 'The day' : place === 'tag' ? 'On the cloth’s tag' : caution.about ? titleOf(base, caution.about) : '';
      const held = groups.get(about) ?? [];
      const text = cautionText(caution);
      if (!held.includes(text)) groups.set(about, [...held, text]);
    }
  return [...groups].map(([about, texts]) => ({ about, texts }));
}
