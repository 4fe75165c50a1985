import { parsed } from './parsed.mjs';
import { rejoined } from './rejoined.mjs';

/** @typedef {import('@eslint-community/regexpp').AST.Node} Node */
/** @typedef {import('./rejoined.mjs').Place} Place */

/** A sign that stands in no text: what ends with it is tried in every way, and never found. */
const NOWHERE = String.raw`\uFFFF`;

/**
 * A pattern that is tried in every way of the given one, and never found. What that one asks of its end is left out, which only
 * opens ways: behind an end of the text no sign can stand, and recheck passes over ways that can lead nowhere.
 *
 * @param {string} source without look-arounds
 * @param {string} flags
 * @returns {string}
 */
export function neverFound(source, flags) {
  const pattern = parsed(source, flags);
  return `(?:${withoutEnds(pattern, { atStart: true, atEnd: true, mayEnd: true })})${NOWHERE}`;
}

/** @type {(node: Node, place: Place) => string} */
function withoutEnds(node, place) {
  if (node.type !== 'Assertion') return rejoined(node, place, withoutEnds) ?? node.raw;
  return node.kind === 'end' || (node.kind === 'word' && place.mayEnd) ? '(?:)' : node.raw;
}
