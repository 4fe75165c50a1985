import { colour, colourOrWords, spectrum } from './colour-shape.ts';
import { date, dateOrPeriod } from './date-shape.ts';
import { group } from './group-shape.ts';
import { ABSENCE_REASONS, CHECKED, KNOWN_BY, ROLES, STATUSES, SURE, TESTED, USES, USUAL } from './note.ts';
import type {
  AvailabilityEntry,
  ExposureRecord,
  Gather,
  Ingredient,
  LightGrade,
  Meaning,
  Name,
  NoteKind,
  PaletteRecord,
  Sample,
  Thread,
  TrialRecord,
  UndyedColour,
} from './note.ts';
import { amount, anything, citation, grams, number, reference, text, word } from './plain-shapes.ts';
import { listOf, needed } from './shape.ts';

/** The kinds an ingredient may be. */
export const MATERIAL_KINDS = ['dyestuff', 'mordant', 'assistant', 'process'] as const satisfies readonly NoteKind[];

/** Another name: `grain`, or `{ name: Krapp, lang: de }`. */
export const name = group(
  { name: needed(text), lang: text },
  (v): Name | undefined => (v.name === undefined ? undefined : { name: v.name, lang: v.lang }),
  'name',
);

/** Where and when a material was to hand. */
export const availabilityEntry = group(
  {
    region: needed(reference('region')),
    when: needed(dateOrPeriod),
    status: needed(word(STATUSES)),
    reason: word(ABSENCE_REASONS),
    'known-by': word(KNOWN_BY),
    sure: word(SURE),
    source: listOf(citation),
    sources: listOf(citation),
    checked: word(CHECKED),
    start: word(['known']),
    end: word(['known']),
    extent: word(['whole', 'somewhere']),
    use: word(USES),
    on: listOf(reference('fibre')),
    wearers: listOf(reference('wearer')),
    usual: word(USUAL),
    price: text,
    'rests-on': citation,
    note: text,
  },
  (v, { range, at, report }): AvailabilityEntry => {
    const knownBy = v['known-by'];
    // A ban speaks of what people wanted; an analysis that finds nothing speaks of one thread.
    if (v.status === 'absent' && (knownBy === 'law' || knownBy === 'analysis'))
      report({ code: 'absence-not-evidence', severity: 'warning', range: at('known-by'), about: [knownBy] });
    return {
      range,
      region: v.region,
      when: v.when,
      status: v.status,
      reason: v.reason,
      knownBy,
      sure: v.sure ?? 'yes',
      sources: [...v.source, ...v.sources],
      checked: v.checked,
      startKnown: v.start === 'known',
      endKnown: v.end === 'known',
      extent: v.extent,
      use: v.use ?? 'dyeing',
      on: v.on,
      wearers: v.wearers,
      usual: v.usual,
      price: v.price,
      restsOn: v['rests-on'],
      note: v.note,
    };
  },
);

/** One thing that goes into the pot. */
export const ingredient = group(
  {
    what: needed(reference(...MATERIAL_KINDS)),
    role: needed(word(ROLES)),
    amount,
    form: text,
    'stands-for': reference(...MATERIAL_KINDS),
    note: anything,
  },
  (v, { range }): Ingredient => ({ range, what: v.what, role: v.role, amount: v.amount, form: v.form, standsFor: v['stands-for'] }),
  'what',
);

/** A grade of fastness to light. */
export const lightGrade = group(
  {
    on: reference('fibre'),
    mordant: reference('mordant', 'assistant', 'process'),
    grade: needed(text),
    scale: text,
    method: text,
    source: listOf(citation),
    sources: listOf(citation),
    note: anything,
  },
  (v): LightGrade => ({
    on: v.on,
    mordant: v.mordant,
    grade: v.grade,
    scale: v.scale,
    method: v.method,
    sources: [...v.source, ...v.sources],
  }),
);

/** When and how a plant is gathered. */
export const gather = group({ months: listOf(number(1, 12, true)), 'year-of-growth': text, note: text }, (v): Gather => ({
  months: v.months,
  yearOfGrowth: v['year-of-growth'],
  note: v.note,
}));

/** A colour that a fibre has of itself or by bleaching. */
export const undyedColour = group(
  { name: needed(text), colour, spectrum, availability: listOf(availabilityEntry), note: anything },
  (v, { range }): UndyedColour | undefined =>
    v.name === undefined ? undefined : { range, name: v.name, colour: v.colour, spectrum: v.spectrum, availability: v.availability },
);

/** The keys of one sample; a trial with a single sample has them among its own. */
export const SAMPLE_KEYS = {
  code: text,
  fibre: reference('fibre'),
  'fibre-mass': grams,
  onto: text,
  colour,
  spectrum,
  photo: text,
};

/** One skein out of a trial. */
export const sample = group({ ...SAMPLE_KEYS, note: text }, (v, { range }): Sample => ({
  range,
  code: v.code,
  fibre: v.fibre,
  fibreGrams: v['fibre-mass'],
  onto: v.onto,
  colour: v.colour,
  spectrum: v.spectrum,
  photo: v.photo,
  note: v.note,
}));

/** The water a trial was dyed in. */
export const water = group({ hardness: text, pH: number(0, 14), note: text }, (v): TrialRecord['water'] => v, 'note');

/** Which bath of a pot this was. */
export const bath = group({ nth: number(1, 99, true), after: reference('trial') }, (v): TrialRecord['bath'] => v);

/** One system of threads of a textile. */
export const thread = group(
  {
    where: text,
    fibre: reference('fibre'),
    dyes: listOf(reference('dyestuff')),
    markers: listOf(text),
    'colour-now': colourOrWords,
    tested: word(TESTED),
    note: anything,
  },
  (v, { range, at, report }): Thread => {
    if (v.tested === 'no' && v.dyes.length > 0)
      report({ code: 'thread-untested', severity: 'warning', range: at('tested'), about: v.dyes.map((dye) => dye.text) });
    return {
      range,
      where: v.where,
      fibre: v.fibre,
      dyes: v.dyes,
      markers: v.markers,
      colourNow: v['colour-now'],
      tested: v.tested ?? (v.dyes.length > 0 ? 'found' : 'no'),
    };
  },
);

/** What a colour-word may mean. */
export const meaning = group(
  { colours: listOf(colour), shade: text, dyes: listOf(reference('dyestuff')), cloth: text, process: text, rank: text, note: anything },
  (v, { range }): Meaning => ({
    range,
    colours: v.colours,
    shade: v.shade,
    dyes: v.dyes,
    cloth: v.cloth,
    process: v.process,
    rank: v.rank,
  }),
  'shade',
);

/** A kept colour of a palette. */
export const keep = group(
  { what: needed(reference('recipe', 'fibre')), trial: reference('trial'), verdict: text, note: text },
  (v): PaletteRecord['keeps'][number] | undefined =>
    v.what === undefined ? undefined : { what: v.what, verdict: v.verdict, trial: v.trial, note: v.note },
  'what',
);

/** One reading of a light test. */
export const lightReading = group({ date, dose: text, light: text, colour, note: anything }, (v): ExposureRecord['readings'][number] => ({
  date: v.date,
  dose: v.dose ?? v.light,
  colour: v.colour,
}));
