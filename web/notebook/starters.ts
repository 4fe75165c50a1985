import type { NoteKind } from '../domain/note/note.ts';
import { fold } from '../domain/text/fold.ts';

/** A note to begin with: it reads without an error, says nothing that nobody knows yet, and helps in comments. */
export interface Starter {
  readonly kind: NoteKind;
  /** The folder notes of this kind are kept in. */
  readonly folder: string;
  readonly text: string;
}

const CLAIM = `availability: []
  # One row for each record of where and when it was to hand, such as
  # - { region: , when: , status: , known-by: , source: "key, page" }`;

const SOURCE = `# source: "citation key, page"
# checked: read-whole, excerpt, quoted-elsewhere or from-memory`;

/** The lines of each kind's own keys, without kind and title. */
const OWN = {
  dyestuff: `# latin:
# names: everyday, period and foreign names; each is found in every note
names: []
# matter: plant, insect, mollusc, lichen, fungus, mineral or synthetic
${CLAIM}
${SOURCE}`,
  mordant: `# formula:
names: []
cautions: []
${CLAIM}
${SOURCE}`,
  assistant: `# everyday: true, for what was always to hand and needs no evidence
names: []
${CLAIM}
${SOURCE}`,
  process: `names: []
cautions: []
${CLAIM}
${SOURCE}`,
  fibre: `# is: the fibre this is a kind of
# class: protein, cellulose or skin
names: []
undyed: []
  # - { name: , colour: { lab: [L, a, b], illuminant: D65, observer: 10, by: instrument } }
${CLAIM}
${SOURCE}`,
  recipe: `fibre: []
ingredients: []
  # - { what: , role: mordant, amount: 15 % }
  # - { what: , role: dye, amount: 50 % }
# liquor: "30:1"
steps: []
cautions: []
${SOURCE}`,
  trial: `# recipe: the recipe this pot followed
# date: the day it was dyed
# by: who dyed it
# vessel:
# water: { hardness: , pH: }
lots: []
actual: []
  # What really went in: - { what: , role: , amount: }
log: []
# fibre:
# fibre-mass: with its unit, 50 g
# code: the code on the tag
# colour: { lab: [L, a, b], illuminant: D65, observer: 10, by: instrument }`,
  textile: `# region: where it was found
# when: as you would write it, such as c. 1350
# context:
threads: []
  # - { where: , fibre: , dyes: [], tested: no }
${SOURCE}`,
  text: `# region: the place it speaks of
# when: the time of the practice
# copied: when this copy was made
dyes: []
# says: what it says, in your words or its own
${SOURCE}`,
  'colour-word': `# lang: its language, en, de, la
# region:
# when:
means: []
  # - { shade: , dyes: [], cloth: , rank: }
# doubt:
${SOURCE}`,
  rule: `# region:
# when:
# act: wear, dye, import or sell
concerns: []
# allows, forbids: wearers
# enforced:
${SOURCE}`,
  wearer: `within: []
# region:
# when:`,
  region: `# within: the wider place
# near: its neighbours
names: []
# point: [latitude, longitude]`,
  period: `# region:
# when: its years, such as 1350–1400
names: []`,
  palette: `# region:
# when:
# question: what the palette answers
keeps: []
  # - { what: a recipe, trial: , note: }`,
  display: `# palette: the kept palette it shows`,
  exposure: `# sample: the code of the sample in the light
readings: []
  # - { date: , light: , colour: { lab: [L, a, b], illuminant: D65, observer: 10 } }
# reference:`,
  plain: `tags: []
${SOURCE}`,
} as const satisfies Record<NoteKind, string>;

const FOLDERS = {
  dyestuff: 'dyestuffs',
  mordant: 'mordants',
  assistant: 'assistants',
  process: 'processes',
  fibre: 'fibres',
  recipe: 'recipes',
  trial: 'trials',
  textile: 'textiles',
  text: 'texts',
  'colour-word': 'words',
  rule: 'rules',
  wearer: 'wearers',
  region: 'regions',
  period: 'periods',
  palette: 'palettes',
  display: 'displays',
  exposure: 'exposures',
  plain: 'reading',
} as const satisfies Record<NoteKind, string>;

/** The folder notes of a kind are kept in. */
export const folderOf = (kind: NoteKind): string => FOLDERS[kind];

/** A starter for a kind of note. */
export function starterOf(kind: NoteKind): Starter {
  return { kind, folder: FOLDERS[kind], text: `---\nkind: ${kind}\ntitle:\n${OWN[kind]}\n---\n\n` };
}

/** A file's name from a title: small letters, digits and hyphens, at most sixty characters. */
export function stemFrom(title: string, otherwise: string): string {
  const stem = fold(title)
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, LONGEST_STEM)
    .replace(/-$/, '');
  return stem === '' ? otherwise : stem;
}

/** Characters of a file's name (our choice: every file system and zip keeps them, and a list still shows them). */
const LONGEST_STEM = 60;

/** The path of a new note; `nth` from 1 tells apart those of one title. */
export const newPath = (kind: NoteKind, title: string, nth = 1): string =>
  `${FOLDERS[kind]}/${stemFrom(title, `new-${kind}`)}${nth === 1 ? '' : `-${nth}`}.md`;
