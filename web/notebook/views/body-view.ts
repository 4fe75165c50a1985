import { bodyOf, type MarkdownNode, walkMarkdown } from '../../domain/note/markdown.ts';
import { resolveLink } from '../../domain/note/resolve-link.ts';
import type { Note } from '../../domain/note/note.ts';
import { webAddress } from '../bibliography.ts';

/** A run of words of a note's body. */
export type BodyInline =
  | { readonly is: 'text'; readonly text: string }
  | { readonly is: 'code'; readonly text: string }
  | { readonly is: 'emphasis'; readonly words: readonly BodyInline[] }
  | { readonly is: 'strong'; readonly words: readonly BodyInline[] }
  | { readonly is: 'break' }
  /** A link to another note. */
  | { readonly is: 'note'; readonly id: string; readonly words: readonly BodyInline[] }
  /** A link to another file of the notebook. */
  | { readonly is: 'file'; readonly path: string; readonly words: readonly BodyInline[] }
  | { readonly is: 'web'; readonly address: string; readonly words: readonly BodyInline[] }
  /** A link that leads nowhere here. */
  | { readonly is: 'lost'; readonly address: string; readonly words: readonly BodyInline[] }
  /** A picture among the notebook's files. */
  | { readonly is: 'picture'; readonly path: string; readonly words: string }
  /** A picture that is not in the notebook and is not fetched. */
  | { readonly is: 'picture-lost'; readonly address: string; readonly words: string };

/** A block of a note's body. */
export type BodyBlock =
  | { readonly is: 'paragraph'; readonly words: readonly BodyInline[] }
  | { readonly is: 'heading'; readonly level: number; readonly words: readonly BodyInline[] }
  | { readonly is: 'list'; readonly ordered: boolean; readonly start: number; readonly items: readonly (readonly BodyBlock[])[] }
  | { readonly is: 'quote'; readonly blocks: readonly BodyBlock[] }
  | { readonly is: 'code'; readonly text: string }
  | { readonly is: 'table'; readonly head: readonly Cell[]; readonly rows: readonly (readonly Cell[])[] }
  | { readonly is: 'rule' };

/** A cell of a table. */
export type Cell = readonly BodyInline[];

/** What the body's links may lead to. */
export interface BodyTargets {
  /** The id of the note kept in a file. */
  readonly noteAt: (path: string) => string | undefined;
  /** Whether the notebook keeps another file there. */
  readonly hasFile: (path: string) => boolean;
}

/** The body of a note as plain values: every mark is read, HTML stays text, nothing is fetched. */
export function bodyView(note: Note, targets: BodyTargets): readonly BodyBlock[] {
  const root = bodyOf(note);
  const definitions = new Map<string, string>();
  walkMarkdown(root, ({ type, identifier, url }) => {
    if (type === 'definition' && identifier !== undefined && url !== undefined && !definitions.has(identifier))
      definitions.set(identifier, url);
  });
  const blocks = new BodyReader(note, targets, definitions).blocks(root.children ?? []);
  const [first] = blocks;
  // The title stands above already.
  return first?.is === 'heading' && wordsOf(first.words) === note.title ? blocks.slice(1) : blocks;
}

/** The words of a run without marks. */
export const wordsOf = (words: readonly BodyInline[]): string => words.map(wordsOfOne).join('');

function wordsOfOne(one: BodyInline): string {
  switch (one.is) {
    case 'text':
    case 'code':
      return one.text;
    case 'break':
      return ' ';
    case 'picture':
    case 'picture-lost':
      return one.words;
    default:
      return wordsOf(one.words);
  }
}

class BodyReader {
  constructor(
    private readonly note: Note,
    private readonly targets: BodyTargets,
    private readonly definitions: ReadonlyMap<string, string>,
  ) {}

  blocks(nodes: readonly MarkdownNode[]): readonly BodyBlock[] {
    return nodes.flatMap((node) => this.#block(node));
  }

  #block(node: MarkdownNode): readonly BodyBlock[] {
    const children = node.children ?? [];
    switch (node.type) {
      case 'paragraph':
        return [{ is: 'paragraph', words: this.#words(children) }];
      case 'heading':
        return [{ is: 'heading', level: node.depth ?? 1, words: this.#words(children) }];
      case 'list':
        return [
          {
            is: 'list',
            ordered: node.ordered === true,
            start: node.start ?? 1,
            items: children.map((item) => this.blocks(item.children ?? [])),
          },
        ];
      case 'blockquote':
        return [{ is: 'quote', blocks: this.blocks(children) }];
      case 'code':
        return [{ is: 'code', text: node.value ?? '' }];
      case 'html':
        return [{ is: 'code', text: node.value ?? '' }];
      case 'table': {
        const [head = [], ...rows] = children.map((row) => (row.children ?? []).map((cell) => this.#words(cell.children ?? [])));
        return [{ is: 'table', head, rows }];
      }
      case 'thematicBreak':
        return [{ is: 'rule' }];
      default:
        return [];
    }
  }

  #words(nodes: readonly MarkdownNode[]): readonly BodyInline[] {
    return nodes.flatMap((node) => this.#inline(node));
  }

  #inline(node: MarkdownNode): readonly BodyInline[] {
    const words = () => this.#words(node.children ?? []);
    switch (node.type) {
      case 'text':
      case 'html':
        return [{ is: 'text', text: node.value ?? '' }];
      case 'inlineCode':
        return [{ is: 'code', text: node.value ?? '' }];
      case 'emphasis':
      case 'strong':
        return [{ is: node.type, words: words() }];
      case 'break':
        return [{ is: 'break' }];
      case 'link':
        return [this.#link(node.url ?? '', words())];
      case 'linkReference':
        return [this.#link(this.definitions.get(node.identifier ?? '') ?? '', words())];
      case 'image':
        return [this.#picture(node.url ?? '', node.alt ?? '')];
      case 'imageReference':
        return [this.#picture(this.definitions.get(node.identifier ?? '') ?? '', node.alt ?? '')];
      default:
        return words();
    }
  }

  #link(address: string, words: readonly BodyInline[]): BodyInline {
    const web = webAddress(address);
    if (web !== undefined) return { is: 'web', address: web, words };
    const path = this.#path(address);
    const id = path === undefined ? undefined : this.targets.noteAt(path);
    if (id !== undefined) return { is: 'note', id, words };
    return path !== undefined && this.targets.hasFile(path) ? { is: 'file', path, words } : { is: 'lost', address, words };
  }

  #picture(address: string, words: string): BodyInline {
    const path = this.#path(address);
    return path !== undefined && this.targets.hasFile(path) ? { is: 'picture', path, words } : { is: 'picture-lost', address, words };
  }

  /** The path inside the notebook; undefined for an address with a scheme or host, or one that climbs out. */
  #path(address: string): string | undefined {
    const [bare = ''] = address.split(/[?#]/);
    if (bare === '' || /^(?:[a-z][a-z\d+.-]*:|[/\\])/i.test(bare)) return undefined;
    return resolveLink(this.note.file, decoded(bare));
  }
}

const decoded = (text: string): string => {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
};
