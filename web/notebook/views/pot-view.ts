import { amountShown, formShown, withoutDoses } from '../../domain/pot/without-doses.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { swatchFromStated } from '../../domain/colour/swatch-colour.ts';
import { noteId, type Note, type Sample, type TrialRecord } from '../../domain/note/note.ts';
import { recipeCautions } from '../../domain/pot/cautions-for.ts';
import { type LogLine, type Moment, type PotTimer, readLogLine, timersIn } from '../../domain/pot/pot-log.ts';
import { type CodeFound, findByCode } from '../../domain/pot/sample-code.ts';
import { scaleRecipe } from '../../domain/pot/scale-recipe.ts';
import { readSkeinCode } from '../../domain/pot/skein-code.ts';
import type { Notebook } from '../notebook.ts';
import { inSentence, titleOf } from '../words/claim-line.ts';
import { cautionText } from '../words/pot-caution-words.ts';
import { codeFoundWords, potStateWords } from '../words/pot-log-words.ts';
import { quantityText, scaleProblemWords } from '../words/pot-words.ts';
import { cautionsAtStep, type StepView } from './dye-day-view.ts';

/** How far a pot is. */
export type PotState = keyof typeof potStateWords;

/** A pot in the list of those with tags. */
export interface PotLine {
  readonly id: string;
  readonly title: string;
  readonly state: PotState;
  readonly stateWord: string;
  readonly date: string;
  readonly codes: readonly string[];
}

/** A skein with its code. */
export interface SkeinView {
  readonly code: string;
  /** Its place among the trial's samples, from 0. */
  readonly nth: number;
  readonly fibre: string;
  readonly grams: string;
  /** Present once a colour was written down. */
  readonly hex?: string;
}

/** A line of a log. */
export interface LogLineView {
  readonly when: string;
  readonly words: string;
  /** "written down 13:05", "clock set back from 11:40"; empty where it was written at once by a clock that went on. */
  readonly late: string;
  readonly photo: string;
}

/** Something to weigh at the pot. */
export interface ToWeigh {
  /** Its place among the trial's `actual`, from 0. */
  readonly nth: number;
  readonly what: string;
  /** As the recipe has it for this fibre. */
  readonly planned: string;
  /** What was weighed, as the note says; empty before. */
  readonly weighed: string;
  readonly problem: string;
}

/** A pot for the person who stands at it. */
export interface PotView {
  readonly id: string;
  readonly title: string;
  readonly recipe: string;
  readonly recipeTitle: string;
  readonly state: PotState;
  readonly planned: string;
  readonly skeins: readonly SkeinView[];
  readonly toWeigh: readonly ToWeigh[];
  readonly steps: readonly StepView[];
  readonly log: readonly LogLineView[];
  readonly timers: readonly PotTimer[];
  readonly care: readonly string[];
}

/** One sample's tag. */
export interface TagView {
  readonly code: string;
  readonly trial: string;
  readonly recipe: string;
  readonly fibre: string;
  readonly date: string;
  readonly cautions: readonly string[];
}

/** Where a code leads, said in words where it leads nowhere. */
export type CodeView =
  | { readonly is: 'one'; readonly skein: SkeinView; readonly pot: PotLine; readonly recipe: string; readonly recipeTitle: string }
  | { readonly is: 'several'; readonly says: string; readonly trials: readonly { readonly id: string; readonly title: string }[] }
  | { readonly is: 'free'; readonly says: string }
  | { readonly is: 'none'; readonly says: string };

type Trial = Note & { readonly record: TrialRecord };

/** Pots whose skeins have codes with a check character, the newest first. */
export function potList({ base }: Notebook): readonly PotLine[] {
  return base
    .ofKind('trial')
    .filter(({ record }) => record.samples.some(({ code }) => code !== undefined && readSkeinCode(code)))
    .map((note) => potLine(base, note as Trial))
    .sort((a, b) => (a.id < b.id ? 1 : -1));
}

const potLine = (base: EvidenceBase, { id, title, record }: Trial): PotLine => ({
  id,
  title: withoutDoses(base, title),
  state: stateOf(record),
  stateWord: potStateWords[stateOf(record)],
  date: record.date?.text ?? '',
  codes: record.samples.flatMap(({ code }) => (code === undefined ? [] : [code])),
});

const stateOf = ({ samples, log }: TrialRecord): PotState =>
  samples.some(({ colour, spectrum }) => colour ?? spectrum) ? 'done' : log.length > 0 ? 'under-way' : 'prepared';

/** One pot, for logging; undefined when there is no trial of that id. */
export function potView({ base }: Notebook, id: string): PotView | undefined {
  const note = base.note(id);
  if (note?.record.kind !== 'trial') return undefined;
  const { record } = note;
  const day = record.date?.text;
  const recipe = record.recipe ? base.resolve(record.recipe.text, ['recipe']) : '';
  const asked = base.note(recipe)?.record;
  const cautions = recipeCautions(base, noteId(recipe));
  const lines = record.log.map((line) => readLogLine(line, day));
  return {
    id: note.id,
    title: withoutDoses(base, note.title),
    recipe,
    recipeTitle: recipe === '' ? '' : titleOf(base, recipe),
    state: stateOf(record),
    planned: withoutDoses(base, /^Planned [^\n]*/m.exec(note.source.slice(note.bodyStart))?.[0] ?? ''),
    skeins: skeinsOf(base, record),
    toWeigh: toWeigh(base, record, recipe),
    steps: (asked?.kind === 'recipe' ? asked.steps : []).map((text, step) => ({
      text: withoutDoses(base, text),
      cautions: cautionsAtStep(cautions, noteId(recipe), step),
    })),
    log: lines.map((line) => logLineView({ ...line, words: withoutDoses(base, line.words) }, day)),
    timers: timersIn(lines),
    care: cautions.filter(({ place }) => place !== 'step').map(cautionText),
  };
}

const skeinsOf = (base: EvidenceBase, { samples }: TrialRecord): readonly SkeinView[] =>
  samples.flatMap((sample, nth) => (sample.code === undefined ? [] : [skeinView(base, sample, nth)]));

function skeinView(base: EvidenceBase, { code = '', fibre, fibreGrams, colour }: Sample, nth: number): SkeinView {
  const swatch = colour && swatchFromStated(colour);
  return {
    code,
    nth,
    fibre: fibre ? inSentence(base, base.resolve(fibre.text, ['fibre'])) : '',
    grams: fibreGrams === undefined ? '' : quantityText({ from: fibreGrams, to: fibreGrams, unit: 'g' }),
    ...(swatch?.ok && { hex: swatch.value.hex }),
  };
}

/** Amounts of tin and copper are for the staff view of the recipe; what is never dosed has none anywhere. */
function toWeigh(base: EvidenceBase, { actual, samples }: TrialRecord, recipe: string): readonly ToWeigh[] {
  const grams = samples.reduce((sum, { fibreGrams }) => sum + (fibreGrams ?? 0), 0);
  const scaled = scaleRecipe(base, noteId(recipe), grams > 0 ? grams : undefined)?.ingredients ?? [];
  return actual.flatMap((one, nth): ToWeigh[] => {
    const { what } = one;
    if (!what) return [];
    const id = base.resolve(what.text, ['mordant', 'dyestuff', 'assistant', 'process']);
    // Water is measured by the pot, not weighed.
    if (id === 'water') return [];
    const asked =
      scaled.find((other) => other.what === id && other.form === formShown(base, one)) ?? scaled.find((other) => other.what === id);
    return [
      {
        nth,
        what: [titleOf(base, id), formShown(base, one)].filter((part) => part !== '').join(', '),
        planned: asked?.asPlanned ? quantityText(asked.asPlanned) : '',
        weighed: amountShown(base, one),
        problem: asked?.problem === 'never-dosed' || asked?.problem === 'staff-only' ? scaleProblemWords[asked.problem] : '',
      },
    ];
  });
}

function logLineView({ at, words, writtenAt, clockWas }: LogLine, day: string | undefined): LogLineView {
  const photo = /^photo (\S+)$/.exec(words)?.[1] ?? '';
  const told = (moment: Moment) => (moment.day === at?.day ? moment.clock : `${moment.day} ${moment.clock}`);
  return {
    when: at ? (at.day === day ? at.clock : `${at.day} ${at.clock}`) : '',
    words: photo === '' ? words : 'photo',
    late: [clockWas && `clock set back from ${told(clockWas)}`, writtenAt && `written down ${told(writtenAt)}`].filter(Boolean).join(', '),
    photo,
  };
}

/** Tags for all skeins of these trials, in the order asked. */
export function tagViews({ base }: Notebook, trials: readonly string[]): readonly TagView[] {
  return trials.flatMap((id) => {
    const note = base.note(id);
    if (note?.record.kind !== 'trial') return [];
    const { record } = note;
    const recipe = record.recipe ? base.resolve(record.recipe.text, ['recipe']) : '';
    const cautions = recipeCautions(base, noteId(recipe))
      .filter(({ place }) => place === 'tag')
      .map(cautionText);
    return skeinsOf(base, record).map(({ code, fibre, grams }) => ({
      code,
      trial: note.id,
      recipe: recipe === '' ? note.title : titleOf(base, recipe),
      fibre: [grams, fibre].filter((part) => part !== '').join(' '),
      date: record.date?.text ?? '',
      cautions,
    }));
  });
}

/** The skein of a code as typed or scanned, with its pot. A scanned address is read for its code. */
export function codeView({ base }: Notebook, typed: string): CodeView {
  const found = findByCode(base, codeIn(typed));
  if (found.is === 'none' || found.is === 'free') return { is: found.is, says: codeFoundWords[found.is] };
  const views = (found.is === 'one' ? [found.sample] : found.samples)
    .map(({ trial }) => base.note(trial))
    .filter((note) => note !== undefined);
  if (found.is === 'several')
    return { is: 'several', says: codeFoundWords.several, trials: views.map(({ id }) => ({ id, title: titleOf(base, id) })) };
  return oneCode(base, found, views[0]);
}

function oneCode(base: EvidenceBase, { sample }: Extract<CodeFound, { is: 'one' }>, note: Note | undefined): CodeView {
  const found = note?.record.kind === 'trial' ? note.record.samples[sample.nth] : undefined;
  if (!note || note.record.kind !== 'trial' || !found) return { is: 'none', says: codeFoundWords.none };
  const recipe = note.record.recipe ? base.resolve(note.record.recipe.text, ['recipe']) : '';
  return {
    is: 'one',
    skein: skeinView(base, found, sample.nth),
    pot: potLine(base, note as Trial),
    recipe,
    recipeTitle: recipe === '' ? '' : titleOf(base, recipe),
  };
}

/** The code of an address that a tag may carry: what stands behind `#/samples/`. */
function codeIn(typed: string): string {
  const code = /#\/samples\/([^?]+)/.exec(typed)?.[1];
  try {
    return code === undefined ? typed : decodeURIComponent(code);
  } catch {
    return typed;
  }
}
