import type { Note } from '../note/note.ts';

/** Which part of a note a stretch of its source belongs to. */
export type PlaceInNote =
  | { readonly part: 'front-matter'; readonly key: string }
  | { readonly part: 'body' }
  /** The address of a link to another file of the notebook: the file's name without folder and ending. */
  | { readonly part: 'link'; readonly stem: string }
  /** Addresses, citation keys, file names, codes: letters there name no dyestuff. */
  | { readonly part: 'aside' };

/** Keys whose values are addresses and codes, not words. */
const ASIDE_KEYS = new Set(['source', 'sources', 'rests-on', 'file', 'spectrum', 'photo', 'code', 'kind', 'lang', 'hex', 'id']);
const KEY = /(?:^|[\s{,[-])["']?([\p{L}][\p{L}\d-]{0,40})["']?:(?=\s|$)/gu;
const PROSE_KEY = /^[\s-]*["']?([\p{L}][\p{L}\d-]*)["']?:[ \t]+(?![{[])/u;

/**
 * Tells where in a note a place in its source lies. A key is looked for on the line itself, then on the lines above that
 * are less indented, which is enough for front matter as people write it.
 */
export function placeInNote(note: Note): (offset: number) => PlaceInNote {
  const { source, bodyStart } = note;
  const links = linkAddresses(source, bodyStart);
  return (offset) => {
    if (offset < bodyStart) {
      const key = keyAt(source, offset);
      return ASIDE_KEYS.has(key) ? { part: 'aside' } : { part: 'front-matter', key };
    }
    const link = addressAt(links, offset);
    if (!link) return { part: 'body' };
    const path = /^(?:[a-z][a-z\d+.-]*:|\/)/i.test(link.address)
      ? undefined
      : /^([^]+)\.(?:md|markdown)$/i.exec(lastPart(link.address))?.[1];
    return path === undefined ? { part: 'aside' } : { part: 'link', stem: decoded(path) };
  };
}

/** The name of the file an address leads to: what stands behind its last stroke, without what follows a `#` or `?`. */
function lastPart(address: string): string {
  const path = address.slice(0, address.search(/[#?]|$/));
  return path.slice(path.lastIndexOf('/') + 1);
}

interface Address {
  readonly start: number;
  readonly end: number;
  readonly address: string;
}

/** Where the body's link addresses and web addresses stand. */
function linkAddresses(source: string, from: number): readonly Address[] {
  const found: Address[] = [];
  const pattern = /\]\([ \t]*<?([^)\s>]+)|^[ \t]{0,3}\[[^\]\n]{1,200}\]:[ \t]*<?([^\s>]+)|(?:https?|ftp|doi|mailto):[^\s)>\]]+/gim;
  pattern.lastIndex = from;
  for (let match = pattern.exec(source); match; match = pattern.exec(source)) {
    const address = match[1] ?? match[2] ?? match[0];
    const end = match.index + match[0].length;
    found.push({ start: end - address.length, end, address });
  }
  return found;
}

/** The last address that begins at or before a place, if it reaches it. */
function addressAt(links: readonly Address[], offset: number): Address | undefined {
  let low = 0;
  let high = links.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((links[middle]?.start ?? Infinity) <= offset) low = middle + 1;
    else high = middle;
  }
  const link = links[low - 1];
  return link && offset < link.end ? link : undefined;
}

/** Lines looked back over for a key (our choice: the longest block of prose in front matter). */
const MOST_LINES = 60;

function keyAt(source: string, offset: number): string {
  let lineStart = source.lastIndexOf('\n', offset - 1) + 1;
  const before = source.slice(lineStart, offset);
  // Behind a key that no bracket follows stands prose, whose own colons make no keys.
  const onLine = PROSE_KEY.exec(before)?.[1] ?? [...before.matchAll(KEY)].at(-1)?.[1];
  if (onLine !== undefined) return onLine.toLowerCase();
  let indent = indentOf(source, lineStart);
  for (let lines = 0; lineStart > 0 && lines < MOST_LINES; lines++) {
    const lineEnd = lineStart - 1;
    lineStart = source.lastIndexOf('\n', lineEnd - 1) + 1;
    const line = source.slice(lineStart, Math.min(lineEnd, lineStart + 300));
    const own = indentOf(source, lineStart);
    const key = /^[\s-]*["']?([\p{L}][\p{L}\d-]*)["']?:(?:\s|$)/u.exec(line)?.[1];
    // A list may stand as far left as the key it belongs to.
    if (key !== undefined && (own < indent || (own === indent && /:[ \t]*\r?$/.test(line)))) return key.toLowerCase();
    if (line.trim() !== '') indent = Math.min(indent, own);
  }
  return '';
}

const indentOf = (source: string, lineStart: number): number => /^[ ]*/.exec(source.slice(lineStart, lineStart + 200))?.[0].length ?? 0;

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
