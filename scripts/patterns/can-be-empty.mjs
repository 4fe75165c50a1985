/** @typedef {import('@eslint-community/regexpp').AST.Node} Node */

/**
 * Whether a part of a pattern may go over no sign at all.
 *
 * @type {(node: Node) => boolean}
 */
export function canBeEmpty(node) {
  if (node.type === 'Quantifier') return node.min === 0 || canBeEmpty(node.element);
  if (node.type === 'Group' || node.type === 'CapturingGroup') return node.alternatives.some((one) => one.elements.every(canBeEmpty));
  return node.type === 'Assertion' || node.type === 'Backreference';
}
