import { spliceValue } from '../domain/note/splice.ts';
import type { PlainValue } from '../domain/note/yaml-text.ts';
import type { DyeDayPlan } from '../domain/pot/dye-day.ts';
import { planDyeDay } from '../domain/pot/dye-day-plan.ts';
import { type DayPot, potsOfPlan } from '../domain/pot/pots-of-plan.ts';
import type { Moment } from '../domain/pot/pot-log.ts';
import { formShown } from '../domain/pot/without-doses.ts';
import { nextCodes } from '../domain/pot/sample-code.ts';
import type { TypedDyeDay } from './dye-day-address.ts';
import type { Notebook } from './notebook.ts';
import { inSentence, titleOf } from './words/claim-line.ts';
import { quantityText } from './words/pot-words.ts';

/** A pot before it is dyed, as a trial note: its skeins have their codes, its log is empty. */
export interface PotNote {
  readonly id: string;
  readonly path: string;
  readonly text: string;
  readonly codes: readonly string[];
}

/**
 * The pots of a day as notes to be saved, one for each pot, so that every skein has its code before it is wet.
 *
 * @param now by the reader's own clock: it tells two pots apart that got one number on machines that could not ask each other.
 * @returns fewer than the day has pots where the year's numbers run out.
 */
export function potNotes({ base }: Notebook, day: TypedDyeDay, now: Moment): readonly PotNote[] {
  const plan = planDyeDay(base, day.items, day.staff ? 'staff' : 'public');
  const pots = potsOfPlan(base, day.items, plan);
  const notes: PotNote[] = [];
  const given: string[] = [];
  for (const pot of pots) {
    const skeins = skeinsOf({ base }, day, pot);
    const codes = nextCodes(base, Number(now.day.slice(0, 4)), skeins.length, given);
    const id = codes[0]?.split('-').slice(0, 2).join('-');
    if (id === undefined) return notes;
    given.push(...codes);
    const after = pot.finishes === undefined ? undefined : notes[pot.finishes]?.id;
    notes.push({ id, path: `trials/${id}.md`, text: noteText({ base }, day, plan, pot, { id, codes, skeins, now, after }), codes });
  }
  return notes;
}

interface Skein {
  readonly fibre: string | undefined;
  readonly grams: number;
}

/** Each item's mass in equal skeins. */
function skeinsOf({ base }: Pick<Notebook, 'base'>, { items }: TypedDyeDay, pot: DayPot): readonly Skein[] {
  const record = base.note(pot.recipe)?.record;
  const own = record?.kind === 'recipe' && record.fibre[0] ? base.resolve(record.fibre[0].text, ['fibre']) : undefined;
  return pot.items.flatMap((at) => {
    const item = items[at];
    if (!item) return [];
    const fibre = item.fibre === undefined ? own : base.resolve(item.fibre, ['fibre']);
    return Array.from({ length: item.skeins }, () => ({ fibre, grams: Number((item.fibreGrams / item.skeins).toPrecision(4)) }));
  });
}

interface Given {
  readonly id: string;
  readonly codes: readonly string[];
  readonly skeins: readonly Skein[];
  readonly now: Moment;
  readonly after: string | undefined;
}

function noteText(
  { base }: Pick<Notebook, 'base'>,
  { items, staff }: TypedDyeDay,
  plan: DyeDayPlan,
  pot: DayPot,
  { id, codes, skeins, now, after }: Given,
): string {
  const record = base.note(pot.recipe)?.record;
  const used = (record?.kind === 'recipe' ? record.ingredients : []).flatMap(({ what, role, form, standsFor }) =>
    what
      ? [
          {
            what: what.text,
            ...(role && { role }),
            ...(form !== undefined && { form: formShown(base, { what, form }, staff ? 'staff' : 'public') }),
            ...(standsFor && { 'stands-for': standsFor.text }),
          },
        ]
      : [],
  );
  const keys: readonly (readonly [string, PlainValue])[] = [
    ['title', `${titleOf(base, pot.recipe)}, pot ${id}`],
    ['recipe', pot.recipe],
    ['date', now.day],
    ...(pot.nth > 1 ? [['bath', { nth: pot.nth, ...(after !== undefined && { after }) }] as const] : []),
    ['actual', used],
    ['log', []],
    ['deviations', []],
    [
      'samples',
      skeins.map(({ fibre, grams }, at) => ({ code: codes[at] ?? '', ...(fibre !== undefined && { fibre }), 'fibre-mass': `${grams} g` })),
    ],
  ];
  const bare = `---\nkind: trial\n---\n\n${plannedText({ base }, items, plan, pot, now)}\n`;
  return keys.reduce((text, [key, value]) => {
    const spliced = spliceValue(text, [key], value);
    return spliced.ok ? spliced.value : text;
  }, bare);
}

/** What was planned, in words: what really went in is written down at the pot. */
function plannedText({ base }: Pick<Notebook, 'base'>, items: TypedDyeDay['items'], plan: DyeDayPlan, pot: DayPot, now: Moment): string {
  const grams = pot.items.reduce((sum, at) => sum + (items[at]?.fibreGrams ?? 0), 0);
  const lines = pot.baths.flatMap((nth) => {
    const bath = plan.baths[nth - 1];
    if (!bath || bath.fibreGrams <= 0) return [];
    const share = grams / bath.fibreGrams;
    return bath.weights.flatMap(({ what, planned }) =>
      planned ? [`${quantityText({ ...planned, from: planned.from * share, to: planned.to * share })} ${inSentence(base, what)}`] : [],
    );
  });
  const planned = `Planned ${now.day} ${now.clock} for ${quantityText({ from: grams, to: grams, unit: 'g' })} of fibre`;
  return lines.length === 0 ? `${planned}.` : `${planned}: ${lines.join(', ')}.`;
}
