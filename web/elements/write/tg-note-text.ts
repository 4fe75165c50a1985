import { css, html, LitElement, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { lineStarts, offsetAt } from '../../domain/note/line-column.ts';
import type { ProblemView } from '../../notebook/views/problem-view.ts';
import type { WritingChoices } from '../../notebook/views/writing-choices.ts';
import { baseStyles } from '../shared/base.styles.ts';
import type { TextEditor } from './text-editor.ts';
import { DraftEditEvent } from './write-events.ts';

/** Typing that goes on within this many milliseconds is one step (our choice: about a sentence's pause). */
const PAUSE = 1500;

/**
 * @summary The text of a note in an editor, with what is wrong shown in its place. It comes when it is first opened.
 * @event {DraftEditEvent} tg-draft-edit - The writer changed the text.
 * @csspart editor - The editor.
 */
@customElement('tg-note-text')
export class TgNoteText extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
      }
      p {
        margin: 0 0 var(--tg-space-2);
        color: var(--tg-ink-quiet);
        font: var(--tg-type-small) / 1.45 var(--tg-font-label);
      }
      @media print {
        p {
          display: none;
        }
      }
    `,
  ];

  /** The whole text of the note. */
  @property({ attribute: false }) text = '';
  /** What is wrong in it. */
  @property({ attribute: false }) problems: readonly ProblemView[] = [];
  /** What may complete a word. */
  @property({ attribute: false }) choices?: WritingChoices;
  /** Where the caret shall stand when the editor comes: both from 1. */
  @property({ attribute: false }) place?: { readonly line: number; readonly column: number };
  /** True where the text can be looked at only. */
  @property({ type: Boolean, attribute: 'read-only' }) readOnly = false;

  @state() private failed = false;

  #editor: TextEditor | undefined;
  #step = 0;
  #lastTyped = 0;

  override disconnectedCallback() {
    super.disconnectedCallback();
    this.#editor?.destroy();
    this.#editor = undefined;
  }

  override connectedCallback() {
    super.connectedCallback();
    // Its place in the page was left and taken again: the editor is made anew in it.
    if (this.hasUpdated) void this.#mount();
  }

  override render() {
    return html`<p>
        ${this.failed ? 'The editor could not be fetched. Reload the page when there is a network.' : 'Tab leaves the text. F8 goes to the next thing to look at, Ctrl F finds words.'}
      </p>
      <div part="editor" id="editor" @keydown=${this.#key}></div>`;
  }

  override firstUpdated() {
    void this.#mount();
  }

  override updated(changed: PropertyValues<this>) {
    if (changed.has('text')) this.#editor?.follow(this.text);
    if (changed.has('problems')) this.#editor?.show(this.problems);
  }

  /** Puts the caret at a place of the text. */
  goTo(offset: number) {
    this.#editor?.goTo(offset);
  }

  /** Letters typed here are words and no shortcuts of the page. */
  #key(event: KeyboardEvent) {
    if (!event.ctrlKey && !event.metaKey && !event.altKey && event.key.length === 1) event.stopPropagation();
  }

  async #mount() {
    try {
      const { mountTextEditor } = await import('./text-editor.ts');
      const parent = this.renderRoot.querySelector('#editor');
      if (!parent || !this.isConnected || this.#editor) return;
      this.#editor = mountTextEditor({
        parent,
        root: this.renderRoot as ShadowRoot,
        text: this.text,
        readOnly: this.readOnly,
        changed: (text) => this.#changed(text),
        complete: () => this.#words(),
      });
      this.#editor.show(this.problems);
      if (this.place) this.#editor.goTo(offsetAt(lineStarts(this.text), this.place));
    } catch {
      this.failed = true;
    }
  }

  #changed(text: string) {
    const now = performance.now();
    if (now - this.#lastTyped > PAUSE) this.#step += 1;
    this.#lastTyped = now;
    this.dispatchEvent(new DraftEditEvent({ is: 'text', text, label: `typing ${this.#step}` }));
  }

  #words() {
    const { choices } = this;
    if (!choices) return [];
    const names = Object.values(choices.names).flat();
    return [...names, ...choices.sources].map(({ value, label }) => ({ label: value, detail: label }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-note-text': TgNoteText;
  }
}
