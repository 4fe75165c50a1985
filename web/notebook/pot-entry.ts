import { labTriple } from '../domain/colour/parse-lab-text.ts';
import { frontMatterKeys } from '../domain/note/front-matter-keys.ts';
import { parseNote } from '../domain/note/parse-note.ts';
import { spliceValue } from '../domain/note/splice.ts';
import type { TrialRecord } from '../domain/note/note.ts';
import type { PlainValue } from '../domain/note/yaml-text.ts';
import { dipsIn } from '../domain/pot/trial-facts.ts';
import { heldSince, lastWritten, type LogLine, logLine, minutesFrom, type Moment, readLogLine } from '../domain/pot/pot-log.ts';

/** Something that happened at the pot. */
export type PotEntry =
  | { readonly is: 'in' | 'out' | 'dip' | 'heat-off' }
  | { readonly is: 'temperature'; readonly celsius: number }
  | { readonly is: 'pH'; readonly pH: number }
  | { readonly is: 'timer'; readonly minutes: number; readonly what: string }
  /** Which of the trial's `actual`, from 0, and what the scale showed. */
  | { readonly is: 'weighed'; readonly nth: number; readonly grams: number }
  | { readonly is: 'photo'; readonly path: string }
  /** The colour of a dry skein, by its place among the samples: `45.1 44.8 27.9` or `#a3423b`, and what it was found with. */
  | { readonly is: 'colour'; readonly nth: number; readonly typed: string; readonly by: 'instrument' | 'eye' }
  | { readonly is: 'remark' | 'deviation'; readonly text: string };

/** What keeps an entry from being written. */
export type EntryProblem = 'impossible' | 'in-future' | 'empty' | 'note-broken';

/** A trial's text with one more entry, or why it stands as it was. */
export type WithEntry = { readonly is: 'text'; readonly text: string } | { readonly is: 'problem'; readonly problem: EntryProblem };

/** Water boils; a vat in winter may be near freezing. */
const [COLDEST, HOTTEST] = [-5, 110];

/**
 * Writes one entry into a trial's log; nothing else of the note changes but what the entry itself says.
 *
 * @param at when it happened; @param now when it is written.
 */
export function withEntry(path: string, source: string, entry: PotEntry, at: Moment, now: Moment): WithEntry {
  const { record } = parseNote(path, source).value;
  if (record.kind !== 'trial') return problem('note-broken');
  if (minutesFrom(at, now) < 0) return problem('in-future');
  const day = record.date?.text;
  const wrong = problemOf(entry, record);
  if (wrong) return problem(wrong);
  const lines = record.log.map((line) => readLogLine(line, day));
  const edits: (readonly [(string | number)[], PlainValue])[] = [
    [['log', record.log.length], logLine(wordsOf(entry, record, lines, at, now), at, now, day, lastWritten(lines))],
  ];
  if (entry.is === 'deviation') edits.push([['deviations', record.deviations.length], entry.text.replace(/\s+/g, ' ').trim()]);
  if (entry.is === 'colour') edits.push([[...samplePath(source, entry.nth), 'colour'], colourOf(entry) ?? {}]);
  if (entry.is === 'weighed') edits.push([['actual', entry.nth, 'amount'], percentText(entry.grams, record)]);
  let text = source;
  for (const [where, value] of edits) {
    const spliced = spliceValue(text, where, value);
    if (!spliced.ok) return problem('note-broken');
    text = spliced.value;
  }
  return { is: 'text', text: entry.is === 'photo' ? withPicture(text, entry.path, path, at) : text };
}

const problem = (what: EntryProblem): WithEntry => ({ is: 'problem', problem: what });

function problemOf(entry: PotEntry, record: TrialRecord): EntryProblem | undefined {
  switch (entry.is) {
    case 'temperature':
      return entry.celsius >= COLDEST && entry.celsius <= HOTTEST ? undefined : 'impossible';
    case 'pH':
      return entry.pH >= 0 && entry.pH <= 14 ? undefined : 'impossible';
    case 'timer':
      return entry.minutes >= 1 && entry.minutes <= 7 * 1440 ? undefined : 'impossible';
    case 'weighed':
      return record.actual[entry.nth] && entry.grams > 0 && fibreOf(record) > 0 ? undefined : 'impossible';
    case 'colour':
      return record.samples[entry.nth] && colourOf(entry) ? undefined : 'impossible';
    case 'remark':
    case 'deviation':
      return entry.text.trim() === '' ? 'empty' : undefined;
    default:
      return undefined;
  }
}

function wordsOf(entry: PotEntry, record: TrialRecord, lines: readonly LogLine[], at: Moment, now: Moment): string {
  switch (entry.is) {
    case 'temperature':
      return `${figure(entry.celsius)} °C`;
    case 'pH':
      return `pH ${figure(entry.pH)}`;
    case 'timer':
      return `timer ${Math.round(entry.minutes)} min${entry.what.trim() === '' ? '' : `: ${entry.what.trim()}`}`;
    case 'weighed':
      return `weighed ${figure(entry.grams)} g of ${record.actual[entry.nth]?.what?.text ?? 'what was asked for'}`;
    case 'colour':
      return `colour of ${record.samples[entry.nth]?.code ?? 'the sample'}: ${entry.typed.trim()}`;
    case 'photo':
      return `photo ${entry.path}`;
    case 'deviation':
      return `deviation: ${entry.text}`;
    case 'remark':
      return entry.text;
    case 'dip':
      return `dip ${(dipsIn(lines.map(({ words }) => words)) ?? 0) + 1}`;
    case 'heat-off': {
      const last = lastWritten(lines);
      // By a clock that was set back nobody can tell how long.
      const went = lines.every(({ clockWas }) => clockWas === undefined) && (last === undefined || minutesFrom(last, now) >= 0);
      const since = went ? heldSince(lines) : undefined;
      const held = since ? minutesFrom(since, at) : 0;
      return held > 0 ? `heat off after ${held} min` : 'heat off';
    }
    default:
      return entry.is;
  }
}

/** Where a sample stands: a trial without a list of them is its own. */
const samplePath = (source: string, nth: number): (string | number)[] =>
  frontMatterKeys(source)?.keys.some(({ key }) => key === 'samples') === true ? ['samples', nth] : [];

/** A typed colour as a note states it: Lab under D65, 10°, by what it was found with; a hex is always what an eye chose. */
function colourOf({ typed, by }: { readonly typed: string; readonly by: 'instrument' | 'eye' }): PlainValue | undefined {
  const text = typed.trim().replace(/\s+/g, ' ');
  if (/^#[\da-f]{6}$/i.test(text)) return { hex: text.toLowerCase(), by: 'eye' };
  const triple = labTriple(text);
  return triple?.isPossible === true ? { lab: [...triple.lab], illuminant: 'D65', observer: 10, by } : undefined;
}

/** Grams as the share of the fibre that recipes are compared by. */
const percentText = (grams: number, record: TrialRecord): string => `${Number(((100 * grams) / fibreOf(record)).toPrecision(3))} %`;

const fibreOf = ({ samples }: TrialRecord): number => samples.reduce((sum, { fibreGrams }) => sum + (fibreGrams ?? 0), 0);

const figure = (value: number): string => String(Number(value.toPrecision(4)));

/** A picture at the end of the note, so that whoever reads it sees it. */
function withPicture(text: string, picture: string, path: string, { day, clock }: Moment): string {
  const up = '../'.repeat(path.split('/').length - 1);
  return `${text}${text.endsWith('\n') ? '' : '\n'}\n![at the pot, ${day} ${clock}](${up}${picture})\n`;
}
