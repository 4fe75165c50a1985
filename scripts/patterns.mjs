/**
 * `npm run patterns`: how long each pattern written in web and scripts may go back over a text, by recheck.
 * Fails on one that grows exponentially or with the third power of the text; squares are listed, they need a bounded text.
 * What recheck cannot decide (patterns that look ahead or behind, and large ones) is counted, and not called safe.
 */
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { filesBelow, ROOT } from './setup.mjs';

process.env['RECHECK_BACKEND'] = 'pure';
const require = createRequire(import.meta.url);
/** @type {typeof import('recheck')} */
const { checkSync } = require('recheck');
// The compiler's JavaScript API, which the newer one does not have.
/** @type {typeof import('typescript-js')} */
const ts = require('typescript-js');

/** Files whose worse patterns see a few signs only: the gap between two words of a name is at most 24 (`LONGEST_GAP`). */
const BOUNDED = ['web/domain/naming/find-names.ts'];

/** @type {Map<string, string>} each pattern, with where it stands first */
const patterns = new Map();
for (const file of ['web', 'scripts'].flatMap((folder) => filesBelow(join(ROOT, folder))).filter((name) => /\.(?:ts|mjs)$/.test(name))) {
  const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
  const look = (/** @type {import('typescript-js').Node} */ node) => {
    if (ts.isRegularExpressionLiteral(node) && !patterns.has(node.text))
      patterns.set(node.text, `${relative(ROOT, file)}:${source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1}`);
    ts.forEachChild(node, look);
  };
  look(source);
}

const counts = { safe: 0, square: 0, worse: 0, undecided: 0 };
for (const [pattern, where] of patterns) {
  const end = pattern.lastIndexOf('/');
  const result = checkSync(pattern.slice(1, end), pattern.slice(end + 1), { checker: 'automaton', timeout: 2000 });
  if (result.status === 'safe') counts.safe += 1;
  else if (result.status === 'unknown') counts.undecided += 1;
  else {
    const isSquare =
      (result.complexity.type === 'polynomial' && result.complexity.degree === 2) || BOUNDED.some((file) => where.startsWith(file));
    counts[isSquare ? 'square' : 'worse'] += 1;
    console.log(`${isSquare ? 'square' : 'WORSE '} ${where}  ${pattern}`);
  }
}
console.log(
  `${patterns.size} patterns: ${counts.safe} safe, ${counts.square} square, ${counts.worse} worse, ${counts.undecided} undecided`,
);
process.exitCode = counts.worse === 0 ? 0 : 1;
