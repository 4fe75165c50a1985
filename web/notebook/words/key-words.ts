import type { COMMON_KEYS, KIND_KEYS } from '../../domain/note/note-keys.ts';

/** What a form calls a key, and what may help whoever fills it in. */
export interface KeyWords {
  readonly label: string;
  readonly hint?: string;
}

type KindKeys = typeof KIND_KEYS;
/** Every key a kind has of its own, and the common ones; a display is put together on its board and not in a form. */
type TopKey =
  keyof typeof COMMON_KEYS | { [K in Exclude<keyof KindKeys, 'display'>]: keyof KindKeys[K] }[Exclude<keyof KindKeys, 'display'>];

const DATE_HINT = 'As you would write it: c. 1370, late 9th century, 1405–10. A period’s name also serves.';

/** Top-level keys in words. A key without words does not compile. */
const topWords = {
  kind: { label: 'Kind of note' },
  id: { label: 'Id', hint: 'The file’s name serves unless you give another.' },
  title: { label: 'Title' },
  names: { label: 'Other names', hint: 'Everyday, period and foreign names: each is found in every note.' },
  tags: { label: 'Filed under' },
  source: { label: 'Source', hint: 'The key of the bibliography, a comma, the page: cardon-2007, p. 107.' },
  sources: { label: 'Sources', hint: 'The key of the bibliography, a comma, the page.' },
  checked: { label: 'How it was checked' },
  'review-by': { label: 'Look again by' },
  invented: { label: 'Invented for a demonstration' },
  private: { label: 'Never published', hint: 'Kept out of everything that is published, also where a display uses it.' },
  latin: { label: 'Latin name' },
  formula: { label: 'Formula' },
  everyday: { label: 'Needs no evidence', hint: 'For what was always to hand: water, wood ash, bran.' },
  cautions: { label: 'Cautions' },
  availability: { label: 'Where and when it was to hand' },
  matter: { label: 'What it is' },
  part: { label: 'Part used' },
  markers: { label: 'Compounds a laboratory finds' },
  gather: { label: 'Gathering' },
  lightfast: {
    label: 'Fastness',
    hint: 'Grades to light; to washing or rubbing where the method says so, such as ISO 105-C06 or ISO 105-X12.',
  },
  is: { label: 'A kind of' },
  class: { label: 'Class' },
  undyed: { label: 'Colours it has undyed' },
  fibre: { label: 'Fibre' },
  ingredients: { label: 'Ingredients' },
  liquor: { label: 'Liquor', hint: 'Water to fibre: 30:1.' },
  steps: { label: 'Steps' },
  'based-on': { label: 'Based on' },
  'as-written': { label: 'As written', hint: 'The old words, untouched.' },
  follows: { label: 'Starts from', hint: 'The recipe whose cloth this one dyes over.' },
  recipe: { label: 'Recipe' },
  date: { label: 'Date' },
  by: { label: 'Dyed by' },
  vessel: { label: 'Vessel' },
  water: { label: 'Water' },
  lots: { label: 'Lots' },
  bath: { label: 'Bath' },
  actual: { label: 'What went in' },
  log: { label: 'At the pot', hint: 'Also tests, one a line: wash fastness: 4 (grey scale for change; ISO 105-C06).' },
  deviations: { label: 'Done otherwise than the recipe says' },
  code: { label: 'Code on the tag' },
  'fibre-mass': { label: 'Mass of the fibre', hint: 'With its unit: 50 g.' },
  onto: { label: 'Dyed onto' },
  colour: { label: 'Colour' },
  spectrum: { label: 'Spectrum' },
  photo: { label: 'Photo' },
  samples: { label: 'Samples' },
  region: { label: 'Place' },
  'made-at': { label: 'Made at' },
  when: { label: 'When', hint: DATE_HINT },
  context: { label: 'Context' },
  wearer: { label: 'Worn by' },
  threads: { label: 'Threads' },
  copied: { label: 'When this copy was made', hint: DATE_HINT },
  dyes: { label: 'Dyestuffs' },
  says: { label: 'What it says' },
  lang: { label: 'Language', hint: 'A short code: en, de, la, enm.' },
  means: { label: 'What it may mean' },
  doubt: { label: 'Doubt' },
  act: { label: 'What it touches' },
  concerns: { label: 'What it concerns' },
  allows: { label: 'Who may' },
  forbids: { label: 'Who may not' },
  enforced: { label: 'Whether it was enforced' },
  within: { label: 'Within' },
  near: { label: 'Beside' },
  point: { label: 'Latitude, longitude', hint: 'In degrees: 53.9, 10.7.' },
  question: { label: 'Question' },
  keeps: { label: 'Kept colours' },
  sample: { label: 'Sample' },
  readings: { label: 'Readings' },
  reference: { label: 'Reference' },
} as const satisfies Record<TopKey, KeyWords>;

/** Keys inside groups. */
const innerWords: Readonly<Record<string, KeyWords>> = {
  name: { label: 'Name' },
  status: { label: 'How it was to hand' },
  reason: { label: 'Why it was absent', hint: 'For an absence only.' },
  'known-by': { label: 'Known by' },
  sure: { label: 'How sure' },
  start: { label: 'Its beginning is known', hint: 'Introduced or invented then.' },
  end: { label: 'Its end is known', hint: 'Died out or was given up then.' },
  extent: { label: 'All over the place, or somewhere in it' },
  use: { label: 'Used for' },
  on: { label: 'On' },
  wearers: { label: 'For whom' },
  usual: { label: 'How usual' },
  price: { label: 'Price' },
  'rests-on': { label: 'Rests on', hint: 'The source this one goes back to.' },
  note: { label: 'Note' },
  what: { label: 'What' },
  role: { label: 'As' },
  amount: { label: 'Amount', hint: '15 %, 3–5 g/L, 2 oz, 1:4.' },
  form: { label: 'Form' },
  'stands-for': { label: 'Stands in for' },
  mordant: { label: 'Mordant' },
  grade: { label: 'Grade' },
  scale: { label: 'Scale' },
  method: { label: 'Method' },
  months: { label: 'Months', hint: 'Numbers from 1 to 12.' },
  'year-of-growth': { label: 'Year of growth' },
  hardness: { label: 'Hardness', hint: 'With its unit: 18 °dH.' },
  pH: { label: 'pH' },
  nth: { label: 'Which bath of the pot' },
  after: { label: 'After the trial' },
  where: { label: 'Where on the textile' },
  'colour-now': { label: 'Colour now' },
  tested: { label: 'Tested' },
  colours: { label: 'Colours' },
  shade: { label: 'Shade, in words' },
  cloth: { label: 'Cloth' },
  process: { label: 'Process' },
  rank: { label: 'Rank' },
  trial: { label: 'Trial' },
  verdict: { label: 'Verdict when kept' },
  dose: { label: 'Light dose' },
  light: { label: 'Light' },
  lab: { label: 'L*, a*, b*', hint: '41.2, 38.5, 24.1' },
  hex: { label: 'Screen colour', hint: '#8a2b2b' },
  xyz: { label: 'X, Y, Z' },
  illuminant: { label: 'Light it was measured under', hint: 'Cloth: D65.' },
  observer: { label: 'Observer', hint: '10 for cloth, 2 for a screen.' },
  file: { label: 'File' },
};

/** Where a key means something narrower than elsewhere: what holds it, and the key. */
const narrowed: Readonly<Record<string, KeyWords>> = {
  'textile region': { label: 'Found at' },
  'text when': { label: 'When, of the practice', hint: DATE_HINT },
  'text fibre': { label: 'Fibres it speaks of' },
  'colour by': { label: 'How it was got', hint: 'spectrum, instrument, photo-with-chart, photo or eye' },
  'spectrum sample': { label: 'Which sample of the file' },
  'wearer when': { label: 'When there were such', hint: DATE_HINT },
  'palette wearer': { label: 'For' },
  'display palette': { label: 'The kept palette' },
};

const known: ReadonlyMap<string, KeyWords> = new Map([...Object.entries<KeyWords>(topWords), ...Object.entries(innerWords)]);

/** True for a key that has words of its own. */
export const hasKeyWords = (key: string): boolean => known.has(key);

/**
 * What a form calls a key.
 *
 * @param owner the kind of the note, or the key that holds the group.
 */
export function keyWords(key: string, owner = ''): KeyWords {
  const words = keptNarrow(`${owner} ${key}`) ?? known.get(key);
  return words ?? { label: key.charAt(0).toUpperCase() + key.slice(1).replaceAll('-', ' ') };
}

const keptNarrow = (name: string): KeyWords | undefined => (Object.hasOwn(narrowed, name) ? narrowed[name] : undefined);

/** What one more of a list is called: "Add a claim". */
export const oneMoreWords: Readonly<Record<string, string>> = {
  availability: 'claim',
  latin: 'Latin name',
  markers: 'compound',
  tags: 'word to file it under',
  fibre: 'fibre',
  on: 'fibre',
  'based-on': 'text',
  follows: 'recipe',
  dyes: 'dyestuff',
  wearer: 'wearer',
  wearers: 'wearer',
  allows: 'wearer',
  forbids: 'wearer',
  concerns: 'thing it concerns',
  within: 'wider one',
  near: 'neighbour',
  names: 'name',
  ingredients: 'ingredient',
  actual: 'ingredient',
  steps: 'step',
  log: 'entry',
  deviations: 'deviation',
  lots: 'lot',
  samples: 'sample',
  threads: 'thread',
  means: 'meaning',
  keeps: 'colour',
  readings: 'reading',
  lightfast: 'grade',
  undyed: 'undyed colour',
  colours: 'colour',
  cautions: 'caution',
  source: 'source',
  sources: 'source',
};

/** A word of a closed list as a form shows it. */
export const choiceWords = (word: string, key: string): string => CHOICES[key]?.[word] ?? word.replaceAll('-', ' ');

const checked = {
  'read-whole': 'read whole',
  excerpt: 'read in excerpt',
  'quoted-elsewhere': 'quoted elsewhere',
  'from-memory': 'from memory, not looked up',
};

const CHOICES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  status: {
    wild: 'grew wild',
    grown: 'was grown',
    made: 'was made',
    imported: 'was imported',
    'cloth-only': 'came only as cloth',
    absent: 'was absent',
  },
  'known-by': { analysis: 'dye analysis', trade: 'trade record', image: 'picture', practice: 'later practice' },
  sure: { yes: 'yes, sure' },
  checked,
  tested: { no: 'not tested', 'none-detected': 'none detected' },
  act: { wear: 'wearing', dye: 'dyeing', import: 'bringing in', sell: 'selling' },
};
