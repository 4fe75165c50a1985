import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { LightSetting, SwapSet } from '../../domain/note/display-record.ts';
import type { PaletteColour } from '../../domain/palette/palette.ts';
import { standInsOf } from '../../domain/caption/caption-subject.ts';
import type { LightCaveat } from '../../domain/light/caveats.ts';
import { OUTDOOR_CAVEATS, outdoorDose, SILL_CAVEATS, sillLuxHours, SILLS } from '../../domain/light/daylight.ts';
import { type LightPlan, yearlyLuxHours } from '../../domain/light/dose.ts';
import { icalendar, type Reminder } from '../../domain/light/icalendar.ts';
import { dayOfDose, doseInDays } from '../../domain/light/day-of-dose.ts';
import { addDays, daysBetween, isoDay, type IsoDay } from '../../domain/light/iso-day.ts';
import { jnfLuxHours } from '../../domain/light/jnf.ts';
import { type LightClass, lightClassOf } from '../../domain/light/light-class.ts';
import { rotateBy, type RotateBy } from '../../domain/light/rotate-by.ts';
import { leftToFade } from '../../domain/light/seen-fade.ts';
import { budgetShare, LIGHT_LIMITS, LIMITS_SOURCE, type Sensitivity, sensitivityOf } from '../../domain/light/sensitivity.ts';
import { samplesForYear, swapTurns, type Turn } from '../../domain/light/swap-set.ts';
import { fadesOfDose, yearsToFade } from '../../domain/light/years-to-fade.ts';
import type { DyedSample } from '../../domain/verdict/cloths.ts';
import { measuredAgain } from '../measured-again.ts';
import type { Notebook } from '../notebook.ts';
import { type Shown, type ShownColour, shownColours } from '../shown-colours.ts';
import { dayWords } from '../words/day-words.ts';
import { inSentence, sourceText, titleOf } from '../words/claim-line.ts';
import { boardAfterLight, type ColourAfterLight } from './board-after-light.ts';
import {
  blueWoolText,
  caveatWords,
  luxHoursText,
  passedOverWords,
  sensitivityWords,
  shareText,
  yearSpanText,
} from '../words/light-words.ts';

/** A light plan as somebody tries it out; what is absent is as the note has it. */
export interface TypedLight {
  readonly lux?: number;
  readonly hoursPerDay?: number;
  readonly daysPerYear?: number;
  readonly uv?: LightPlan['uv'];
  readonly window?: 'none' | 'north' | 'sunny';
  readonly from?: string;
  /** Of this light, after which the board is shown. */
  readonly years?: number;
}

/** What light does to one colour of a display. */
export interface LitColour {
  readonly what: string;
  readonly title: string;
  readonly code: string;
  readonly hex: string;
  /** "blue wool 3–6", or "unknown". */
  readonly classText: string;
  readonly sensitivity?: Sensitivity;
  /** Years to a first fade as a range; empty where the class is unknown. */
  readonly years: string;
  /** The same when published grades spread by a class. */
  readonly spread: string;
  /** Against the year's limit of its class. */
  readonly budget: string;
  readonly overBudget: boolean;
  readonly rotateBy?: IsoDay;
  readonly rotateBecause: string;
  /** Samples a swap set needs so that none hangs longer in a year. */
  readonly samplesNeeded?: number;
  readonly turns: readonly Turn[];
  /** Sentences: grades counted and passed over, by source. */
  readonly grades: readonly string[];
  /** "Measured on 1 Jul 2026 after 2.2 Mlx·h: grade 3 against its first colour."; empty where it was not. */
  readonly measured: string;
  /** What that changes in the plan, and by which rule; empty where it changes nothing. */
  readonly corrected: string;
  /** A day outdoors: "a day in shade: up to half of a first fade". */
  readonly outdoors: readonly string[];
}

/** A display's light plan, worked out. */
export interface LightPlanView {
  readonly id: string;
  readonly title: string;
  readonly plan: LightPlan;
  readonly window: 'none' | 'north' | 'sunny';
  readonly from: IsoDay;
  /** Set where nobody has measured the light yet. */
  readonly notMeasured: boolean;
  readonly dose: string;
  readonly colours: readonly LitColour[];
  readonly caveats: readonly string[];
  readonly limits: string;
  /** The day on which the first colour should leave the board. */
  readonly first?: IsoDay;
  /** The board after so many years of this light. */
  readonly after: { readonly years: number; readonly colours: readonly ColourAfterLight[] };
  /** Reminders as an iCalendar file. */
  readonly calendar: string;
}

/** What a board is taken to have where nothing is written: museum light on the usual year. Our choice, and said so on the page. */
const USUAL: LightPlan = { lux: 50, hoursPerDay: 8, daysPerYear: 300, uv: 'removed' };

/** After so many years a board is shown unless others are asked for. Our choice: about as long as one hangs before it is made anew. */
const USUAL_YEARS = 5;

/**
 * The light plan of a display; undefined when there is none of that id.
 *
 * @param now UTC, ISO 8601: stamps the calendar, and is the first day where the note gives none.
 */
export function lightPlanView(notebook: Notebook, id: string, typed: TypedLight, now: string): LightPlanView | undefined {
  const shown = shownColours(notebook, id);
  if (!shown) return undefined;
  const planned = plannedLight(notebook, shown, typed, now);
  const years = typed.years ?? USUAL_YEARS;
  return { ...planned, after: { years, colours: boardAfterLight(notebook, shown, planned.plan, years) } };
}

/** The plan alone, for whoever only needs its days. */
export function plannedLight(notebook: Notebook, shown: Shown, typed: TypedLight, now: string): Omit<LightPlanView, 'after'> {
  const setting = shown.record.light;
  const window = typed.window ?? setting?.window ?? 'none';
  const plan = planOf(setting, typed, window);
  const from = isoDay(typed.from ?? '') ?? isoDay(setting?.from?.text ?? '') ?? isoDay(now.slice(0, 10)) ?? ('2000-01-01' as IsoDay);
  const colours = shown.colours.map((one) => corrected(notebook.base, shown, one, plan, litColour(notebook.base, shown, one, plan, from)));
  const dated = colours.flatMap(({ rotateBy: day }) => (day === undefined ? [] : [day])).sort();
  const caveats: readonly LightCaveat[] = [
    'reciprocity',
    'spread-of-grades',
    'not-linear',
    'other-causes',
    'table-from-memory',
    'limit-from-memory',
    ...(window === 'none' ? [] : SILL_CAVEATS),
    ...OUTDOOR_CAVEATS,
  ];
  return {
    id: shown.id,
    title: shown.title,
    plan,
    window,
    from,
    notMeasured: setting?.lux === undefined && typed.lux === undefined,
    dose: `${luxHoursText(yearlyLuxHours(plan))} a year`,
    colours,
    caveats: [...new Set(caveats)].map((caveat) => caveatWords[caveat]),
    limits: LIMITS_SOURCE,
    ...(dated[0] === undefined ? {} : { first: dated[0] }),
    calendar: icalendar(remindersOf(shown, colours, from), now, `Light plan: ${shown.title}`),
  };
}

function planOf(setting: LightSetting | undefined, typed: TypedLight, window: LightPlanView['window']): LightPlan {
  if (window !== 'none') {
    const { daylightHours } = SILLS[window];
    const hoursPerDay = daylightHours / 365;
    return {
      lux: sillLuxHours(SILLS[window]) / daylightHours,
      hoursPerDay,
      daysPerYear: typed.daysPerYear ?? setting?.daysPerYear ?? 365,
      uv: typed.uv ?? 'rich',
    };
  }
  return {
    lux: typed.lux ?? setting?.lux ?? USUAL.lux,
    hoursPerDay: typed.hoursPerDay ?? setting?.hoursPerDay ?? USUAL.hoursPerDay,
    daysPerYear: typed.daysPerYear ?? setting?.daysPerYear ?? USUAL.daysPerYear,
    uv: typed.uv ?? setting?.uv ?? USUAL.uv,
  };
}

/** The class of a shown colour: by what its trial really used. */
export function lightClassOfShown(base: EvidenceBase, colour: PaletteColour, sample: DyedSample | undefined): LightClass {
  const instead = new Map(standInsOf(base, colour.judgement, sample).map(({ used, meant }) => [meant, used]));
  return lightClassOf(base, colour.judgement.route, sample?.fibre ?? colour.fibre, instead);
}

/** The light fastness of a colour in sentences, for a sheet. */
export function lightOf(base: EvidenceBase, colour: PaletteColour, sample: DyedSample | undefined): readonly string[] {
  const found = lightClassOfShown(base, colour, sample);
  return [classSentence(base, found), ...gradeSentences(base, found)];
}

/** Farther off than this a day says more than is known. @source the fifty years that time-share policies reckon with. */
const FAR_YEARS = 50;

function litColour(base: EvidenceBase, shown: Shown, one: ShownColour, plan: LightPlan, from: IsoDay): LitColour {
  const { colour, sample, swatch, what } = one;
  const found = colour && lightClassOfShown(base, colour, sample);
  const classes = found?.classes;
  const fade = classes && yearsToFade(classes, plan);
  const sensitivity = classes && sensitivityOf(classes);
  const budget = sensitivity && budgetShare(plan, sensitivity);
  const rotate = classes && rotateBy(classes, plan, from);
  const far = addDays(from, FAR_YEARS * 365);
  const soon = rotate && (far === undefined || rotate.day <= far) ? rotate : undefined;
  const shared = {
    what,
    title: titleOf(base, colour?.judgement.route.recipe ?? what),
    code: sample?.sample.code ?? '',
    hex: swatch?.hex ?? '',
    measured: measuredSentence(base, one),
    corrected: '',
    grades: found ? [...(classes ? [] : [classSentence(base, found)]), ...gradeSentences(base, found)] : [],
  };
  if (!classes || !sensitivity || !budget)
    return {
      ...shared,
      classText: 'unknown',
      years: '',
      spread: '',
      budget: '',
      overBudget: false,
      rotateBecause: '',
      turns: [],
      outdoors: [],
    };
  return {
    ...shared,
    classText: blueWoolText(classes),
    sensitivity,
    years: fade ? yearSpanText(fade.years) : '',
    spread: fade ? yearSpanText(fade.spread) : '',
    budget: budgetSentence(sensitivity, budget),
    overBudget: (budget.share ?? 0) > 1 || budget.tooBright,
    ...(soon && { rotateBy: soon.day, samplesNeeded: samplesForYear(daysBetween(from, soon.day), 365) }),
    rotateBecause: soon ? becauseOf(soon, sensitivity) : `not within ${FAR_YEARS} years at this light`,
    turns: turnsOf(
      shown.record.swapSets.find((set) => set.what.text === what),
      soon,
      from,
    ),
    outdoors: (['shade', 'sun'] as const).map((preset) => {
      const dose = outdoorDose(preset);
      const most = fadesOfDose(dose.to, classes, 'rich').to;
      const least = fadesOfDose(dose.from, classes, 'rich').from;
      return `A day in ${preset === 'sun' ? 'the sun' : 'open shade'}: ${fadeText(least)} to ${fadeText(most)} of a first fade.`;
    }),
  };
}

/**
 * A colour's plan after its cloth was measured again on the board: see `leftToFade`. Only readings since it went up count, and
 * only under light with the ultraviolet that made the fade.
 */
function corrected(base: EvidenceBase, shown: Shown, one: ShownColour, plan: LightPlan, lit: LitColour): LitColour {
  const setting = shown.record.light;
  const hung = isoDay(setting?.from?.text ?? '');
  const last = measuredAgain(base, lit.code, one.sample?.colour.lab10);
  const real = planOf(setting, {}, setting?.window ?? 'none');
  if (!hung || !last || last.day <= hung || real.uv !== plan.uv) return lit;
  const seen = { deltaEF: last.change.deltaEF, luxHours: doseInDays(daysHung(lit, hung, last.day), real) };
  const classes = one.colour && lightClassOfShown(base, one.colour, one.sample).classes;
  const left = leftToFade(seen, classes && jnfLuxHours(classes.from, plan.uv));
  if (!left || left.because === 'as-published') return lit;
  const day = left.because === 'shown' ? last.day : dayOfDose(left.luxHours, plan, last.day);
  if (!day || (lit.rotateBy && lit.rotateBy <= day)) return lit;
  const because =
    left.because === 'shown'
      ? `a first fade was seen on ${dayWords(last.day)}`
      : `it fades sooner than its class says: by what was seen, a first fade after ${luxHoursText(left.luxHours)} more`;
  return { ...lit, rotateBy: day, rotateBecause: because, corrected: SEEN_RULE };
}

const SEEN_RULE =
  'Corrected by what was measured: a straight line from the first reading to grade 4. Our choice: it only ever brings the day nearer.';

/** Days a sample has hung by a day: its turns of a swap set, or all of them. */
function daysHung({ code, turns }: LitColour, hung: IsoDay, day: IsoDay): number {
  const own = turns.filter((turn) => turn.code === code && turn.from < day);
  if (turns.length === 0) return daysBetween(hung, day);
  return own.reduce((sum, { from, until }) => sum + daysBetween(from, until < day ? until : day), 0);
}

function measuredSentence(base: EvidenceBase, { sample }: ShownColour): string {
  const last = measuredAgain(base, sample?.sample.code ?? '', sample?.colour.lab10);
  return last
    ? `Measured on ${dayWords(last.day)}${last.dose === '' ? '' : ` after ${last.dose}`}: grey-scale change ${last.change.step} (5 is none), ΔE00 ${last.deltaE00.toFixed(1)}.`
    : '';
}

const fadeText = (fades: number): string =>
  fades > 1.5 ? `${Number(fades.toPrecision(2))} times the dose` : fades < 0.005 ? 'under 1 %' : `${Math.round(fades * 100)} %`;

function budgetSentence(sensitivity: Sensitivity, { share, tooBright, hoursAllowed }: ReturnType<typeof budgetShare>): string {
  const name = sensitivityWords[sensitivity];
  if (share === undefined) return `${name}: no limit.`;
  const hours = hoursAllowed === undefined ? '' : `; ${Math.floor(hoursAllowed)} hours a year are allowed at this light`;
  const bright = tooBright ? `; brighter than the ${LIGHT_LIMITS[sensitivity].lux ?? 0} lx of its class` : '';
  return `${name}: ${shareText(share)} its year’s light${hours}${bright}.`;
}

const becauseOf = ({ because, luxHours }: RotateBy, sensitivity: Sensitivity): string =>
  because === 'year-limit'
    ? `the year’s light of ${sensitivityWords[sensitivity]} is used up (${luxHoursText(luxHours)})`
    : `a first fade may show (${luxHoursText(luxHours)})`;

function turnsOf(set: SwapSet | undefined, rotate: RotateBy | undefined, from: IsoDay): readonly Turn[] {
  const daysEach = set?.days ?? (rotate && daysBetween(from, rotate.day));
  const until = addDays(from, 365);
  return set && daysEach !== undefined && until ? swapTurns(set.codes, daysEach, from, until) : [];
}

function classSentence(base: EvidenceBase, { classes, unknown, without }: LightClass): string {
  if (classes) return `Light fastness: ${blueWoolText(classes)}.`;
  if (unknown === 'undyed') return 'Light fastness: not known for undyed cloth; it yellows or bleaches in its own way.';
  return `Light fastness: unknown. The notes hold no grade that fits ${without.map((dye) => inSentence(base, dye)).join(' and ')} on this fibre and mordant.`;
}

const gradeSentences = (base: EvidenceBase, { grades }: LightClass): readonly string[] =>
  grades.map(({ dye, grade, classes, passedOver }) => {
    const on = [
      grade.on && titleOf(base, base.resolve(grade.on.text, ['fibre'])).toLowerCase(),
      grade.mordant && inSentence(base, base.resolve(grade.mordant.text, ['mordant'])),
    ]
      .filter((part) => part !== undefined)
      .join(', ');
    const source = sourceText(grade.sources);
    return `${titleOf(base, dye)}${on === '' ? '' : ` on ${on}`}: ${grade.grade ?? 'no grade'}${grade.scale === undefined ? '' : ` (${grade.scale})`}${source === '' ? '' : `, ${source}`}${classes ? '' : `; not counted: ${passedOver ? passedOverWords[passedOver] : ''}`}.`;
  });

/** Days ahead for which reminders are written. Our choice: ten years, the life of a calendar. */
const REMINDER_DAYS = 3650;

/** A swap or a taking down for every dated colour, and a look at the board after a year. */
function remindersOf(shown: Shown, colours: readonly LitColour[], from: IsoDay): readonly Reminder[] {
  const uid = (part: string) => `${shown.id}/${part}@tenterground`;
  const year = addDays(from, 365);
  const farthest = addDays(from, REMINDER_DAYS);
  const soon = (day: IsoDay | undefined): day is IsoDay => day !== undefined && (farthest === undefined || day <= farthest);
  return [
    ...colours.flatMap((one): Reminder[] =>
      one.turns.length > 0
        ? one.turns.slice(0, -1).map(({ until }, at) => ({
            uid: uid(`${one.what}/${at + 1}`),
            day: until,
            summary: `Swap ${one.title}: ${one.turns[at]?.code ?? ''} down, ${one.turns[at + 1]?.code ?? ''} up`,
            description: one.rotateBecause,
          }))
        : !soon(one.rotateBy)
          ? []
          : [
              {
                uid: uid(one.what),
                day: one.rotateBy,
                summary: `Take down ${one.title}${one.code === '' ? '' : ` (${one.code})`}`,
                description: one.rotateBecause,
              },
            ],
    ),
    ...(year ? [{ uid: uid('measure'), day: year, summary: `${shown.title}: measure every cloth against its master sample` }] : []),
  ];
}
