import { type EvidenceBase, MATERIAL_KINDS } from '../../domain/claim/evidence-base.ts';
import { closeness, deltaE00 } from '../../domain/colour/delta-e.ts';
import type { Note, NoteId, TrialRecord } from '../../domain/note/note.ts';
import { trialCautions } from '../../domain/pot/cautions-for.ts';
import { repeatability } from '../../domain/pot/repeatability.ts';
import { trialFacts } from '../../domain/pot/trial-facts.ts';
import { amountShown, formShown, withoutDoses } from '../../domain/pot/without-doses.ts';
import { dyedRecipes, type DyedSample } from '../../domain/verdict/cloths.ts';
import type { Notebook } from '../notebook.ts';
import { deltaText } from '../words/because.ts';
import { inSentence, titleOf } from '../words/claim-line.ts';
import { dayWords } from '../words/day-words.ts';
import { cautionText } from '../words/pot-caution-words.ts';
import { repeatabilityText } from '../words/trial-words.ts';
import { weaveOf } from './cloth-view.ts';
import { type FastnessRow, type LightTestView, lightTestViews, triedFastness } from './fastness-view.ts';
import { linkedTo } from './linked-notes.ts';

/** A skein of a pot. */
export interface TrialSkein {
  readonly code: string;
  readonly hex?: string;
  readonly inScreenGamut: boolean;
  readonly weave: string;
  /** "wool, 50 g, onto fleece white". */
  readonly text: string;
  /** "38.6, 47.5, 16.2 (D65, 10°; spectrum)". */
  readonly lab: string;
}

/** Another note, with what ties it to this one. */
export interface TrialTie {
  readonly id: string;
  readonly title: string;
  readonly why: string;
}

/** Another pot of the same recipe. */
export interface OtherPot {
  readonly id: string;
  readonly title: string;
  readonly hex: string;
  readonly weave: string;
  /** "ΔE00 2.4, match". */
  readonly apart: string;
}

/** A lot that was used, with the other pots it went into. */
export interface LotView {
  readonly text: string;
  readonly others: readonly { readonly id: string; readonly title: string }[];
}

/** Everything on one trial. */
export interface TrialView {
  readonly id: string;
  readonly title: string;
  readonly invented: boolean;
  readonly recipe?: { readonly id: string; readonly title: string };
  readonly facts: readonly { readonly label: string; readonly text: string }[];
  readonly materials: readonly {
    readonly id: string;
    readonly title: string;
    readonly role: string;
    readonly amount: string;
    readonly form: string;
    readonly standsFor: string;
  }[];
  readonly log: readonly string[];
  readonly deviations: readonly string[];
  readonly skeins: readonly TrialSkein[];
  readonly ties: readonly TrialTie[];
  readonly lots: readonly LotView[];
  readonly others: readonly OtherPot[];
  readonly repeatable: string;
  readonly fastness: readonly FastnessRow[];
  readonly lightTests: readonly LightTestView[];
  readonly cautions: readonly string[];
}

/** Everything on one trial; undefined when the notebook has none of that id. */
export function trialView(notebook: Notebook, id: string): TrialView | undefined {
  const { base, colours } = notebook;
  const note = base.note(id);
  if (note?.record.kind !== 'trial') return undefined;
  const { record } = note;
  const recipe = record.recipe && base.resolve(record.recipe.text, ['recipe']);
  const dyed = recipe === undefined ? [] : (dyedRecipes(base, colours).find((one) => one.recipe === recipe)?.samples ?? []);
  const say = (text: string) => withoutDoses(base, text);
  return {
    id: note.id,
    title: say(note.title),
    invented: note.invented,
    ...(recipe === undefined ? {} : { recipe: { id: recipe, title: titleOf(base, recipe) } }),
    facts: factsOf(base, note.id, record),
    materials: record.actual.map((one) => {
      const used = one.what ? base.resolve(one.what.text, MATERIAL_KINDS) : '';
      return {
        id: used,
        title: titleOf(base, used),
        role: one.role ?? '',
        amount: amountShown(base, one),
        form: formShown(base, one),
        standsFor: one.standsFor ? inSentence(base, base.resolve(one.standsFor.text, MATERIAL_KINDS)) : '',
      };
    }),
    log: record.log.map(say),
    deviations: record.deviations.map(say),
    skeins: record.samples.map((sample, nth) => skeinOf(notebook, note, sample, nth)),
    ties: tiesOf(base, note, record),
    lots: record.lots.map((lot) => ({ text: say(lot), others: othersWithLot(base, note.id, lot) })),
    others: otherPots(base, note.id, dyed),
    repeatable: recipe === undefined ? '' : repeatabilityText(repeatability(base, dyed)),
    fastness: triedFastness(base, record, note.id),
    lightTests: lightTestViews(
      base,
      record.samples.flatMap(({ code }) => code ?? []),
    ),
    cautions: trialCautions(base, note.id).map(cautionText),
  };
}

function factsOf(base: EvidenceBase, id: NoteId, record: TrialRecord): TrialView['facts'] {
  const facts = trialFacts(base, id);
  const water = [record.water?.hardness, record.water?.pH === undefined ? undefined : `pH ${record.water.pH}`, record.water?.note];
  const rows: readonly (readonly [label: string, text: string | undefined])[] = [
    ['Dyed on', record.date && dayWords(record.date.text)],
    ['By', record.by],
    ['Vessel', record.vessel],
    ['Water', water.filter((part) => part !== undefined).join(', ')],
    ['Bath', record.bath?.nth === undefined ? undefined : `${record.bath.nth}`],
    ['Fibre', facts?.fibreGrams === undefined ? undefined : `${facts.fibreGrams} g in the pot`],
    ['Hottest', facts?.topCelsius === undefined ? undefined : `${facts.topCelsius} °C`],
    ['At heat', facts?.heldMinutes === undefined ? undefined : `${facts.heldMinutes} min`],
  ];
  return rows.flatMap(([label, text]) => (text === undefined || text === '' ? [] : [{ label, text }]));
}

function skeinOf({ base, colours }: Notebook, note: Note, sample: TrialRecord['samples'][number], nth: number): TrialSkein {
  const colour = colours.of(sample, note.file);
  const fibre = sample.fibre && base.resolve(sample.fibre.text, ['fibre']);
  const text = [
    fibre === undefined ? undefined : inSentence(base, fibre),
    sample.fibreGrams === undefined ? undefined : `${sample.fibreGrams} g`,
    sample.onto === undefined ? undefined : `onto ${sample.onto}`,
    sample.note === undefined ? undefined : withoutDoses(base, sample.note),
  ];
  return {
    code: sample.code ?? `${note.id}, skein ${nth + 1}`,
    ...(colour && { hex: colour.hex }),
    inScreenGamut: colour?.inScreenGamut ?? true,
    weave: weaveOf(base, fibre),
    text: text.filter((part) => part !== undefined).join(', '),
    lab: colour
      ? `L*a*b* ${colour.lab10.map((one) => one.toFixed(1)).join(', ')} (D65, 10°; ${sample.colour?.by ?? (sample.spectrum ? 'spectrum' : 'how it was got is not said')})`
      : 'No colour written down.',
  };
}

/** The pot before and after, what it was dyed onto, what was dyed onto it, and what names it. */
function tiesOf(base: EvidenceBase, note: Note, record: TrialRecord): readonly TrialTie[] {
  const ties: TrialTie[] = [];
  const add = (other: string | undefined, why: string) => {
    const found = other === undefined ? undefined : base.note(other);
    if (found && found.id !== note.id && !ties.some(({ id }) => id === found.id)) ties.push({ id: found.id, title: found.title, why });
  };
  add(record.bath?.after && base.resolve(record.bath.after.text, ['trial']), 'the bath before this one');
  for (const { onto } of record.samples) if (onto !== undefined && base.note(onto)?.record.kind === 'trial') add(onto, 'dyed onto this');
  for (const other of base.ofKind('trial')) {
    const { bath, samples } = other.record;
    if (bath?.after && base.resolve(bath.after.text, ['trial']) === note.id) add(other.id, 'a later bath of the same liquor');
    if (samples.some(({ onto }) => onto === note.id)) add(other.id, 'dyed onto a skein of this pot');
  }
  for (const other of linkedTo(base, note))
    if (other.record.kind === 'trial') add(other.id, 'names this pot: a repeat of it, perhaps with one thing changed');
  return ties;
}

/** Pots with the same lot, its name compared as it is written. */
function othersWithLot(base: EvidenceBase, trial: string, lot: string): LotView['others'] {
  const wanted = lot.trim().toLowerCase();
  return base
    .ofKind('trial')
    .filter(({ id, record }) => id !== trial && record.lots.some((one) => one.trim().toLowerCase() === wanted))
    .map(({ id, title }) => ({ id, title }));
}

function otherPots(base: EvidenceBase, trial: NoteId, dyed: readonly DyedSample[]): readonly OtherPot[] {
  const own = dyed.find((one) => one.trial === trial);
  const seen = new Set<string>([trial]);
  return dyed
    .filter((one) => !seen.has(one.trial) && seen.add(one.trial))
    .map((one) => ({ one, apart: own && deltaE00(own.colour.lab10, one.colour.lab10) }))
    .sort((a, b) => (a.apart ?? 0) - (b.apart ?? 0))
    .map(({ one, apart }) => ({
      id: one.trial,
      title: titleOf(base, one.trial),
      hex: one.colour.hex,
      weave: weaveOf(base, one.fibre),
      apart: apart === undefined ? '' : `ΔE00 ${deltaText(apart)}, ${closeness(apart).replace('-', ' ')}`,
    }));
}
