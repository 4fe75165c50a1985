import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { ColourAfterLight } from '../../notebook/views/board-after-light.ts';
import type { LightPlanView, LitColour, TypedLight } from '../../notebook/views/light-plan-view.ts';
import { counted } from '../../notebook/words/counted.ts';
import { dayWords } from '../../notebook/words/day-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import '../swatch/tg-swatch.ts';
import { saveFile } from '../take-out/save-file.ts';
import { DisplayEditEvent } from './on-show-events.ts';
import { onShowStyles } from './on-show.styles.ts';

/**
 * @summary What light does to the colours of a display: years to a first fade, limits, days to take them down, turns of swap sets.
 * @event {DisplayEditEvent} tg-display-edit - The light tried out here, or a new reading of a cloth, is to be kept in a note.
 * @csspart colours - The table of colours.
 * @csspart after - The cloths as they hang, and as this light may leave them.
 */
@customElement('tg-light-plan')
export class TgLightPlan extends LitElement {
  static override styles = [
    baseStyles,
    onShowStyles,
    css`
      h3 {
        margin: var(--tg-space-5) 0 var(--tg-space-2);
        font: 700 var(--tg-type-base) / 1.4 var(--tg-font-label);
      }
      .after {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(17rem, 100%), 1fr));
        gap: var(--tg-space-5);
        margin-block: var(--tg-space-4);
        padding: 0;
        list-style: none;
        --tg-swatch-size: 4rem;
      }
      .after li {
        break-inside: avoid;
      }
      .after strong {
        font: 600 var(--tg-type-base) / 1.3 var(--tg-font-reading);
      }
      .three {
        display: flex;
        gap: var(--tg-space-3);
        margin-block-start: var(--tg-space-2);
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

  /** What is tried out here and not written down. */
  @state() private typed: TypedLight = {};
  @state() private view?: LightPlanView;
  @state() private said = '';

  readonly #reckoning = new LatestTask<LightPlanView | undefined>((view) => (this.view = view));

  override willUpdate(changed: PropertyValues) {
    if (this.engine && ['engine', 'displayId', 'version', 'now', 'typed'].some((name) => changed.has(name)))
      this.#reckoning.run(this.engine.lightPlan(this.displayId, this.typed, this.now));
  }

  override render() {
    const { view } = this;
    if (!view) return nothing;
    const number = (label: string, key: 'lux' | 'hoursPerDay' | 'daysPerYear', most: number) =>
      html`<label
        >${label}
        <input
          type="number"
          min="0"
          max=${most}
          step=${'any' as unknown as number}
          .value=${`${Number(view.plan[key].toPrecision(4))}`}
          ?disabled=${view.window !== 'none' && key !== 'daysPerYear'}
          @change=${(event: Event) => this.#number(event, key)}
      /></label>`;
    return html`
      <div class="asked screen">
        ${number('Lux at the cloth', 'lux', 200_000)} ${number('Hours a day', 'hoursPerDay', 24)}
        ${number('Days a year', 'daysPerYear', 366)}
        <label
          >Ultraviolet
          <select @change=${(event: Event) => this.#set({ uv: valueOf(event) === 'rich' ? 'rich' : 'removed' })}>
            <option value="removed" ?selected=${view.plan.uv === 'removed'}>filtered out</option>
            <option value="rich" ?selected=${view.plan.uv === 'rich'}>as through window glass</option>
          </select></label
        >
        <label
          >Window
          <select @change=${(event: Event) => this.#window(event)}>
            <option value="none" ?selected=${view.window === 'none'}>none: measured light</option>
            <option value="north" ?selected=${view.window === 'north'}>a north sill, estimated</option>
            <option value="sunny" ?selected=${view.window === 'sunny'}>a sunny sill, estimated</option>
          </select></label
        >
      </div>
      ${
        Object.keys(this.typed).length === 0
          ? nothing
          : html`<p class="asked screen">
              <button type="button" @click=${this.#keep}>Keep this light in the note</button>
              <button type="button" class="plain" @click=${this.#forget}>Back to the note’s</button>
            </p>`
      }
      ${this.said === '' ? nothing : html`<p class="notice" role="alert">${this.said}</p>`}
      <p role="status">
        ${view.dose}, from
        ${dayWords(view.from)}${view.first === undefined ? '' : html`. <strong>The first cloth comes down by ${dayWords(view.first)}.</strong>`}
        ${view.notMeasured ? 'Nobody has written down a lux reading for this board; usual museum light is assumed.' : ''}
      </p>
      <div class="scroll" tabindex="0" role="group" aria-label="Light by colour">
        <table part="colours">
          <thead>
            <tr>
              <th scope="col">Colour</th>
              <th scope="col">Class</th>
              <th scope="col">Years to a first fade</th>
              <th scope="col">Its year’s light</th>
              <th scope="col">Take down</th>
            </tr>
          </thead>
          <tbody>
            ${view.colours.map((colour) => rowOf(colour, this.#checkForm(colour)))}
          </tbody>
        </table>
      </div>
      ${this.#after(view)}
      <ul class="quiet">
        ${view.caveats.map((caveat) => html`<li>${caveat}</li>`)}
      </ul>
      <p class="screen">
        <button
          type="button"
          class="plain"
          @click=${() => saveFile(`${view.id}-light.ics`, new Blob([view.calendar], { type: 'text/calendar;charset=utf-8' }))}
        >
          Reminders for a calendar
        </button>
      </p>
    `;
  }

  /** The board after so many years of this light: each cloth as it hangs, and the range it may come to. */
  #after({ after: { years, colours } }: LightPlanView) {
    return html`<section part="after" aria-labelledby="after">
      <h3 id="after">What this light leaves of them</h3>
      <label
        >After
        <select @change=${(event: Event) => this.#set({ years: Number(valueOf(event)) })}>
          ${YEARS.map((one) => html`<option value=${one} ?selected=${one === years}>${counted(one, 'year')}</option>`)}
        </select></label
      >
      <ul class="after">
        ${colours.map(afterOf)}
      </ul>
    </section>`;
  }

  /** Where a new reading of the cloth is typed; a cloth without a code could not be found again. */
  #checkForm({ code }: LitColour) {
    if (code === '') return nothing;
    return html`<details class="screen">
      <summary>measured again</summary>
      <form class="asked" @submit=${(event: SubmitEvent) => this.#check(event, code)}>
        <label>Day <input type="date" name="day" required .value=${this.now.slice(0, 10)} /></label>
        <label
          >L*, a*, b* of ${code}, D65/10° <input type="text" name="lab" required placeholder="44.8, 47.1, 10.2" autocomplete="off"
        /></label>
        <button type="submit">Keep the reading</button>
      </form>
    </details>`;
  }

  readonly #check = async (event: SubmitEvent, code: string) => {
    event.preventDefault();
    if (!(event.target instanceof HTMLFormElement)) return;
    const form = event.target;
    const typed = new FormData(form);
    const [day, lab] = [typed.get('day'), typed.get('lab')];
    if (typeof day !== 'string' || typeof lab !== 'string') return;
    const request = new DisplayEditEvent({ is: 'measured', code, day, lab });
    this.dispatchEvent(request);
    this.said = (await request.answer) ?? 'Nothing here keeps notes, so this cannot be saved.';
    if (this.said === '') form.reset();
  };

  #set(change: TypedLight) {
    this.typed = { ...this.typed, ...change };
  }

  readonly #keep = async () => {
    const request = new DisplayEditEvent({ is: 'light', light: this.typed });
    this.dispatchEvent(request);
    this.said = (await request.answer) ?? 'Nothing here keeps notes, so this cannot be saved.';
    if (this.said === '') this.typed = {};
  };

  readonly #forget = () => {
    this.typed = {};
    this.said = '';
  };

  #number(event: Event, key: 'lux' | 'hoursPerDay' | 'daysPerYear') {
    if (event.target instanceof HTMLInputElement && event.target.validity.valid && event.target.value !== '')
      this.#set({ [key]: event.target.valueAsNumber });
  }

  #window(event: Event) {
    const value = valueOf(event);
    const window = value === 'north' || value === 'sunny' ? value : 'none';
    const { uv: _, ...rest } = this.typed;
    this.typed = { ...rest, window };
  }
}

const valueOf = (event: Event): string => (event.target instanceof HTMLSelectElement ? event.target.value : '');

const YEARS = [1, 2, 5, 10, 25, 50] as const;

const afterOf = ({ title, code, weave, now, range, says }: ColourAfterLight) => {
  const cloth = (label: string, { hex, wide = '' }: { readonly hex: string; readonly wide?: string }, predicted: boolean, under: string) =>
    html`<tg-swatch .hex=${hex} .wide=${wide} .fibre=${weave} .seed=${title} .predicted=${predicted} .label=${label}
      ><span class="quiet">${under}</span></tg-swatch
    >`;
  return html`<li>
    <strong>${title}</strong>${code === '' ? nothing : html` <span class="quiet">${code}</span>`}
    <div class="three">
      ${cloth(`${title} as it hangs`, now, false, 'as it hangs')}
      ${
        range
          ? html`${cloth(`${title} at best`, range.best, true, range.best.grade)}
            ${cloth(`${title} at worst`, range.worst, true, range.worst.grade)}`
          : nothing
      }
    </div>
    ${
      range
        ? html`<details>
            <summary>how much is left</summary>
            ${says.map((line) => html`<p class="quiet">${line}</p>`)}
          </details>`
        : says.map((line) => html`<p class="quiet">${line}</p>`)
    }
  </li>`;
};

const rowOf = (colour: LitColour, check: unknown) =>
  html`<tr>
    <th scope="row">${colour.title}${colour.code === '' ? nothing : html`<br /><span class="quiet">${colour.code}</span>`}</th>
    <td>
      ${colour.classText}${
        colour.grades.length === 0
          ? nothing
          : html`<details>
              <summary>grades</summary>
              ${colour.grades.map((says) => html`<p class="quiet">${says}</p>`)}
            </details>`
      }
    </td>
    <td>
      ${
        colour.years === ''
          ? 'unknown'
          : html`${colour.years}<br /><span class="quiet">${colour.spread} if grades are a class off. ${colour.outdoors.join(' ')}</span>`
      }${colour.measured === '' ? nothing : html`<br /><span class="quiet">${colour.measured} ${colour.corrected}</span>`}
      ${check}
    </td>
    <td>${colour.overBudget ? html`<strong>Too much.</strong> ` : nothing}${colour.budget}</td>
    <td>
      ${colour.rotateBy === undefined ? colour.rotateBecause : html`<strong>${dayWords(colour.rotateBy)}</strong>: ${colour.rotateBecause}`}
      ${colour.samplesNeeded === undefined ? nothing : html`<br /><span class="quiet">A swap set of ${colour.samplesNeeded} would last the year.</span>`}
      ${
        colour.turns.length === 0
          ? nothing
          : html`<details>
              <summary>turns</summary>
              <ol class="quiet">
                ${colour.turns.map(({ code, from, until }) => html`<li>${code}: ${dayWords(from)} to ${dayWords(until)}</li>`)}
              </ol>
            </details>`
      }
    </td>
  </tr>`;

declare global {
  interface HTMLElementTagNameMap {
    'tg-light-plan': TgLightPlan;
  }
}
