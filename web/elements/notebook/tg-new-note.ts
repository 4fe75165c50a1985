import { css, html, LitElement } from 'lit';
import { customElement } from 'lit/decorators.js';
import { NOTE_KINDS, type NoteKind } from '../../domain/note/note.ts';
import { kindWords } from '../../notebook/words/kind-words.ts';
import { baseStyles } from '../shared/base.styles.ts';

/** The kinds in the order people come to need them; the rest follows. */
const FIRST: readonly NoteKind[] = ['plain', 'dyestuff', 'recipe', 'trial', 'text', 'textile'];

/**
 * @summary What a new note can be: each kind with what it records.
 * @csspart kinds - The list of kinds.
 */
@customElement('tg-new-note')
export class TgNewNote extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      h1 {
        margin: 0 0 var(--tg-space-4);
        font: 600 var(--tg-type-3) / 1.2 var(--tg-font-reading);
      }
      ul {
        max-inline-size: var(--tg-measure);
        margin: 0;
        padding: 0;
        list-style: none;
      }
      li {
        padding-block: var(--tg-space-3);
        border-block-end: var(--tg-line-1) solid var(--tg-hairline);
      }
      a {
        color: inherit;
        font-weight: 600;
        text-underline-offset: 0.2em;
      }
      .small {
        display: block;
        color: var(--tg-ink-quiet);
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
    `,
  ];

  override render() {
    const kinds = [...FIRST, ...NOTE_KINDS.filter((kind) => !FIRST.includes(kind) && kind !== 'display')];
    return html`<h1>A new note</h1>
      <ul part="kinds">
        <li>
          <a href="#/notebook?capture=1">Catch it</a
          ><span class="small">A photo, words, where it is from: done. For the phone, at the showcase or the pot.</span>
        </li>
        ${kinds.map(
          (kind) =>
            html`<li>
              <a href=${`#/notebook?new=${kind}`}>${kindWords[kind].one}</a><span class="small">${kindWords[kind].records}</span>
            </li>`,
        )}
      </ul>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-new-note': TgNewNote;
  }
}
