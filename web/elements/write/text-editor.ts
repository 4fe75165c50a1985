import { autocompletion, type CompletionContext, type CompletionResult, completionKeymap } from '@codemirror/autocomplete';
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { deleteMarkupBackward, insertNewlineContinueMarkup, markdownLanguage } from '@codemirror/lang-markdown';
import { yamlFrontmatter } from '@codemirror/lang-yaml';
import { bracketMatching, HighlightStyle, syntaxHighlighting } from '@codemirror/language';
import { forEachDiagnostic, lintKeymap, setDiagnostics } from '@codemirror/lint';
import { searchKeymap } from '@codemirror/search';
import { Annotation, EditorState, type Extension, RangeSet, StateField } from '@codemirror/state';
import {
  drawSelection,
  EditorView,
  gutter,
  GutterMarker,
  highlightActiveLine,
  type KeyBinding,
  keymap,
  lineNumbers,
} from '@codemirror/view';
import { tags } from '@lezer/highlight';
import { changeBetween, type PlainChange, plainOffset, withChanges, withPlainEndings } from '../../notebook/line-endings.ts';
import type { ProblemView } from '../../notebook/views/problem-view.ts';
import { editorTheme } from './text-editor.theme.ts';

/** What an editor tells whoever holds the text. */
export interface TextEditorOptions {
  readonly parent: Element | DocumentFragment;
  readonly root: Document | ShadowRoot;
  readonly text: string;
  readonly readOnly: boolean;
  /** The whole text after a change, every untouched line with its own ending. */
  readonly changed: (text: string) => void;
  /** Words that may complete what is being typed. */
  readonly complete: () => readonly { readonly label: string; readonly detail: string }[];
}

/** An editor on a note's text. */
export interface TextEditor {
  /** Follows a text that was changed elsewhere. */
  follow(text: string): void;
  /** Shows what is wrong where it is wrong. */
  show(problems: readonly ProblemView[]): void;
  /** Puts the caret at a place of the text and brings it into view. */
  goTo(offset: number): void;
  focus(): void;
  destroy(): void;
}

/** Pixels kept free above and below the caret (our choice: the bar of the page, wrapped on a phone). */
const BAR_HEIGHT = 120;

/** Enter goes on with a list or quote, Backspace takes its mark away. */
const MARKDOWN_KEYS: readonly KeyBinding[] = [
  { key: 'Enter', run: insertNewlineContinueMarkup },
  { key: 'Backspace', run: deleteMarkupBackward },
];

/** Marks a change that follows the text and is not to be told again. */
const following = Annotation.define<boolean>();

/** Weight and slant alone: the page has no colours but those of cloth. */
const greys = HighlightStyle.define([
  { tag: [tags.propertyName, tags.heading, tags.strong], fontWeight: '700' },
  { tag: [tags.emphasis, tags.quote], fontStyle: 'italic' },
  { tag: [tags.comment, tags.meta, tags.processingInstruction, tags.url, tags.separator], class: 'tg-quiet' },
  { tag: [tags.link], textDecoration: 'underline' },
]);

class WordMarker extends GutterMarker {
  constructor(private readonly word: string) {
    super();
  }

  override eq(other: WordMarker): boolean {
    return other.word === this.word;
  }

  override toDOM(): Node {
    return document.createTextNode(this.word);
  }
}

const ERROR = new WordMarker('error');
const WARNING = new WordMarker('look');

/** The words beside the lines, kept with the state. */
const problemWords = StateField.define<RangeSet<GutterMarker>>({
  create: () => RangeSet.empty,
  update: (_, { state }) => {
    const worst = new Map<number, WordMarker>();
    forEachDiagnostic(state, ({ severity }, from) => {
      const line = state.doc.lineAt(Math.min(from, state.doc.length)).from;
      if (severity === 'error' || !worst.has(line)) worst.set(line, severity === 'error' ? ERROR : WARNING);
    });
    return RangeSet.of([...worst].sort(([a], [b]) => a - b).map(([at, marker]) => marker.range(at)));
  },
});

const problemGutter = [problemWords, gutter({ class: 'tg-problems', markers: (view) => view.state.field(problemWords) })];

function completionSource(complete: TextEditorOptions['complete']) {
  return (context: CompletionContext): CompletionResult | null => {
    const word = context.matchBefore(/[\p{L}\d_/-]{2,}/u);
    if (!word && !context.explicit) return null;
    return {
      from: word?.from ?? context.pos,
      options: complete().map(({ label, detail }) => ({ label, detail })),
      validFor: /^[\p{L}\d_/-]*$/u,
    };
  };
}

/** Mounts an editor. Its styles go into the root's adopted sheets, as the page's policy asks. */
export function mountTextEditor({ parent, root, text, readOnly, changed, complete }: TextEditorOptions): TextEditor {
  let whole = text;
  const extensions: readonly Extension[] = [
    lineNumbers(),
    problemGutter,
    history(),
    drawSelection(),
    bracketMatching(),
    highlightActiveLine(),
    EditorView.lineWrapping,
    // What stands over the page while it is scrolled must not cover the caret.
    EditorView.scrollMargins.of(() => ({ top: BAR_HEIGHT, bottom: BAR_HEIGHT })),
    EditorState.readOnly.of(readOnly),
    // The bare language: its full support would bring HTML, CSS and JavaScript along.
    yamlFrontmatter({ content: markdownLanguage }),
    syntaxHighlighting(greys),
    autocompletion({ override: [completionSource(complete)], icons: false, activateOnTyping: true }),
    EditorView.contentAttributes.of({ 'aria-label': 'Text of the note', spellcheck: 'true', autocapitalize: 'sentences' }),
    // Tab leaves the editor, as it leaves every other field.
    keymap.of([...completionKeymap, ...MARKDOWN_KEYS, ...lintKeymap, ...searchKeymap, ...historyKeymap, ...defaultKeymap]),
    editorTheme,
    EditorView.updateListener.of((update) => {
      if (!update.docChanged || update.transactions.some((one) => one.annotation(following) === true)) return;
      const changes: PlainChange[] = [];
      update.changes.iterChanges((from, to, _from, _to, insert) => changes.push({ from, to, insert: insert.toString() }));
      whole = withChanges(whole, changes);
      changed(whole);
    }),
  ];
  const state = EditorState.create({ doc: withPlainEndings(text), extensions: [...extensions] });
  const view = new EditorView({ state, parent, root });
  return {
    follow: (next) => {
      if (next === whole) return;
      const change = changeBetween(withPlainEndings(whole), withPlainEndings(next));
      whole = next;
      if (change) view.dispatch({ changes: change, annotations: following.of(true) });
    },
    show: (problems) => {
      const most = view.state.doc.length;
      const shown = problems.map(({ from, to, severity, says, instead }) => {
        const start = Math.min(plainOffset(whole, from), most);
        return {
          from: start,
          to: Math.min(Math.max(plainOffset(whole, to), start), most),
          severity,
          message: `${says} ${instead}`,
        } as const;
      });
      view.dispatch(setDiagnostics(view.state, shown));
    },
    goTo: (offset) => {
      const at = Math.min(plainOffset(whole, offset), view.state.doc.length);
      view.dispatch({ selection: { anchor: at }, effects: EditorView.scrollIntoView(at, { y: 'center' }) });
      view.focus();
    },
    focus: () => view.focus(),
    destroy: () => view.destroy(),
  };
}
