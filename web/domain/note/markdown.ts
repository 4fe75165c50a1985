import { fromMarkdown } from 'mdast-util-from-markdown';
import { gfmTableFromMarkdown } from 'mdast-util-gfm-table';
import { gfmTable } from 'micromark-extension-gfm-table';
import type { TextRange } from '../diagnostic.ts';
import type { Note } from './note.ts';

/** A node of Markdown, as much as readers here need: https://github.com/syntax-tree/mdast gives the kinds. */
export interface MarkdownNode {
  readonly type: string;
  readonly value?: string;
  readonly url?: string;
  readonly title?: string | null;
  readonly alt?: string | null;
  readonly depth?: number;
  readonly ordered?: boolean | null;
  readonly start?: number | null;
  readonly lang?: string | null;
  readonly align?: readonly ('left' | 'right' | 'center' | null)[] | null;
  readonly identifier?: string;
  readonly children?: readonly MarkdownNode[];
  /** Offsets into the text that was parsed. */
  readonly position?: { readonly start: { readonly offset?: number }; readonly end: { readonly offset?: number } };
}

/** A run of a note's words and where it begins in the file; escapes and marks are not in it. */
export interface TextRun {
  readonly text: string;
  readonly range: TextRange;
}

/** UTF-16 code units of Markdown parsed as such (our choice: a few hundred printed pages; the parser needs about a second for ordinary prose of that length). */
const LONGEST = 400_000;
/** Nested quotes and lists, and opening marks in one paragraph (our choice: far beyond anything written by hand; beyond it the parser's time grows with the square). */
const DEEPEST = 30;
const MOST_OPENERS = 1000;
/** A list's item so far in that the lists it is in are too many, a level of one line each. */
const DEEP_INDENT = new RegExp(`^[ \\t]{${DEEPEST * 2},}(?:[-+*]|\\d{1,9}[.)])[ \\t]`, 'm');
/** Where a paragraph ends. The two signs of one line break, as Windows writes it, are no empty line. */
const BLANK_LINE = /(?:\r\n|\n|\r(?!\n))[ \t]*(?:\r\n|\n|\r)/;
/** Items of lists in one note (our choice: the parser's time grows with their square; twenty thousand take it some three seconds). */
const MOST_ITEMS = 3000;

/**
 * Parses Markdown: CommonMark with tables.
 *
 * @returns the tree; paragraphs of plain text where the text is too long, too deep or too tangled to be parsed in reasonable time.
 */
export function parseMarkdown(text: string): MarkdownNode {
  if (text.length > LONGEST || isTangled(text)) return plainParagraphs(text);
  try {
    return fromMarkdown(text, { extensions: [gfmTable()], mdastExtensions: [gfmTableFromMarkdown()] }) as MarkdownNode;
  } catch {
    // A body nobody could nest by hand must not stop the notebook from opening.
    return plainParagraphs(text);
  }
}

/** The body of a note, parsed; offsets in the tree count from `note.bodyStart`. */
export const bodyOf = ({ source, bodyStart }: Pick<Note, 'source' | 'bodyStart'>): MarkdownNode => parseMarkdown(source.slice(bodyStart));

function isTangled(text: string): boolean {
  if ((text.match(/^[ \t>]*(?:[-+*]|\d{1,9}[.)])(?:[ \t]|$)/gm)?.length ?? 0) > MOST_ITEMS) return true;
  for (const line of text.split(/\r\n|\r|\n/)) {
    const markers = /^(?:[ \t]*(?:>|[-+*](?=[ \t])|\d{1,9}[.)](?=[ \t])))+/.exec(line)?.[0] ?? '';
    if (markers.replace(/[\s\d]/g, '').length > DEEPEST) return true;
  }
  for (const paragraph of text.split(BLANK_LINE)) {
    if ((paragraph.match(/!?\[|<|[*_]+|`+/g)?.length ?? 0) > MOST_OPENERS) return true;
  }
  // Lists that grow one level a line reach the depth by their indent.
  return DEEP_INDENT.test(text);
}

function plainParagraphs(text: string): MarkdownNode {
  const children: MarkdownNode[] = [];
  const add = (from: number, to: number): void => {
    const position = { start: { offset: from }, end: { offset: to } };
    children.push({ type: 'paragraph', position, children: [{ type: 'text', value: text.slice(from, to), position }] });
  };
  let from = 0;
  for (const { 0: space, index } of text.matchAll(/\s+/g)) {
    if (index + space.length < text.length && index > 0 && !BLANK_LINE.test(space)) continue;
    if (index > from) add(from, index);
    from = index + space.length;
  }
  if (from < text.length) add(from, text.length);
  return { type: 'root', children, position: { start: { offset: 0 }, end: { offset: text.length } } };
}

/**
 * The words of Markdown without its marks.
 *
 * @param base added to every offset: where the parsed text begins in its file.
 */
export function textRuns(root: MarkdownNode, base: number): readonly TextRun[] {
  const runs: TextRun[] = [];
  walkMarkdown(root, (node) => {
    const text =
      node.type === 'text' || node.type === 'inlineCode' || node.type === 'code'
        ? node.value
        : node.type === 'image'
          ? node.alt
          : undefined;
    if (text) runs.push({ text, range: rangeOfNode(node, base) });
  });
  return runs;
}

/** The words of Markdown on one line per paragraph. */
export function plainText(root: MarkdownNode): string {
  const blocks: string[] = [];
  const read = (node: MarkdownNode): string => {
    if (node.type === 'image') return node.alt ?? '';
    if (node.type === 'break') return ' ';
    if (node.type === 'html') return '';
    if (node.value !== undefined) return node.value;
    return (node.children ?? []).map(read).join('');
  };
  walkMarkdown(root, (node) => {
    if (!['paragraph', 'heading', 'code', 'tableRow'].includes(node.type)) return;
    blocks.push(node.type === 'tableRow' ? (node.children ?? []).map(read).join(' ') : read(node));
  });
  return blocks.map((block) => block.replace(/\s+/g, ' ').trim()).join('\n');
}

/** Calls `visit` for every node, parents first; deep trees do not deepen the call stack. */
export function walkMarkdown(root: MarkdownNode, visit: (node: MarkdownNode) => void): void {
  const waiting: MarkdownNode[] = [root];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    visit(node);
    const children = node.children ?? [];
    for (let index = children.length - 1; index >= 0; index--) waiting.push(children[index] as MarkdownNode);
  }
}

/** Where a node stands in the file. */
export const rangeOfNode = ({ position }: MarkdownNode, base: number): TextRange => [
  base + (position?.start.offset ?? 0),
  base + (position?.end.offset ?? 0),
];
