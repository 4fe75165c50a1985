import type { NoteKind } from '../../domain/note/note.ts';

/** A kind of note, for one and for many. */
export interface KindWords {
  readonly one: string;
  readonly many: string;
  /** What a note of this kind records, in a sentence for somebody about to write one. */
  readonly records: string;
}

/** Every kind in words. */
export const kindWords = {
  dyestuff: {
    one: 'Dyestuff',
    many: 'Dyestuffs',
    records: 'What gives a colour: a plant, insect, lichen, shell or something made; and where and when it was to hand.',
  },
  mordant: {
    one: 'Mordant',
    many: 'Mordants',
    records: 'What binds the colour to the fibre, such as alum; and where and when it was to hand.',
  },
  assistant: { one: 'Assistant', many: 'Assistants', records: 'What helps in the bath without colouring: bran, lye, tartar.' },
  process: {
    one: 'Process',
    many: 'Processes',
    records: 'A way of working that had to be known first, such as a vat or a printing method.',
  },
  fibre: { one: 'Fibre', many: 'Fibres', records: 'What is dyed, with the colours it has undyed.' },
  recipe: { one: 'Recipe', many: 'Recipes', records: 'One way of getting a colour.' },
  trial: { one: 'Trial', many: 'Trials', records: 'One dye pot that was really run, with its samples.' },
  textile: { one: 'Textile', many: 'Textiles', records: 'An extant or excavated textile, with what its threads hold.' },
  text: { one: 'Source text', many: 'Source texts', records: 'A written or pictured source: what it says, of which place and time.' },
  'colour-word': {
    one: 'Colour-word',
    many: 'Colour-words',
    records: 'A word of the time, such as murrey or perse, and what it may mean.',
  },
  rule: { one: 'Rule', many: 'Rules', records: 'A sumptuary law, guild rule, ban or embargo.' },
  wearer: { one: 'Wearer', many: 'Wearers', records: 'Who wore it: a rank or trade.' },
  region: { one: 'Place', many: 'Places', records: 'A place, inside a wider one and beside its neighbours.' },
  period: { one: 'Period', many: 'Periods', records: 'A named span of years.' },
  palette: { one: 'Kept palette', many: 'Kept palettes', records: 'A chosen set of colours and the question it answers.' },
  display: { one: 'Display', many: 'Displays', records: 'How a kept palette is shown.' },
  exposure: { one: 'Light test', many: 'Light tests', records: 'A sample put in the light, and what became of its colour.' },
  plain: { one: 'Reading note', many: 'Reading notes', records: 'Words in any order: what was read, heard or seen.' },
} as const satisfies Record<NoteKind, KindWords>;

/** How far a source was read, in words. */
export const checkedWords = {
  'read-whole': 'read whole',
  excerpt: 'read in excerpt',
  'quoted-elsewhere': 'quoted elsewhere',
  'from-memory': 'from memory, not looked up',
} as const;
