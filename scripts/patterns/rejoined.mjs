import { canBeEmpty } from './can-be-empty.mjs';

/** @typedef {import('@eslint-community/regexpp').AST.Node} Node */

/**
 * Whether nothing of the pattern stands before, whether nothing behind, and whether what stands behind may be empty.
 *
 * @typedef {{ atStart: boolean, atEnd: boolean, mayEnd: boolean }} Place
 */

/**
 * The text of a part of a pattern with each part of its own rewritten.
 *
 * @param {Node} node
 * @param {Place} place
 * @param {(child: Node, place: Place) => string | undefined} rewritten
 * @returns {string | undefined} undefined where one cannot be rewritten
 */
export function rejoined(node, place, rewritten) {
  let text = '';
  let at = 0;
  for (const [child, where] of partsOf(node, place)) {
    const part = rewritten(child, where);
    if (part === undefined) return undefined;
    text += node.raw.slice(at, child.start - node.start) + part;
    at = child.end - node.start;
  }
  return text + node.raw.slice(at);
}

/**
 * @param {Node} node
 * @param {Place} place
 * @returns {[Node, Place][]}
 */
function partsOf(node, place) {
  if (node.type === 'Quantifier') return [[node.element, node.max === 1 ? place : { ...place, atStart: false, atEnd: false }]];
  if (node.type === 'Pattern' || node.type === 'Group' || node.type === 'CapturingGroup')
    return node.alternatives.map((one) => [one, place]);
  if (node.type !== 'Alternative') return [];
  return node.elements.map((one, index) => [
    one,
    {
      atStart: place.atStart && index === 0,
      atEnd: place.atEnd && index === node.elements.length - 1,
      mayEnd: place.mayEnd && node.elements.slice(index + 1).every(canBeEmpty),
    },
  ]);
}
