import { point } from './colour-shape.ts';
import { date, dateOrPeriod } from './date-shape.ts';
import { DISPLAY_KEYS } from './display-keys.ts';
import {
  MATERIAL_KINDS,
  SAMPLE_KEYS,
  availabilityEntry,
  bath,
  gather,
  ingredient,
  keep,
  lightGrade,
  lightReading,
  meaning,
  name,
  sample,
  thread,
  undyedColour,
  water,
} from './group-keys.ts';
import { ACTS, CHECKED, FIBRE_CLASSES, MATTERS, NOTE_KINDS } from './note.ts';
import type { NoteKind } from './note.ts';
import { anything, citation, flag, reference, text, word } from './plain-shapes.ts';
import { listOf, needed } from './shape.ts';
import type { KeyTable } from './shape.ts';

const texts = listOf(text);
const region = reference('region');
const availability = listOf(availabilityEntry);
const wearers = listOf(reference('wearer'));

/** Keys that every note may have. `kind` and `id` are read before the table is chosen. */
export const COMMON_KEYS = {
  kind: anything,
  id: text,
  title: text,
  names: listOf(name),
  tags: texts,
  source: listOf(citation),
  sources: listOf(citation),
  checked: word(CHECKED),
  'review-by': date,
  invented: flag,
  private: flag,
};

const HELPER_KEYS = { latin: texts, formula: text, everyday: flag, cautions: texts, availability };

/** The own keys of each kind: what the reader reads, what is told as unknown, what a form offers. */
export const KIND_KEYS = {
  dyestuff: {
    latin: texts,
    matter: word(MATTERS),
    part: text,
    markers: texts,
    gather,
    lightfast: listOf(lightGrade),
    availability,
    everyday: flag,
    cautions: texts,
  },
  mordant: HELPER_KEYS,
  assistant: HELPER_KEYS,
  process: HELPER_KEYS,
  fibre: {
    latin: texts,
    is: reference('fibre'),
    class: word(FIBRE_CLASSES),
    undyed: listOf(undyedColour),
    everyday: flag,
    cautions: texts,
    availability,
  },
  recipe: {
    fibre: needed(listOf(reference('fibre'))),
    ingredients: needed(listOf(ingredient)),
    liquor: text,
    steps: texts,
    'based-on': listOf(reference('text', 'recipe', 'plain')),
    'as-written': text,
    cautions: texts,
    follows: listOf(reference('recipe')),
  },
  trial: {
    recipe: needed(reference('recipe')),
    date,
    by: text,
    vessel: text,
    water,
    lots: texts,
    bath,
    actual: listOf(ingredient),
    log: texts,
    deviations: texts,
    ...SAMPLE_KEYS,
    samples: listOf(sample),
  },
  textile: {
    region: needed(region),
    'made-at': region,
    when: needed(dateOrPeriod),
    context: text,
    wearer: wearers,
    threads: listOf(thread),
  },
  text: {
    region: needed(region),
    when: needed(dateOrPeriod),
    copied: dateOrPeriod,
    dyes: listOf(reference('dyestuff')),
    fibre: listOf(reference('fibre')),
    says: text,
  },
  'colour-word': { lang: text, region, when: dateOrPeriod, means: needed(listOf(meaning)), doubt: text },
  rule: {
    region: needed(region),
    when: needed(dateOrPeriod),
    act: needed(word(ACTS)),
    concerns: needed(listOf(reference(...MATERIAL_KINDS, 'fibre', 'colour-word'))),
    allows: wearers,
    forbids: wearers,
    enforced: text,
  },
  wearer: { within: wearers, region, when: dateOrPeriod },
  region: { within: listOf(region), near: listOf(region), point },
  period: { region, when: needed(dateOrPeriod) },
  palette: {
    region: needed(region),
    when: needed(dateOrPeriod),
    fibre: reference('fibre'),
    wearer: reference('wearer'),
    question: text,
    keeps: listOf(keep),
  },
  display: DISPLAY_KEYS,
  exposure: { sample: needed(text), readings: listOf(lightReading), reference: text },
} as const satisfies Readonly<Record<(typeof NOTE_KINDS)[number], KeyTable>>;

/** All keys of a kind, the common ones first. */
export const keysOf = (kind: NoteKind): KeyTable => ALL_KEYS.get(kind) ?? COMMON_KEYS;

const ALL_KEYS: ReadonlyMap<NoteKind, KeyTable> = new Map(NOTE_KINDS.map((kind) => [kind, { ...COMMON_KEYS, ...KIND_KEYS[kind] }]));
