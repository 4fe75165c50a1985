import type { TextRange } from '../diagnostic.ts';
import { rangeOfNode, walkMarkdown } from './markdown.ts';
import type { MarkdownNode } from './markdown.ts';

/** A link to another file of the notebook. */
export interface RelativeLink {
  /** As written, without `#part` and `?query`, percent escapes resolved. */
  readonly path: string;
  /** What stands behind `#`. */
  readonly fragment?: string;
  /** True for a picture. */
  readonly image: boolean;
  readonly range: TextRange;
}

/**
 * The relative links of a note's body, in reading order: links, pictures and link definitions.
 *
 * @param base where the parsed text begins in its file.
 */
export function relativeLinks(root: MarkdownNode, base: number): readonly RelativeLink[] {
  const links: RelativeLink[] = [];
  walkMarkdown(root, (node) => {
    if ((node.type !== 'link' && node.type !== 'image' && node.type !== 'definition') || node.url === undefined) return;
    const [address, fragment] = splitOnce(node.url, '#');
    const path = unescaped(splitOnce(address, '?')[0]);
    // A scheme, a host, a place on the server or nothing but a fragment leads out of the notebook or stays in the note.
    if (path === '' || /^(?:[a-z][a-z\d+.-]*:|[/\\])/i.test(path)) return;
    links.push({ path, fragment, image: node.type === 'image', range: rangeOfNode(node, base) });
  });
  return links;
}

const splitOnce = (text: string, mark: string): readonly [string, string | undefined] => {
  const at = text.indexOf(mark);
  return at < 0 ? [text, undefined] : [text.slice(0, at), text.slice(at + 1)];
};

function unescaped(path: string): string {
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}
