import { html, LitElement, nothing, svg, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { baseStyles } from '../shared/base.styles.ts';
import { ClothPickEvent } from '../shared/events.ts';
import { SmoothMoves, wantsStillness } from '../shared/smooth-moves.ts';
import '../swatch/tg-swatch.ts';
import { hangCloths, neighbourOf, spokenName, standingLine, type ClothItem, type HungCloth } from './cloth-line-view.ts';
import { styles } from './tg-cloth-line.styles.ts';

/**
 * @summary Cloths side by side on one thin line, a gap between groups; one tab stop, arrows lead along it.
 * @event {ClothPickEvent} tg-cloth-pick - The reader took a cloth down.
 * @slot empty - What stands where nothing hangs.
 * @csspart group - A group's name, above its first cloth.
 * @csspart cloth - A cloth with the words beneath it.
 * @cssproperty [--tg-swatch-size=5rem] - Width of a cloth.
 */
@customElement('tg-cloth-line')
export class TgClothLine extends LitElement {
  static override styles = [baseStyles, styles];

  /** The cloths, in their order. Replace the list; never mutate it. */
  @property({ attribute: false }) items: readonly ClothItem[] = [];
  /** What the line holds, for those who hear the page. */
  @property() label = 'Cloths';
  /** Id of the cloth that is taken down and lies open. */
  @property() taken?: string;

  /** What hangs, those just leaving among them. */
  @state() private hung: readonly HungCloth[] = [];
  /** The cloth that takes the line's one tab stop. */
  @state() private current?: string;

  private readonly moves = new SmoothMoves(this, () => this.#pieces());

  override willUpdate(changed: PropertyValues<this>) {
    if (!changed.has('items')) return;
    this.hung = hangCloths(this.hung, this.items, this.hasUpdated && !wantsStillness());
    if (!this.items.some(({ id }) => id === this.current)) this.current = undefined;
  }

  override render() {
    if (this.hung.length === 0) return html`<slot name="empty"></slot>`;
    const grouped = this.items.some(({ group }) => group !== undefined);
    return html`
      <ul role="list" class=${grouped ? 'grouped' : ''} aria-label=${this.label} @keydown=${(event: KeyboardEvent) => this.#move(event)}>
        ${repeat(
          this.hung,
          ({ item }) => item.id,
          (hung) => this.#piece(hung),
        )}
      </ul>
    `;
  }

  #piece({ item, leaving, startsGroup, endsGroup }: HungCloth) {
    const { id, name, detail, group } = item;
    const standing = standingLine(item);
    const classes = [startsGroup ? 'starts' : '', endsGroup ? 'ends' : '', leaving ? 'leaving' : ''].join(' ').trim();
    const stop = this.current ?? this.items[0]?.id;
    return html`
      <li class=${classes} ?inert=${leaving} @transitionend=${(event: TransitionEvent) => this.#left(event)}>
        ${
          startsGroup
            ? html`<p part="group">${group}</p>
                <span class="room" aria-hidden="true">${group}</span>`
            : nothing
        }
        <button
          part="cloth"
          type="button"
          data-id=${id}
          tabindex=${id === stop ? 0 : -1}
          aria-label=${spokenName(item)}
          aria-current=${id === this.taken ? 'true' : 'false'}
          @click=${() => this.#pick(id)}
          @focus=${() => (this.current = id)}
        >
          <span class="hangs">
            <tg-swatch
              aria-hidden="true"
              .hex=${item.hex}
              .wide=${item.wide ?? ''}
              .fibre=${item.fibre}
              .verdict=${item.verdict}
              .classes=${item.classes ?? 0}
              .predicted=${item.predicted ?? false}
              .outOfGamut=${item.outOfGamut ?? false}
              .seed=${id}
            ></tg-swatch>
          </span>
          ${hooks}
          <span class="words">
            <span class="name">${name}</span>
            ${standing ? html`<span>${standing}</span>` : nothing} ${detail ? html`<span class="detail">${detail}</span>` : nothing}
          </span>
        </button>
      </li>
    `;
  }

  #pieces(): ReadonlyMap<string, HTMLElement> {
    return new Map(this.#buttons().map((button) => [button.dataset['id'] ?? '', button.closest('li') ?? button]));
  }

  #buttons(): readonly HTMLButtonElement[] {
    return [...this.renderRoot.querySelectorAll<HTMLButtonElement>('li:not(.leaving) > button')];
  }

  #pick(id: string) {
    this.current = id;
    this.dispatchEvent(new ClothPickEvent(id));
  }

  #left(event: TransitionEvent) {
    if (event.target !== event.currentTarget || event.propertyName !== 'opacity') return;
    if (this.hung.some(({ leaving }) => leaving)) this.hung = hangCloths([], this.items, false);
  }

  #move(event: KeyboardEvent) {
    const from = this.current ?? this.items[0]?.id;
    if (from === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    const buttons = this.#buttons();
    const places = buttons.map((button) => {
      const { left, top } = button.getBoundingClientRect();
      return { id: button.dataset['id'] ?? '', left, top };
    });
    const to = neighbourOf(event.key, from, places);
    if (to === undefined) return;
    event.preventDefault();
    buttons.find((button) => button.dataset['id'] === to)?.focus();
  }
}

/** Two small hooks over the line, at the cloth's upper corners. */
const hooks = svg`
  <svg class="hooks" viewBox="0 0 134 24" aria-hidden="true">
    <path d="M12 20.5V6.5a3.2 3.2 0 1 1 5.4 2.4M88 20.5V6.5a3.2 3.2 0 1 1 5.4 2.4"></path>
  </svg>`;

declare global {
  interface HTMLElementTagNameMap {
    'tg-cloth-line': TgClothLine;
  }
}
