import { RegExpParser } from '@eslint-community/regexpp';

/**
 * A pattern as the tree of its parts.
 *
 * @param {string} source
 * @param {string} flags
 */
export const parsed = (source, flags) => new RegExpParser().parsePattern(source, undefined, undefined, { unicode: flags.includes('u') });
