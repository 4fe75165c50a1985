import { parsed } from './parsed.mjs';

/** @typedef {import('@eslint-community/regexpp').AST.Node} Node */

/**
 * A pattern taken apart at its outermost choice, else at the longest within, each part with one alternative alone. A search with
 * the whole takes no more steps than the searches with the parts together: up to where it ends, it tries what they try.
 *
 * @param {string} source without look-arounds
 * @param {string} flags
 * @returns {string[]} the pattern itself where it offers no choice outside a repetition
 */
export function oneAlternativeEach(source, flags) {
  const pattern = parsed(source, flags);
  const choices = pattern.alternatives.length > 1 ? [pattern.alternatives] : choicesOf(pattern);
  const longest = choices.reduce((most, choice) => (choice.length > most.length ? choice : most));
  const [first, last] = [longest.at(0), longest.at(-1)];
  if (!first || !last || longest.length === 1) return [source];
  return longest.map(({ raw }) => source.slice(0, first.start) + raw + source.slice(last.end));
}

/**
 * @param {Node} node
 * @returns {import('@eslint-community/regexpp').AST.Alternative[][]}
 */
function choicesOf(node) {
  if (node.type === 'Quantifier') return node.max === 1 ? choicesOf(node.element) : [];
  if (node.type === 'Alternative') return node.elements.flatMap(choicesOf);
  if (node.type !== 'Pattern' && node.type !== 'Group' && node.type !== 'CapturingGroup') return [];
  return [node.alternatives, ...node.alternatives.flatMap(choicesOf)];
}
