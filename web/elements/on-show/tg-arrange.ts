import { css, html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { BOARD_ORDERS, type BoardOrder, type DisplayPlace, type Sheet } from '../../domain/note/display-record.ts';
import type { BoardColour, DisplayView } from '../../notebook/views/display-view.ts';
import { boardOrderWords } from '../../notebook/words/board-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { DisplayEditEvent } from './on-show-events.ts';
import { onShowStyles } from './on-show.styles.ts';

const SIZES = ['a4', 'a3', 'a2', 'a1', 'free'] as const;

/**
 * @summary How a board is arranged: its order, its sheet, and what hangs in each place; every choice is written into the note.
 * @event {DisplayEditEvent} tg-display-edit - The writer chose something else.
 * @csspart places - What hangs in each place.
 */
@customElement('tg-arrange')
export class TgArrange extends LitElement {
  static override styles = [
    baseStyles,
    onShowStyles,
    css`
      .places li {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(9rem, 100%), 1fr));
        gap: var(--tg-space-2) var(--tg-space-4);
        align-items: end;
        max-inline-size: none;
        padding-block: var(--tg-space-2);
        border-block-end: 1px solid var(--tg-hairline);
      }
    `,
  ];

  /** The display to arrange. */
  @property({ attribute: false }) display?: DisplayView;

  @state() private said = '';
  /** An order that is chosen while places given by hand would be lost. */
  @state() private wanted?: BoardOrder;

  override render() {
    const { display } = this;
    if (!display) return nothing;
    const { sheet } = display;
    const [size, orientation] = sheetChoice(display);
    return html`
      <div class="asked">
        <label
          >Ordered by
          <select @change=${this.#order}>
            ${BOARD_ORDERS.map(
              (order) =>
                html`<option value=${order} ?selected=${order === (this.wanted ?? display.order)}>${boardOrderWords[order]}</option>`,
            )}
          </select></label
        >
        <label
          >Sheet
          <select @change=${(event: Event) => this.#sheet({ size: wordIn(event, SIZES, size) })}>
            ${SIZES.map((one) => html`<option value=${one} ?selected=${one === size}>${one === 'free' ? 'own size' : one.toUpperCase()}</option>`)}
          </select></label
        >
        ${
          size === 'free'
            ? html`<label
                  >Width, mm<input type="number" min="50" max="10000" .value=${`${sheet.widthMm}`} @change=${this.#side('widthMm')}
                /></label>
                <label
                  >Height, mm<input type="number" min="50" max="10000" .value=${`${sheet.heightMm}`} @change=${this.#side('heightMm')}
                /></label>`
            : html`<label
                >Held
                <select
                  @change=${(event: Event) => this.#sheet({ orientation: wordIn(event, ['portrait', 'landscape'] as const, orientation) })}
                >
                  <option value="portrait" ?selected=${orientation === 'portrait'}>upright</option>
                  <option value="landscape" ?selected=${orientation === 'landscape'}>across</option>
                </select></label
              >`
        }
      </div>
      ${
        this.wanted === undefined
          ? nothing
          : html`<div class="notice" role="alert">
              <p>Some cloths lie where a hand put them. Laid out anew, those places are given up.</p>
              <button type="button" class="plain" @click=${this.#anew}>Lay everything out anew</button>
              <button type="button" class="plain" @click=${() => (this.wanted = undefined)}>Leave it</button>
            </div>`
      }
      <p role="status" class=${this.said === '' ? '' : 'notice'}>${this.said}</p>
      <details>
        <summary class="quiet">What hangs in each place</summary>
        <ul part="places" class="places">
          ${display.colours.map((colour) => this.#place(colour))}
        </ul>
      </details>
    `;
  }

  #place({ what, title, form, material }: BoardColour) {
    const set = (change: Partial<Pick<DisplayPlace, 'form' | 'cloth'>>) => void this.#send({ is: 'place', what, change });
    return html`<li>
      <span>${title}</span>
      <label
        >In the print<select @change=${(event: Event) => set({ cloth: wordIn(event, ['printed', 'real'] as const, material) })}>
          <option value="printed" ?selected=${material === 'printed'}>printed colour, approximate</option>
          <option value="real" ?selected=${material === 'real'}>a window for the cloth itself</option>
        </select></label
      >
      <label
        >It is a<select @change=${(event: Event) => set({ form: wordIn(event, ['swatch', 'skein'] as const, form) })}>
          <option value="swatch" ?selected=${form === 'swatch'}>swatch</option>
          <option value="skein" ?selected=${form === 'skein'}>skein</option>
        </select></label
      >
    </li>`;
  }

  #order(event: Event) {
    const { display } = this;
    if (!display) return;
    const order = wordIn(event, BOARD_ORDERS, display.order);
    if (display.colours.some(({ placed }) => placed)) this.wanted = order;
    else void this.#send({ is: 'laid-anew', order });
  }

  readonly #anew = async () => {
    if (this.wanted !== undefined && (await this.#send({ is: 'laid-anew', order: this.wanted }))) this.wanted = undefined;
  };

  #sheet(change: Partial<Sheet>) {
    if (!this.display) return;
    const [size, orientation] = sheetChoice(this.display);
    const { widthMm, heightMm } = this.display.sheet;
    void this.#send({ is: 'sheet', sheet: { size, orientation, widthMm, heightMm, ...change } });
  }

  #side(key: 'widthMm' | 'heightMm') {
    return ({ target }: Event) => {
      if (target instanceof HTMLInputElement && target.value !== '' && target.validity.valid) this.#sheet({ [key]: target.valueAsNumber });
    };
  }

  async #send(edit: DisplayEditEvent['detail']): Promise<boolean> {
    const request = new DisplayEditEvent(edit);
    this.dispatchEvent(request);
    this.said = (await request.answer) ?? 'Nothing here keeps notes, so this cannot be saved.';
    return this.said === '';
  }
}

const sheetChoice = ({ sheet }: DisplayView): readonly [Sheet['size'], Sheet['orientation']] => [
  SIZES.find((size) => sheet.name.toLowerCase().startsWith(`${size} `)) ?? 'free',
  sheet.widthMm > sheet.heightMm ? 'landscape' : 'portrait',
];

/** The word chosen in a list, if it is one of those that may stand there. */
function wordIn<Word extends string>({ target }: Event, words: readonly Word[], otherwise: Word): Word {
  return target instanceof HTMLSelectElement ? (words.find((word) => word === target.value) ?? otherwise) : otherwise;
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-arrange': TgArrange;
  }
}
