import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { type PhotoFileNotes, photoFileNotes } from '../../domain/colour/photo-file-notes.ts';
import { photoFileWords } from '../../notebook/words/photo-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { colourInputStyles } from './colour-input.styles.ts';
import { ColourPickEvent } from './colour-pick-event.ts';
import { decodePhoto, drawPhoto, pixelsIn } from './photo-canvas.ts';
import {
  type Area,
  AREA_WORDS,
  areaAfterKey,
  areaBetween,
  type AreaName,
  areasOf,
  type Correction,
  CORRECTION_WORDS,
  CORRECTIONS,
  knownPatches,
  patchAreas,
  type PhotoReading,
  readPhoto,
} from './photo-view.ts';
import { photoStyles } from './photo.styles.ts';

/** Where an area lies when it is set without a drag. */
const MIDDLE: Area = { x: 0.4, y: 0.4, width: 0.2, height: 0.2 };
/** The header of a JPEG: EXIF and profile lie in front. */
const HEADER_BYTES = 256 * 1024;

/**
 * @summary The colour of a cloth in a photo: areas are dragged, cards or a chart beside the cloth correct it.
 * @event {ColourPickEvent} tg-colour-pick - The reader takes the colour; it is marked as from a photo, the photo goes with it.
 * @csspart photo - The photo with the chosen areas on it.
 */
@customElement('tg-photo-colour')
export class TgPhotoColour extends LitElement {
  static override styles = [baseStyles, colourInputStyles, photoStyles];

  @state() private file?: File;
  @state() private photo?: ImageBitmap;
  @state() private notes: PhotoFileNotes = {};
  @state() private isUnreadable = false;
  @state() private correction: Correction = 'white';
  @state() private areas: Partial<Record<AreaName, Area>> = {};
  @state() private setting: AreaName = 'cloth';
  @state() private whiteReflectance = 90;
  @state() private greyReflectance = 18;
  @state() private columns = 6;
  @state() private rows = 4;
  @state() private chartText = '';
  @state() private chartLight: 'D65' | 'D50' = 'D50';
  @state() private dragFrom?: readonly [number, number];
  /** What the areas give; while one is being dragged, what they gave before. */
  #reading: PhotoReading = { is: 'waiting', says: '' };

  override willUpdate() {
    if (this.photo && !this.dragFrom) this.#reading = this.#read(this.photo);
  }

  override updated(changed: PropertyValues) {
    const canvas = this.renderRoot.querySelector('canvas');
    if (changed.has('photo') && this.photo && canvas) drawPhoto(canvas, this.photo);
  }

  override render() {
    return html`<div class="row">
        <label
          >A photo of the cloth, best with a white card or chart in the same light
          <input type="file" accept="image/*" @change=${this.#open} />
        </label>
      </div>
      ${this.isUnreadable ? html`<p class="refused" role="alert">This file cannot be read as a picture. JPEG, PNG and WebP can.</p>` : nothing}
      ${this.photo ? this.#work() : nothing}`;
  }

  #work() {
    return html`<p class="hint">${photoFileWords(this.notes)}</p>
      <div class="row">
        <label
          >Corrected by
          <select @change=${(event: Event) => this.#correctBy((event.target as HTMLSelectElement).value as Correction)}>
            ${CORRECTIONS.map((one) => html`<option value=${one} ?selected=${one === this.correction}>${CORRECTION_WORDS[one]}</option>`)}
          </select>
        </label>
        ${this.#reference()}
      </div>
      <div class="row" role="group" aria-label="The area that a drag sets">
        ${areasOf(this.correction).map(
          (area) =>
            html`<button
              type="button"
              class="press"
              aria-pressed=${area === this.setting ? 'true' : 'false'}
              @click=${(event: MouseEvent) => this.#set(area, event.detail === 0)}
            >
              ${AREA_WORDS[area]}${this.areas[area] ? ', set' : ''}
            </button>`,
        )}
      </div>
      <p class="hint">
        Drag over ${AREA_WORDS[this.setting]}. By keyboard: set an area, then arrows move it, and with Shift change its size.
      </p>
      <div
        part="photo"
        @pointerdown=${this.#dragStart}
        @pointermove=${this.#drag}
        @pointerup=${this.#dragEnd}
        @pointercancel=${this.#dragEnd}
      >
        <canvas role="img" aria-label="The photo"></canvas>
        ${areasOf(this.correction).map((name) => this.#area(name))}
      </div>
      <div aria-live="polite">${this.#found(this.#reading)}</div>`;
  }

  #reference() {
    const number = (label: string, value: number, [low, high]: readonly [number, number], take: (value: number) => void) =>
      html`<label
        >${label}
        <input
          type="number"
          min=${low}
          max=${high}
          .value=${String(value)}
          @change=${(event: Event) => take(Math.min(high, Math.max(low, Number((event.target as HTMLInputElement).value) || low)))}
        />
      </label>`;
    const white = number('White card reflects, %', this.whiteReflectance, [1, 100], (value) => (this.whiteReflectance = value));
    if (this.correction === 'white') return white;
    if (this.correction === 'white-grey')
      return html`${white}${number('Grey card reflects, %', this.greyReflectance, [0, 99], (value) => (this.greyReflectance = value))}`;
    if (this.correction === 'none') return nothing;
    return html`${number('Columns', this.columns, [1, 40], (value) => (this.columns = Math.round(value)))}
      ${number('Rows', this.rows, [1, 40], (value) => (this.rows = Math.round(value)))}
      <label
        >Known colours, L, a, b on a line, row by row
        <textarea
          spellcheck="false"
          .value=${this.chartText}
          @input=${(event: Event) => (this.chartText = (event.target as HTMLTextAreaElement).value)}
        ></textarea>
      </label>
      <label
        >Stated for 2° and
        <select @change=${(event: Event) => (this.chartLight = (event.target as HTMLSelectElement).value === 'D65' ? 'D65' : 'D50')}>
          <option value="D50" ?selected=${this.chartLight === 'D50'}>D50</option>
          <option value="D65" ?selected=${this.chartLight === 'D65'}>D65</option>
        </select>
      </label>`;
  }

  #area(name: AreaName) {
    const area = this.areas[name];
    if (!area) return nothing;
    const place = ({ x, y, width, height }: Area): string => `--_x:${x * 100}%;--_y:${y * 100}%;--_w:${width * 100}%;--_h:${height * 100}%`;
    const cells = name === 'chart' ? patchAreas(area, this.columns, this.rows) : [];
    return html`${cells.map((cell) => html`<span class="cell" style=${place(cell)}></span>`)}
      <button
        type="button"
        class="area"
        style=${place(area)}
        aria-label=${`${AREA_WORDS[name]}: arrows move it, with Shift they change its size`}
        @focus=${() => (this.setting = name)}
        @keydown=${(event: KeyboardEvent) => this.#key(event, name, area)}
      >
        <span>${AREA_WORDS[name]}</span>
      </button>`;
  }

  #found(reading: PhotoReading) {
    if (reading.is === 'waiting') return html`<p class="hint">${reading.says}</p>`;
    if (reading.is === 'refused') return html`<p class="refused">${reading.says}</p>`;
    return html`<div class="found">
        <span class="patch" style=${`--_patch:${reading.hex}`} aria-hidden="true"></span>
        <div>
          <p>${reading.lab}${reading.inScreenGamut ? '' : '; this screen shows it duller'}</p>
          ${reading.says.map((sentence) => html`<p class="hint">${sentence}</p>`)}
        </div>
      </div>
      <div class="row">
        <button type="button" class="press" @click=${() => this.#take(reading.text, reading.by)}>Take this colour</button>
      </div>`;
  }

  #read(photo: ImageBitmap): PhotoReading {
    const space = this.notes.space ?? 'srgb';
    const patches = this.correction === 'chart' ? knownPatches(this.chartText, this.chartLight) : [];
    if (!patches)
      return { is: 'refused', says: 'A line of the chart’s known colours cannot be read. Write three numbers: 52.1, 48.0, 16.5.' };
    const { cloth, white, grey, chart } = this.areas;
    return readPhoto(
      {
        space,
        ...(cloth && { cloth: pixelsIn(photo, cloth, space) }),
        ...(white && { white: pixelsIn(photo, white, space) }),
        ...(grey && { grey: pixelsIn(photo, grey, space) }),
        ...(chart && { chart: patchAreas(chart, this.columns, this.rows).map((area) => pixelsIn(photo, area, space)) }),
      },
      { correction: this.correction, whiteReflectance: this.whiteReflectance, greyReflectance: this.greyReflectance, patches },
    );
  }

  readonly #open = async (event: Event) => {
    const file = (event.target as HTMLInputElement).files?.[0];
    if (!file) return;
    const photo = await decodePhoto(file);
    this.isUnreadable = photo === undefined;
    this.notes = photoFileNotes(new Uint8Array(await file.slice(0, HEADER_BYTES).arrayBuffer()));
    this.file = file;
    this.areas = {};
    this.setting = 'cloth';
    this.photo = photo;
  };

  #correctBy(correction: Correction) {
    this.correction = correction;
    if (!areasOf(correction).includes(this.setting)) this.setting = 'cloth';
  }

  /** A press says what a drag sets. By keyboard it puts the area in the middle, from where arrows move it. */
  #set(area: AreaName, byKeyboard: boolean) {
    if (byKeyboard && !this.areas[area]) this.areas = { ...this.areas, [area]: MIDDLE };
    this.setting = area;
  }

  readonly #dragStart = (event: PointerEvent) => {
    const at = this.#at(event);
    if (!at || event.button !== 0) return;
    event.preventDefault();
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
    this.dragFrom = at;
  };

  readonly #drag = (event: PointerEvent) => {
    const at = this.#at(event);
    if (this.dragFrom && at) this.areas = { ...this.areas, [this.setting]: areaBetween(this.dragFrom, at) };
  };

  /** After a drag the next area that is not set yet comes next. */
  readonly #dragEnd = () => {
    if (!this.dragFrom) return;
    this.dragFrom = undefined;
    if (this.areas[this.setting]) this.setting = areasOf(this.correction).find((one) => !this.areas[one]) ?? this.setting;
  };

  #key(event: KeyboardEvent, name: AreaName, area: Area) {
    const next = areaAfterKey(area, event.key, event.shiftKey);
    if (!next) return;
    event.preventDefault();
    this.areas = { ...this.areas, [name]: next };
  }

  #at(event: PointerEvent): readonly [number, number] | undefined {
    const box = this.renderRoot.querySelector('canvas')?.getBoundingClientRect();
    return box && box.width > 0 ? [(event.clientX - box.left) / box.width, (event.clientY - box.top) / box.height] : undefined;
  }

  #take(text: string, by: 'photo' | 'photo-with-chart') {
    this.dispatchEvent(new ColourPickEvent({ text, by, ...(this.file && { photo: this.file }) }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-photo-colour': TgPhotoColour;
  }
}
