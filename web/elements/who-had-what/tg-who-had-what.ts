import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { ChoicesView } from '../../notebook/views/choices-view.ts';
import type { ListedClaim } from '../../notebook/views/dyestuff-view.ts';
import type { PaletteOrProblems, PaletteView } from '../../notebook/views/palette-view.ts';
import type { TypedChart } from '../../notebook/typed-chart.ts';
import type { WhoHadWhatView } from '../../notebook/views/who-had-what-view.ts';
import '../availability-chart/tg-availability-chart.ts';
import type { TgAvailabilityChart } from '../availability-chart/tg-availability-chart.ts';
import '../cloth-line/tg-cloth-line.ts';
import { clothItem } from '../palette/palette-element-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import type { BandPickEvent, ClothPickEvent, YearChangeEvent } from '../shared/events.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { fewWords, listWord } from '../shared/sentence-words.ts';
import { SheetChoice } from '../shared/sheet-choice.ts';
import { sheetChoiceStyles } from '../shared/sheet-choice.styles.ts';
import { sentenceStyles } from '../shared/sentence.styles.ts';
import { reachAddress } from '../reach-map/reach-address.ts';
import { ChartChangeEvent } from './chart-change-event.ts';
import { AROUND_WORDS, csvOf, ORIGIN_WORDS, SOURCE_WORDS } from './who-had-what-words.ts';

/**
 * @summary Who had what, when: the sources of a place over the years, with the palette of the asked year above.
 * @event {ChartChangeEvent} tg-chart-change - The reader asks for another chart or another year.
 * @csspart line - The palette of the asked year.
 * @csspart claim - The claim behind the band that was picked.
 */
@customElement('tg-who-had-what')
export class TgWhoHadWhat extends LitElement {
  static override styles = [
    baseStyles,
    sentenceStyles,
    sheetChoiceStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
      }
      h1 {
        margin: 0;
        font: inherit;
      }
      .line {
        margin-block: var(--tg-space-5);
        --tg-swatch-size: 3rem;
      }
      /* It lies at the foot of the window as long as the chart goes on below. */
      .behind {
        position: sticky;
        inset-block-end: 0;
        background: var(--tg-ground);
      }
      .claim {
        margin-block: var(--tg-space-4);
        padding: var(--tg-space-3) 0;
        border-block: var(--tg-line-2) solid var(--tg-ink);
      }
      .claim p {
        margin: 0;
      }
      .quiet {
        color: var(--tg-ink-quiet);
        font: var(--tg-type-small) / 1.5 var(--tg-font-label);
      }
      a {
        color: inherit;
      }
      .claim button {
        min-block-size: var(--tg-touch);
      }
      @media print {
        .behind {
          position: static;
        }
        .claim button {
          display: none;
        }
        .line {
          --tg-swatch-size: 9mm;
          margin-block: 3mm;
        }
        .take-away {
          display: none;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The chart asked for. */
  @property({ attribute: false }) chart: TypedChart = { region: '' };
  /** The asked year, astronomical. */
  @property({ type: Number }) year = 1370;
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private choices?: ChoicesView;
  @state() private view?: WhoHadWhatView | 'none';
  @state() private palette?: PaletteView;
  @state() private picked?: ListedClaim & { readonly material: string };

  readonly #sheet = new SheetChoice(this);
  readonly #choosing = new LatestTask<ChoicesView>((choices) => (this.choices = choices));
  readonly #drawing = new LatestTask<WhoHadWhatView | undefined>((view) => (this.view = view ?? 'none'));
  readonly #hanging = new LatestTask<PaletteOrProblems>((result) => (this.palette = 'palette' in result ? result.palette : undefined));
  readonly #picking = new LatestTask<(ListedClaim & { readonly material: string }) | undefined>((picked) => (this.picked = picked));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    const anew = changed.has('engine') || changed.has('version');
    if (anew) this.#choosing.run(this.engine.choices());
    if (anew || changed.has('chart')) this.#drawing.run(this.engine.whoHadWhat(this.chart));
    if (anew || changed.has('chart') || changed.has('year')) {
      this.#hanging.run(this.engine.palette({ region: this.chart.region, when: String(this.year), group: 'none' }));
    }
  }

  override render() {
    return html`
      <h1>${this.#sentence()}</h1>
      <div class="line" part="line">
        ${
          this.palette
            ? html`<tg-cloth-line
                label=${`Colours of ${this.year}`}
                .items=${this.palette.cloths.map(clothItem)}
                @tg-cloth-pick=${this.#openPalette}
              >
                <p slot="empty">The notes stand behind no colour here in ${this.palette.reading}.</p>
              </tg-cloth-line>`
            : nothing
        }
      </div>
      ${this.#chart()}
    `;
  }

  #sentence() {
    const { chart } = this;
    return html`<span class="sentence">
      Who had what, when: ${fewWords('Sources', chart.sources ?? 'all', SOURCE_WORDS, (sources) => this.#change({ sources }))} in
      <span class="held"
        >${listWord('Place', chart.region, this.choices?.regions, (region) => this.#change({ region: region ?? '' }))},</span
      >
      <span class="held"
        >${fewWords('Origin', chart.origin ?? 'any', ORIGIN_WORDS, (origin) => this.#change({ origin: origin === 'any' ? undefined : origin }))},</span
      >
      <span class="held"
        >${fewWords('Reach', chart.around === true ? 'around' : 'within', AROUND_WORDS, (reach) => this.#change({ around: reach === 'around' }))}.</span
      >
    </span>`;
  }

  #chart() {
    const { view } = this;
    if (view === undefined) return html`<p role="status">Drawing the chart.</p>`;
    if (view === 'none') return html`<p role="alert">Choose a place of this notebook.</p>`;
    if (view.rows.length === 0) return html`<p>No claim of this notebook speaks of ${view.place} in this way.</p>`;
    return html`
      <tg-availability-chart
        .rows=${view.rows}
        .year=${this.year}
        paper-width=${this.#sheet.widthMm}
        label=${`Who had what in ${view.place}, when`}
        @tg-year-change=${(event: YearChangeEvent) => this.#ask(event.detail.year)}
        @tg-band-pick=${this.#pick}
      ></tg-availability-chart>
      <div class="behind" aria-live="polite">${this.#claim()}</div>
      <p class="take-away">
        <a href=${reachAddress(view.rows[0]?.id ?? '', String(this.year))}>How far a source reached in ${this.year}, on a map</a> ·
        <a download="who-had-what.csv" href=${csvOf(view)}>The chart as CSV</a>
      </p>
      ${this.#sheet.template('this chart')}
      ${view.silent.length === 0 ? nothing : html`<p class="quiet">No claim here: ${view.silent.map(({ title }) => title).join(', ')}.</p>`}
    `;
  }

  #claim() {
    const { picked } = this;
    if (!picked) return nothing;
    return html`<section class="claim" part="claim" aria-label="The claim behind it">
      <p>
        <strong>${picked.material} ${picked.says}</strong>: ${picked.region}, ${picked.years}
        ${picked.sure === '' ? nothing : html`<strong>(${picked.sure})</strong>`}
      </p>
      <p class="quiet">${picked.evidence} · ${picked.source} · <a href=${`#/notebook/${picked.note}`}>note ${picked.note}</a></p>
      ${picked.remark === '' ? nothing : html`<p class="quiet">${picked.remark}</p>`}
      <button type="button" class="plain" @click=${this.#putAway}>Put the claim away</button>
    </section>`;
  }

  #pick(event: BandPickEvent) {
    if (this.engine) this.#picking.run(this.engine.claimBehind(event.detail.claimKey));
  }

  /** The keys go back to the chart, from where the claim was asked for. */
  #putAway() {
    this.picked = undefined;
    this.renderRoot.querySelector<TgAvailabilityChart>('tg-availability-chart')?.focusBand();
  }

  #openPalette(_event: ClothPickEvent) {
    globalThis.location.hash = `#/palette?region=${encodeURIComponent(this.chart.region)}&when=${this.year}`;
  }

  #ask(year: number) {
    this.dispatchEvent(new ChartChangeEvent(this.chart, year, false));
  }

  #change(change: Partial<TypedChart>) {
    this.dispatchEvent(new ChartChangeEvent({ ...this.chart, ...change }, this.year, true));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-who-had-what': TgWhoHadWhat;
  }
}
