import { canBeEmpty } from './can-be-empty.mjs';
import { neverFound } from './never-found.mjs';
import { parsed } from './parsed.mjs';
import { rejoined } from './rejoined.mjs';

/** @typedef {import('@eslint-community/regexpp').AST.Node} Node */

/** Repetitions counted further than this make a pattern too large to be decided. */
const MOST_COUNTED = 9;

/**
 * A pattern that takes at least as many steps: what it repeats up to many times is repeated without end, and it is never found.
 *
 * @param {string} source without look-arounds
 * @param {string} flags
 * @returns {string | undefined} the pattern itself where it counts no further than a few; none where it has to repeat what may be
 *   empty: that is empty in many ways, and once it is repeated without end in one.
 */
export function withoutCounts(source, flags) {
  const pattern = parsed(source, flags);
  const endless = uncounted(pattern);
  return endless === source || endless === undefined ? endless : neverFound(endless, flags);
}

/** @type {(node: Node) => string | undefined} */
function uncounted(node) {
  const isCounted = node.type === 'Quantifier' && Math.max(node.min, node.max === Infinity ? 0 : node.max) > MOST_COUNTED;
  if (!isCounted) return rejoined(node, { atStart: false, atEnd: false, mayEnd: false }, uncounted);
  const element = node.min > 1 && canBeEmpty(node.element) ? undefined : uncounted(node.element);
  return element && `${element}${node.min === 0 ? '*' : '+'}`;
}
