/**
 * `npm run patterns`: how long each pattern written in web and scripts may go back over a text, by recheck.
 * Fails on one whose steps grow faster than its text unless `BOUNDED` says how short that is, on one of which that cannot be said
 * unless `UNDECIDED` says why it does no harm, and on what these say of a pattern that is not there.
 */
import { findPatterns } from './patterns/find-patterns.mjs';
import { growthOf } from './patterns/growth-of.mjs';

/** Patterns that grow faster than their text and see a short one only, with its bound, by the file they stand in. */
const BOUNDED = new Map([
  ['web/domain/naming/find-names.ts', 'the gap between two words of a name: 24 signs (LONGEST_GAP)'],
  ['web/elements/colour-input/photo-view.ts', 'the end of a line: 120 signs (LONGEST_LAB)'],
  ['web/notebook/conflict-copies.ts', 'the name of a file: 1024 signs (path-fault.ts), 255 in a linked folder'],
  ['web/notebook/import/read-trials.ts', 'a name with its amount: 200 signs (LONGEST_WITH_AMOUNT)'],
  ['web/notebook/typed-colour.ts', 'a colour in an address: 120 signs (LONGEST)'],
  ['scripts/bench/g8-shell.bench.ts', 'the first page, as the build wrote it'],
  ['scripts/elements-manifest.mjs', 'our own sources, when the site is built'],
]);

/** Patterns of which it cannot be said, with what keeps them short, by the pattern itself, or by the file that builds it. */
const UNDECIDED = new Map([
  [
    String.raw`/\b(?:in|into|from) an? (?:(?:old|small|large|clean|lidded|empty|flat|shallow) )*tin(?=\s*(?:[.,;:!?)]|$)|\s+(?:with a lid|overnight|on a shelf)\b)/g`,
    'a run of such words is read from its own "in a" alone, and the blanks behind a tin twice (without-doses.ts)',
  ],
  [String.raw`/(?<=[aeiouy].*)(?<![aeiouyl])e$|(?<=[aeiouy].*)(?<=[aeiouy]l)e$/`, 'a word: 60 letters (LONGEST_WORD in syllables.ts)'],
  [String.raw`/(?<=[aeiouy].*)(?<![tdaeiouy])ed$/`, 'a word, as above'],
  [String.raw`/(?<=[aeiouy].*)(?<![sxzcgaeiouy]|[cs]h|[^aeiouy]l)es$/`, 'a word, as above'],
  [String.raw`/(?<=[aeiouy].*)e(?=(?:ly|less|ness|ment|ful|some)$)/`, 'a word, as above'],
  [
    String.raw`/\]\([ \t]*<?([^)\s>]+)|^[ \t]{0,3}\[[^\]\n]{1,200}\]:[ \t]*<?([^\s>]+)|(?:https?|ftp|doi|mailto):[^\s)>\]]+/gim`,
    'each way alone is safe but the second, which begins once in a line, reads on to its end, and goes back over 200 signs at most (place-in-note.ts)',
  ],
  [String.raw`/\B(?=(?:\d{3})+$)/g`, 'a whole number up to a million, as text (light-words.ts)'],
  [
    String.raw`/^(.+?)[ _]*[([](?=[^()[\]]*conflict)[^()[\]]*[)\]]$/i`,
    'the name of a file: 1024 signs (path-fault.ts), 255 in a linked folder (conflict-copies.ts)',
  ],
  [
    String.raw`/(?<=^ {0,3}|[.;:,!?] {0,3}|\b(?:and|then|to|or) {1,3})lead (?=(?:the |each |every |all |your )?(?:\w+ )?(?:skeins?|hanks?|yarns?|wool|cloths?|silk|linen|threads?|fleece|pieces?|goods|them|it) (?:\w+ )?(?:through|into|round|out of)\b)/g`,
    'looks at no more than the five words behind "lead", which have no blank in them (without-doses.ts)',
  ],
  [
    'web/domain/pot/without-doses.ts',
    'a figure begins once in a run of digits; two figures and a unit behind it, with a sign between any two runs of blanks',
  ],
  ['web/domain/pot/step-figures.ts', 'as above: two figures at most and a unit'],
  [
    String.raw`/(?<![.!?…])[.!?…]+["”’)]*(?=\s+["“‘(]?[\p{Lu}\p{N}])|\n+/gu`,
    'a run of stops begins once, and the blanks behind it are looked at from its end alone (words-and-sentences.ts)',
  ],
]);

const { patterns, unknownBuilders } = await findPatterns();
const counts = { safe: 0, bounded: 0, grows: 0, listed: 0, undecided: 0 };
const unused = new Set([...BOUNDED.keys(), ...UNDECIDED.keys()]);
for (const [pattern, where] of patterns) {
  const end = pattern.lastIndexOf('/');
  const { growth, why } = growthOf(pattern.slice(1, end), pattern.slice(end + 1));
  const file = where.replace(/:\d+$/, '');
  const reason = growth === 'safe' ? undefined : growth === 'grows' ? BOUNDED.get(file) : (UNDECIDED.get(pattern) ?? UNDECIDED.get(where));
  for (const key of [pattern, where, ...(growth === 'grows' ? [file] : [])]) unused.delete(key);
  counts[reason === undefined ? growth : growth === 'grows' ? 'bounded' : 'listed'] += 1;
  if (growth !== 'safe') console.log(`${reason === undefined ? growth.toUpperCase() : growth}  ${where}  ${pattern}  ${reason ?? why}`);
}
for (const file of unknownBuilders)
  console.log(`UNKNOWN ${file} builds a pattern that was not looked at: name it in patterns/find-patterns.mjs`);
for (const name of unused) console.log(`UNUSED ${name} is listed in patterns.mjs, and there is no such pattern any more`);
console.log(
  `${patterns.size} patterns: ${counts.safe} safe, ${counts.bounded} that grow but see a bounded text, ${counts.grows} that grow, ` +
    `${counts.listed} undecided with a reason, ${counts.undecided} undecided`,
);
process.exitCode = counts.grows + counts.undecided + unused.size + unknownBuilders.length === 0 ? 0 : 1;
