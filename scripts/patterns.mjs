/**
 * `npm run patterns`: how long each pattern written in web and scripts may go back over a text, by recheck.
 * Fails on one that grows faster than its text, unless the text is bounded, which has to be said in `BOUNDED`.
 * What recheck cannot decide (patterns that look ahead or behind, and large ones) is counted, and not called safe.
 */
import { createRequire } from 'node:module';
import { findPatterns } from './patterns/find-patterns.mjs';

process.env['RECHECK_BACKEND'] = 'pure';
/** @type {typeof import('recheck')} */
const { checkSync } = createRequire(import.meta.url)('recheck');

/** Patterns that grow faster than their text and see a short one only, with its bound, by the file they stand in. */
const BOUNDED = new Map([
  ['web/domain/naming/find-names.ts', 'the gap between two words of a name: 24 signs (LONGEST_GAP)'],
  ['web/elements/colour-input/photo-view.ts', 'the end of a line: 120 signs (LONGEST_LAB)'],
  ['web/notebook/conflict-copies.ts', 'the name of a file: 1024 signs (path-fault.ts), 255 in a linked folder'],
  ['web/notebook/import/read-trials.ts', 'a name with its amount: 200 signs (LONGEST_WITH_AMOUNT)'],
  ['web/notebook/typed-colour.ts', 'a colour in an address: 120 signs (LONGEST)'],
  ['scripts/elements-manifest.mjs', 'our own sources, when the site is built'],
]);

const { patterns, unknownBuilders } = await findPatterns();
const counts = { safe: 0, bounded: 0, worse: 0, undecided: 0 };
for (const [pattern, where] of patterns) {
  const end = pattern.lastIndexOf('/');
  const result = checkSync(pattern.slice(1, end), pattern.slice(end + 1), { checker: 'automaton', timeout: 2000 });
  if (result.status === 'safe') counts.safe += 1;
  else if (result.status === 'unknown') counts.undecided += 1;
  else {
    const bound = BOUNDED.get(where.replace(/:\d+$/, ''));
    counts[bound ? 'bounded' : 'worse'] += 1;
    console.log(`${bound ? 'bounded' : 'GROWS  '} ${where}  ${pattern}  ${bound ?? result.complexity.summary}`);
  }
}
for (const file of unknownBuilders)
  console.log(`UNKNOWN ${file} builds a pattern that was not looked at: name it in patterns/find-patterns.mjs`);
console.log(
  `${patterns.size} patterns: ${counts.safe} safe, ${counts.bounded} that grow but see a bounded text, ${counts.worse} that grow, ${counts.undecided} undecided`,
);
process.exitCode = counts.worse + unknownBuilders.length === 0 ? 0 : 1;
