import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { TypedBinding, TypedCaption } from '../../notebook/display-edit.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { CaptionDeskView } from '../../notebook/views/caption-desk-view.ts';
import type { CaptionComment, CaptionView } from '../../notebook/views/caption-view.ts';
import type { BoardColour } from '../../notebook/views/display-view.ts';
import { counted } from '../../notebook/words/counted.ts';
import { dayWords } from '../../notebook/words/day-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { captionBlock } from './caption-block.ts';
import { DisplayEditEvent } from './on-show-events.ts';
import { onShowStyles } from './on-show.styles.ts';

/**
 * @summary One caption of a display: read, written, bound to its claims clause by clause, and reviewed.
 * @event {DisplayEditEvent} tg-display-edit - The writer wants the caption, a comment or a decision written into the note.
 * @csspart form - The caption while it is written.
 * @csspart review - Comments, each with what was decided.
 */
@customElement('tg-caption')
export class TgCaption extends LitElement {
  static override styles = [
    baseStyles,
    onShowStyles,
    css`
      form {
        display: grid;
        gap: var(--tg-space-3);
        margin-block: var(--tg-space-3);
        padding: var(--tg-space-4);
        border: 1px solid var(--tg-edge);
      }
      .line {
        display: flex;
        flex-wrap: wrap;
        gap: var(--tg-space-3) var(--tg-space-4);
        align-items: end;
      }
      label.wide {
        display: grid;
        flex: 1 1 16rem;
      }
      textarea,
      input:not([type]),
      .wide select {
        inline-size: 100%;
        min-inline-size: 0;
      }
      input.short {
        inline-size: 6rem;
      }
      textarea {
        padding: var(--tg-space-2);
        border: 1px solid var(--tg-edge);
        border-radius: 0;
        background: var(--tg-surface);
        color: var(--tg-ink);
        font: var(--tg-type-base) / 1.5 var(--tg-font-reading);
        resize: vertical;
      }
      fieldset {
        margin: 0;
        padding: 0;
        border: 0;
        min-inline-size: 0;
      }
      legend {
        padding: 0;
        font: 700 var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
      fieldset li {
        max-inline-size: none;
        padding-block: var(--tg-space-2);
        border-block-end: 1px solid var(--tg-hairline);
      }
      .review li {
        padding-block: var(--tg-space-2);
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Id of the display note. */
  @property({ attribute: 'display-id' }) displayId = '';
  /** The colour it stands beside. */
  @property({ attribute: false }) colour?: BoardColour;
  /** The caption as it is; a new one without. */
  @property({ attribute: false }) caption?: CaptionView;
  /** What a new caption begins with. */
  @property({ attribute: false }) start?: TypedCaption;
  /** UTC, ISO 8601: the day it is. */
  @property() now = '';

  @state() private typed?: TypedCaption;
  @state() private desk?: CaptionDeskView;
  @state() private said = '';

  readonly #weighing = new LatestTask<CaptionDeskView | undefined>((desk) => (this.desk = desk));

  override willUpdate(changed: PropertyValues) {
    if (changed.has('start') && this.start && !this.caption) this.typed = this.start;
    if (changed.has('typed') && this.typed && this.engine && this.colour)
      this.#weighing.run(this.engine.captionDesk(this.displayId, this.colour.what, this.caption?.nth, this.typed));
  }

  override render() {
    const { caption, colour } = this;
    if (!colour) return nothing;
    return html`
      ${this.typed ? this.#form(this.typed) : caption ? html`${captionBlock(caption, colour.latin)} ${this.#tools(caption)}` : nothing}
      <p role="status" class=${this.said === '' ? '' : 'notice'}>${this.said}</p>
      ${caption && !this.typed ? this.#review(caption) : nothing}
    `;
  }

  #tools({ nth, stale }: CaptionView) {
    return html`<p class="line screen">
      <button type="button" class="plain" @click=${this.#edit}>Edit this caption</button>
      ${
        stale.length === 0
          ? nothing
          : html`<button type="button" class="plain" @click=${() => this.#send({ is: 'held', nth })}>
              Read again: it stands on its claims as they are now
            </button>`
      }
      <button type="button" class="plain" @click=${() => this.#send({ is: 'caption-removed', nth })}>Take it out of the note</button>
    </p>`;
  }

  #form(typed: TypedCaption) {
    return html`<form part="form" class="screen" @submit=${this.#save}>
      <div class="line">
        <label>Language<input class="short" .value=${typed.lang} @input=${this.#type('lang')} /></label>
        <label class="wide">Headline<input .value=${typed.headline} lang=${typed.lang} @input=${this.#type('headline')} /></label>
      </div>
      <label class="wide"
        >Caption, 20 to 60 words<textarea rows="5" lang=${typed.lang} .value=${typed.text} @input=${this.#type('text')}></textarea>
      </label>
      <p class="quiet" role="status">${this.#weighed()}</p>
      ${this.#notices()} ${this.#bindings(typed)}
      <div class="line">
        <button type="submit">Save the caption</button>
        <button type="button" class="plain" @click=${this.#leave}>Leave it as it was</button>
      </div>
    </form>`;
  }

  #weighed(): string {
    const caption = this.desk?.caption;
    return caption ? [counted(caption.words, 'word'), caption.grade].filter((part) => part !== '').join(' · ') : '';
  }

  /** What is to be said of it, but for clauses and bindings, which have their own list. */
  #notices() {
    const notices = this.desk?.caption.notices.filter(({ code }) => !['clause-unbound', 'words-gone', 'comment-open'].includes(code)) ?? [];
    return notices.length === 0
      ? nothing
      : html`<ul class="notice">
          ${notices.map(({ says }) => html`<li>${says}</li>`)}
        </ul>`;
  }

  #bindings({ claims, text }: TypedCaption) {
    const { desk } = this;
    if (!desk) return nothing;
    const titleOf = (claim: string) => desk.backings.find((backing) => backing.claim === claim)?.title ?? claim;
    const gone = claims.filter(({ says }) => says !== '' && !text.includes(says)).map(({ claim }) => claim);
    const offered = [...desk.backings].sort((a, b) => Number(gone.includes(b.claim)) - Number(gone.includes(a.claim)));
    return html`<fieldset>
      <legend>What each clause rests on</legend>
      <ul>
        ${desk.unbound.map(
          (says) =>
            html`<li>
              <label class="wide"
                >“${says}” rests on nothing yet
                <select @change=${(event: Event) => this.#bind(event, says)}>
                  <option value="">choose a claim</option>
                  ${offered.map(({ claim, title }) => html`<option value=${claim}>${title}</option>`)}
                </select></label
              >
            </li>`,
        )}
        ${claims.map(
          (binding) =>
            html`<li>
              “${binding.says}”${text.includes(binding.says) ? '' : ' (no longer in the text)'}: ${titleOf(binding.claim)}
              <button type="button" class="plain" aria-label=${`Let go of “${binding.says}”`} @click=${() => this.#letGo(binding)}>
                Let go
              </button>
            </li>`,
        )}
      </ul>
    </fieldset>`;
  }

  #review({ review, nth }: CaptionView) {
    return html`<section part="review" class="review screen" aria-label="Review">
      <ul>
        ${review.map((comment, at) => html`<li class="quiet">${this.#comment(comment, nth, at)}</li>`)}
      </ul>
      <details>
        <summary class="quiet">Comment on it</summary>
        <form @submit=${(event: SubmitEvent) => this.#addComment(event, nth)}>
          <label class="wide">Who says it<input name="by" autocomplete="name" /></label>
          <label class="wide">Comment<input name="says" required /></label>
          <div><button type="submit">Add the comment</button></div>
        </form>
      </details>
    </section>`;
  }

  #comment({ by, date, says, decision, reason }: CaptionComment, nth: number, at: number) {
    const who = [by, dayWords(date)].filter((part) => part !== '').join(', ');
    if (decision !== 'open' && reason !== '')
      return html`${who}: “${says}” ${decision === 'accepted' ? 'Accepted' : 'Declined'}: ${reason}.`;
    return html`${who}: “${says}”
      <form @submit=${(event: SubmitEvent) => this.#decide(event, nth, at)}>
        <label class="wide">Decided, because<input name="reason" required /></label>
        <div class="line">
          <button type="submit" value="accepted">Accept</button>
          <button type="submit" value="declined">Decline</button>
        </div>
      </form>`;
  }

  readonly #edit = () => {
    const { caption } = this;
    if (!caption) return;
    const { lang, bound } = caption;
    const { headline, text } = caption.written;
    this.said = '';
    this.typed = { lang, headline, text, claims: bound.map(({ claim, says }) => ({ claim, says })) };
  };

  readonly #leave = () => {
    this.typed = undefined;
    this.desk = undefined;
    this.said = '';
  };

  #type(key: 'lang' | 'headline' | 'text') {
    return ({ target }: Event) => {
      if (this.typed && (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement))
        this.typed = { ...this.typed, [key]: target.value };
    };
  }

  /** A clause that is bound anew takes the place of the same claim's words that are gone. */
  #bind(event: Event, says: string) {
    const { typed } = this;
    if (!typed || !(event.target instanceof HTMLSelectElement) || event.target.value === '') return;
    const claim = event.target.value;
    const left = typed.claims.filter((one) => one.claim !== claim || typed.text.includes(one.says));
    this.typed = { ...typed, claims: [...left, { claim, says }] };
    event.target.value = '';
  }

  #letGo(binding: TypedBinding) {
    if (this.typed) this.typed = { ...this.typed, claims: this.typed.claims.filter((one) => one !== binding) };
  }

  readonly #save = async (event: SubmitEvent) => {
    event.preventDefault();
    const { typed, colour, caption } = this;
    if (!typed || !colour) return;
    const saved = await this.#send({
      is: 'caption',
      what: colour.what,
      caption: typed,
      ...(caption === undefined ? {} : { nth: caption.nth }),
    });
    if (saved) this.typed = undefined;
  };

  async #addComment(event: SubmitEvent, nth: number) {
    event.preventDefault();
    const { target } = event;
    if (!(target instanceof HTMLFormElement)) return;
    const data = new FormData(target);
    const added = await this.#send({ is: 'comment', nth, date: this.now.slice(0, 10), by: field(data, 'by'), says: field(data, 'says') });
    if (added) target.reset();
  }

  #decide(event: SubmitEvent, nth: number, comment: number) {
    event.preventDefault();
    const { target, submitter } = event;
    if (!(target instanceof HTMLFormElement) || !(submitter instanceof HTMLButtonElement)) return;
    const decision = submitter.value === 'accepted' ? 'accepted' : 'declined';
    void this.#send({ is: 'decision', nth, comment, decision, reason: field(new FormData(target), 'reason') });
  }

  /** @returns whether it was saved. */
  async #send(edit: DisplayEditEvent['detail']): Promise<boolean> {
    const request = new DisplayEditEvent(edit);
    this.dispatchEvent(request);
    this.said = (await request.answer) ?? 'Nothing here keeps notes, so this cannot be saved.';
    return this.said === '';
  }
}

const field = (data: FormData, name: string): string => {
  const value = data.get(name);
  return typeof value === 'string' ? value : '';
};

declare global {
  interface HTMLElementTagNameMap {
    'tg-caption': TgCaption;
  }
}
