import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { addressOf, settingsOfPalette } from '../../notebook/address.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { KeptColour, KeptPaletteView } from '../../notebook/views/kept-palette-view.ts';
import { LatestTask } from '../shared/latest-task.ts';
import '../swatch/tg-swatch.ts';
import { styles } from './tg-palette.styles.ts';

/**
 * @summary A kept palette, judged as the notes stand now: what holds, and what changed since it was kept.
 * @csspart colours - The kept colours.
 */
@customElement('tg-kept-palette')
export class TgKeptPalette extends LitElement {
  static override styles = [
    styles,
    css`
      h1 {
        font: 600 var(--tg-type-4) / 1.15 var(--tg-font-reading);
      }
      .kept {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(20rem, 100%), 1fr));
        gap: var(--tg-space-5) var(--tg-space-6);
        margin-block: var(--tg-space-5);
        --tg-swatch-size: 5rem;
      }
      .kept li {
        display: grid;
        grid-template-columns: 6rem minmax(0, 1fr);
        gap: var(--tg-space-4);
        align-items: start;
      }
      .beside {
        padding-block-start: var(--tg-space-3);
        border-block-start: 1px solid var(--tg-ink);
      }
      .beside p {
        margin: 0;
      }
      .changed {
        border-block-start-width: var(--tg-line-3);
      }
      @media print {
        .kept {
          grid-template-columns: 1fr 1fr;
          gap: 3mm 8mm;
          --tg-swatch-size: 15mm;
        }
        .kept li {
          break-inside: avoid;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Id of the palette note. */
  @property({ attribute: 'palette-id' }) paletteId = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private view?: KeptPaletteView | 'none';

  readonly #judging = new LatestTask<KeptPaletteView | undefined>((view) => (this.view = view ?? 'none'));

  override willUpdate(changed: PropertyValues<this>) {
    if (this.engine && (changed.has('engine') || changed.has('version') || changed.has('paletteId')))
      this.#judging.run(this.engine.keptPalette(this.paletteId));
  }

  override render() {
    const { view } = this;
    if (view === undefined) return html`<p role="status">Judging the palette again.</p>`;
    if (view === 'none') return html`<p role="alert">No palette of this notebook is called “${this.paletteId}”.</p>`;
    return html`
      <p class="quiet"><a href="#/palette">The palette of any place and date</a></p>
      <h1>${view.title}</h1>
      ${view.question === '' ? nothing : html`<p>${view.question}</p>`}
      <p role="status">
        ${
          view.changed === 0
            ? 'Every colour stands as it was kept.'
            : `${view.changed} of ${view.colours.length} colours ${view.changed === 1 ? 'does' : 'do'} not stand as kept.`
        }
      </p>
      <p>
        <a href=${addressOf({ view: 'palette', settings: settingsOfPalette(view.asked) })}>All colours of this place and date</a> ·
        <a href=${`#/notebook/${view.id}`}>The note itself</a> ·
        <a href=${`#/on-show?palette=${encodeURIComponent(view.id)}`}>Put it on a board</a>
      </p>
      <ul class="kept" part="colours">
        ${view.colours.map((colour) => this.#colour(colour))}
      </ul>
    `;
  }

  #colour({ title, keptVerdict, nowVerdict, changed, says, note, cloth }: KeptColour) {
    return html`<li>
      ${
        cloth
          ? html`<tg-swatch
              .hex=${cloth.hex}
              .wide=${cloth.wide ?? ''}
              .fibre=${cloth.weave}
              .verdict=${cloth.verdict}
              .classes=${cloth.classes}
              .seed=${cloth.id}
              .outOfGamut=${!cloth.inScreenGamut}
              .label=${`${title}, ${nowVerdict.toLowerCase()}`}
            ></tg-swatch>`
          : html`<span></span>`
      }
      <div class=${changed ? 'beside changed' : 'beside'}>
        <p><strong>${title}</strong></p>
        <p class="quiet">${standingOfKept(keptVerdict, nowVerdict, changed)}</p>
        ${says === '' ? nothing : html`<p><strong>${says}</strong></p>`} ${note === '' ? nothing : html`<p class="quiet">${note}</p>`}
      </div>
    </li>`;
  }
}

/** "Feasible, as kept", or both words. */
const standingOfKept = (kept: string, now: string, changed: boolean): string =>
  changed
    ? `Kept as ${kept === '' ? 'no verdict' : kept.toLowerCase()}; now ${now === '' ? 'not to be judged' : now.toLowerCase()}`
    : `${now}, as kept`;

declare global {
  interface HTMLElementTagNameMap {
    'tg-kept-palette': TgKeptPalette;
  }
}
