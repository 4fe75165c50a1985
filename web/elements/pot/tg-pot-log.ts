import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { minutesLeft, type Moment, type PotTimer } from '../../domain/pot/pot-log.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { NotebookFile } from '../../notebook/notebook.ts';
import type { PotEntry } from '../../notebook/pot-entry.ts';
import type { LogLineView, PotView, ToWeigh } from '../../notebook/views/pot-view.ts';
import { entryProblemWords, handedOnWords, POT_BUTTONS } from '../../notebook/words/pot-log-words.ts';
import { NEVER_SCALES } from '../../notebook/words/dye-day-words.ts';
import { storeFailureWords } from '../../notebook/words/save-words.ts';
import { AttachmentAddresses } from '../note/attachment-addresses.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { KeepAwake } from '../shared/keep-awake.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { thisMoment } from '../shared/this-moment.ts';
import { saveFile } from '../take-out/save-file.ts';
import { fieldStyles } from '../write/field.styles.ts';
import { CaptureSaveRequestEvent } from '../write/write-events.ts';
import { PotFileRequestEvent } from './pot-events.ts';
import { potStyles } from './pot.styles.ts';

/** Another tab may write the same note in the same breath; its word is with us soon after. */
const TRIES = 5;
const PAUSE_MS = 200;

/**
 * @summary The log of one pot, filled at the pot on a phone: large buttons, timers, every entry saved at once.
 * @event {CaptureSaveRequestEvent} tg-capture-save-request - The trial's note with one more entry, and its photo, are to be kept.
 * @event {PotFileRequestEvent} tg-pot-file-request - The log is to leave this machine as one file.
 * @csspart buttons - What can be logged with one touch.
 * @csspart log - What was logged.
 */
@customElement('tg-pot-log')
export class TgPotLog extends LitElement {
  static override styles = [baseStyles, fieldStyles, potStyles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Id of the trial. */
  @property() pot = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private view?: PotView | 'none';
  @state() private status = '';
  @state() private fault = '';
  /** What the colours that are typed as numbers were found with. */
  @state() private colourBy: 'instrument' | 'eye' = 'instrument';
  /** When it happened, where that is not now. */
  @state() private earlier?: Moment;
  @state() private now: Moment & { readonly seconds: number } = { ...thisMoment(), seconds: 0 };

  readonly #opening = new LatestTask<PotView | undefined>((view) => (this.view = view ?? 'none'));
  readonly #pictures = new AttachmentAddresses(this, (path) => this.engine?.attachment(path) ?? Promise.resolve(undefined));
  readonly #awake = new KeepAwake(this);
  /** One entry after another: each is written on top of the one before. */
  #writing: Promise<void> = Promise.resolve();
  #ticking: ReturnType<typeof setInterval> | undefined;
  readonly #rung = new Set<string>();

  override connectedCallback() {
    super.connectedCallback();
    this.#awake.want(true);
    this.#ticking = setInterval(() => this.#tick(), 1000);
  }

  override disconnectedCallback() {
    super.disconnectedCallback();
    clearInterval(this.#ticking);
  }

  override willUpdate(changed: PropertyValues<this>) {
    if (this.engine && (['engine', 'pot', 'version'] as const).some((name) => changed.has(name)))
      this.#opening.run(this.engine.pot(this.pot));
  }

  override render() {
    const { view } = this;
    if (view === undefined) return html`<p role="status">Opening the pot.</p>`;
    if (view === 'none') return html`<p role="alert">No trial of this notebook is called “${this.pot}”. <a href="#/pot">The pot</a></p>`;
    return html`
      <p class="quiet screen">
        <a href="#/pot">The pot</a> ·
        <a href=${`#/notebook/${encodeURIComponent(view.id)}`}>The note itself</a>
        ${view.recipe === '' ? nothing : html` · <a href=${`#/recipes/${encodeURIComponent(view.recipe)}`}>${view.recipeTitle}</a>`}
      </p>
      <h1>${view.title}</h1>
      <p class="codes">
        ${view.skeins.map(({ code }) => html`<a class="code" href=${`#/samples/${encodeURIComponent(code)}`}>${code}</a>`)}
      </p>
      ${view.planned === '' ? nothing : html`<p>${view.planned}</p>`}
      <p class="status screen" role="status">
        ${this.status === '' ? 'Every entry is saved in this browser at once.' : this.status}
        ${this.#awake.isAwake ? 'The screen stays on.' : 'The screen may go dark.'}
      </p>
      ${this.fault === '' ? nothing : html`<p class="problem" role="alert">${this.fault}</p>`}
      ${view.timers.map((timer) => this.#timer(timer))}
      <div class="screen">
        ${this.#when()}
        <div class="big" part="buttons">
          ${(['in', 'dip', 'out', 'heat-off'] as const).map((is) => html`<button type="button" @click=${() => this.#log({ is })}>${POT_BUTTONS[is]}</button>`)}
          <div class="photo">
            <label for="photo">${POT_BUTTONS.photo}</label>
            <input class="visually-hidden" id="photo" type="file" accept="image/*" capture="environment" @change=${this.#photographed} />
          </div>
        </div>
        ${this.#forms()}
      </div>
      ${this.#weighing(view.toWeigh)}
      <h2>Log</h2>
      ${view.log.length === 0 ? html`<p>Nothing yet.</p>` : nothing}
      <ol class="log" part="log">
        ${view.log.toReversed().map((line) => html`<li>${this.#line(line)}</li>`)}
      </ol>
      ${this.#dry(view)}
      <details class="screen">
        <summary>What the recipe says, and care</summary>
        <p>${NEVER_SCALES}</p>
        <ol class="lines">
          ${view.steps.map(
            ({ text, cautions }) => html`<li>${text} ${cautions.map((caution) => html`<p class="care">${caution}</p>`)}</li>`,
          )}
        </ol>
        ${view.care.map((caution) => html`<p class="care">${caution}</p>`)}
      </details>
      <p class="screen">
        <button type="button" @click=${this.#handOn}>Hand this log on as one file</button>
      </p>
      <p class="quiet screen">
        It goes by the phone’s own way of sharing, or into its downloads. Another machine takes it in under Pot, “Bring a log in”.
      </p>
    `;
  }

  #when() {
    const { earlier } = this;
    return html`<details ?open=${earlier !== undefined}>
      <summary>${earlier ? `Logged as of ${earlier.day} ${earlier.clock}` : 'It happens now; it happened earlier'}</summary>
      <div class="asked">
        <div class="field">
          <label for="day">Day</label>
          <input id="day" type="date" .value=${(earlier ?? this.now).day} @change=${this.#timed} />
        </div>
        <div class="field">
          <label for="clock">Time</label>
          <input id="clock" type="time" .value=${(earlier ?? this.now).clock} @change=${this.#timed} />
        </div>
        <button type="button" ?disabled=${!earlier} @click=${() => (this.earlier = undefined)}>Back to now</button>
      </div>
      <p class="hint">An entry that is written down later says so in the log.</p>
    </details>`;
  }

  #forms() {
    return html`
      <form class="entry" @submit=${(event: Event) => this.#number(event, (celsius) => ({ is: 'temperature', celsius }))}>
        <div class="field">
          <label for="celsius">${POT_BUTTONS.temperature}, °C</label
          ><input id="celsius" name="value" inputmode="decimal" autocomplete="off" />
        </div>
        <button type="submit">Note the heat</button>
      </form>
      <form class="entry" @submit=${(event: Event) => this.#number(event, (pH) => ({ is: 'pH', pH }))}>
        <div class="field">
          <label for="ph">${POT_BUTTONS.pH}</label><input id="ph" name="value" inputmode="decimal" autocomplete="off" />
        </div>
        <button type="submit">Note the pH</button>
      </form>
      <form class="entry" @submit=${(event: Event) => this.#number(event, (minutes, what) => ({ is: 'timer', minutes, what }))}>
        <div class="pairof">
          <div class="field">
            <label for="minutes">${POT_BUTTONS.timer}, min</label><input id="minutes" name="value" inputmode="numeric" autocomplete="off" />
          </div>
          <div class="field"><label for="what">for</label><input id="what" name="words" autocomplete="off" /></div>
        </div>
        <button type="submit">Start the timer</button>
      </form>
      ${(['remark', 'deviation'] as const).map(
        (is) =>
          html`<form class="entry" @submit=${(event: Event) => this.#words(event, (text) => ({ is, text }))}>
            <div class="field">
              <label for=${is}>${is === 'remark' ? POT_BUTTONS.remark : 'Deviation: what was done otherwise than the recipe says'}</label
              ><input id=${is} name="words" autocomplete="off" />
            </div>
            <button type="submit">Note it</button>
          </form>`,
      )}
    `;
  }

  #timer(timer: PotTimer) {
    const left = Math.round(minutesLeft(timer, this.now) * 60) - this.now.seconds;
    // A timer that ended long ago is history: it stands in the log.
    if (left < -3600) return nothing;
    const two = (value: number) => String(value).padStart(2, '0');
    const clock = `${Math.floor(Math.max(0, left) / 60)}:${two(Math.max(0, left) % 60)}`;
    return html`<div class=${left <= 0 ? 'timer ended' : 'timer'} role=${left <= 0 ? 'alert' : 'timer'}>
      <strong>${clock}</strong
      ><span>${timer.what === '' ? 'Timer' : timer.what}: ${timer.minutes} min from ${timer.at.clock}${left <= 0 ? ', ended' : ''}</span>
    </div>`;
  }

  #weighing(toWeigh: readonly ToWeigh[]) {
    if (toWeigh.length === 0) return nothing;
    return html`<h2>Weighed</h2>
      <ul class="lines">
        ${toWeigh.map(
          ({ nth, what, planned, weighed, problem }) =>
            html`<li>
              ${what}${planned === '' ? nothing : html`, <span class="code">${planned}</span> by the recipe`}${
                weighed === '' ? nothing : html`; weighed: <strong>${weighed}</strong> of the fibre`
              }
              ${problem === '' ? nothing : html`<p class="problem">${problem}</p>`}
              <form class="entry screen" @submit=${(event: Event) => this.#number(event, (grams) => ({ is: 'weighed', nth, grams }))}>
                <div class="field">
                  <label for=${`weighed-${nth}`}>${what}: the scale shows, g</label
                  ><input id=${`weighed-${nth}`} name="value" inputmode="decimal" autocomplete="off" />
                </div>
                <button type="submit">Note the weight</button>
              </form>
            </li>`,
        )}
      </ul>`;
  }

  /** Colours come days later, when the skeins are dry. */
  #dry(view: PotView) {
    if (view.skeins.length === 0) return nothing;
    return html`<details class="screen">
      <summary>When it is dry: the colour of each skein</summary>
      <p class="hint">
        Three numbers are L* a* b* under D65 and 10°, found with an instrument or matched by eye: say which. A value such as #a3423b is a
        colour chosen by eye. The note says how each was found.
      </p>
      <div class="field">
        <label for="found-with">Three numbers were found</label>
        <select
          id="found-with"
          @change=${(event: Event) => (this.colourBy = (event.target as HTMLSelectElement).value === 'eye' ? 'eye' : 'instrument')}
        >
          <option value="instrument" ?selected=${this.colourBy === 'instrument'}>with an instrument</option>
          <option value="eye" ?selected=${this.colourBy === 'eye'}>by eye</option>
        </select>
      </div>
      ${view.skeins.map(
        ({ code, nth, hex }) =>
          html`<form
            class="entry"
            @submit=${(event: Event) => this.#words(event, (typed) => ({ is: 'colour', nth, typed, by: this.colourBy }))}
          >
            <div class="field">
              <label for=${`colour-${nth}`}
                >${hex === undefined ? nothing : html`<span class="dab" style=${`--_dab:${hex}`} aria-hidden="true"></span>`}${code}</label
              ><input id=${`colour-${nth}`} name="words" autocomplete="off" />
            </div>
            <button type="submit">${hex === undefined ? 'Note the colour' : 'Note it anew'}</button>
          </form>`,
      )}
    </details>`;
  }

  #line({ when, words, late, photo }: LogLineView) {
    const address = photo === '' ? undefined : this.#pictures.of(photo);
    return html`<span class="when">${when}</span>
      <div>
        ${words} ${late === '' ? nothing : html`<span class="quiet">${late}</span>`}
        ${address === undefined ? nothing : html`<img src=${address} alt="At the pot, ${when}" />`}
      </div>`;
  }

  #number(event: Event, entry: (value: number, words: string) => PotEntry) {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    const data = new FormData(form);
    const typed = textIn(data, 'value').replace(',', '.');
    const value = typed === '' ? NaN : Number(typed);
    if (Number.isNaN(value)) this.fault = 'Type a number first.';
    else void this.#log(entry(value, textIn(data, 'words')), [], form);
  }

  #words(event: Event, entry: (words: string) => PotEntry) {
    event.preventDefault();
    const form = event.target as HTMLFormElement;
    void this.#log(entry(textIn(new FormData(form), 'words')), [], form);
  }

  async #photographed(event: Event) {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (!file) return;
    const { day, clock } = thisMoment();
    const ending = /\.(?:jpe?g|png|webp|avif|heic|gif)$/i.exec(file.name)?.[0].toLowerCase() ?? '.jpg';
    const seconds = String(new Date().getSeconds()).padStart(2, '0');
    const path = `photos/${this.pot}-${day.replaceAll('-', '')}-${clock.replace(':', '')}${seconds}${ending}`;
    const bytes = new Uint8Array(await file.arrayBuffer());
    await this.#log({ is: 'photo', path }, [{ path, bytes }]);
    // Else the same photo, taken again, would be no change.
    input.value = '';
  }

  /** Logs an entry once those before it are written; a form is emptied only when what it held is saved. */
  #log(entry: PotEntry, photos: readonly NotebookFile[] = [], form?: HTMLFormElement): Promise<void> {
    const now = thisMoment();
    const at = this.earlier ?? now;
    this.#writing = this.#writing.then(async () => {
      this.fault = '';
      const kept = await this.#keep(entry, at, now, photos);
      if (kept === true) {
        form?.reset();
        this.status = `Saved ${thisMoment().clock}.`;
      } else this.fault = kept;
    });
    return this.#writing;
  }

  async #keep(entry: PotEntry, at: Moment, now: Moment, photos: readonly NotebookFile[]): Promise<true | string> {
    for (let turn = 1; turn <= TRIES; turn += 1) {
      const made = await this.engine?.potEntry(this.pot, entry, at, now);
      if (!made) return 'The pot’s note is gone.';
      if (made.is === 'problem') return entryProblemWords[made.problem];
      const request = new CaptureSaveRequestEvent({ path: made.path, text: made.text, basedOn: made.before }, photos);
      this.dispatchEvent(request);
      const outcome = await request.answer;
      if (outcome?.is === 'saved') return true;
      if (outcome?.is === 'failed') return storeFailureWords[outcome.why];
      if (outcome?.is !== 'conflict') break;
      await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
    }
    return 'Not saved. What you typed still stands here; try once more.';
  }

  readonly #handOn = async () => {
    const request = new PotFileRequestEvent(this.pot);
    this.dispatchEvent(request);
    const taken = await request.answer;
    if (!taken?.ok) {
      this.fault = 'The log could not be packed. It is still saved here; try once more.';
      return;
    }
    const { name, file, plain } = taken.value;
    const offers = [{ name, file }, ...(plain ? [plain] : [])].map((one) => new File([one.file], one.name, { type: one.file.type }));
    const offered = offers.find((one) => navigator.canShare?.({ files: [one] }));
    if (offered) {
      try {
        await navigator.share({ files: [offered], title: offered.name });
        this.status = handedOnWords.shared(offered.name);
        return;
      } catch (fault) {
        if (fault instanceof DOMException && fault.name === 'AbortError') return;
      }
    }
    saveFile(name, file);
    this.status = 'share' in navigator ? handedOnWords.refused(name) : handedOnWords.saved(name);
  };

  #timed() {
    const [day, clock] = ['#day', '#clock'].map((id) => this.renderRoot.querySelector<HTMLInputElement>(id)?.value ?? '');
    if (day && clock) this.earlier = { day, clock };
  }

  #tick() {
    const date = new Date();
    const now = { ...thisMoment(date), seconds: date.getSeconds() };
    const timers = this.view === undefined || this.view === 'none' ? [] : this.view.timers;
    for (const timer of timers) {
      const key = `${timer.at.day} ${timer.at.clock} ${timer.minutes}`;
      const left = minutesLeft(timer, now);
      if (left > 0 || left < -1 || this.#rung.has(key)) continue;
      this.#rung.add(key);
      navigator.vibrate?.([400, 200, 400]);
    }
    if (timers.length > 0 || now.clock !== this.now.clock) this.now = now;
  }
}

const textIn = (data: FormData, name: string): string => {
  const value = data.get(name);
  return typeof value === 'string' ? value.trim() : '';
};

declare global {
  interface HTMLElementTagNameMap {
    'tg-pot-log': TgPotLog;
  }
}
