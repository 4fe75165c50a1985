import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import { lookAddress } from '../../notebook/looking-address.ts';
import type { DyestuffEntry, DyestuffView } from '../../notebook/views/dyestuff-view.ts';
import type { NamedNoteView } from '../../notebook/views/naming-view.ts';
import { reachAddress } from '../reach-map/reach-address.ts';
import '../availability-chart/tg-availability-chart.ts';
import '../fastness/tg-fastness.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import '../swatch/tg-swatch.ts';
import { byKind, byRecipe, matching, MONTHS } from './dyestuffs-view.ts';
import { styles } from './tg-dyestuffs.styles.ts';

/** A kind with more notes than this starts closed. Our choice: what one looks over at a glance. */
const OPEN_AT_MOST = 8;
/** Cloths laid side by side at once: more nobody can tell apart. Our choice. */
const MOST_LAID = 6;

/**
 * @summary The dyestuffs of the notebook by any of their names, and everything on one of them.
 * @csspart names - The names of the dyestuff.
 * @csspart chart - Who had it, when.
 * @csspart named - Where it is named.
 */
@customElement('tg-dyestuffs')
export class TgDyestuffs extends LitElement {
  static override styles = [baseStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The dyestuff to show; the index when absent. */
  @property() dyestuff?: string;
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private index: readonly DyestuffEntry[] = [];
  @state() private view?: DyestuffView | 'none';
  @state() private namings?: readonly NamedNoteView[];
  @state() private typed = '';

  readonly #listing = new LatestTask<readonly DyestuffEntry[]>((index) => (this.index = index));
  readonly #opening = new LatestTask<DyestuffView | undefined>((view) => (this.view = view ?? 'none'));
  readonly #naming = new LatestTask<readonly NamedNoteView[]>((namings) => (this.namings = namings));

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine || !(changed.has('engine') || changed.has('version') || changed.has('dyestuff'))) return;
    this.view = undefined;
    this.namings = undefined;
    if (this.dyestuff === undefined) this.#listing.run(this.engine.dyestuffs());
    else {
      this.#opening.run(this.engine.dyestuff(this.dyestuff));
      this.#naming.run(this.engine.namings(this.dyestuff));
    }
  }

  override render() {
    if (this.dyestuff === undefined) return this.#index();
    if (this.view === undefined) return html`<p role="status">Gathering what the notes say.</p>`;
    if (this.view === 'none')
      return html`<p role="alert">No dyestuff of this notebook is called “${this.dyestuff}”. <a href="#/dyestuffs">All dyestuffs</a></p>`;
    return this.#page(this.view);
  }

  #index() {
    const found = matching(this.index, this.typed);
    return html`<h1>Dyestuffs</h1>
      <p>
        <label
          >By any of their names: everyday, period, foreign or Latin<br />
          <input type="search" .value=${this.typed} @input=${(event: Event) => (this.typed = (event.target as HTMLInputElement).value)} />
        </label>
      </p>
      <p class="quiet" role="status">${found.length} of ${this.index.length}</p>
      <ul class="index">
        ${found.map(
          ({ id, title, latin, claims, hex }) =>
            html`<li>
              <a href=${`#/dyestuffs/${id}`}>
                <span class="dab" style=${hex === undefined ? '' : `--_dab:${hex}`} aria-hidden="true"></span>
                <span
                  ><strong>${title}</strong> <em>${latin}</em><br /><span class="quiet"
                    >${claims} ${claims === 1 ? 'claim' : 'claims'}</span
                  ></span
                >
              </a>
            </li>`,
        )}
      </ul>`;
  }

  #page(view: DyestuffView) {
    return html`
      <p class="quiet"><a href="#/dyestuffs">All dyestuffs</a></p>
      <h1>${view.title}</h1>
      ${view.latin.map((name) => html`<p class="latin" lang="la">${name}</p>`)}
      ${
        view.names.length === 0
          ? nothing
          : html`<p class="names" part="names">
              Also
              ${view.names.map(
                ({ name, lang }, at) =>
                  html`${at === 0 ? '' : ', '}<span lang=${lang ?? ''}>${name}</span
                    >${lang === undefined ? nothing : html` <span class="lang">${lang}</span>`}`,
              )}
            </p>`
      }
      ${this.#facts(view)}
      <p>
        <a href=${`#/ask?dye=${view.id}&region=hanse-towns&when=c.%201370`}>Ask whether it was to hand at a place and date</a> ·
        <a href=${`#/trials?of=${encodeURIComponent(view.id)}`}>Its trials and lots</a> ·
        <a href=${`#/notebook/${view.id}`}>The note itself</a>
      </p>
      ${this.#cautions(view)}
      <section part="chart">
        <h2>Who had it, when</h2>
        ${this.#chart(view)}
        <p><a href=${reachAddress(view.id, 'c. 1370')}>How far it reached at a date, on a map</a></p>
      </section>
      ${this.#cloths(view)} ${this.#gathering(view)} ${this.#fastness(view)}
      ${
        view.textiles.length === 0
          ? nothing
          : html`<section>
              <h2>Found on</h2>
              <ul class="plain">
                ${view.textiles.map(({ id, title, text }) => html`<li><a href=${`#/notebook/${id}`}>${title}</a> <span class="quiet">${text}</span></li>`)}
              </ul>
            </section>`
      }
      ${this.#named()}
      <section>
        <h2>What the notes claim</h2>
        <details>
          <summary>${view.claims.length} claims, oldest first</summary>
          <ul class="plain">
            ${view.claims.map(
              (claim) =>
                html`<li>
                  ${claim.region}, ${claim.years}: ${claim.says} ${claim.sure === '' ? nothing : html`<strong>(${claim.sure})</strong>`}
                  <span class="quiet"
                    >${claim.evidence} ·
                    ${claim.source}${claim.note === view.id ? nothing : html` · <a href=${`#/notebook/${claim.note}`}>note ${claim.note}</a>`}</span
                  >
                  ${claim.remark === '' ? nothing : html`<br /><span class="quiet">${claim.remark}</span>`}
                </li>`,
            )}
          </ul>
        </details>
      </section>
    `;
  }

  #facts({ facts, markers, laboratory }: DyestuffView) {
    if (facts.length === 0 && markers.length === 0) return nothing;
    return html`<dl>
      ${facts.map(
        ({ label, text }) =>
          html`<dt>${label}</dt>
            <dd>${text}</dd>`,
      )}
      ${
        markers.length === 0
          ? nothing
          : html`<dt>A laboratory finds</dt>
              <dd>${markers.join(', ')} · <a href=${laboratory}>What else would explain these</a></dd>`
      }
    </dl>`;
  }

  #chart(view: DyestuffView) {
    if (view.rows.length === 0) return html`<p>No claim with a place and date.</p>`;
    return html`<tg-availability-chart .rows=${view.rows} label=${`Who had ${view.title}, when`}></tg-availability-chart>`;
  }

  #cloths({ cloths }: DyestuffView) {
    if (cloths.length === 0) return nothing;
    return html`<section>
      <h2>Recipes, and what they gave</h2>
      <p>
        <a
          href=${lookAddress(
            byRecipe(cloths)
              .slice(0, MOST_LAID)
              .map(({ first }) => first.id),
          )}
          >Lay them side by side, in daylight, lamp and gallery</a
        >
      </p>
      <ul class="cloths">
        ${byRecipe(cloths).map(
          ({ first, count }) =>
            html`<li>
              <tg-swatch
                .hex=${first.hex}
                .wide=${first.wide ?? ''}
                .fibre=${first.weave}
                .seed=${first.id}
                .outOfGamut=${!first.inScreenGamut}
                .label=${first.title}
              ></tg-swatch>
              <a href=${`#/notebook/${first.recipe}`}>${first.title}</a>
              <span class="quiet"
                >${count === 1 ? html`<a href=${`#/trials/${encodeURIComponent(first.trial)}`}>${first.code}</a>` : `${count} samples`}</span
              >
            </li>`,
        )}
      </ul>
      <details>
        <summary>Every trial</summary>
        <ul class="cloths">
          ${cloths.map(
            ({ title, hex, wide, weave, trial, code, inScreenGamut, id }) =>
              html`<li>
                <tg-swatch
                  .hex=${hex}
                  .wide=${wide ?? ''}
                  .fibre=${weave}
                  .seed=${id}
                  .outOfGamut=${!inScreenGamut}
                  .label=${title}
                ></tg-swatch>
                <a href=${`#/trials/${encodeURIComponent(trial)}`}>${title}, ${code}</a>
                <a class="quiet" href=${lookAddress([id])} aria-label=${`Look closely at ${title}, ${code}`}>Look closely</a>
              </li>`,
          )}
        </ul>
      </details>
    </section>`;
  }

  #gathering({ gather }: DyestuffView) {
    if (!gather) return nothing;
    return html`<section>
      <h2>Gathering</h2>
      ${
        gather.months.length === 0
          ? nothing
          : html`<ul class="months">
              ${MONTHS.map(
                ([short, long], at) =>
                  html`<li class=${gather.months.includes(at + 1) ? 'gather' : ''}>
                    <span aria-hidden="true">${short}</span
                    ><span class="visually-hidden">${long}${gather.months.includes(at + 1) ? ': gather' : ''}</span>
                  </li>`,
              )}
            </ul>`
      }
      <p>${gather.text}</p>
    </section>`;
  }

  #cautions({ cautions }: DyestuffView) {
    if (cautions.length === 0) return nothing;
    return html`<section class="caution" aria-labelledby="care">
      <h2 id="care">Care</h2>
      ${cautions.map((text) => html`<p>${text}</p>`)}
    </section>`;
  }

  #fastness({ fastness, lightTests }: DyestuffView) {
    if (fastness.length + lightTests.length === 0) return nothing;
    return html`<section>
      <h2>Fastness</h2>
      <tg-fastness .rows=${fastness} .tests=${lightTests}></tg-fastness>
    </section>`;
  }

  #named() {
    if (!this.namings) return html`<p role="status">Looking where it is named.</p>`;
    return html`<section part="named">
      <h2>Where it is named</h2>
      ${this.namings.length === 0 ? html`<p>No other note names it.</p>` : nothing}
      ${byKind(this.namings).map(
        ({ kind, notes }) =>
          html`<details ?open=${notes.length <= OPEN_AT_MOST}>
            <summary>${notes.length === 1 ? `1 ${kind}` : `${notes.length} notes: ${kind}`}</summary>
            <ul class="plain">
              ${notes.map((note) => this.#namedNote(note))}
            </ul>
          </details>`,
      )}
    </section>`;
  }

  #namedNote({ id, title, doubt, places }: NamedNoteView) {
    return html`<li>
      <a href=${`#/notebook/${id}`}>${title}</a> ${doubt === '' ? nothing : html`<strong>${doubt}</strong>`}
      ${places.map(({ line, before, name, after }) => html`<br /><span class="quiet">line ${line}: ${before}<mark>${name}</mark>${after}</span>`)}
    </li>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-dyestuffs': TgDyestuffs;
  }
}
