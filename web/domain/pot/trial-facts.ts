import type { EvidenceBase } from '../claim/evidence-base.ts';
import { MATERIAL_KINDS } from '../claim/evidence-base.ts';
import type { Note, NoteId, TrialRecord } from '../note/note.ts';
import { readLogLine } from './pot-log.ts';
import { timesIn, temperaturesIn } from './step-figures.ts';
import { convertHardness, readHardness } from './water-hardness.ts';

/** One material a trial used. */
export interface UsedMaterial {
  readonly id: string;
  readonly role: string;
  readonly amount?: string;
  /** % of the fibre's weight, the middle of a range. */
  readonly percent?: number;
  readonly form?: string;
}

/** What a trial says of itself, ready to be compared. Absent is what it does not say. */
export interface TrialFacts {
  readonly trial: NoteId;
  readonly recipe?: string;
  readonly materials: readonly UsedMaterial[];
  readonly fibres: readonly string[];
  /** All fibre in the pot, g. */
  readonly fibreGrams?: number;
  readonly onto: readonly string[];
  readonly hardnessPpm?: number;
  readonly hardness?: string;
  readonly pH?: number;
  readonly waterNote?: string;
  /** The highest temperature of the log, °C. */
  readonly topCelsius?: number;
  /** Minutes held before the heat went off, or of all dips together. */
  readonly heldMinutes?: number;
  readonly dips?: number;
  readonly bath: number;
  readonly lots: readonly string[];
  readonly vessel?: string;
  readonly by?: string;
  readonly date?: string;
  readonly deviations: readonly string[];
}

/** Reads a trial for comparing; undefined when there is none of that id. */
export function trialFacts(base: EvidenceBase, trial: string): TrialFacts | undefined {
  const note = base.note(trial);
  return note?.record.kind === 'trial' ? factsOf(base, note, note.record) : undefined;
}

function factsOf(base: EvidenceBase, note: Note, record: TrialRecord): TrialFacts {
  const masses = record.samples.map(({ fibreGrams }) => fibreGrams);
  const grams =
    masses.length > 0 && masses.every((mass) => mass !== undefined)
      ? masses.reduce<number>((sum, mass) => sum + (mass ?? 0), 0)
      : undefined;
  const written = record.water?.hardness;
  const hard = written === undefined ? undefined : readHardness(written);
  const degrees = record.log.flatMap((line) => temperaturesIn(line)).map(({ toCelsius }) => toCelsius);
  const words = record.log.map((line) => readLogLine(line, record.date?.text).words);
  const held = heldMinutes(words);
  const dips = dipsIn(words);
  return {
    trial: note.id,
    ...(record.recipe && { recipe: base.resolve(record.recipe.text, ['recipe']) }),
    materials: record.actual.map((one): UsedMaterial => {
      const id = one.what ? base.resolve(one.what.text, MATERIAL_KINDS) : '';
      const { amount } = one;
      const percent = amount?.unit === '%' && amount.value !== undefined ? (amount.value + (amount.upTo ?? amount.value)) / 2 : undefined;
      return {
        id,
        role: one.role ?? '',
        ...(amount && { amount: amount.text }),
        ...(percent === undefined ? {} : { percent }),
        ...(one.form === undefined ? {} : { form: one.form }),
      };
    }),
    fibres: unique(record.samples.flatMap(({ fibre }) => (fibre ? [base.resolve(fibre.text, ['fibre'])] : []))),
    ...(grams === undefined ? {} : { fibreGrams: grams }),
    onto: unique(record.samples.flatMap(({ onto }) => (onto === undefined ? [] : [onto]))),
    ...(hard && { hardnessPpm: convertHardness(hard.value, hard.unit, 'ppm').value }),
    ...(written === undefined ? {} : { hardness: written }),
    ...(record.water?.pH === undefined ? {} : { pH: record.water.pH }),
    ...(record.water?.note === undefined ? {} : { waterNote: record.water.note }),
    ...(degrees.length > 0 && { topCelsius: Math.max(...degrees) }),
    ...(held === undefined ? {} : { heldMinutes: held }),
    ...(dips === undefined ? {} : { dips }),
    bath: record.bath?.nth ?? 1,
    lots: record.lots,
    ...(record.vessel === undefined ? {} : { vessel: record.vessel }),
    ...(record.by === undefined ? {} : { by: record.by }),
    ...(record.date && { date: record.date.text }),
    deviations: record.deviations,
  };
}

/** The time at heat: "heat off after 60 min", else dips added up, else nothing. Other lines may speak of soaking. */
function heldMinutes(log: readonly string[]): number | undefined {
  const off = log.find((line) => /heat off after/i.test(line));
  const time = off === undefined ? undefined : timesIn(off.slice(off.search(/heat off after/i)))[0];
  if (time) return (time.fromMinutes + time.toMinutes) / 2;
  const dips = log.flatMap((line) => (/^dip \d/i.test(line) ? timesIn(line.slice(line.indexOf(':') + 1)).slice(0, 1) : []));
  return dips.length > 0 ? dips.reduce((sum, { fromMinutes, toMinutes }) => sum + (fromMinutes + toMinutes) / 2, 0) : undefined;
}

/** How many dips the words of a log tell of: `dip 3: …`, `dips 1–4 alike`. */
export function dipsIn(log: readonly string[]): number | undefined {
  const counts = log.flatMap((line) => {
    const [, first, last] = /^dips? (\d+)(?:\s*(?:–|-|to)\s*(\d+))?/i.exec(line) ?? [];
    return first === undefined ? [] : [Number(last ?? first)];
  });
  return counts.length > 0 ? Math.max(...counts) : undefined;
}

const unique = (texts: readonly string[]): readonly string[] => [...new Set(texts)].sort();
