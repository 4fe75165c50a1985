import { createRequire } from 'node:module';
import { oneAlternativeEach } from './one-alternative-each.mjs';
import { withoutCounts } from './without-counts.mjs';
import { withoutLookArounds } from './without-look-arounds.mjs';

const require = createRequire(import.meta.url);
process.env['RECHECK_BACKEND'] = hasOwnProgram() ? 'native' : 'pure';
/** @type {typeof import('recheck')} */
const { checkSync } = require('recheck');

/** Milliseconds for a pattern that can be taken apart, and for one that cannot. A busy machine leaves more of them undecided. */
const WHOLE = 2000;
const LAST = 20_000;
/** Milliseconds for all parts of a pattern together. */
const ALL_PARTS = 120_000;

/** @typedef {{ growth: 'safe' | 'grows' | 'undecided', why: string, isExponential?: boolean }} Growth */

/** @type {Growth} */
const SAFE = { growth: 'safe', why: '' };

/**
 * How the steps of a search with a pattern grow with its text: `safe` (no faster than the text), `grows` (faster), `undecided`.
 * One that looks ahead or behind is safe if a pattern that takes at least as many steps is; growth of that one decides nothing.
 *
 * @param {string} source
 * @param {string} flags
 * @returns {Growth}
 */
export function growthOf(source, flags) {
  const { asLong, same } = withoutLookArounds(source, flags);
  if (asLong === source) return growthOfPlain(source, flags, performance.now() + ALL_PARTS);
  let why = 'it looks about without end, or reads again what it found';
  for (const pattern of [asLong, same]) {
    if (pattern === undefined) continue;
    const found = growthOfPlain(pattern, flags, performance.now() + ALL_PARTS);
    if (found.growth === 'safe') return SAFE;
    why = `as ${pattern}: ${found.why}`;
  }
  return { growth: 'undecided', why };
}

/** @type {(source: string, flags: string, until: number) => Growth} */
function growthOfPlain(source, flags, until) {
  if (performance.now() > until) return { growth: 'undecided', why: `too many parts, from ${source} on` };
  const parts = oneAlternativeEach(source, flags);
  const endless = withoutCounts(source, flags);
  if (endless !== source) {
    const found = endless === undefined ? undefined : growthOfPlain(endless, flags, until);
    if (found?.growth === 'safe') return SAFE;
    // recheck calls safe what reads no more than so many signs, in however many ways.
    if (found?.growth !== 'grows' || found.isExponential)
      return parts.length > 1 ? growthOfParts(parts, flags, until) : { growth: 'undecided', why: `it counts too far: ${source}` };
  }
  const result = checkSync(source, flags, { checker: 'automaton', timeout: parts.length > 1 ? WHOLE : LAST });
  if (result.status === 'safe') return SAFE;
  if (result.status === 'vulnerable')
    return {
      growth: 'grows',
      why: `${result.complexity.summary}: ${result.attack.pattern}`,
      isExponential: result.complexity.type === 'exponential',
    };
  if (result.error.kind !== 'timeout' || parts.length === 1) return { growth: 'undecided', why: `${result.error.kind} at ${source}` };
  return growthOfParts(parts, flags, until);
}

/** @type {(parts: readonly string[], flags: string, until: number) => Growth} */
function growthOfParts(parts, flags, until) {
  for (const part of parts) {
    const { growth, why } = growthOfPlain(part, flags, until);
    // Where a part is not found, another may be: the whole may be safe all the same.
    if (growth !== 'safe') return { growth: 'undecided', why };
  }
  return SAFE;
}

/** Whether recheck's own program for this system is there: it is many times as fast as its JavaScript. */
function hasOwnProgram() {
  try {
    return (
      process.platform !== 'win32' &&
      require.resolve(`recheck-${process.platform === 'darwin' ? 'macos' : 'linux'}-${process.arch}/package.json`) !== ''
    );
  } catch {
    return false;
  }
}
