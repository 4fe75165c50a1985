import { chance, type Chance } from './random.ts';

/** One generated file of a large notebook. */
export interface MadeFile {
  readonly path: string;
  readonly text: string;
}

const ROOTS = ['England', 'Norway', 'Flanders', 'Saxony', 'Picardy', 'Tuscany', 'Aragon', 'Mazovia', 'Anatolia', 'Persia', 'Bengal', 'Shu'];
const PLANTS = ['madder', 'weld', 'woad', 'greenweed', 'sawwort', 'bedstraw', 'fustic', 'orchil', 'kermes', 'lac', 'walnut', 'sumac'];
const MADE_OF = ['root', 'leaf', 'bark', 'gall', 'wood', 'flower', 'berry'];
const STATUS = ['grown', 'wild', 'imported', 'imported', 'cloth-only', 'absent'];
const KNOWN_BY = ['analysis', 'remains', 'text', 'trade', 'law', 'inference', 'practice'];
const FIBRES = ['wool', 'fine-wool', 'linen', 'silk', 'cotton'];
const WEARERS = ['everyone', 'noble', 'burgher', 'peasant'];
const PROSE = 'The bath was kept below a simmer and the cloth turned often. Next to it lay last year’s skein, a little browner. '.repeat(6);

/** How many notes of each kind there are in a thousand: as a notebook of many years grows, mostly trials and reading. */
const SHARES = {
  regions: 60,
  dyestuffs: 60,
  mordants: 15,
  recipes: 140,
  trials: 400,
  textiles: 110,
  texts: 80,
  words: 40,
  rules: 25,
} as const;

/**
 * A large notebook by chance, the same for the same seed: notes as people write them, a few of them with slips.
 *
 * @param count how many notes, at least 100.
 */
export function manyNotes(count: number, seed = 1): readonly MadeFile[] {
  const dice = chance(seed);
  const many = (kind: keyof typeof SHARES): number => Math.max(3, Math.round((SHARES[kind] * count) / 1000));
  const regions = Array.from({ length: many('regions') }, (_, n) => named(ROOTS, n));
  const dyes = Array.from({ length: many('dyestuffs') }, (_, n) => `${named(PLANTS, n)} ${MADE_OF[n % MADE_OF.length] ?? ''}`);
  const mordants = ['alum', 'iron', ...Array.from({ length: many('mordants') }, (_, n) => `mordant ${n}`)];
  const recipes = Array.from({ length: many('recipes') }, (_, n) => `recipe-${n}`);
  const world = { dice, regions: regions.map(slug), dyes: dyes.map(slug), mordants: mordants.map(slug), recipes };

  const files: MadeFile[] = [
    ...FIBRES.map((id) =>
      file('fibres', id, `kind: fibre\ntitle: ${id}\n${id === 'fine-wool' ? 'is: wool\n' : ''}class: ${classOf(id)}\neveryday: true`),
    ),
    ...WEARERS.map((id) => file('wearers', id, `kind: wearer\ntitle: ${id}${id === 'everyone' ? '' : '\nwithin: everyone'}`)),
    ...regions.map((title, n) => file('regions', slug(title), region(world, title, n))),
    ...dyes.map((title, n) =>
      file('dyestuffs', slug(title), `kind: dyestuff\ntitle: ${title}\nlatin: [Planta no. ${n}]\nmatter: plant\n${availability(world, 3)}`),
    ),
    ...mordants.map((title) => file('mordants', slug(title), `kind: mordant\ntitle: ${title}\n${availability(world, 4)}`)),
    ...recipes.map((id, n) => file('recipes', id, recipe(world, n))),
    ...Array.from({ length: many('trials') }, (_, n) => file('trials', `t-${n}`, trial(world, n))),
    ...Array.from({ length: many('textiles') }, (_, n) => file('textiles', `find-${n}`, textile(world, n))),
    ...Array.from({ length: many('texts') }, (_, n) =>
      file(
        'texts',
        `text-${n}`,
        `kind: text\ntitle: Text ${n}\n${where(world)}\ndyes: [${dice.pick(world.dyes)}]\nsource: book-${n % 90}\nchecked: excerpt`,
      ),
    ),
    ...Array.from({ length: many('words') }, (_, n) =>
      file(
        'words',
        `word-${n}`,
        `kind: colour-word\ntitle: Word ${n}\n${where(world)}\nmeans: [{dyes: [${dice.pick(world.dyes)}], shade: red}]\nsource: book-1`,
      ),
    ),
    ...Array.from({ length: many('rules') }, (_, n) =>
      file(
        'rules',
        `rule-${n}`,
        `kind: rule\ntitle: Rule ${n}\n${where(world)}\nact: wear\nconcerns: [${dice.pick(world.dyes)}]\nforbids: [peasant]\nsource: book-2`,
      ),
    ),
  ];
  for (let n = 0; files.length < count; n++) files.push({ path: `reading/reading-${n}.md`, text: `# Reading ${n}\n\n${body(world)}` });
  return files.slice(0, count);
}

interface World {
  readonly dice: Chance;
  readonly regions: readonly string[];
  readonly dyes: readonly string[];
  readonly mordants: readonly string[];
  readonly recipes: readonly string[];
}

const slug = (title: string): string => title.toLowerCase().replaceAll(' ', '-');
const named = (roots: readonly string[], n: number): string =>
  `${roots[n % roots.length] ?? ''}${n < roots.length ? '' : ` ${Math.floor(n / roots.length)}`}`;
const classOf = (fibre: string): string => (fibre === 'linen' || fibre === 'cotton' ? 'cellulose' : 'protein');
const file = (folder: string, stem: string, yaml: string): MadeFile => ({
  path: `${folder}/${stem}.md`,
  text: `---\n${yaml}\n---\n\n${PROSE}\n`,
});

/** One reference in a hundred is misspelt, as hands do. */
const slip = ({ dice }: World, id: string): string => (dice.oneIn(100) ? `${id.slice(0, -1)}x` : id);

function region({ dice, regions }: World, title: string, n: number): string {
  const parent = n < ROOTS.length ? '' : `\nwithin: ${regions[dice.below(Math.min(n, ROOTS.length * 4))] ?? ''}`;
  return `kind: region\ntitle: ${title}${parent}\nnear: [${regions[(n + 1) % regions.length] ?? ''}]`;
}

function where(world: World): string {
  const from = 800 + world.dice.below(900);
  const when = world.dice.pick([`${from}–${from + 80}`, `c. ${from}`, `${Math.ceil(from / 100)}th century`, `${from}/${from + 150}`]);
  return `region: ${slip(world, world.dice.pick(world.regions))}\nwhen: ${when}`;
}

function availability(world: World, most: number): string {
  const claims = Array.from({ length: 1 + world.dice.below(most) }, () => {
    const status = world.dice.pick(STATUS);
    const reason = status === 'absent' ? ', reason: stated' : '';
    return `  - {${where(world).replace('\n', ', ')}, status: ${status}${reason}, known-by: ${world.dice.pick(KNOWN_BY)}, source: "book-${world.dice.below(90)}, p. 3"}`;
  });
  return `availability:\n${claims.join('\n')}`;
}

function recipe(world: World, n: number): string {
  const { dice } = world;
  const follows = n > 3 && dice.oneIn(8) ? `\nfollows: [recipe-${dice.below(n)}]` : '';
  const dye = slip(world, dice.pick(world.dyes));
  return `kind: recipe\ntitle: Recipe ${n}\nfibre: ${dice.pick(FIBRES)}\ningredients:\n  - {what: ${dice.pick(world.mordants)}, role: mordant, amount: 15 %}\n  - {what: ${dye}, role: dye, amount: 80 %}${follows}\nsource: book-${n % 90}`;
}

function trial(world: World, n: number): string {
  const { dice } = world;
  const sample = (code: string) =>
    `  - {code: ${code}, fibre: ${dice.pick(FIBRES)}, colour: {lab: [${25 + dice.below(50)}, ${dice.below(50) - 10}, ${dice.below(60) - 20}], illuminant: D65, observer: 10, by: instrument}}`;
  return `kind: trial\ntitle: Trial ${n}\nrecipe: ${slip(world, dice.pick(world.recipes))}\ndate: 2024-05-0${1 + (n % 9)}\nby: M.\nlog: ["09:10 in", "10:30 out"]\nsamples:\n${sample(`A${n}-1`)}\n${sample(`A${n}-2`)}`;
}

function textile(world: World, n: number): string {
  const dye = slip(world, world.dice.pick(world.dyes));
  return `kind: textile\ntitle: Find ${n}\n${where(world)}\nthreads:\n  - {where: warp, fibre: ${world.dice.pick(FIBRES)}, dyes: [${dye}], tested: found}\nsource: book-3\nchecked: excerpt`;
}

/** Prose with a link or two, one in thirty of them broken. */
function body(world: World): string {
  const to = (id: string) => `[${id}](../dyestuffs/${world.dice.oneIn(30) ? 'gone' : id}.md)`;
  return `${PROSE}\n\nSee ${to(world.dice.pick(world.dyes))} and ${to(world.dice.pick(world.dyes))}.\n`;
}
