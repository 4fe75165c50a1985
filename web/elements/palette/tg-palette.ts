import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { addressOf, settingsOfCompared } from '../../notebook/address.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { AnswerView } from '../../notebook/views/answer-view.ts';
import type { ChoicesView } from '../../notebook/views/choices-view.ts';
import type { TypedPalette } from '../../notebook/typed-palette.ts';
import { lookAddress } from '../../notebook/looking-address.ts';
import type { PaletteCloth, PaletteOrProblems, PaletteView } from '../../notebook/views/palette-view.ts';
import '../answer/tg-answer.ts';
import { problemSentence, threadYear, YEARS } from '../ask/question-view.ts';
import '../cloth-line/tg-cloth-line.ts';
import type { ClothPickEvent } from '../shared/events.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { fewWords, listWord, typedWord } from '../shared/sentence-words.ts';
import { sentenceStyles } from '../shared/sentence.styles.ts';
import { viewLinkStyles } from '../shared/view-link.styles.ts';
import { yearThreadStyles } from '../shared/year-thread.styles.ts';
import { PaletteChangeEvent } from './palette-change-event.ts';
import { sentenceOf } from '../shared/sentence-of.ts';
import { clothItem, GROUPING_WORDS, ORDER_WORDS } from './palette-element-view.ts';
import './tg-palette-files.ts';
import { styles } from './tg-palette.styles.ts';

/**
 * @summary The colours of a place and date as cloth on a line; a dragged year changes them, and words say what came and went.
 * @event {PaletteChangeEvent} tg-palette-change - The reader asks for another palette.
 * @csspart line - The line of cloths.
 * @csspart changes - What came and went.
 * @csspart taken - The cloth taken down, with everything behind it.
 */
@customElement('tg-palette')
export class TgPalette extends LitElement {
  static override styles = [sentenceStyles, yearThreadStyles, viewLinkStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The palette asked for; an address holds it. */
  @property({ attribute: false }) palette: TypedPalette = { region: '', when: '' };
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private choices?: ChoicesView;
  @state() private kept: readonly { readonly id: string; readonly title: string }[] = [];
  @state() private result?: PaletteOrProblems;
  @state() private shown?: PaletteView;
  @state() private taken?: string;
  @state() private behind?: AnswerView;
  /** The cloth to lay beside the one taken down; the first other one until it is chosen. */
  @state() private besideId = '';
  /** The predicted over-dye that was picked. */
  @state() private foretold?: string;

  readonly #finding = new LatestTask<PaletteOrProblems>((result) => {
    this.result = result;
    if ('palette' in result) this.shown = result.palette;
  });
  readonly #listing = new LatestTask<readonly { readonly id: string; readonly title: string }[]>((kept) => (this.kept = kept));
  readonly #choosing = new LatestTask<ChoicesView>((choices) => (this.choices = choices));
  readonly #opening = new LatestTask<AnswerView | undefined>((behind) => (this.behind = behind));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    const anew = changed.has('engine') || changed.has('version');
    if (anew) {
      this.#choosing.run(this.engine.choices());
      this.#listing.run(this.engine.keptPalettes());
    }
    if (anew || changed.has('palette')) this.#finding.run(this.engine.palette(this.palette));
    if ((anew || changed.has('palette')) && this.taken !== undefined) this.#opening.run(this.engine.behindCloth(this.palette, this.taken));
  }

  override render() {
    const problems = this.result && 'problems' in this.result ? this.result.problems : [];
    return html`
      <h1>${this.#sentence()}</h1>
      ${this.#yearThread()} ${problems.map((problem) => html`<p class="problem" role="alert">${problemSentence(problem)}</p>`)}
      ${this.shown ? this.#line(this.shown) : html`<p role="status">Judging every colour.</p>`}
    `;
  }

  #sentence() {
    const { palette, choices } = this;
    const shown = { usual: 'what the notes stand behind', all: 'what is plausible or disputed, too' } as const;
    return html`<span class="sentence">
      The colours of ${listWord('Place', palette.region, choices?.regions, (region) => this.#change({ region: region ?? '' }))} about
      ${typedWord('Date', palette.when, (when) => this.#change({ when }))} on
      ${listWord('Fibre', palette.fibre, choices?.fibres, (fibre) => this.#change({ fibre }), 'any fibre')} for
      <span class="held">${listWord('Wearer', palette.wearer, choices?.wearers, (wearer) => this.#change({ wearer }), 'anyone')},</span>
      hung ${fewWords('Order', palette.sort ?? 'hue', ORDER_WORDS, (sort) => this.#change({ sort }))} with gaps
      <span class="held">${fewWords('Gaps', palette.group ?? 'family', GROUPING_WORDS, (group) => this.#change({ group }))},</span> showing
      <span class="held"
        >${fewWords('Shown', palette.all === true ? 'all' : 'usual', shown, (which) => this.#change({ all: which === 'all' }))}.</span
      >
    </span>`;
  }

  #yearThread() {
    return html`<div class="year">
      <label for="year">Year</label>
      <input
        id="year"
        type="range"
        min=${YEARS.from}
        max=${YEARS.to}
        .value=${String(threadYear(this.palette.when))}
        aria-valuetext=${this.palette.when}
        @input=${(event: Event) => this.#drag(event, false)}
        @change=${(event: Event) => this.#drag(event, true)}
      />
      <span>${this.shown?.reading ?? ''}</span>
    </div>`;
  }

  #line(view: PaletteView) {
    return html`
      <div class="line" part="line">
        <tg-cloth-line
          label=${`Colours of ${view.place}`}
          .items=${view.cloths.map(clothItem)}
          .taken=${this.taken}
          @tg-cloth-pick=${this.#take}
        >
          <p slot="empty">Nothing hangs here: the notes stand behind no colour for this place and date.</p>
        </tg-cloth-line>
        <tg-palette-files .palette=${view}></tg-palette-files>
      </div>
      ${this.taken === undefined ? nothing : this.#taken(view)} ${this.#tried(view)}
      <div class="below">
        <section part="changes" class=${view.since ? '' : 'screen'} aria-live="polite">
          <h2>${view.since ? `Since ${view.since.date}` : 'What came and went'}</h2>
          ${this.#changes(view)}
        </section>
        <section>
          <h2>On the line, and not</h2>
          <p>${view.cloths.length} ${view.cloths.length === 1 ? 'colour hangs' : 'colours hang'} here. ${view.gaps}</p>
          ${
            view.hidden.length === 0
              ? nothing
              : html`<p class="quiet">Not shown: ${view.hidden.map(({ word, count }) => `${count} ${word.toLowerCase()}`).join(', ')}.</p>`
          }
          ${this.#kept()}
        </section>
      </div>
    `;
  }

  #tried(view: PaletteView) {
    if (this.palette.tryOverDyes !== true) {
      return html`<p>
        <button type="button" @click=${() => this.#change({ tryOverDyes: true })}>Hang what could be tried: predicted over-dyes</button>
      </p>`;
    }
    return html`<section class="line">
      <h2>Could be tried</h2>
      <p class="quiet">
        Predicted from trials of the single dyes by Kubelka–Munk, either bath first; nobody dyed these yet, so plausible is the best they
        can be. ${sentenceOf(this.shown?.spread)}
      </p>
      ${this.#foretold(view)}
      <tg-cloth-line
        label="Predicted over-dyes"
        .items=${view.couldBeTried.map(clothItem)}
        .taken=${this.foretold}
        @tg-cloth-pick=${this.#foretell}
      >
        <p slot="empty">No two trials of this notebook foretell another plausible colour here.</p>
      </tg-cloth-line>
      <p><button type="button" @click=${() => this.#change({ tryOverDyes: false })}>Take them off</button></p>
    </section>`;
  }

  /** A predicted over-dye, with the two recipes it is foretold from. */
  #foretold({ couldBeTried, spread }: PaletteView) {
    const cloth = couldBeTried.find(({ id }) => id === this.foretold);
    if (!cloth?.overDye) return nothing;
    const { recipes, orders } = cloth.overDye;
    return html`<div class="foretold" id="foretold" tabindex="-1">
      <h3>${cloth.title}</h3>
      <p>${orders}</p>
      <p>
        ${recipes.map(({ id, title }, at) => html`${at === 0 ? 'From ' : ' and '}<a href=${`#/recipes/${id}`}>${title}</a>`)}.
        ${cloth.verdictWord}, ${cloth.lch}, predicted, ${spread}.
        <a href=${lookAddress([...recipes.map(({ id }) => `${id}|${cloth.id.split('|')[1] ?? ''}`), cloth.id])}
          >Lay it beside the single dyes</a
        >
      </p>
    </div>`;
  }

  #kept() {
    if (this.kept.length === 0) return nothing;
    return html`<nav class="screen" aria-labelledby="kept">
      <p class="quiet" id="kept">Palettes kept</p>
      <ul>
        ${this.kept.map(({ id, title }) => html`<li><a href=${`#/palette/${id}`}>${title}</a></li>`)}
      </ul>
    </nav>`;
  }

  #changes(view: PaletteView) {
    if (!view.since) {
      return html`<p>Keep this date, then drag the year: what came, what went and what changed is said here.</p>
        <button type="button" @click=${() => this.#change({ since: this.palette.when })}>Compare from ${this.palette.when}</button>
        ${this.#comparisons()}`;
    }
    const { changes } = view.since;
    return html`${
        changes.length === 0
          ? html`<p>Nothing changed between the two dates.</p>`
          : html`<ul>
              ${changes.map((sentence) => html`<li>${sentence}</li>`)}
            </ul>`
      }
      <p><button type="button" @click=${() => this.#change({ since: undefined })}>Stop comparing</button></p>`;
  }

  /** The ways to a comparison of its own page. */
  #comparisons() {
    const { region, when, wearer } = this.palette;
    const now = { region, when, ...(wearer === undefined ? {} : { wearer }) };
    const to = (withOther: boolean) => addressOf({ view: 'palette', settings: settingsOfCompared({ before: now, now, withOther }) });
    return html`<p class="quiet">
      Or lay two lines above each other: <a href=${to(false)}>another place, date or wearer</a> ·
      <a href=${to(true)}>another notebook</a>
    </p>`;
  }

  #taken(view: PaletteView) {
    const cloth = view.cloths.find(({ id }) => id === this.taken);
    return html`<section class="taken" part="taken" id="taken" tabindex="-1" aria-label="Taken down">
      <header>
        <div>
          <h2>${cloth?.title ?? 'No longer on the line'}</h2>
          ${cloth ? html`<p class="quiet">${[cloth.fibre, cloth.dyes, cloth.origin, cloth.lch].filter((part) => part !== '').join(' · ')}</p>` : nothing}
          ${cloth?.recipe === undefined ? nothing : html`<a href=${`#/notebook/${cloth.recipe}`}>The recipe</a>`}
          ${cloth ? this.#beside(cloth, view) : nothing}
        </div>
        <button type="button" @click=${this.#hangUp}>Hang it up again</button>
      </header>
      ${this.behind ? html`<tg-answer .answer=${this.behind} .clothsTitle=${'Its samples, and how far each lies from their mean'}></tg-answer>` : html`<p role="status">Looking behind it.</p>`}
    </section>`;
  }

  /** Ways to look at a cloth taken down: alone, or beside another of the line. */
  #beside({ id }: PaletteCloth, { cloths }: PaletteView) {
    const others = cloths.filter((one) => one.id !== id);
    const second = others.find((one) => one.id === this.besideId) ?? others[0];
    return html`<p><a href=${lookAddress([id])}>Look at it closely</a></p>
      ${
        second === undefined
          ? nothing
          : html`<p class="beside">
              <label
                >Beside
                <select @change=${(event: Event) => (this.besideId = (event.target as HTMLSelectElement).value)}>
                  ${others.map(({ id: other, title, fibre }) => html`<option value=${other} ?selected=${other === second.id}>${title}${fibre === '' ? '' : `, ${fibre.toLowerCase()}`}</option>`)}
                </select>
              </label>
              <a href=${lookAddress([id, second.id])}>Lay the two side by side</a>
            </p>`
      }`;
  }

  #take(event: ClothPickEvent) {
    this.taken = event.detail.id;
    this.behind = undefined;
    if (this.engine) this.#opening.run(this.engine.behindCloth(this.palette, this.taken));
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('#taken')?.focus());
  }

  #foretell({ detail: { id } }: ClothPickEvent) {
    this.foretold = id;
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('#foretold')?.focus());
  }

  #hangUp() {
    this.taken = undefined;
    this.behind = undefined;
    void this.updateComplete.then(() => this.renderRoot.querySelector('tg-cloth-line')?.focus());
  }

  #drag(event: Event, settled: boolean) {
    this.#change({ when: (event.target as HTMLInputElement).value }, settled);
  }

  #change(change: Partial<TypedPalette>, settled = true) {
    this.dispatchEvent(new PaletteChangeEvent({ ...this.palette, ...change }, settled));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-palette': TgPalette;
  }
}
