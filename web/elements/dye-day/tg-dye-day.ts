import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { styleMap } from 'lit/directives/style-map.js';
import { MOST_SKEINS, type TypedDyeDay, type TypedItem, withoutItem } from '../../notebook/dye-day-address.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { BathView, DayItemView, DyeDayView, GatherView, NamedChoice } from '../../notebook/views/dye-day-view.ts';
import { counted } from '../../notebook/words/counted.ts';
import { NEVER_SCALES, TIMELINE_SAYS } from '../../notebook/words/dye-day-words.ts';
import { SCALE_CAUTION } from '../../notebook/words/pot-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { fieldStyles } from '../write/field.styles.ts';
import { DyeDayChangeEvent } from './dye-day-change-event.ts';
import { styles } from './tg-dye-day.styles.ts';

/** One skein, as the recipe page begins with. */
const ONE_SKEIN_GRAMS = 100;

/**
 * @summary A day at the pots: what to dye, the order of baths, what is weighed, bought and gathered.
 * @event {DyeDayChangeEvent} tg-dye-day-change - Another day is planned; the address follows.
 * @slot ways-on - Under what is dyed: what to do with the plan.
 * @csspart items - What is dyed.
 * @csspart baths - The baths in their order, with the weighing sheet.
 * @csspart timeline - How long it takes.
 * @csspart shopping - What has to be to hand.
 * @csspart gathering - What is gathered, by month.
 * @csspart care - Cautions.
 */
@customElement('tg-dye-day')
export class TgDyeDay extends LitElement {
  static override styles = [baseStyles, fieldStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** What is planned. */
  @property({ attribute: false }) day: TypedDyeDay = { items: [], staff: false, begins: '09:00' };
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private view?: DyeDayView;

  readonly #planning = new LatestTask<DyeDayView>((view) => (this.view = view));

  override willUpdate(changed: PropertyValues<this>) {
    if (this.engine && (['engine', 'day', 'version'] as const).some((name) => changed.has(name)))
      this.#planning.run(this.engine.dyeDay(this.day));
  }

  override render() {
    const { view } = this;
    if (!view) return html`<p role="status">Planning the day.</p>`;
    return html`
      <p class="quiet screen"><a href="#/pot">The pot</a> · <a href="#/recipes">Recipes</a></p>
      <h1>Dye day</h1>
      ${this.#asked(view)} ${view.problems.map((text) => html`<p class="problem" role="status">${text}</p>`)}
      ${view.baths.length === 0 ? nothing : this.#planned(view)}
    `;
  }

  #asked(view: DyeDayView) {
    const { day } = this;
    return html`<section part="items" aria-label="What is dyed">
      <ol class="items">
        ${day.items.map((item, at) => {
          const shown = view.items[at];
          return shown ? html`<li>${this.#item(view, shown, item, at)}</li>` : nothing;
        })}
      </ol>
      <div class="asked screen">
        <div class="field">
          <label for="add">${day.items.length === 0 ? 'Dye after a recipe' : 'And another'}</label>
          <select id="add" @change=${this.#add}>
            <option value="">Choose a recipe</option>
            ${options(view.recipes, '')}
          </select>
        </div>
        <div class="field">
          <label for="begins">The day begins</label>
          <input id="begins" type="time" .value=${day.begins} @change=${this.#begin} />
        </div>
        <label class="check"
          ><input type="checkbox" .checked=${day.staff} @change=${this.#staffed} /> Staff plan it, by safety data sheet</label
        >
        ${day.items.length === 0 ? nothing : html`<button type="button" @click=${() => globalThis.print()}>Print the plan (key P)</button>`}
      </div>
      ${
        day.staff
          ? html`<p class="problem">
              Planned for staff: amounts of tin and copper are shown. Never with children or the public; follow local rules and the safety
              data sheet.
            </p>`
          : nothing
      }
      <slot name="ways-on"></slot>
    </section>`;
  }

  #item(view: DyeDayView, shown: DayItemView, item: TypedItem, at: number) {
    const id = (name: string) => `${name}-${at}`;
    return html`<h3>
        ${at + 1}. ${shown.isKnown ? html`<a href=${`#/recipes/${encodeURIComponent(shown.recipe)}`}>${shown.title}</a>` : item.recipe}
      </h3>
      ${shown.order === '' ? nothing : html`<p class="quiet">Baths, as the recipe says: ${shown.order}.</p>`}
      <p class="paper">${onPaper(shown, item, view.fibres)}</p>
      <div class="item screen">
        <div class="field">
          <label for=${id('on')}>Fibre</label>
          <select id=${id('on')} @change=${(event: Event) => this.#set(at, { fibre: textOf(event) })}>
            <option value="">As the recipe says</option>
            ${options(view.fibres, item.fibre ?? '')}
          </select>
        </div>
        <div class="field">
          <label for=${id('grams')}>Grams, air-dry</label>
          <input
            id=${id('grams')}
            type="number"
            min="0.1"
            max="100000"
            step="0.1"
            .value=${Number.isFinite(item.fibreGrams) ? String(item.fibreGrams) : ''}
            @change=${(event: Event) => this.#set(at, { fibreGrams: Number(textOf(event)) })}
          />
        </div>
        <div class="field">
          <label for=${id('skeins')}>Skeins</label>
          <input
            id=${id('skeins')}
            type="number"
            min="1"
            max=${MOST_SKEINS}
            .value=${String(item.skeins)}
            @change=${(event: Event) => this.#set(at, { skeins: Math.max(1, Math.min(MOST_SKEINS, Math.round(Number(textOf(event))))) })}
          />
        </div>
        ${
          shown.mayFinish.length === 0
            ? nothing
            : html`<div class="field">
                <label for=${id('rest')}>In the rest of</label>
                <select id=${id('rest')} @change=${(event: Event) => this.#set(at, { exhaustOf: numberOf(event) })}>
                  <option value="">a bath of its own</option>
                  ${shown.mayFinish.map((one) => html`<option value=${one} ?selected=${item.exhaustOf === one}>the bath of ${one + 1}</option>`)}
                </select>
              </div>`
        }
        ${
          item.exhaustOf === undefined
            ? nothing
            : html`<div class="field">
                <label for=${id('taken')}>Taken up, %</label>
                <input
                  id=${id('taken')}
                  type="number"
                  min="0"
                  max="100"
                  placeholder="not known"
                  .value=${item.uptake ? String(item.uptake.from * 100) : ''}
                  @change=${(event: Event) => this.#set(at, { uptake: shareOf(event) })}
                />
              </div>`
        }
        <button class="screen" type="button" @click=${() => this.#send({ items: withoutItem(this.day.items, at) })}>
          Leave ${at + 1} out
        </button>
      </div>
      ${
        shown.percents.length === 0
          ? nothing
          : html`<div class="open screen">
              ${shown.percents.map(
                ({ what, title, asWritten, chosen }) =>
                  html`<div class="field">
                    <label for=${id(what)}>${title}, % of fibre</label>
                    <input
                      id=${id(what)}
                      type="number"
                      min="0.01"
                      step="0.01"
                      placeholder=${asWritten}
                      .value=${chosen === undefined ? '' : String(chosen)}
                      @change=${(event: Event) => this.#percent(at, what, Number(textOf(event)))}
                    />
                  </div>`,
              )}
            </div>`
      }
      ${shown.problems.map((text) => html`<p class="problem">${text}</p>`)}`;
  }

  #planned(view: DyeDayView) {
    return html`
      <section part="baths" aria-labelledby="order">
        <h2 id="order">Order of baths, and what is weighed for each</h2>
        <p>${NEVER_SCALES}</p>
        <p class="quiet">${SCALE_CAUTION}</p>
        <ol class="baths">
          ${view.baths.map((bath) => html`<li>${this.#bath(bath)}</li>`)}
        </ol>
        ${view.largestPot === '' ? nothing : html`<p>The largest bath is worked ${view.largestPot}.</p>`}
      </section>
      <section part="timeline" aria-labelledby="times">
        <h2 id="times">How long it takes</h2>
        <ol class="times">
          ${view.timeline.map(
            ({ bath, title, isAhead, clock, from, to }) =>
              html`<li>
                <span>${bath}. ${title}${isAhead ? ', days ahead' : ''}</span>
                <span class="track" aria-hidden="true"><span style=${styleMap({ '--_from': `${from}`, '--_to': `${to}` })}></span></span>
                <span class="clock">${clock}</span>
              </li>`,
          )}
        </ol>
        <p class="quiet">${TIMELINE_SAYS}</p>
      </section>
      <section part="shopping" aria-labelledby="shop">
        <h2 id="shop">To have ready</h2>
        <ul class="shop">
          ${view.fibresNeeded.map((text) => html`<li><span class="box" aria-hidden="true"></span><span>Fibre, scoured and weighed dry</span><span class="amount">${text}</span></li>`)}
          ${view.shopping.map(
            ({ what, amount, isEveryday }) =>
              html`<li>
                <span class="box" aria-hidden="true"></span
                ><span>${what}${isEveryday ? html` <span class="quiet">everyday</span>` : nothing}</span
                ><span class="amount">${amount}</span>
              </li>`,
          )}
        </ul>
      </section>
      ${this.#gathering(view)}
      <section part="care" class="carelist" aria-labelledby="care">
        <h2 id="care">Care</h2>
        <div>
          ${view.care.map(
            ({ about, texts }) =>
              html`<h4>${about}</h4>
                <ul>
                  ${texts.map((text) => html`<li>${text}</li>`)}
                </ul>`,
          )}
        </div>
      </section>
    `;
  }

  #bath(bath: BathView) {
    return html`<span class="nth" aria-hidden="true">${bath.nth}</span>
      <div>
        <h3><span class="visually-hidden">Bath ${bath.nth}. </span>${bath.title}</h3>
        <p class="quiet">
          ${[
            bath.isAhead ? 'may be done days ahead' : '',
            bath.after.length === 0 ? '' : `after bath ${bath.after.join(' and ')}`,
            bath.time === '' ? '' : `stated time ${bath.time}`,
            bath.wait === '' ? '' : `and a wait of ${bath.wait}`,
          ]
            .filter((part) => part !== '')
            .join(' · ')}
        </p>
        <p>${bath.isShared ? 'One bath for all: ' : ''}${bath.fibre}. ${bath.pot === '' ? nothing : `${capital(bath.pot)}.`}</p>
        ${bath.left === '' ? nothing : html`<p>${bath.left}</p>`}
        <div class="two">
          <ul class="weights" aria-label=${`Weighed for bath ${bath.nth}`}>
            ${bath.weights.map(
              ({ amount, what, form, problem }) =>
                html`<li>
                  <span class="box" aria-hidden="true"></span><span class="amount">${amount === '' ? '—' : amount}</span>
                  <span
                    >${what}${form === '' ? nothing : `, ${form}`}${problem === '' ? nothing : html`<br /><strong>${problem}</strong>`}</span
                  >
                </li>`,
            )}
          </ul>
          <ol aria-label=${`What is done in bath ${bath.nth}`}>
            ${bath.steps.map(
              ({ text, cautions }) =>
                html`<li class="step">${text} ${cautions.map((caution) => html`<p class="care">${caution}</p>`)}</li>`,
            )}
          </ol>
        </div>
      </div>`;
  }

  #gathering(view: DyeDayView) {
    if (view.plants.length + view.notGathered.length === 0) return nothing;
    return html`<section part="gathering" aria-labelledby="gather">
      <h2 id="gather">Gathering, month by month</h2>
      <p class="quiet">
        Months are those of the notes, for lowland north-west Europe as a rule; seasons move by weeks. The landowner’s leave first;
        protected kinds and sites are off limits.
      </p>
      ${
        view.months.length === 0
          ? nothing
          : html`<ul class="months">
              ${view.months.map(
                ({ month, gather }) =>
                  html`<li>
                    <h3>${month}</h3>
                    <ul>
                      ${gather.map(({ title, part }) => html`<li>${title}${part === '' ? nothing : html` <span class="quiet">${part}</span>`}</li>`)}
                    </ul>
                  </li>`,
              )}
            </ul>`
      }
      <ul class="plants">
        ${view.plants.map((one) => html`<li>${this.#plant(one)}</li>`)} ${view.notGathered.map((text) => html`<li><p>${text}</p></li>`)}
      </ul>
    </section>`;
  }

  #plant({ id, title, latin, part, growth, months, needed, fresh, rules, note }: GatherView) {
    return html`<p>
        <a href=${`#/dyestuffs/${encodeURIComponent(id)}`}>${title}</a>,
        ${latin.map((name, at) => html`${at === 0 ? nothing : ', '}<em lang="la">${name}</em>`)}${part === '' ? nothing : `: ${part}`}${growth === '' ? nothing : `, ${growth} year of growth`};
        ${months === '' ? 'no month in the notes' : months}${needed === '' ? nothing : html`. <strong>${needed}</strong> asked for`}.
      </p>
      ${fresh.map((text) => html`<p class="quiet">${capital(text)}.</p>`)}
      <p class="quiet">${[note, ...rules].filter((text) => text !== '').join(' ')}</p>`;
  }

  #send(change: Partial<TypedDyeDay>) {
    this.dispatchEvent(new DyeDayChangeEvent({ ...this.day, ...change }));
  }

  #set(at: number, change: { readonly [Key in keyof TypedItem]?: TypedItem[Key] | undefined }) {
    const items = this.day.items.map((item, nth) => (nth === at ? without({ ...item, ...change }) : item));
    this.#send({ items });
  }

  #percent(at: number, what: string, value: number) {
    const { [what]: _, ...rest } = this.day.items[at]?.percent ?? {};
    const percent = value > 0 ? { ...rest, [what]: value } : rest;
    this.#set(at, { percent: Object.keys(percent).length === 0 ? undefined : percent });
  }

  #add(event: Event) {
    const recipe = textOf(event);
    if (recipe === '') return;
    if (event.target instanceof HTMLSelectElement) event.target.value = '';
    this.#send({ items: [...this.day.items, { recipe, fibreGrams: ONE_SKEIN_GRAMS, skeins: 1 }] });
  }

  #begin(event: Event) {
    const begins = textOf(event);
    if (begins !== '') this.#send({ begins });
  }

  #staffed(event: Event) {
    if (event.target instanceof HTMLInputElement) this.#send({ staff: event.target.checked });
  }
}

const options = (choices: readonly NamedChoice[], chosen: string) =>
  choices.map(({ id, title }) => html`<option value=${id} ?selected=${id === chosen}>${title}</option>`);

const textOf = (event: Event): string =>
  event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement ? event.target.value : '';
const numberOf = (event: Event): number | undefined => (textOf(event) === '' ? undefined : Number(textOf(event)));

/** Per cent as a share of 0–1. */
function shareOf(event: Event): TypedItem['uptake'] {
  const percent = numberOf(event);
  return percent === undefined || !(percent >= 0 && percent <= 100) ? undefined : { from: percent / 100, to: percent / 100 };
}

/** The item without what was set to nothing. */
const without = (item: { readonly [Key in keyof TypedItem]?: TypedItem[Key] | undefined }): TypedItem =>
  Object.fromEntries(Object.entries(item).filter(([, value]) => value !== undefined && value !== '')) as unknown as TypedItem;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What is asked for one dyeing, in words: fields are no use on paper. */
const onPaper = ({ percents }: DayItemView, { fibreGrams, fibre, skeins, exhaustOf }: TypedItem, fibres: readonly NamedChoice[]): string =>
  [
    Number.isFinite(fibreGrams) ? `${fibreGrams} g, air-dry` : '',
    fibres.find(({ id }) => id === fibre)?.title ?? '',
    counted(skeins, 'skein'),
    exhaustOf === undefined ? '' : `in the rest of the bath of ${exhaustOf + 1}`,
    ...percents.map(({ title, asWritten, chosen }) => `${title} ${chosen === undefined ? asWritten : `${chosen} %`} of fibre`),
  ]
    .filter((part) => part !== '')
    .join(' · ');

declare global {
  interface HTMLElementTagNameMap {
    'tg-dye-day': TgDyeDay;
  }
}
