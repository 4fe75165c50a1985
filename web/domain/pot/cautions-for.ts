import type { EvidenceBase } from '../claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../claim/evidence-base.ts';
import { namesOf } from '../claim/name-index.ts';
import type { Note, NoteId } from '../note/note.ts';
import { fold } from '../text/fold.ts';
import { CAUTION_SOURCES, type CautionCode, type CautionPlace, STEP_WORDS, SUBSTANCES } from './caution-table.ts';
import type { DyeDayPlan } from './dye-day.ts';
import { type Audience, isStaffOnly, refusalOf } from './never-dosed.ts';
import { temperaturesIn } from './step-figures.ts';

/** A caution where the hand is: a built-in one by its code, or a note's own words. */
export interface Caution {
  readonly place: CautionPlace;
  /** The material it is about, where it is about one. */
  readonly about?: string;
  /** The recipe whose step or tag it stands at. */
  readonly recipe?: NoteId;
  /** The step it stands at, from 0. */
  readonly step?: number;
  readonly code?: CautionCode;
  /** A note's own words. */
  readonly text?: string;
  readonly sources: readonly string[];
}

/** From here on liquor scalds at once. Our choice. */
const SCALDING_CELSIUS = 55;
/** Wet fibre and liquor heavier than this want two people. Our choice. */
const HEAVY_ML = 10_000;

const builtIn = (place: CautionPlace, code: CautionCode, more: Pick<Caution, 'about' | 'recipe' | 'step'> = {}): Caution => ({
  place,
  code,
  sources: CAUTION_SOURCES[code],
  ...more,
});

/** The cautions at a substance: the built-in ones by its names, then its note's own. */
export function substanceCautions(base: EvidenceBase, what: string, form?: string): readonly Caution[] {
  const id = base.resolve(what, MATERIAL_KINDS);
  const note = base.note(id);
  const names = [id, ...(note ? namesOf(note) : []), ...(form === undefined ? [] : [form])].map((name) => fold(name).replace(/['’]/g, ''));
  const codes = new Set<CautionCode>();
  for (const [pattern, said] of SUBSTANCES) if (names.some((name) => pattern.test(name))) for (const code of said) codes.add(code);
  if (note?.record.kind === 'dyestuff' && note.record.matter === 'lichen') codes.add('lichen');
  if (note?.record.kind === 'dyestuff' && note.record.matter === 'fungus') codes.add('deadly-fungus');
  const refused = refusalOf(note, id, form);
  if (refused !== undefined && refused !== 'chromium' && refused !== 'protected-lichen') codes.add('history-never');
  if (refused === 'chromium') codes.add('chrome-never');
  return [...[...codes].map((code) => builtIn('substance', code, { about: id })), ...ownCautions(note, id)];
}

function ownCautions(note: Note | undefined, about: string): readonly Caution[] {
  if (!note || !('cautions' in note.record)) return [];
  const sources = note.sources.length > 0 ? note.sources.map(({ key }) => key) : [note.id];
  return note.record.cautions.map((text) => ({ place: 'substance', about, text, sources }));
}

/**
 * The cautions of a recipe: at each substance, at each step, on the tag of what comes out. The recipe's own stand with its plan.
 *
 * @returns empty for no such recipe; else it always ends with local rules, the safety data sheet and a competent person.
 */
export function recipeCautions(base: EvidenceBase, recipe: NoteId): readonly Caution[] {
  const note = base.note(recipe);
  if (note?.record.kind !== 'recipe') return [];
  const { ingredients, steps, cautions } = note.record;
  const used = ingredients.map(({ what, form }) => ({ id: what ? base.resolve(what.text, MATERIAL_KINDS) : '', form }));
  const said = unique(used.flatMap(({ id, form }) => substanceCautions(base, id, form)));
  return [
    ...said,
    ...steps.flatMap((text, step) => stepCautions(recipe, text, step)),
    ...tagCautions(base, recipe, used),
    ...cautions.map((text): Caution => ({ place: 'plan', text, sources: [recipe] })),
    builtIn('plan', 'competent-person'),
  ];
}

/** The cautions of a pot that was run: at what went in, and on the tag of what came out. Empty for no such trial. */
export function trialCautions(base: EvidenceBase, trial: NoteId): readonly Caution[] {
  const record = base.note(trial)?.record;
  if (record?.kind !== 'trial') return [];
  const used = record.actual.map(({ what, form }) => ({ id: what ? base.resolve(what.text, MATERIAL_KINDS) : '', form }));
  return [
    ...unique(used.flatMap(({ id, form }) => substanceCautions(base, id, form))),
    ...tagCautions(base, trial, used),
    builtIn('plan', 'competent-person'),
  ];
}

function stepCautions(recipe: NoteId, text: string, step: number): readonly Caution[] {
  const codes = new Set(STEP_WORDS.flatMap(([pattern, code]) => (pattern.test(text) ? [code] : [])));
  if (temperaturesIn(text).some(({ toCelsius }) => toCelsius >= SCALDING_CELSIUS)) codes.add('hot-liquor');
  return [...codes].map((code) => builtIn('step', code, { recipe, step }));
}

interface Used {
  readonly id: string;
  readonly form: string | undefined;
}

/** What the tag of the cloth has to say. */
function tagCautions(base: EvidenceBase, recipe: NoteId, used: readonly Used[]): readonly Caution[] {
  const names = used.flatMap(({ id, form = '' }) => [id, form, ...namesHeld(base, id)]).map(fold);
  const has = (pattern: RegExp) => names.some((name) => pattern.test(name));
  const iron = has(/\b(?:iron|copperas|green vitriol|ferrous)\b/);
  const tin = has(/\b(?:tin|stannous)\b/);
  const codes: CautionCode[] = [];
  if (iron && has(/\b(?:galls?|sumac|tannin|oak bark|alder bark|tormentil|myrobalan|pomegranate)\b/)) codes.push('iron-tannin-weakens');
  if (tin) codes.push('tin-hardens');
  if (iron || tin || isStaffOnly(names)) codes.push('not-for-small-children');
  return codes.map((code) => builtIn('tag', code, { recipe }));
}

const namesHeld = (base: EvidenceBase, id: string): readonly string[] => {
  const note = base.note(id);
  return note ? namesOf(note) : [];
};

/**
 * The cautions of a day: everything its recipes need, then what holds for the whole day: pots, air, waste, wool before it enters
 * a gallery, and the station when the public is there.
 */
export function planCautions(base: EvidenceBase, plan: DyeDayPlan, audience: Audience = 'public'): readonly Caution[] {
  const recipes = [...new Set(plan.baths.flatMap((bath) => bath.recipes))];
  if (recipes.length === 0) return [];
  const each = recipes.flatMap((recipe) => recipeCautions(base, recipe)).filter(({ code }) => code !== 'competent-person');
  const weights = plan.baths.flatMap((bath) => bath.weights);
  const names = weights.flatMap(({ what, form = '' }) => [what, form, ...namesHeld(base, what)]);
  const day: CautionCode[] = ['own-pots', 'air-and-gloves', 'never-mix', 'health'];
  if ((plan.largestPotMl ?? 0) >= HEAVY_ML) day.push('heavy-pot');
  if (audience === 'public') day.push('children-station');
  if (plan.fibres.some(({ fibre }) => fibre === undefined || base.fibreClassOf(fibre) === 'protein')) day.push('quarantine-wool');
  if (isStaffOnly(names) || weights.some(({ refused }) => refused !== undefined)) day.push('waste-metals');
  if (names.some((name) => /\b(?:alum|iron|copperas|tannin)\b/.test(fold(name)))) day.push('waste-alum-iron');
  if (plan.baths.some(({ kind }) => kind === 'vat')) day.push('waste-vat');
  return [...unique(each), ...day.map((code) => builtIn('plan', code)), builtIn('plan', 'competent-person')];
}

/** Each caution once: the same words at the same place about the same thing. */
function unique(list: readonly Caution[]): readonly Caution[] {
  const seen = new Set<string>();
  return list.filter(({ place, about, recipe, step, code, text }) => {
    const key = [place, about ?? '', recipe ?? '', step ?? '', code ?? '', text ?? ''].join('|');
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
