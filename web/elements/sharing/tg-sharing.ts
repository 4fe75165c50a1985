import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { type Meeting, meetingId, type Settlement } from '../../notebook/sharing/meeting.ts';
import type { LinkState, SharingState } from '../../notebook/sharing/sharing-state.ts';
import { counted } from '../../notebook/words/counted.ts';
import { linkWords, meetingWords, otherSideWords, roundWords, settleWords } from '../../notebook/words/sharing-words.ts';
import '../merge/tg-merge.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { FolderRequestEvent, type FolderWish, MeetingSettleRequestEvent } from './sharing-events.ts';
import { styles } from './tg-sharing.styles.ts';

type FolderPicker = (options: { readonly id: string; readonly mode: 'readwrite' }) => Promise<FileSystemDirectoryHandle>;

/** The browser's own way to choose a folder, where it has one. */
const folderPicker = (): FolderPicker | undefined => (globalThis as { readonly showDirectoryPicker?: FolderPicker }).showDirectoryPicker;

/** More than this are shown once some of them are decided. Our choice, because nobody decides more at once. */
const MOST_SHOWN = 20;

/**
 * @summary Sharing: a linked folder and how it stands, and every two versions that have met, side by side.
 * @event {FolderRequestEvent} tg-folder-request - A folder shall be linked, looked at, allowed again or unlinked.
 * @event {MeetingSettleRequestEvent} tg-meeting-settle-request - The reader decided between two versions; the answer is what became of it.
 * @csspart link - The linked folder.
 * @csspart meetings - The versions that have met.
 * @slot more - Further ways of sharing, at the end.
 */
@customElement('tg-sharing')
export class TgSharing extends LitElement {
  static override styles = [baseStyles, styles];

  /** How things stand. Replace it; never mutate it. */
  @property({ attribute: false }) sharing: SharingState = { meetings: [] };

  @state() private outcome = '';

  override render() {
    const { link, meetings } = this.sharing;
    return html`
      <h1>Sharing</h1>
      <section part="link" aria-labelledby="folder">
        <h2 id="folder">A folder on this machine</h2>
        ${link ? this.#linkTemplate(link) : this.#unlinkedTemplate()}
      </section>
      <section part="meetings" aria-labelledby="met">
        <h2 id="met">Two versions of one file</h2>
        <div role="status">${this.outcome === '' ? nothing : html`<p>${this.outcome}</p>`}</div>
        ${
          meetings.length === 0
            ? html`<p class="small">None: no file was changed on two sides, and no second copies of a note lie in the notebook.</p>`
            : nothing
        }
        ${repeat(meetings.slice(0, MOST_SHOWN), meetingId, (meeting) => this.#meetingTemplate(meeting))}
        ${meetings.length > MOST_SHOWN ? html`<p>and ${counted(meetings.length - MOST_SHOWN, 'file')} more, once these are decided.</p>` : nothing}
      </section>
      <slot name="more"></slot>
    `;
  }

  #unlinkedTemplate() {
    if (!folderPicker())
      return html`<p>
        This browser cannot keep a folder linked. <a href="#/notebook?read-in=1">Read a folder in, and export the notebook as a zip</a> to
        take it back there: files that are the same stay as they are.
      </p>`;
    return html`
      <p>
        What you save is written to the folder, and what changes there comes in: so the notebook can be kept in step with other people and
        machines by git or by any program that keeps folders alike. Files that are only on one side go to the other.
      </p>
      <button type="button" class="plain" @click=${this.#pick}>Link a folder</button>
    `;
  }

  #linkTemplate(link: LinkState) {
    const { is, lookedAt, last } = link;
    const did = last ? roundWords(last) : '';
    return html`
      <p role="status">${linkWords(link)}</p>
      ${did === '' ? nothing : html`<p class="small">${did}</p>`}
      ${lookedAt === undefined ? nothing : html`<p class="small">Last found alike at ${new Date(lookedAt).toLocaleTimeString()}.</p>`}
      <div class="ways">
        ${
          is === 'waiting' || link.why === 'no-permission'
            ? html`<button type="button" class="plain" @click=${() => this.#wish({ is: 'allow' })}>Allow the folder again</button>`
            : html`<button type="button" class="plain" @click=${() => this.#wish({ is: 'look' })}>Look through it now</button>`
        }
        <button type="button" class="plain" @click=${() => this.#wish({ is: 'unlink' })}>Unlink</button>
      </div>
    `;
  }

  #meetingTemplate(meeting: Meeting) {
    const { from, path, copy, merge } = meeting;
    return html`<article>
      <h3>${path}</h3>
      <p>${meetingWords[from](copy)}</p>
      ${
        merge
          ? html`<tg-merge
              .merge=${merge}
              .thatOne=${otherSideWords[from]}
              @tg-merge-done=${({ detail }: HTMLElementEventMap['tg-merge-done']) => this.#settle(meeting, { is: 'text', text: detail.text })}
            ></tg-merge>`
          : this.#fileTemplate(meeting)
      }
      ${
        copy === undefined
          ? nothing
          : html`<button type="button" class="plain" @click=${() => this.#settle(meeting)}>Leave both as they are</button>`
      }
    </article>`;
  }

  #fileTemplate(meeting: Meeting) {
    const take = (choice: 'mine' | 'theirs' | 'both') => () => this.#settle(meeting, { is: 'file', take: choice });
    return html`<div class="ways">
      <button type="button" class="plain" @click=${take('mine')}>Take this notebook’s</button>
      <button type="button" class="plain" @click=${take('theirs')}>Take the folder’s, ${counted(meeting.theirs.length, 'byte')}</button>
      <button type="button" class="plain" @click=${take('both')}>Keep both, the folder’s under a name of its own</button>
    </div>`;
  }

  async #pick() {
    const folder = await folderPicker()?.({ id: 'tenterground', mode: 'readwrite' }).catch(() => undefined);
    if (folder) this.#wish({ is: 'link', folder });
  }

  #wish(wish: FolderWish) {
    this.dispatchEvent(new FolderRequestEvent(wish));
  }

  async #settle(meeting: Meeting, settlement?: Settlement) {
    const request = new MeetingSettleRequestEvent(meeting, settlement);
    this.dispatchEvent(request);
    const outcome = await request.answer;
    if (outcome) this.outcome = `${meeting.path}: ${settlement ? settleWords[outcome] : 'both stay as they are.'}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-sharing': TgSharing;
  }
}
