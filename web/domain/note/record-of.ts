import type { TextRange } from '../diagnostic.ts';
import { placeOf, readKeys } from './group-shape.ts';
import type { Entries, Place, ValuesOf } from './group-shape.ts';
import { KIND_KEYS } from './note-keys.ts';
import type { NoteKind, NoteRecord, Sample } from './note.ts';
import type { ReadContext } from './shape.ts';

type OwnKind = Exclude<NoteKind, 'plain'>;
type Values<Kind extends OwnKind> = ValuesOf<(typeof KIND_KEYS)[Kind]>;
type Builders = { readonly [Kind in OwnKind]: (values: Values<Kind>, place: Place) => NoteRecord };

const helper =
  (kind: 'mordant' | 'assistant' | 'process') =>
  ({ latin, formula, everyday, cautions, availability }: Values<'mordant'>): NoteRecord => ({
    kind,
    latin,
    formula,
    everyday,
    cautions,
    availability,
  });

const BUILDERS: Builders = {
  dyestuff: (values) => ({ kind: 'dyestuff', ...values }),
  mordant: helper('mordant'),
  assistant: helper('assistant'),
  process: helper('process'),
  fibre: ({ is, class: fibreClass, ...values }, { at, report }) => {
    if (is === undefined && fibreClass === undefined)
      report({ code: 'key-missing', severity: 'warning', range: at('kind'), about: ['class', 'fibre'] });
    return { kind: 'fibre', isKindOf: is, fibreClass, ...values };
  },
  recipe: ({ 'based-on': basedOn, 'as-written': asWritten, ...values }) => ({ kind: 'recipe', basedOn, asWritten, ...values }),
  trial: (values, place) => {
    const { recipe, date, by, vessel, water, lots, bath, actual, log, deviations } = values;
    return { kind: 'trial', recipe, date, by, vessel, water, lots, bath, actual, log, deviations, samples: samplesOf(values, place) };
  },
  textile: ({ 'made-at': madeAt, ...values }) => ({ kind: 'textile', madeAt, ...values }),
  text: (values) => ({ kind: 'text', ...values }),
  'colour-word': (values) => ({ kind: 'colour-word', ...values }),
  rule: (values) => ({ kind: 'rule', ...values }),
  wearer: (values) => ({ kind: 'wearer', ...values }),
  region: (values) => ({ kind: 'region', ...values }),
  period: (values) => ({ kind: 'period', ...values }),
  palette: (values) => ({ kind: 'palette', ...values }),
  display: ({ 'swap-sets': swapSets, 'published-at': publishedAt, ...values }) => ({ kind: 'display', swapSets, publishedAt, ...values }),
  exposure: (values) => ({ kind: 'exposure', ...values }),
};

const SAMPLE_OWN = ['code', 'fibre', 'fibre-mass', 'onto', 'colour', 'spectrum', 'photo'];

/** The samples a trial lists, with its own fibre and ground where they give none; or the one it describes among its own keys. */
function samplesOf(values: Values<'trial'>, { range, has }: Place): readonly Sample[] {
  const { code, fibre, 'fibre-mass': fibreGrams, onto, colour, spectrum, photo, samples } = values;
  const own: Sample = { range, code, fibre, fibreGrams, onto, colour, spectrum, photo };
  if (!has('samples')) return SAMPLE_OWN.some(has) ? [own] : [];
  const listed = samples.map((sample) => ({ ...sample, fibre: sample.fibre ?? fibre, onto: sample.onto ?? onto }));
  // A colour beside the list belongs to none of its samples; it is one more, so that nothing measured is lost.
  return colour === undefined && spectrum === undefined ? listed : [own, ...listed];
}

/**
 * Reads the own keys of a note into its record.
 *
 * @param range the whole front matter; a key that is missing is told where the kind stands.
 */
export function recordOf(kind: NoteKind, entries: Entries, range: TextRange, context: ReadContext): NoteRecord {
  if (kind === 'plain') return { kind: 'plain' };
  // Each builder takes what its own table reads; the pairing by kind is beyond what the compiler follows.
  const build = BUILDERS[kind] as (values: unknown, place: Place) => NoteRecord;
  const place = placeOf(range, entries, context);
  return build(readKeys(KIND_KEYS[kind], entries, kind, place.at('kind'), context), place);
}
