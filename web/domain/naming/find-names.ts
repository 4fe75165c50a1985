import type { NoteId } from '../note/note.ts';
import { DYE_SENSE, FALSE_FRIENDS, type FalseFriend, ORDINARY_WORDS } from './false-friends.ts';
import type { NameDictionary, NameEntry, NameHolding, NameNode } from './name-dictionary.ts';
import { type TextWord, wordsOfText } from './words-of-text.ts';

/** A name found in a text. */
export interface Mention {
  /** UTF-16 code units of the text, half open. */
  readonly start: number;
  readonly end: number;
  /** As it stands in the text. */
  readonly text: string;
  /** Whoever answers to it; several where the name is shared. */
  readonly candidates: readonly NoteId[];
  /** The name as the first candidate's note lists it. */
  readonly name: string;
  /** How each candidate holds the name. */
  readonly holders: ReadonlyMap<NoteId, NameHolding>;
  /** The word is an ordinary one as often, and nothing in its sentence speaks of dyeing. */
  readonly doubt?: 'ordinary-word';
}

/**
 * Finds names in a text: whole words only, the longest name wins, never inside another word, not where the words around
 * give it another sense. Time grows with the length of the text.
 *
 * @returns mentions in the order of the text; they do not overlap.
 */
export function findNames(text: string, dictionary: NameDictionary): readonly Mention[] {
  const words = wordsOfText(text);
  const mentions: Mention[] = [];
  for (let at = 0; at < words.length;) {
    const found = mayBegin(text, words, at, dictionary) ? longestAt(text, words, at, dictionary) : undefined;
    const mention = found && mentionOf(text, words, at, found);
    if (mention) mentions.push(mention);
    at = mention && found ? found.next : at + 1;
  }
  return mentions;
}

interface Found {
  readonly entry: NameEntry;
  readonly end: number;
  /** Index of the first word behind the name. */
  readonly next: number;
}

/** A quick look, because hardly any word begins a name. */
function mayBegin(text: string, words: readonly TextWord[], at: number, { root }: NameDictionary): boolean {
  const word = words[at];
  if (!word) return false;
  if (word.stem || root.next.has(word.key)) return true;
  const next = words[at + 1];
  return next !== undefined && next.start - word.end <= LONGEST_GAP && '-‐‑*_'.includes(text[word.end] ?? ' ');
}

function longestAt(text: string, words: readonly TextWord[], at: number, { root, longest }: NameDictionary): Found | undefined {
  let best: Found | undefined;
  const take = (node: NameNode, end: number, next: number, loose: boolean) => {
    if (!node.entry || (loose && !node.entry.loose) || (best && best.end >= end)) return;
    const following = words[next];
    if (following && ENDINGS.has(following.key) && HYPHEN.test(text.slice(end, following.start))) return;
    best = { entry: node.entry, end, next };
  };
  const step = (node: NameNode, index: number, depth: number, loose: boolean) => {
    const word = words[index];
    if (!word || depth > longest) return;
    let gap: Gap | undefined = 'plain';
    if (depth > 0) {
      const before = words[index - 1];
      gap = before && gapBetween(text, before, word);
      if (!gap) return;
    }
    const isLoose = loose || gap === 'loose';
    const go = (key: string, end: number, next: number, further: boolean, whole = true) => {
      const child = node.next.get(key);
      if (!child) return;
      if (whole) take(child, end, next, isLoose);
      if (further) step(child, next, depth + 1, isLoose);
    };
    if (word.stem) go(word.stem.key, word.stem.end, index + 1, false);
    // "madder's" is a madder's, not the plural that folds to the same letters.
    const possessive = word.stem !== undefined && node.next.get(word.stem.key)?.entry !== undefined;
    go(word.key, word.end, index + 1, true, !possessive);
    // "log-wood" for "logwood".
    const second = words[index + 1];
    if (second && second.start - word.end <= LONGEST_GAP && HYPHEN.test(text.slice(word.end, second.start))) {
      go(word.key + second.key, second.end, index + 2, true);
    }
  };
  step(root, at, 0, false);
  return best;
}

type Gap = 'plain' | 'loose';

const LONGEST_GAP = 24;
const HYPHEN = /^[*_]*[-‐‑][*_]*(?:\r?\n[ \t>]*)?$/;
/** Space, one line break (a quoted line goes on behind `>`), emphasis marks, the apostrophe of a shortened word, an abbreviation's full stop. */
const SPACE = /^['’‘*_]*(\.?)[*_]*[ \t\u00A0\u2009\u202F]*(?:\r?\n[ \t>]*)?[*_]*$/;
const LOOSE = /^[\s,()/*_.]+$/;

/** What may stand between two words of one name. */
function gapBetween(text: string, before: TextWord, after: TextWord): Gap | undefined {
  if (after.start - before.end > LONGEST_GAP) return undefined;
  const gap = text.slice(before.end, after.start);
  if (HYPHEN.test(gap)) return 'plain';
  const space = SPACE.exec(gap);
  if (space) return space[1] === '' || before.end - before.start <= 3 ? 'plain' : undefined;
  return LOOSE.test(gap) && !/\n\s*\n/.test(gap) ? 'loose' : undefined;
}

/** What makes another word of a name, also behind a hyphen at the end of a line. */
const ENDINGS = new Set(['ed', 'd', 'ing', 'er', 'ers', 'est', 'ly', 'less', 'able']);

const rulesByName = new Map<string, FalseFriend[]>();
for (const rule of FALSE_FRIENDS) for (const name of rule.names) rulesByName.set(name, [...(rulesByName.get(name) ?? []), rule]);

function mentionOf(text: string, words: readonly TextWord[], at: number, { entry, end, next }: Found): Mention | undefined {
  const first = words[at];
  const holding = [...entry.holders.values()][0];
  if (!first || !holding) return undefined;
  const written = text.slice(first.start, end);
  const key = next - at === 1 ? (first.stem && first.stem.end === end ? first.stem.key : first.key) : undefined;
  let doubt = false;
  if (key !== undefined && (rulesByName.has(key) || ORDINARY_WORDS.has(key)) && !isPlain(text, first.start, end, written, entry)) {
    const context = contextOf(text, words, at, next);
    const dyeing = DYE_SENSE.test(context.around);
    const capital = /^\p{Lu}.*\p{Ll}/u.test(written);
    const misled = rulesByName
      .get(key)
      ?.some(
        (rule) =>
          !(rule.capital && !capital) &&
          !(rule.unlessDyeing && dyeing) &&
          (rule.before?.test(context.before) ?? true) &&
          (rule.after?.test(context.after) ?? true) &&
          (rule.within?.test(context.around) ?? true),
      );
    if (misled) return undefined;
    doubt = ORDINARY_WORDS.has(key) && !dyeing;
  }
  return {
    start: first.start,
    end,
    text: written,
    candidates: [...entry.holders.keys()],
    name: holding.name.listed,
    holders: entry.holders,
    ...(doubt ? { doubt: 'ordinary-word' as const } : {}),
  };
}

/** Written with the accents of the name itself, in emphasis or in quotation marks: the writer means the name. */
function isPlain(text: string, start: number, end: number, written: string, entry: NameEntry): boolean {
  if (/[*_"“„«»‹›]/.test(text[start - 1] ?? ' ') && /[*_"”“«»‹›]/.test(text[end] ?? ' ')) return true;
  const plain = written.normalize('NFC').toLowerCase();
  return /[^\0-\x7f]/.test(plain) && [...entry.holders.values()].some(({ name }) => name.listed.normalize('NFC').toLowerCase() === plain);
}

const MOST_WORDS = 4;
const SENTENCE_WORDS = 25;
const STOP = /[.!?;:|]|\n[ \t>]*\r?\n/;

/** Folded words before and behind a name in its sentence, and the rest of that sentence around it. */
function contextOf(text: string, words: readonly TextWord[], at: number, next: number) {
  const before: string[] = [];
  for (let i = at - 1; i >= 0 && before.length < SENTENCE_WORDS; i--) {
    const word = words[i];
    if (!word || STOP.test(text.slice(word.end, words[i + 1]?.start))) break;
    before.unshift(word.key);
  }
  const after: string[] = [];
  for (let i = next; i < words.length && after.length < SENTENCE_WORDS; i++) {
    const word = words[i];
    if (!word || STOP.test(text.slice(words[i - 1]?.end, word.start))) break;
    after.push(word.key);
  }
  return {
    before: before.slice(-MOST_WORDS).join(' '),
    after: after.slice(0, MOST_WORDS).join(' '),
    around: [...before, ...after].join(' '),
  };
}
