import type { PlanProblem } from '../../domain/pot/dye-day.ts';
import type { GatherRule, GatheringList } from '../../domain/pot/gathering-list.ts';
import type { MinuteRange, StageKind } from '../../domain/pot/recipe-stages.ts';

/** What is amiss with a plan. */
export const planProblemWords = {
  'nothing-planned': 'Nothing is planned yet: choose a recipe and say what the fibre weighs.',
  'recipe-unknown': 'This recipe is not known here.',
  'fibre-unknown': 'This fibre is not known here; the recipe’s own is taken.',
  'fibre-other-class': 'The recipe is for fibre of another class: the amounts may not hold.',
  'exhaust-of-nothing': 'There is no full bath of the same recipe to finish: it is planned as a bath of its own.',
  'nothing-to-weigh': 'The recipe lists no ingredients.',
  'fibre-mass-missing': 'Say what the fibre weighs, air-dry.',
  'fibre-mass-impossible': 'The fibre must weigh more than nothing and at most 100 kg.',
  'liquor-unread': 'The liquor ratio could not be read: no pot is worked out.',
  'chain-in-circle': 'The recipes this one starts from lead back to itself. Each is planned once.',
  'never-dosed': 'Named as history only: nothing is weighed out.',
  'staff-only': 'Amounts of this salt are for staff who work by its safety data sheet.',
} as const satisfies Record<PlanProblem['code'], string>;

/** A bath by what is done in it. */
export const stageWords = {
  mordant: 'mordant bath',
  dye: 'dye bath',
  vat: 'vat',
  after: 'after-bath',
} as const satisfies Record<StageKind, string>;

/** What has to be settled before something is gathered. */
export const gatherRuleWords = {
  'ask-owner': 'Ask the landowner; where picking is forbidden, leave it.',
  'take-little': 'Take one in twenty at most, and nothing where it is scarce.',
  'no-uprooting':
    'Digging up a wild plant without the owner’s leave is against the law in Great Britain; elsewhere follow local law. A bed of one’s own is better.',
  protected: 'Protected in places, or growing in protected ones: look up local rules first.',
  'felled-only': 'From felled or fallen trees only.',
  'expert-only': 'Only with somebody who truly knows the kinds.',
  invasive: 'Invasive in places: do not spread seed or root.',
  poisonous: 'Poisonous or harmful to eat: gloves, and keep it from children.',
} as const satisfies Record<GatherRule, string>;

/** Why something is on no month’s list. */
export const notGatheredWords = {
  lichen: 'A lichen: not gathered. Bought stock with its origin known, or windfall with leave.',
  bought: 'Bought, not gathered.',
} as const satisfies Record<GatheringList['notGathered'][number]['why'], string>;

/** Said beside every plan. */
export const NEVER_SCALES =
  'Time and temperature do not scale: a hold of an hour at 70 °C is an hour at 70 °C for any mass. A larger pot takes longer to heat and to cool.';

/** "45 min", "1–2 h", "8–16 h", "21–35 days". */
export function minutesText({ from, to }: MinuteRange): string {
  const [unit, name] = from >= 2 * 1440 ? [1440, 'days'] : from >= 60 && from % 30 === 0 && to % 30 === 0 ? [60, 'h'] : [1, 'min'];
  const value = (minutes: number) => String(Number((minutes / unit).toFixed(1)));
  return from === to ? `${value(from)} ${name}` : `${value(from)}–${value(to)} ${name}`;
}
