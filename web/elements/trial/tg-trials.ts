import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { addressOf } from '../../notebook/address.ts';
import type { Engine } from '../../notebook/engine.ts';
import type { TrialsView } from '../../notebook/views/trials-view.ts';
import { dayWords } from '../../notebook/words/day-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import './tg-trial-comparison.ts';
import './tg-trial.ts';
import { styles } from './tg-trials.styles.ts';

/** More than these beside each other nobody can follow. Our choice. */
const MOST_COMPARED = 5;

/**
 * @summary The trials of the notebook, of a recipe or of a dyestuff, with their lots; one of them; or several beside each other.
 * @csspart trials - The list.
 * @csspart lots - What was bought or gathered, and where it went.
 */
@customElement('tg-trials')
export class TgTrials extends LitElement {
  static override styles = [baseStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The trial to show; the list when absent. */
  @property() trial?: string;
  /** `of`: whose trials; `beside`: ids parted by commas, to be compared. */
  @property({ attribute: false }) settings: Readonly<Record<string, string>> = {};
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private view?: TrialsView;
  @state() private picked: readonly string[] = [];

  readonly #listing = new LatestTask<TrialsView>((view) => (this.view = view));

  override willUpdate(changed: PropertyValues) {
    if (!this.engine || !(['engine', 'version', 'settings', 'trial'] as const).some((name) => changed.has(name))) return;
    if (this.trial === undefined && this.settings['beside'] === undefined) this.#listing.run(this.engine.trials(this.settings['of'] ?? ''));
  }

  override render() {
    if (this.trial !== undefined) return html`<tg-trial .engine=${this.engine} .trial=${this.trial} .version=${this.version}></tg-trial>`;
    const { beside } = this.settings;
    if (beside !== undefined)
      return html`<tg-trial-comparison
        .engine=${this.engine}
        .trials=${beside.split(',').filter((id) => id !== '')}
        .version=${this.version}
      ></tg-trial-comparison>`;
    const { view } = this;
    if (!view) return html`<p role="status">Gathering the trials.</p>`;
    return html`
      ${view.of === '' ? nothing : html`<p class="quiet"><a href="#/trials">All trials</a></p>`}
      <h1>${view.of === '' ? 'Trials' : `Trials: ${view.ofTitle}`}</h1>
      <p class="quiet">
        ${view.trials.length} ${view.trials.length === 1 ? 'pot' : 'pots'}, newest first. Tick two or more to see what differed.
      </p>
      ${view.repeatable === '' ? nothing : html`<p class="says">${view.repeatable}</p>`}
      ${
        view.trials.length === 0
          ? html`<p>No pot of it is written down. <a href="#/notebook?new=trial">Write one down</a></p>`
          : html`<ul class="index" part="trials">
              ${view.trials.map((one) => this.#entry(one))}
            </ul>`
      }
      ${this.#bar()} ${this.#lots(view)}
    `;
  }

  #entry({ id, title, date, by, hex, codes }: TrialsView['trials'][number]) {
    return html`<li>
      <input type="checkbox" aria-label=${`Compare ${title}`} .checked=${this.picked.includes(id)} @change=${() => this.#pick(id)} />
      <span class="dab" style=${hex === undefined ? '' : `--_dab:${hex}`} aria-hidden="true"></span>
      <span
        ><a href=${addressOf({ view: 'trials', id, settings: {} })}>${title}</a><br /><span class="quiet"
          >${[codes.join(', '), dayWords(date), by].filter((part) => part !== '').join(' · ')}</span
        ></span
      >
    </li>`;
  }

  #bar() {
    if (this.picked.length === 0) return nothing;
    const ready = this.picked.length > 1;
    return html`<div class="compare" role="status">
      <span>${this.picked.length} ticked${this.picked.length >= MOST_COMPARED ? ', which is as many as can be followed' : ''}.</span>
      ${
        ready
          ? html`<a href=${addressOf({ view: 'trials', settings: { beside: this.picked.join(',') } })}>What differed between them</a>`
          : 'Tick another.'
      }
      <button type="button" class="plain" @click=${() => (this.picked = [])}>Tick none</button>
    </div>`;
  }

  #lots({ lots }: TrialsView) {
    if (lots.length === 0) return nothing;
    return html`<section part="lots">
      <h2>Lots, and the pots they went into</h2>
      <ul class="lines">
        ${lots.map(
          ({ text, trials }) =>
            html`<li>
              ${text}
              <span class="quiet"
                >${trials.map(({ id }, at) => html`${at === 0 ? '' : ', '}<a href=${addressOf({ view: 'trials', id, settings: {} })}>${id}</a>`)}</span
              >
            </li>`,
        )}
      </ul>
    </section>`;
  }

  #pick(id: string) {
    if (this.picked.includes(id)) this.picked = this.picked.filter((one) => one !== id);
    else this.picked = [...this.picked, id].slice(-MOST_COMPARED);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-trials': TgTrials;
  }
}
