import type { SkipReason } from './found-files.ts';

/** Longer than any path a person made; our choice, because most file systems end at 255 for a name and 4096 for a path. */
const LONGEST = 1024;

/**
 * What is wrong with a path that came from elsewhere; undefined where it stays inside the notebook and can be written anywhere.
 *
 * A path is never mended: a file whose name says `../` was either meant to do harm or packed wrongly, and its reader should hear of it.
 */
export function pathFault(path: string): SkipReason | undefined {
  if (path.length > LONGEST) return 'name-too-long';
  // oxlint-disable-next-line no-control-regex -- control characters are what is looked for
  if (/[\u0000-\u001f\u007f]/.test(path)) return 'control-character';
  if (path.includes('\\')) return 'backslash';
  if (/^[a-z]:/i.test(path)) return 'drive';
  if (path.startsWith('/')) return 'absolute';
  const parts = path.split('/');
  if (parts.includes('..')) return 'climbs';
  return parts.some((part) => part === '' || part === '.') ? 'odd-part' : undefined;
}

/** Files that systems leave lying about, or a browser that was killed while it wrote (`.crswap`), and hidden ones: passed over without a word, as the command line does. */
export const isHidden = (path: string): boolean =>
  path
    .split('/')
    .some(
      (part) =>
        (part.startsWith('.') && part !== '.' && part !== '..') ||
        /^(?:__MACOSX|node_modules|Thumbs\.db|desktop\.ini)$|\.crswap$/i.test(part),
    );
