import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { NoteText } from '../../notebook/note-text.ts';
import type { EarlierNotes, EarlierText } from '../../notebook/ports-writing.ts';
import { versionsView, type VersionLine } from '../../notebook/views/versions-view.ts';
import { storeFailureWords } from '../../notebook/words/save-words.ts';
import { noteAddress } from '../note/note-body.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { NoteKeptEvent } from './note-gone-event.ts';
import { NoteEarlierRequestEvent, NoteHistoryRequestEvent, NoteSaveRequestEvent } from './write-events.ts';

/**
 * @summary The earlier versions of a note, each side by side with the one that stands, and the way back to it.
 * @event {NoteHistoryRequestEvent} tg-note-history-request - Which earlier versions there are.
 * @event {NoteEarlierRequestEvent} tg-note-earlier-request - The text of one.
 * @event {NoteSaveRequestEvent} tg-note-save-request - An earlier text shall stand again.
 * @event {NoteKeptEvent} tg-note-kept - It stands again.
 * @csspart versions - The list of versions.
 * @csspart sides - Both texts beside each other.
 */
@customElement('tg-note-versions')
export class TgNoteVersions extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      h1 {
        margin: 0 0 var(--tg-space-3);
        font: 600 var(--tg-type-3) / 1.2 var(--tg-font-reading);
      }
      .small {
        margin: 0;
        color: var(--tg-ink-quiet);
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
      ul {
        margin: var(--tg-space-4) 0;
        padding: 0;
        list-style: none;
        max-inline-size: var(--tg-measure);
      }
      li {
        border-block-end: var(--tg-line-1) solid var(--tg-hairline);
      }
      button {
        min-block-size: var(--tg-touch);
        padding: var(--tg-space-2) var(--tg-space-4);
        border: var(--tg-line-1) solid var(--tg-edge);
        border-radius: 2px;
        background: none;
        font: var(--tg-type-small) / 1.3 var(--tg-font-label);
        cursor: pointer;
      }
      li button {
        inline-size: 100%;
        padding-inline: 0;
        border: 0;
        font: var(--tg-type-base) / 1.4 var(--tg-font-label);
        font-variant-numeric: tabular-nums;
        text-align: start;
      }
      li button[aria-pressed='true'] {
        font-weight: 700;
        text-decoration: underline;
        text-underline-offset: 0.25em;
      }
      .tools {
        display: flex;
        flex-wrap: wrap;
        gap: var(--tg-space-3);
        align-items: center;
        margin-block: var(--tg-space-3);
      }
      table {
        table-layout: fixed;
        margin-block-end: var(--tg-space-4);
      }
      td {
        padding: 0.15em var(--tg-space-3) 0.15em 0;
        border: 0;
        white-space: pre-wrap;
        overflow-wrap: anywhere;
      }
      col.number {
        inline-size: 3rem;
      }
      col.sign {
        inline-size: 3.4rem;
      }
      td.number {
        color: var(--tg-ink-quiet);
        text-align: end;
      }
      td.sign {
        font-weight: 700;
        white-space: nowrap;
      }
      .changed td.words {
        font-weight: 700;
      }
      .changed del,
      .changed ins {
        text-decoration-thickness: 1px;
      }
      .changed del {
        font-weight: 400;
      }
      .changed ins {
        text-decoration: underline;
        text-underline-offset: 0.2em;
      }
      .fault {
        padding: var(--tg-space-3) var(--tg-space-4);
        border: var(--tg-line-2) solid var(--tg-ink);
      }
      a {
        color: inherit;
        text-underline-offset: 0.2em;
      }
      @media (max-width: 40rem) {
        col.number {
          inline-size: 0;
        }
        td.number {
          padding: 0;
          font-size: 0;
        }
        col.sign {
          inline-size: 2.8rem;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The note's id. */
  @property() note = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private now?: NoteText | 'none';
  @state() private found?: EarlierNotes | 'nobody';
  @state() private chosen?: number;
  @state() private earlier?: EarlierText | 'nobody';
  @state() private said = '';

  readonly #opening = new LatestTask<NoteText | undefined>((text) => {
    this.now = text ?? 'none';
    if (text) this.#listing.run(this.#history(text.path));
  });
  readonly #listing = new LatestTask<EarlierNotes | 'nobody'>((found) => {
    this.found = found;
    const [first] = found !== 'nobody' && found.is === 'found' ? found.versions : [];
    if (first && this.chosen === undefined) this.#choose(first.version);
  });
  readonly #reading = new LatestTask<EarlierText | 'nobody'>((text) => (this.earlier = text));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    if (changed.has('note') || changed.has('engine')) {
      this.chosen = undefined;
      this.earlier = undefined;
      this.said = '';
    }
    if (changed.has('engine') || changed.has('note') || changed.has('version')) this.#opening.run(this.engine.noteText(this.note));
  }

  override render() {
    const { now, found } = this;
    if (now === undefined) return html`<p role="status">Opening the note.</p>`;
    if (now === 'none')
      return html`<p role="alert">No note of this notebook has the id “${this.note}”. <a href="#/notebook">All notes</a></p>`;
    return html`<p class="small"><a href=${noteAddress(this.note)}>Back to the note</a></p>
      <h1>Earlier versions of ${now.title}</h1>
      ${found === undefined ? html`<p role="status">Looking for earlier versions.</p>` : this.#found(found, now)}
      <p role="status">${this.said}</p>`;
  }

  #found(found: EarlierNotes | 'nobody', now: NoteText) {
    if (found === 'nobody') return html`<p>Nothing here keeps earlier versions.</p>`;
    if (found.is === 'failed') return html`<p class="fault" role="alert">${storeFailureWords[found.why]}</p>`;
    if (found.versions.length === 0) return html`<p>There are none: the note stands as it first came.</p>`;
    return html`<ul part="versions">
        ${found.versions.map(
          ({ version, savedAt, endedAt }) =>
            html`<li>
              <button type="button" aria-pressed=${this.chosen === version ? 'true' : 'false'} @click=${() => this.#choose(version)}>
                Written ${moment(savedAt)}, stood until ${moment(endedAt)}${endedAt < savedAt ? ' by a clock that had been set back' : ''}
              </button>
            </li>`,
        )}
      </ul>
      ${this.#compared(now)}`;
  }

  #compared(now: NoteText) {
    const { earlier } = this;
    if (this.chosen === undefined) return nothing;
    if (earlier === undefined) return html`<p role="status">Opening that version.</p>`;
    if (earlier === 'nobody' || earlier.is === 'missing') return html`<p>That version is no longer kept.</p>`;
    if (earlier.is === 'failed') return html`<p class="fault" role="alert">${storeFailureWords[earlier.why]}</p>`;
    const view = versionsView(earlier.text, now.text);
    return html`<section part="sides">
      <div class="tools">
        <span>${view.summary}</span>
        ${view.same ? nothing : html`<button type="button" @click=${() => this.#restore(now, earlier.text)}>Let the earlier one stand again</button>`}
      </div>
      ${view.parts.map(
        (part) =>
          html`<table>
            <colgroup>
              <col class="number" />
              <col class="sign" />
              <col />
              <col class="number" />
              <col class="sign" />
              <col />
            </colgroup>
            <thead>
              <tr>
                <th scope="col" colspan="3">Then</th>
                <th scope="col" colspan="3">Now</th>
              </tr>
            </thead>
            <tbody>
              ${part.map((row) => this.#row(row))}
            </tbody>
          </table>`,
      )}
    </section>`;
  }

  #row({ is, before, after }: VersionLine) {
    if (is === 'same')
      return html`<tr>
        <td class="number">${before?.line}</td>
        <td class="sign"></td>
        <td class="words">${before?.text}</td>
        <td class="number">${after?.line}</td>
        <td class="sign"></td>
        <td class="words">${after?.text}</td>
      </tr>`;
    return html`<tr class="changed">
      <td class="number">${before?.line}</td>
      <td class="sign">${before ? 'gone' : ''}</td>
      <td class="words">${before ? html`<del>${before.text}</del>` : nothing}</td>
      <td class="number">${after?.line}</td>
      <td class="sign">${after ? 'new' : ''}</td>
      <td class="words">${after ? html`<ins>${after.text}</ins>` : nothing}</td>
    </tr>`;
  }

  #history(path: string): Promise<EarlierNotes | 'nobody'> {
    const request = new NoteHistoryRequestEvent(path);
    this.dispatchEvent(request);
    return request.answer ?? Promise.resolve('nobody');
  }

  #choose(version: number) {
    const { now } = this;
    if (now === undefined || now === 'none') return;
    this.chosen = version;
    this.earlier = undefined;
    const request = new NoteEarlierRequestEvent(now.path, version);
    this.dispatchEvent(request);
    this.#reading.run(request.answer ?? Promise.resolve('nobody'));
  }

  async #restore(now: NoteText, text: string) {
    const request = new NoteSaveRequestEvent({ path: now.path, text, basedOn: now.text });
    this.dispatchEvent(request);
    const outcome = await request.answer;
    if (outcome?.is === 'saved') {
      this.said = 'It stands again; what stood until now is among the earlier versions.';
      this.dispatchEvent(new NoteKeptEvent(this.note, false));
    } else
      this.said =
        outcome?.is === 'failed'
          ? storeFailureWords[outcome.why]
          : 'Not restored: the note was changed elsewhere a moment ago. Look again.';
    if (this.engine) this.#opening.run(this.engine.noteText(this.note));
  }
}

/** A moment as its reader writes it. */
const moment = (instant: number): string => new Date(instant).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });

declare global {
  interface HTMLElementTagNameMap {
    'tg-note-versions': TgNoteVersions;
  }
}
