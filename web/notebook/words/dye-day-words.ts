import type { PlannedBath, PlanProblem } from '../../domain/pot/dye-day.ts';
import type { NextBath } from '../../domain/pot/exhaust.ts';
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

/** Months by name, January first. */
export const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** "Mordant bath: alum"; `name` gives a material its name. */
export function bathTitle(
  { kind, materials, exhausts }: Pick<PlannedBath, 'kind' | 'materials' | 'exhausts'>,
  name: (id: string) => string,
): string {
  const words = stageWords[kind];
  const what = materials.map(name).join(', ');
  const title = exhausts === undefined ? words : `rest of ${words} ${exhausts}`;
  return `${title.charAt(0).toUpperCase()}${title.slice(1)}${what === '' ? '' : `: ${what}`}`;
}

/** "in a pot of 10 L or more". */
export const potText = (ml: number): string => `in a pot of ${ml < 1000 ? `${Math.ceil(ml)} ml` : `${Math.ceil(ml / 100) / 10} L`} or more`;

/** What is left for a bath that finishes another. */
export const leftText = (full: number, left: NextBath | undefined): string =>
  left?.is === 'reckoned'
    ? `Dyed in what is left of bath ${full}: ${percentText(left.from, left.to)} of this fibre’s weight at most (${left.sum}).`
    : `Dyed in what is left of bath ${full}. How much that is nobody knows unless what was taken up was measured: it is a second bath, paler or another hue.`;

const percentText = (from: number, to: number): string => {
  const [a, b] = [from, to].map((value) => String(Number(value.toPrecision(3))));
  return a === b ? `${a} %` : `${a}–${b} %`;
};

/** "09:00 to 10:30", with the latest end where the recipe leaves it open. */
export function clockText(start: string, begins: MinuteRange, ends: MinuteRange): string {
  const at = (minutes: number) => clockAfter(start, minutes);
  const latest = ends.to > ends.from ? `, or ${at(begins.to)} to ${at(ends.to)} where everything takes longest` : '';
  return `${at(begins.from)} to ${at(ends.from)}${latest}`;
}

/** A time of day so many minutes later; "+ 1 day" past midnight. */
function clockAfter(start: string, minutes: number): string {
  const [hours = 0, rest = 0] = start.split(':').map(Number);
  const total = hours * 60 + rest + Math.round(minutes);
  const days = Math.floor(total / 1440);
  const two = (value: number) => String(value).padStart(2, '0');
  const clock = `${two(Math.floor(total / 60) % 24)}:${two(total % 60)}`;
  return days === 0 ? clock : `${clock} + ${days} ${days === 1 ? 'day' : 'days'}`;
}

/** Said beside the timeline. */
export const TIMELINE_SAYS =
  'One pair of hands, one bath after the other; heating up and cooling down take time that no recipe states. Two pots at once shorten it.';
