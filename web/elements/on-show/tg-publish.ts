import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import { packedFiles } from '../../notebook/packed-files.ts';
import type { DisplayView } from '../../notebook/views/display-view.ts';
import type { PublishedColour, PublishedView } from '../../notebook/views/published-view.ts';
import { dayInPrint } from '../../notebook/words/day-words.ts';
import { publishedFiles } from '../publish/published-files.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { saveFile } from '../take-out/save-file.ts';
import { onShowStyles } from './on-show.styles.ts';
import { writtenEdit } from './written-edit.ts';

/**
 * @summary Publishes a display: what goes out and what stays, then a folder that opens from disk, and the address that labels lead to.
 * @event {NoteSaveRequestEvent} tg-note-save-request - The address is to be written into the note.
 * @csspart goes - What goes out.
 * @csspart words - Every caption and claim that goes out.
 * @csspart stays - What stays.
 */
@customElement('tg-publish')
export class TgPublish extends LitElement {
  static override styles = [
    baseStyles,
    onShowStyles,
    css`
      h3 {
        margin-block-start: var(--tg-space-4);
      }
      li {
        padding-block: var(--tg-space-2);
        border-block-end: 1px solid var(--tg-hairline);
      }
      input {
        inline-size: min(28rem, 100%);
      }
      .address {
        flex: 1 1 16rem;
        max-inline-size: 28rem;
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Id of the display note. */
  @property({ attribute: 'display-id' }) displayId = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;
  /** UTC, ISO 8601: the day it is. */
  @property() now = '';

  @state() private view?: PublishedView | 'none';
  @state() private board?: DisplayView;
  @state() private said = '';

  readonly #gathering = new LatestTask<readonly [PublishedView | undefined, DisplayView | undefined]>(([view, board]) => {
    this.view = view ?? 'none';
    if (board) this.board = board;
  });

  override willUpdate(changed: PropertyValues<this>) {
    const { engine, displayId, now } = this;
    if (engine && (['engine', 'displayId', 'version', 'now'] as const).some((name) => changed.has(name)))
      this.#gathering.run(Promise.all([engine.published(displayId, now), engine.display(displayId)]));
  }

  override render() {
    const { view } = this;
    if (view === undefined) return html`<p role="status">Gathering what would go out.</p>`;
    if (view === 'none')
      return html`<p role="alert">This display is not in the notebook, or its note is private. <a href="#/on-show">All displays</a></p>`;
    return html`
      <p class="quiet"><a href=${`#/on-show/${encodeURIComponent(this.displayId)}`}>The board</a></p>
      <h1>Publish “${view.title}”</h1>
      <p>
        A folder with one page to read and one for a screen in the gallery. Both open from disk and need no network; the page to read needs
        no script.
      </p>
      <h2>What goes out</h2>
      <ul part="goes">
        ${view.goesOut.map((says) => html`<li>${says}</li>`)}
      </ul>
      <details part="words">
        <summary>Every caption and claim of it</summary>
        ${view.colours.map(wordsOf)}
      </details>
      <h2>What stays here</h2>
      <ul part="stays">
        ${view.keptBack.map((says) => html`<li>${says}</li>`)}
      </ul>
      ${this.#stale()}
      <p class="asked"><button type="button" @click=${this.#take}>Take the folder as a zip</button></p>
      <h2>Labels that lead there</h2>
      <p>Once you know where the folder will lie on the web, write it here. Labels then carry a code that leads to their colour.</p>
      <form class="asked" @submit=${this.#address}>
        <label class="address"
          >Web address of the folder<input name="address" type="url" placeholder="https://" .value=${this.board?.publishedAt ?? ''}
        /></label>
        <button type="submit">Keep the address in the note</button>
        <a href=${`#/on-show/${encodeURIComponent(this.displayId)}?print=labels`}>Labels</a>
      </form>
      <p role="status">${this.said}</p>
    `;
  }

  #stale() {
    const stale = this.board?.staleCaptions ?? 0;
    if (stale === 0) return nothing;
    return html`<p class="notice">
      <strong>${stale} ${stale === 1 ? 'caption is' : 'captions are'} stale.</strong> They would go out as they are; look at them first.
    </p>`;
  }

  readonly #take = () => {
    if (typeof this.view !== 'object') return;
    const name = `${this.view.id}.zip`;
    saveFile(name, new Blob([packedFiles(this.view.id, publishedFiles(this.view))], { type: 'application/zip' }));
    this.said = `${name} went to your downloads. Unpack it, then open index.html or, on a screen in the gallery, gallery.html.`;
  };

  readonly #address = async (event: SubmitEvent) => {
    event.preventDefault();
    if (!(event.target instanceof HTMLFormElement)) return;
    const address = new FormData(event.target).get('address');
    if (typeof address !== 'string') return;
    const said = await writtenEdit(this, this.engine, this.displayId, { is: 'published-at', address });
    this.said = said === '' ? 'The address is in the note.' : said;
  };
}

/** What of one colour goes out, in words. */
const wordsOf = ({ title, captions, speaksFor, speaksAgainst, recipe, dyed }: PublishedColour) =>
  html`<h3>${title}</h3>
    <ul>
      ${captions.map(({ lang, headline, text }) => html`<li lang=${lang}><strong>${headline}.</strong> ${text}</li>`)}
      ${[...speaksFor, ...speaksAgainst].map(({ says, region, years }) => html`<li class="quiet">${says}, ${region}, ${years}</li>`)}
      ${recipe ? html`<li class="quiet">${recipe.title}: ${recipe.ingredients.join('; ')}</li>` : nothing}
      ${dyed ? html`<li class="quiet">Dyed ${[dayInPrint(dyed.date), ...dyed.with].filter((part) => part !== '').join('; ')}</li>` : nothing}
    </ul>`;

declare global {
  interface HTMLElementTagNameMap {
    'tg-publish': TgPublish;
  }
}
