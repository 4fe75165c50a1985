import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { styleMap } from 'lit/directives/style-map.js';
import type { Box } from '../../domain/display/lay-out.ts';
import { isMoveKey, movedBy, movedByKey } from '../../domain/display/move-place.ts';
import type { BoardColour, DisplayView } from '../../notebook/views/display-view.ts';
import { boardFoot, tagLine, windowLines } from '../../notebook/words/board-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import '../swatch/tg-swatch.ts';
import { captionWords } from './caption-block.ts';
import { BoardMoveEvent } from './on-show-events.ts';
import { styles } from './tg-board.styles.ts';

/**
 * @summary A board at its true proportions: cloths and captions on a sheet, moved by pointer or arrow keys; in print at its true size.
 * @event {BoardMoveEvent} tg-board-move - The reader moved a cloth.
 * @csspart sheet - The sheet.
 */
@customElement('tg-board')
export class TgBoard extends LitElement {
  static override styles = [baseStyles, styles];

  /** The display to show. */
  @property({ attribute: false }) display?: DisplayView;
  /** The language of the captions, BCP 47. */
  @property() language = 'en';
  /** Places tried out and not written down. */
  @property({ attribute: false }) moved: ReadonlyMap<string, Box> = new Map();
  /** Shows windows for real cloth as they are printed. */
  @property({ type: Boolean }) windows = false;
  /** The day on the foot of the board. */
  @property() day = '';

  @state() private drag?: { readonly what: string; readonly dx: number; readonly dy: number };

  override render() {
    const { display } = this;
    if (!display) return nothing;
    const { widthMm, heightMm } = display.sheet;
    return html`<div
      part="sheet"
      class=${this.windows ? 'sheet windows' : 'sheet'}
      style=${styleMap({ '--_w': `${widthMm}`, '--_h': `${heightMm}`, '--_type': `${display.typeMm}` })}
    >
      <h2>${display.title}</h2>
      <p class="question">${display.question}</p>
      ${display.headings.map((heading) => html`<p class="at group" style=${styleMap(boxStyle(heading))}>${heading.text}</p>`)}
      ${display.colours.map((colour) => this.#colour(colour))}
      <p class="foot">${boardFoot(display, this.day).map((words) => html`<span>${words}</span>`)}</p>
    </div>`;
  }

  #colour(colour: BoardColour) {
    const box = this.#boxOf(colour);
    if (!box) return nothing;
    const from = colour.box ?? box;
    const captionBox = colour.captionBox && {
      ...colour.captionBox,
      x: colour.captionBox.x + box.x - from.x,
      y: colour.captionBox.y + box.y - from.y,
    };
    const caption = colour.captions.find(({ lang }) => lang === this.language) ?? colour.captions[0];
    return html`
      <button
        type="button"
        class="at cloth"
        style=${styleMap(boxStyle(box))}
        aria-label=${`${colour.title}, ${colour.cloth?.verdictWord.toLowerCase() ?? 'not judged'}, ${round(box.x)} by ${round(box.y)} mm. Arrow keys move it.`}
        @pointerdown=${(event: PointerEvent) => this.#grab(event, colour.what)}
        @pointermove=${(event: PointerEvent) => this.#pull(event)}
        @pointerup=${() => this.#drop(colour)}
        @pointercancel=${() => (this.drag = undefined)}
        @keydown=${(event: KeyboardEvent) => this.#key(event, colour)}
      >
        ${
          colour.material === 'real'
            ? html`<span class="window">${windowLines({ ...colour, box }).map((line) => html`<span>${line}</span>`)}</span>`
            : nothing
        }
        <tg-swatch
          .hex=${colour.hex}
          .fibre=${colour.cloth?.weave ?? 'wool'}
          .verdict=${colour.cloth?.verdict}
          .classes=${colour.cloth?.classes ?? 0}
          .seed=${colour.code || colour.what}
          .label=${colour.title}
        ></tg-swatch>
      </button>
      ${
        captionBox
          ? html`<div class="at caption" style=${styleMap(boxStyle(captionBox))} lang=${caption?.lang ?? 'en'}>
              <h3>${caption?.headline || colour.title}</h3>
              <p>${captionWords(caption?.text ?? '', colour.latin)}</p>
              <p class="tag" lang="en">${tagLine(colour)}</p>
            </div>`
          : nothing
      }
    `;
  }

  #boxOf({ what, box }: BoardColour): Box | undefined {
    const at = this.moved.get(what) ?? box;
    return at && this.drag?.what === what ? { ...at, x: at.x + this.drag.dx, y: at.y + this.drag.dy } : at;
  }

  #start: { readonly x: number; readonly y: number } = { x: 0, y: 0 };

  #grab(event: PointerEvent, what: string) {
    if (event.button !== 0 || !(event.currentTarget instanceof HTMLElement)) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    this.#start = { x: event.clientX, y: event.clientY };
    this.drag = { what, dx: 0, dy: 0 };
  }

  #pull(event: PointerEvent) {
    const wide = this.renderRoot.querySelector('.sheet')?.getBoundingClientRect().width;
    if (!this.drag || !this.display || !wide) return;
    const mmPerPixel = this.display.sheet.widthMm / wide;
    this.drag = { ...this.drag, dx: (event.clientX - this.#start.x) * mmPerPixel, dy: (event.clientY - this.#start.y) * mmPerPixel };
  }

  #drop({ what, box }: BoardColour) {
    const { drag, display } = this;
    const at = this.moved.get(what) ?? box;
    this.drag = undefined;
    if (drag && display && at && Math.hypot(drag.dx, drag.dy) > TREMBLE_MM)
      this.dispatchEvent(new BoardMoveEvent(what, movedBy(at, drag.dx, drag.dy, display.sheet)));
  }

  #key(event: KeyboardEvent, { what, box }: BoardColour) {
    const at = this.moved.get(what) ?? box;
    if (!isMoveKey(event.key) || !at || !this.display) return;
    event.preventDefault();
    this.dispatchEvent(new BoardMoveEvent(what, movedByKey(at, event.key, event.shiftKey, this.display.sheet)));
  }
}

/** A hand that presses moves this much without meaning to. */
const TREMBLE_MM = 1;

const round = (mm: number): number => Math.round(mm);

const boxStyle = ({ x, y, widthMm, heightMm }: Box) => ({ '--_x': `${x}`, '--_y': `${y}`, '--_bw': `${widthMm}`, '--_bh': `${heightMm}` });

declare global {
  interface HTMLElementTagNameMap {
    'tg-board': TgBoard;
  }
}
