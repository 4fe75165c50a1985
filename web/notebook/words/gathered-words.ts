import type { GatherForm } from '../import/gather.ts';
import type { GatherCode, RowMessage } from '../import/gathered.ts';

/** What a file can be read as, as a reader chooses it. */
export const gatherFormWords = {
  periods: 'period definitions (PeriodO, JSON-LD)',
  places: 'places (GeoJSON, Linked Places)',
  textiles: 'a list of textiles (CSV)',
  trials: 'a list of trials (CSV)',
  'notebook-jsonld': 'a whole notebook (JSON-LD from here)',
} as const satisfies Record<GatherForm, string>;

const WORDS = {
  'not-utf8': (about) =>
    `Its letters are not written in UTF-8 (byte ${about} is none), so accents would come out wrong. Save it again as “CSV UTF-8”. Nothing was read.`,
  'not-recognised': () => 'What this file is could not be told from its contents. Choose what to read it as. Nothing was read.',
  'is-a-zip': () => 'This is a zip. “Read in a folder or a zip” on the notebook’s own page takes it. Nothing was read.',
  'is-a-spreadsheet': () => 'This is a spreadsheet’s own file. Save the sheet as “CSV UTF-8” and choose that. Nothing was read.',
  'is-a-note': () =>
    'This is a note already. “Read in a folder or a zip” on the notebook’s own page takes it with its folder. Nothing was read.',
  'not-json': (about) => `This is no JSON file${about === '' ? '' : ` (${about})`}. Nothing was read.`,
  'not-this-kind': () => 'This file holds none of what was looked for. Nothing was read.',
  'too-large': () => 'The file is too large to be read here. Split it and read the parts.',
  'nothing-inside': () => 'The file is empty, or has headings only.',
  'no-name': (about) => `No name or title${about === '' ? '' : `: ${about}`}. No note is made of it.`,
  'row-broken': () => 'This is not a place as the format wants it. No note is made of it.',
  twice: (about) => `“${about}” stands in the file twice; the first is taken.`,
  'same-already': (about, instead) => `“${about}” is in the notebook already, word for word (${instead.join(', ')}).`,
  'id-taken': (about, instead) => `The id “${about}” is taken; this one becomes “${instead.join(', ')}”. Nothing is overwritten.`,
  'no-date': (about, instead) =>
    `“${about}” has no date in years${instead.length > 0 ? `, only the words “${instead.join('” and “')}”` : ''}. Give it one.`,
  'date-widened': (about, instead) => `The ends of “${about}” are ranges; the note takes the widest, ${instead.join(', ')}.`,
  'date-unreadable': (about) => `“${about}” cannot be read as a date. It is kept as it is, and takes no part until it is mended.`,
  'place-unknown': (about, instead) => `Your notebook knows no place “${about}”.${near(instead)}`,
  'place-ambiguous': (about, instead) => `“${about}” is the name of ${instead.join(' and ')}: write which.`,
  'no-point': (about) => `“${about}” has no position; it will not stand on a map.`,
  'point-from-shape': (about, instead) => `“${about}” is a shape; the note takes its middle, ${instead.join('')}.`,
  'point-impossible': (about) => `${about} is no position (longitude first, then latitude). It was left out.`,
  'column-unmatched': (about) => `The column “${about}” was not understood and is left out. Match it by hand if it matters.`,
  'column-missing': (about, instead) => `No column is called “${about}” or anything like it. There are: ${instead.join(', ')}. Choose one.`,
  'word-unknown': (about, instead) => `Your notebook knows no “${about}”. It is kept as it is.${near(instead)}`,
  'rows-left-out': (about) => `Rows were left out, because the file is longer than can be looked through: ${about}.`,
  'no-recipe': (about) => `“${about}” names no recipe, so its colour belongs to none. Match a column, or write the recipe into the note.`,
  'amount-unreadable': (about) => `“${about}” cannot be read as a number with a unit, such as 15 % or 50 g. It is kept as it is.`,
  'amount-absurd': (about) => `${about} of the fibre’s weight is very much: look whether a unit slipped. It is kept as it is.`,
  'amounts-differ': (about, instead) =>
    `“${about}” and the amounts “${instead.join(', ')}” are not equally many; write each amount behind its name.`,
  'unit-missing': (about, instead) =>
    `${about} has no unit (${instead.join(', ')}). None is guessed: write it in the cell, or in brackets behind the heading.`,
  'number-impossible': (about, instead) => `${about} cannot be: ${instead.join(', ')} is looked for. It is kept as it is.`,
  'several-dyes': (about) => `“${about}” could belong to any of several dyestuffs, so it was left out. Write it into the note.`,
  'colour-unreadable': (about) => `“${about}” cannot be read as a colour: #rrggbb, or L, a, b. It is kept as it is.`,
  'conditions-missing': (about) => `The colour ${about} does not say its illuminant or observer, such as D65 and 10.`,
  'code-taken': (about) => `Another skein has the code “${about}” already. Both are kept; give one of them another.`,
} as const satisfies Record<GatherCode, (about: string, instead: readonly string[]) => string>;

const near = (instead: readonly string[]): string => (instead.length > 0 ? ` The nearest: ${instead.join(', ')}.` : '');

/** A message about a row in a sentence. */
export const gatheredSentence = ({ code, about, instead }: RowMessage): string => WORDS[code](about, instead);
