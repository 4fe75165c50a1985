import { css, html, LitElement } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { addressOf } from '../../notebook/address.ts';
import { dyeDayOf, settingsOfDyeDay } from '../../notebook/dye-day-address.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { DyeDayChangeEvent } from '../dye-day/dye-day-change-event.ts';
import '../dye-day/tg-dye-day.ts';
import { baseStyles } from '../shared/base.styles.ts';

/**
 * @summary "Pot": what is done at the pots, from the plan of the day on.
 */
@customElement('tg-pot')
export class TgPot extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      h1 {
        margin: 0 0 var(--tg-space-4);
        font: 600 var(--tg-type-4) / 1.15 var(--tg-font-reading);
      }
      a {
        color: inherit;
        text-underline-offset: 0.2em;
      }
      p {
        max-inline-size: var(--tg-measure);
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The view of the address. */
  @property() view: 'pot' | 'dye-day' | 'samples' = 'pot';
  /** What the address is about. */
  @property() about?: string;
  /** The settings of the address. */
  @property({ attribute: false }) settings: Readonly<Record<string, string>> = {};
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  override render() {
    if (this.view === 'dye-day')
      return html`<tg-dye-day
        .engine=${this.engine}
        .day=${dyeDayOf(this.settings)}
        .version=${this.version}
        @tg-dye-day-change=${this.#planned}
      ></tg-dye-day>`;
    return html`<h1>Pot</h1>
      <p><a href="#/dye-day">Plan a dye day</a>: several recipes and masses, one order of baths, one weighing sheet.</p>
      <p><a href="#/trials">Trials</a>: what came out of each pot, what differed between them, lots and tests.</p>`;
  }

  #planned({ detail: { day } }: DyeDayChangeEvent) {
    globalThis.location.hash = addressOf({ view: 'dye-day', settings: settingsOfDyeDay(day) });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-pot': TgPot;
  }
}
