import { visitRegExpAST } from '@eslint-community/regexpp';
import { neverFound } from './never-found.mjs';
import { parsed } from './parsed.mjs';
import { rejoined } from './rejoined.mjs';

/** @typedef {import('@eslint-community/regexpp').AST.Node} Node */
/** @typedef {import('@eslint-community/regexpp').AST.LookaroundAssertion} LookAround */
/** @typedef {import('./rejoined.mjs').Place} Place */

/** What can be read in so many ways costs the same at each place, whatever the text: more counts as without end. */
const MOST_WAYS = 1000;

/**
 * Two patterns without look-arounds, whose searches take at least as many steps as the pattern's own.
 *
 * - `asLong`: what it looks at is left out, which only opens ways, and it is never found, so that every way is gone. What looks in
 *   few ways costs no more at one place than at another; a look ahead without end is a way of its own at the pattern's end, and
 *   elsewhere, as behind, there is none.
 * - `same`: what looks over the pattern's own ends is taken into the match, which leaves open as before whether there is one. None
 *   where it looks about elsewhere, or without end: a match would end what is looked at anew from each place.
 *
 * @param {string} source
 * @param {string} flags
 * @returns {{ asLong?: string | undefined, same?: string | undefined }} both are the pattern itself where it looks nowhere
 */
export function withoutLookArounds(source, flags) {
  const pattern = parsed(source, flags);
  const asLong = rewrite(pattern, (look, place) => leftOut(look, place, flags));
  if (asLong === source) return { asLong, same: source };
  if (readsAgain(pattern)) return {};
  const same = rewrite(pattern, (look, place) => takenIn(look, place, !flags.includes('m')));
  return { asLong: asLong && neverFound(asLong, flags), same };
}

/** Whether a part of it is what another part found, which has no place any more where that one is left out. */
function readsAgain(/** @type {Node} */ pattern) {
  let does = false;
  visitRegExpAST(pattern, { onBackreferenceEnter: () => (does = true) });
  return does;
}

/**
 * @param {Node} node
 * @param {(look: LookAround, place: Place) => string | undefined} replace
 * @param {Place} [place]
 * @returns {string | undefined} undefined where one cannot be replaced
 */
function rewrite(node, replace, place = { atStart: true, atEnd: true, mayEnd: true }) {
  if (node.type === 'Assertion' && (node.kind === 'lookahead' || node.kind === 'lookbehind')) return replace(node, place);
  return rejoined(node, place, (child, where) => rewrite(child, replace, where));
}

/** @type {(look: LookAround, place: Place, flags: string) => string | undefined} */
function leftOut(look, { atEnd }, flags) {
  if (waysOf(look) <= MOST_WAYS) return '(?:)';
  const isReplaced = look.kind === 'lookahead' && atEnd;
  const inside = isReplaced ? insideOf(look, (inner, place) => leftOut(inner, place, flags)) : undefined;
  return inside && `(?:${neverFound(inside, flags)}|)`;
}

/** @type {(look: LookAround, place: Place, isOneLine: boolean) => string | undefined} */
function takenIn(look, { atStart, atEnd }, isOneLine) {
  const isAhead = look.kind === 'lookahead';
  if (waysOf(look) > MOST_WAYS || !(isAhead ? atEnd : atStart)) return undefined;
  if (!look.negate) return insideOf(look, () => undefined);
  const other = isOneLine ? otherSign(look) : undefined;
  return other && (isAhead ? `(?:${other}|$)` : `(?:^|${other})`);
}

/** @type {(look: LookAround, replace: (look: LookAround, place: Place) => string | undefined) => string | undefined} */
function insideOf(look, replace) {
  const ways = look.alternatives.map((one) => rewrite(one, replace));
  return ways.includes(undefined) ? undefined : `(?:${ways.join('|')})`;
}

/**
 * The class of every sign that a look-around of one sign refuses.
 *
 * @param {LookAround} look
 */
function otherSign({ alternatives: [only, ...more] }) {
  const [sign, ...rest] = only?.elements ?? [];
  if (more.length + rest.length > 0) return undefined;
  if (sign?.type === 'CharacterClass') return sign.negate ? sign.raw.replace('[^', '[') : sign.raw.replace('[', '[^');
  const isOne = (sign?.type === 'Character' && sign.raw !== ']') || (sign?.type === 'CharacterSet' && sign.kind !== 'any');
  return isOne ? `[^${sign.raw}]` : undefined;
}

/**
 * The most ways in which a part of a pattern can be read, shorter ones included.
 *
 * @param {Node} node
 * @returns {number}
 */
function waysOf(node) {
  if (node.type === 'Backreference') return Infinity;
  if (node.type === 'Alternative') return node.elements.reduce((ways, one) => ways * waysOf(one), 1);
  if (node.type === 'Quantifier') return node.max === Infinity ? Infinity : (node.max + 1) * waysOf(node.element) ** node.max;
  return 'alternatives' in node ? node.alternatives.reduce((ways, one) => ways + waysOf(one), 0) : 1;
}
