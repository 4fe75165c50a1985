import { html, LitElement, nothing, svg, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { formatYear } from '../../domain/date/format-years.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { BandPickEvent, YearChangeEvent } from '../shared/events.ts';
import { OnPaper } from '../shared/on-paper.ts';
import { WidthOf } from '../shared/width-of.ts';
import '../swatch/tg-swatch.ts';
import { chartView, type ChartView, type DrawnRow } from './availability-chart-view.ts';
import { bandAfterKey } from './band-after-key.ts';
import { hatching, rowDrawing, type BandHandling } from './chart-drawing.ts';
import { chartOnPaper } from './chart-on-paper.ts';
import { followPointer } from './chart-drag.ts';
import { chartLegend } from './chart-legend.ts';
import type { ChartRow } from './chart-row.ts';
import { betweenEnds, including, scaleOf, yearsOf, zoomed, type Years } from './chart-scale.ts';
import { chartTable } from './chart-table.ts';
import { yearAfterKey } from './year-after-key.ts';
import { styles } from './tg-availability-chart.styles.ts';

const CLOSER = 0.6;
/** On paper the heads and the gap beside them, in mm; see the styles. */
const PAPER_HEADS_MM = 40;
const PIXELS_PER_MM = 96 / 25.4;

/**
 * @summary Who had what, when: sources as rows, years across, a thread at the asked year that drags; the same as a table one key away.
 * @event {YearChangeEvent} tg-year-change - The reader moved the thread, also while it is being dragged.
 * @event {BandPickEvent} tg-band-pick - The reader wants the claim behind a band.
 * @csspart chart - Heads, scale and plot.
 * @csspart thread - The thread at the asked year.
 */
@customElement('tg-availability-chart')
export class TgAvailabilityChart extends LitElement {
  static override styles = [baseStyles, styles];

  /** The sources, in their order. Replace the list; never mutate it. */
  @property({ attribute: false }) rows: readonly ChartRow[] = [];
  /** The asked year, astronomical. */
  @property({ type: Number }) year = 1000;
  /** What the chart shows, in words: the table's caption. */
  @property() label = 'Who had what, when';
  /** Width between the margins of the paper it is printed on, in mm; A4 unless said otherwise. */
  @property({ type: Number, attribute: 'paper-width' }) paperWidth = 178;
  /** Shows the table instead of the chart. */
  @property({ type: Boolean, attribute: 'as-table', reflect: true }) asTable = false;

  /** The years in view after zooming; without them, all there are. */
  @state() private view?: Years;
  /** The two ends of the years being chosen on the scale, while they are. */
  @state() private chosen?: readonly [number, number];
  /** The claim whose band had the keys last. */
  @state() private reached?: string;

  private readonly onPaper = new OnPaper(this, () => this.performUpdate());
  private readonly plotWidth = new WidthOf(this, () => this.renderRoot.querySelector('.plot'));

  /** Takes the keys to the band they were on last. */
  focusBand() {
    this.renderRoot.querySelector<SVGElement>('.band[tabindex="0"]')?.focus();
  }

  override willUpdate(changed: PropertyValues<this>) {
    if (changed.has('year') && this.view) this.view = including(this.view, this.#whole, this.year);
  }

  override render() {
    return html`
      <div class="tools" @keydown=${(event: KeyboardEvent) => this.#shortcut(event)}>
        <button class="plain" type="button" aria-keyshortcuts="t" @click=${() => this.#turn()}>
          ${this.asTable ? 'Show as chart' : 'Show as table'}
        </button>
        ${this.asTable ? nothing : this.#zoomTools()}
      </div>
      ${
        this.asTable
          ? html`<div @keydown=${(event: KeyboardEvent) => this.#shortcut(event)}>
              ${chartTable(this.rows, this.label, (claimKey) => this.#pick(claimKey))}
            </div>`
          : html`${this.#chart()} ${chartLegend()}`
      }
    `;
  }

  #zoomTools() {
    const whole = this.#whole;
    return html`
      <button class="plain" type="button" aria-keyshortcuts="+" @click=${() => this.#zoom(CLOSER)}>Closer</button>
      <button class="plain" type="button" aria-keyshortcuts="-" ?disabled=${!this.view} @click=${() => this.#zoom(1 / CLOSER)}>
        Farther
      </button>
      <button class="plain" type="button" ?disabled=${!this.view} @click=${() => this.#seeAll()}>
        All years, ${formatYear(whole.from)} to ${formatYear(whole.to)}
      </button>
    `;
  }

  #chart() {
    const width = this.#width;
    const view = chartView(this.rows, this.#years, this.year, width);
    if (this.onPaper.value) return chartOnPaper(view, width, this.year, ({ row }) => this.#headOf(row));
    return html`
      <div part="chart" role="group" aria-label=${this.label} @keydown=${(event: KeyboardEvent) => this.#shortcut(event)}>
        <div class="scale" aria-hidden="true" @pointerdown=${(event: PointerEvent) => this.#choose(event)}>
          ${view.ticks.map(({ x, words }) => (words ? html`<span class="tick" style="inset-inline-start: ${this.#share(x)}">${words}</span>` : nothing))}
          ${this.chosen ? this.#chosenYears(this.chosen) : nothing}
        </div>
        <ul class="heads">
          ${view.rows.map((drawn) => this.#head(drawn))}
        </ul>
        <div class="plot">
          <svg
            role="group"
            aria-label="Claims"
            aria-description="Arrow keys lead from claim to claim, Enter shows what is behind one."
            height=${view.height}
            viewBox="0 0 ${Math.max(1, width)} ${view.height}"
            preserveAspectRatio="none"
          >
            ${hatching} ${width === 0 ? nothing : this.#drawing(view, width)}
          </svg>
          ${width === 0 ? nothing : this.#thread(view)}
        </div>
      </div>
    `;
  }

  #head({ row, height }: DrawnRow) {
    return html`<li style="block-size: ${height}px">${this.#headOf(row)}</li>`;
  }

  #headOf({ hex, fibre, id, title }: ChartRow) {
    return html`${
      hex
        ? html`<tg-swatch aria-hidden="true" .hex=${hex} .fibre=${fibre ?? 'wool'} .seed=${id}></tg-swatch>`
        : html`<span class="nothing"></span>`
    }
    ${title}`;
  }

  #drawing({ rows, ticks, height }: ChartView, width: number) {
    const handling = this.#handlingOf(rows);
    return svg`
      ${ticks.map(({ x }) => svg`<path class="warp" d="M${x} 0V${height}"></path>`)}
      ${rows.map((drawn) => rowDrawing(drawn, width, handling))}`;
  }

  #handlingOf(rows: readonly DrawnRow[]): BandHandling {
    const keys = rows.flatMap(({ bands }) => bands.map(({ claimKey }) => claimKey));
    return {
      tabStop: keys.includes(this.reached ?? '') ? this.reached : keys[0],
      pick: (claimKey) => this.#pick(claimKey),
      key: (event, claimKey) => this.#bandKey(event, claimKey, rows),
    };
  }

  #thread({ thread }: ChartView) {
    const { from, to } = this.#whole;
    if (thread === undefined) return nothing;
    return html`
      <div
        part="thread"
        role="slider"
        tabindex="0"
        aria-label="Asked year"
        aria-orientation="horizontal"
        aria-valuemin=${from}
        aria-valuemax=${to}
        aria-valuenow=${this.year}
        aria-valuetext=${formatYear(this.year)}
        style="inset-inline-start: ${this.#share(thread)}"
        @pointerdown=${(event: PointerEvent) => this.#drag(event)}
        @keydown=${(event: KeyboardEvent) => this.#step(event)}
      >
        <span class="spool">${formatYear(this.year)}</span>
      </div>
    `;
  }

  #chosenYears([from, to]: readonly [number, number]) {
    return html`<span class="chosen" style="inset-inline-start: ${Math.min(from, to)}px; inline-size: ${Math.abs(to - from)}px"></span>`;
  }

  /** Shares of the width, and not pixels, so that all of it still fits where paper is narrower than was thought. */
  #share(x: number) {
    return `${(x / Math.max(1, this.#width)) * 100}%`;
  }

  get #width(): number {
    return this.onPaper.value ? (this.paperWidth - PAPER_HEADS_MM) * PIXELS_PER_MM : this.plotWidth.value;
  }

  get #whole(): Years {
    return yearsOf(this.rows, this.year);
  }

  get #years(): Years {
    return this.view ?? this.#whole;
  }

  #ask(year: number) {
    const { from, to } = this.#whole;
    const asked = Math.min(to, Math.max(from, year));
    if (asked === this.year) return;
    this.year = asked;
    this.dispatchEvent(new YearChangeEvent(asked));
  }

  #bandKey(event: KeyboardEvent, claimKey: string, rows: readonly DrawnRow[]) {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const next = bandAfterKey(event.key, claimKey, rows);
    if (next === undefined && event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    if (next === undefined) this.#pick(claimKey);
    else void this.#reach(next);
  }

  /** Takes the keys to a band; where it would lie at the edge of the window, into the middle: at once, since keys are held down. */
  async #reach(claimKey: string) {
    this.reached = claimKey;
    await this.updateComplete;
    const band = this.renderRoot.querySelector<SVGElement>(`.band[data-claim="${CSS.escape(claimKey)}"]`);
    if (!band) return;
    band.focus({ preventScroll: true });
    const { top, bottom } = band.getBoundingClientRect();
    if (top < 0 || bottom > innerHeight * 0.7) band.scrollIntoView({ block: 'center', behavior: 'instant' });
  }

  #pick(claimKey: string) {
    this.reached = claimKey;
    this.dispatchEvent(new BandPickEvent(claimKey));
  }

  #zoom(factor: number) {
    const whole = this.#whole;
    const next = zoomed(this.#years, whole, this.year, factor);
    this.view = next.to - next.from >= whole.to - whole.from ? undefined : next;
    void this.#keepKeys();
  }

  /** A band that had the keys and is no longer in view leaves them to the thread. */
  async #keepKeys() {
    const held = this.shadowRoot?.activeElement;
    await this.updateComplete;
    if (held && !held.isConnected) this.renderRoot.querySelector<HTMLElement>('[part="thread"]')?.focus();
  }

  #seeAll() {
    this.view = undefined;
  }

  #drag(event: PointerEvent) {
    const plot = this.renderRoot.querySelector('.plot');
    if (!plot) return;
    const follow = (x: number) => this.#ask(scaleOf(this.#years, this.#width).year(x));
    (event.currentTarget as HTMLElement).focus();
    followPointer(event, plot, { move: follow, end: (x, moved) => (moved ? follow(x) : undefined) });
  }

  /** A drag across the scale brings those years closer; a press asks about one. */
  #choose(event: PointerEvent) {
    const scaleElement = event.currentTarget as HTMLElement;
    const start = event.clientX - scaleElement.getBoundingClientRect().left;
    const yearAt = scaleOf(this.#years, this.#width).year;
    followPointer(event, scaleElement, {
      move: (x) => (this.chosen = [start, x]),
      end: (x, moved) => {
        this.chosen = undefined;
        if (moved) this.view = betweenEnds(yearAt(start), yearAt(x), this.#whole);
        else this.#ask(yearAt(x));
      },
    });
  }

  #step(event: KeyboardEvent) {
    const next = yearAfterKey(event.key, event.shiftKey, this.year, this.#whole);
    if (next === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    this.#ask(next);
  }

  #shortcut(event: KeyboardEvent) {
    if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 't') this.#turn();
    else if (this.asTable) return;
    else if (event.key === '+' || event.key === '=') this.#zoom(CLOSER);
    else if (event.key === '-') this.#zoom(1 / CLOSER);
    else if (event.key === '0') this.#seeAll();
  }

  /** The focused thread or claim goes with what is turned away; the button that turns stays. */
  #turn() {
    this.asTable = !this.asTable;
    this.renderRoot.querySelector<HTMLElement>('.tools button')?.focus();
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-availability-chart': TgAvailabilityChart;
  }
}
