import { madeBody } from './made-body.ts';
import { drawName, drawWord, wordOfRank } from './made-words.ts';
import { type NoteChance, noteChance } from './note-chance.ts';

/** One file of a generated notebook. */
export interface MadeNote {
  readonly path: string;
  readonly text: string;
}

/** How a generated notebook is made. */
export interface MadeNotebookOptions {
  readonly seed?: number;
  /** Only the front matter and a line of text, where nobody reads the words. */
  readonly short?: boolean;
}

/** What a hundred notes are, in the order they come: as a notebook of many years grows, mostly reading, trials and finds. */
const HUNDRED = 'RDMCTXSAWLATXSACDATARXASCATADXAWTSACAXTASDACATXAML' + 'ASTAXCADRATSAXATCADSATXACAWTSAXADTACRASXATADCASXTA';
const KINDS = {
  R: 'region',
  D: 'dyestuff',
  M: 'mordant',
  C: 'recipe',
  T: 'trial',
  X: 'textile',
  S: 'text',
  W: 'colour-word',
  L: 'rule',
  A: 'reading',
} as const;
type Letter = keyof typeof KINDS;

const FIBRES = ['wool', 'fine-wool', 'linen', 'silk', 'cotton'] as const;
const STATUS = ['grown', 'wild', 'imported', 'imported', 'cloth-only', 'absent'] as const;
const KNOWN_BY = ['analysis', 'remains', 'text', 'trade', 'law', 'inference', 'practice'] as const;
const MATTER = ['plant', 'plant', 'plant', 'insect', 'lichen', 'mineral'] as const;

/** A note's place among those of its kind, and how a reference to an earlier one is written. */
interface Here {
  readonly draw: NoteChance;
  readonly nth: number;
  /** The id of a note of a kind that stands before this one. */
  readonly earlier: (letter: Letter) => string | undefined;
}

const letterAt = (n: number): Letter => (HUNDRED[(n - FIBRES.length) % HUNDRED.length] ?? 'A') as Letter;

const countIn = (letter: Letter, letters: string): number => letters.split(letter).length - 1;

/** How many notes of a kind stand before the nth. */
function countBefore(letter: Letter, n: number): number {
  const past = n - FIBRES.length;
  const hundreds = Math.floor(past / HUNDRED.length);
  return hundreds * countIn(letter, HUNDRED) + countIn(letter, HUNDRED.slice(0, past % HUNDRED.length));
}

const slug = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/[^\w]+/g, '')
    .toLowerCase();
/** A trade word where there are enough, else a made one: always with the number, so that no two are alike. */
const idOf = (letter: Letter, nth: number): string => `${slug(wordOfRank(45 + ((nth * 7) % 4000)))}-${KINDS[letter]}-${nth}`;

/**
 * The nth note of an endless notebook: 1000 notes are the head of 10,000. In 100,000 there are about 250,000 claims and
 * 30,000 samples with a colour. Kinds, keys, dates and places are those of the notebook's own notes; whatever they say is
 * made up.
 */
export function madeNote(n: number, { seed = 1, short = false }: MadeNotebookOptions = {}): MadeNote {
  const draw = noteChance(seed, n);
  const body = short ? 'Made up.' : madeBody(draw);
  const fibre = FIBRES[n];
  if (fibre) {
    const fibreClass = fibre === 'linen' || fibre === 'cotton' ? 'cellulose' : 'protein';
    const within = fibre === 'fine-wool' ? 'is: wool\n' : '';
    return note('fibres', fibre, `kind: fibre\ntitle: ${fibre}\n${within}class: ${fibreClass}\neveryday: true`, body);
  }
  const letter = letterAt(n);
  const nth = countBefore(letter, n);
  const id = idOf(letter, nth);
  const earlier = (of: Letter): string | undefined => {
    const count = countBefore(of, n);
    return count === 0 ? undefined : idOf(of, draw.below(count));
  };
  if (letter === 'A') return { path: `reading/${id}.md`, text: `# ${titled(draw)}\n\n${body}\n` };
  return note(`${KINDS[letter]}s`, id, `kind: ${KINDS[letter]}\ntitle: ${titled(draw)}\n${FRONT[letter]({ draw, nth, earlier })}`, body);
}

/** The first notes of a generated notebook. */
export function* madeNotes(count: number, options: MadeNotebookOptions = {}): Generator<MadeNote> {
  for (let n = 0; n < count; n += 1) yield madeNote(n, options);
}

const note = (folder: string, id: string, front: string, body: string): MadeNote => ({
  path: `${folder}/${id}.md`,
  text: `---\n${front}\n---\n\n${body}\n`,
});

const titled = (draw: NoteChance): string => `${drawName(draw)} ${drawWord(draw)} ${drawWord(draw)}`;
const source = (draw: NoteChance): string =>
  `${slug(drawWord(draw))}-${1850 + draw.below(170)}, fol. ${1 + draw.below(200)}${draw.pick(['r', 'v'])}`;

function when(draw: NoteChance): string {
  const from = 700 + draw.below(1100);
  return draw.pick([`${from}–${from + 10 + draw.below(140)}`, `c. ${from}`, `${Math.ceil(from / 100)}th century`, `${from}/${from + 80}`]);
}

const region = (here: Here): string => here.earlier('R') ?? 'world';
const where = (here: Here): string => `region: ${region(here)}\nwhen: ${when(here.draw)}`;

function availability(here: Here, count: number): string {
  const { draw } = here;
  const claims = Array.from({ length: count }, () => {
    const status = draw.pick(STATUS);
    const more = `${status === 'absent' ? ', reason: stated' : ''}${draw.below(5) === 0 ? ', sure: likely' : ''}`;
    const place = `region: ${region(here)}, when: ${when(draw)}`;
    return `  - { ${place}, status: ${status}${more}, known-by: ${draw.pick(KNOWN_BY)}, source: "${source(draw)}", checked: excerpt }`;
  });
  return `availability:\n${claims.join('\n')}`;
}

function recipe({ draw, nth, earlier }: Here): string {
  const follows = nth > 3 && draw.below(8) === 0 ? `\nfollows: [${earlier('C')}]` : '';
  const dyes = Array.from(
    { length: 1 + draw.below(2) },
    () => `  - { what: ${earlier('D')}, role: dye, amount: ${20 + draw.below(90)} % }`,
  );
  const mordant = `  - { what: ${earlier('M')}, role: mordant, amount: ${8 + draw.below(12)} % }`;
  return `fibre: ${draw.pick(FIBRES)}\ningredients:\n${mordant}\n${[...new Set(dyes)].join('\n')}${follows}\nsource: "${source(draw)}"\nchecked: excerpt`;
}

function trial({ draw, nth, earlier }: Here): string {
  const sample = (one: number): string => {
    const lab = [20 + draw.below(650) / 10, draw.below(700) / 10 - 15, draw.below(900) / 10 - 30].map((part) => part.toFixed(1)).join(', ');
    return `  - { code: T${nth}-${one}, fibre: ${draw.pick(FIBRES)}, colour: { lab: [${lab}], illuminant: D65, observer: 10, by: instrument } }`;
  };
  const date = `20${10 + draw.below(16)}-0${1 + draw.below(9)}-1${draw.below(10)}`;
  return `recipe: ${earlier('C')}\ndate: ${date}\nby: M. H.\nlog: ["09:10 wool in", "10:30 out"]\nsamples:\n${sample(1)}\n${sample(2)}`;
}

function textile(here: Here): string {
  const { draw, earlier } = here;
  const threads = Array.from({ length: 1 + draw.below(4) }, (_, at) => {
    return `  - { where: thread ${at + 1}, fibre: ${draw.pick(FIBRES)}, dyes: [${earlier('D')}], tested: found }`;
  });
  return `${where(here)}\nthreads:\n${threads.join('\n')}\nsource: "${source(draw)}"\nchecked: excerpt`;
}

/** The front matter of each kind, after its kind and title. */
const FRONT = {
  R: ({ draw, nth, earlier }) =>
    `${nth < 4 ? '' : `within: ${earlier('R')}\n`}near: [${idOf('R', nth + 1)}]\npoint: [${30 + draw.below(35)}, ${draw.below(90) - 10}]`,
  D: (here) =>
    `latin: ${drawName(here.draw)} ${drawWord(here.draw)}\nmatter: ${here.draw.pick(MATTER)}\nnames: [${drawName(here.draw)}, { name: ${drawName(here.draw)}, lang: de }]\ntags: [${drawWord(here.draw)}]\n${availability(here, 20 + here.draw.below(11))}`,
  M: (here) => availability(here, 6 + here.draw.below(9)),
  C: recipe,
  T: trial,
  X: textile,
  S: (here) =>
    `${where(here)}\ndyes: [${here.earlier('D')}]\nsays: ${drawWord(here.draw)} ${drawWord(here.draw)}\nsource: "${source(here.draw)}"\nchecked: excerpt`,
  W: (here) => `lang: enm\n${where(here)}\nmeans: [{ dyes: [${here.earlier('D')}], shade: red }]\nsource: "${source(here.draw)}"`,
  L: (here) => `${where(here)}\nact: wear\nconcerns: [${here.earlier('D')}]\nforbids: [everyone]\nsource: "${source(here.draw)}"`,
} as const satisfies Readonly<Record<Exclude<Letter, 'A'>, (here: Here) => string>>;
