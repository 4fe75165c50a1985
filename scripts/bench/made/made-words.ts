import { type NoteChance, noteChance } from './note-chance.ts';

/** Words of the language that are not made up: those that stand in every text, then those of the trade. */
const COMMON =
  'the of and in to a is it was with for on as by that from at not or be this which are an its were then but had one more so than into may when';
const TRADE =
  'dye bath wool alum madder weld woad colour cloth water skein mordant yellow red blue thread silk linen indigo iron vat lye tartar boil simmer rinse dry root leaf bark wood kermes lac orchil fustic sumac galls sawwort greenweed bedstraw crimson scarlet murrey grain merchant guild statute ell pound fleece loom warp weft grave fragment burial harbour ship custom garden meadow autumn faded lightfast purple brown green tawny russet';
/** How many different words there are, beside names. */
const TYPES = 120_000;
/** Draws are looked up here; each word has its share of the places. */
const PLACES = 1 << 22;
const ONSETS = [
  'b',
  'br',
  'c',
  'd',
  'f',
  'fl',
  'g',
  'h',
  'k',
  'kr',
  'l',
  'm',
  'n',
  'p',
  'r',
  's',
  'st',
  't',
  'tr',
  'v',
  'w',
  'sch',
] as const;
const VOWELS = ['a', 'e', 'i', 'o', 'u', 'e', 'a', 'o', 'ea', 'ou', 'é', 'ö', 'ü', 'å', 'è', 'ã'] as const;
const PLAIN_VOWELS = 10;
const CODAS = ['', '', 'n', 'r', 's', 't', 'l', 'd', 'nd', 'ng', 'ck', 'ñ', 'ç'] as const;
const PLAIN_CODAS = 11;

/** A word that looks like one, the same for the same number; rarer words are longer, one in ten has an accent. */
function coined(nth: number): string {
  const draw = noteChance(7, nth);
  const accented = draw.below(10) === 0;
  const syllables = 2 + draw.below(nth < 2000 ? 1 : nth < 20_000 ? 2 : 3);
  let word = '';
  for (let at = 0; at < syllables; at += 1) {
    const last = accented && at === syllables - 1;
    word += ONSETS[draw.below(ONSETS.length)] ?? '';
    word += VOWELS[draw.below(last ? VOWELS.length : PLAIN_VOWELS)] ?? '';
    word += CODAS[draw.below(last ? CODAS.length : PLAIN_CODAS)] ?? '';
  }
  return word;
}

let words: readonly string[] | undefined;
let places: Int32Array | undefined;

function allWords(): readonly string[] {
  const real = [...COMMON.split(' '), ...TRADE.split(' ')];
  return [...real, ...Array.from({ length: TYPES - real.length }, (_, nth) => coined(nth))];
}

/** Shares by the law of Zipf as Mandelbrot has it: 1 / (rank + 2.7)^1.07. */
function sharedPlaces(): Int32Array {
  const weights = Float64Array.from({ length: TYPES }, (_, rank) => (rank + 2.7) ** -1.07);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const filled = new Int32Array(PLACES);
  let sum = 0;
  let at = 0;
  for (let rank = 0; rank < TYPES; rank += 1) {
    sum += weights[rank] ?? 0;
    const end = rank === TYPES - 1 ? PLACES : Math.round((sum / total) * PLACES);
    filled.fill(rank, at, end);
    at = end;
  }
  return filled;
}

/** A word by its rank, the commonest first. */
export const wordOfRank = (rank: number): string => (words ??= allWords())[rank] ?? '';

/** A word as often as words of its rank come. */
export function drawWord(draw: NoteChance): string {
  places ??= sharedPlaces();
  return wordOfRank(places[draw.below(PLACES)] ?? 0);
}

/** A proper name out of far more than any notebook holds. */
export function drawName(draw: NoteChance): string {
  const name = coined(TYPES + draw.below(2_000_000));
  return name.charAt(0).toUpperCase() + name.slice(1);
}
