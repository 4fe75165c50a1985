import { html, LitElement, nothing, type PropertyValues, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { ChoicesView } from '../../notebook/views/choices-view.ts';
import {
  type Reach,
  type ReachMapOrProblems,
  type ReachMapView,
  type ReachPlace,
  REACHES,
  type TypedReach,
} from '../../notebook/views/reach-map-view.ts';
import { problemSentence } from '../ask/question-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import { listWord, typedWord } from '../shared/sentence-words.ts';
import { sentenceStyles } from '../shared/sentence.styles.ts';
import { coastline } from './coastline.ts';
import { type DrawnPlace, MAP, mapShape } from './map-shape.ts';
import { ReachChangeEvent } from './reach-change-event.ts';
import { REACH_WORDS, reachMark } from './reach-marks.ts';
import { styles } from './tg-reach-map.styles.ts';

/**
 * @summary A map of where a source grew, was grown, arrived and arrived as cloth at a date, with the same as a table.
 * @event {ReachChangeEvent} tg-reach-change - The reader asks for another source or date.
 * @csspart map - The map.
 * @csspart table - The same as a table.
 */
@customElement('tg-reach-map')
export class TgReachMap extends LitElement {
  static override styles = [baseStyles, sentenceStyles, styles];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** The source and date. */
  @property({ attribute: false }) reach: TypedReach = { dye: '', when: '' };
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private choices?: ChoicesView;
  @state() private result?: ReachMapOrProblems;
  @state() private land?: object;

  readonly #choosing = new LatestTask<ChoicesView>((choices) => (this.choices = choices));
  readonly #mapping = new LatestTask<ReachMapOrProblems>((result) => (this.result = result));
  readonly #coast = new LatestTask<object>((land) => (this.land = land));

  override connectedCallback() {
    super.connectedCallback();
    this.#coast.run(coastline());
  }

  override willUpdate(changed: PropertyValues<this>) {
    if (!this.engine) return;
    const anew = changed.has('engine') || changed.has('version');
    if (anew) this.#choosing.run(this.engine.choices());
    if (anew || changed.has('reach')) this.#mapping.run(this.engine.reachMap(this.reach));
  }

  override render() {
    const { reach, result } = this;
    return html`
      <h1>
        <span class="sentence"
          >Where was
          ${listWord('Source', reach.dye === '' ? undefined : reach.dye, this.choices?.dyestuffs, (dye) => this.#change({ dye: dye ?? '' }), 'a source')}
          to hand about ${typedWord('Date', reach.when, (when) => this.#change({ when }))}?</span
        >
      </h1>
      ${result && 'problems' in result ? result.problems.map((problem) => html`<p class="problem" role="alert">${problemSentence(problem)}</p>`) : nothing}
      ${result && 'map' in result ? this.#map(result.map) : nothing}
    `;
  }

  #map(map: ReachMapView) {
    const shape = this.land && mapShape(this.land, map.places);
    return html`
      <p class="sum" role="status">${map.sentence}</p>
      <figure>
        ${
          shape
            ? html`<svg
                class="map"
                part="map"
                viewBox=${`0 0 ${MAP.width} ${MAP.height}`}
                role="img"
                aria-label=${`${map.title}, ${map.reading}: ${map.sentence} The table below says the same.`}
              >
                <path class="lines" d=${shape.lines}></path>
                <path class="land" d=${shape.land}></path>
                ${shape.places.map((one) => this.#place(one))}
              </svg>`
            : html`<p>Drawing the coast.</p>`
        }
        <figcaption>${this.#legend(map)}</figcaption>
      </figure>
      ${map.places.length > 0 ? this.#table(map) : nothing}
      <p class="small">
        Each mark stands at the point its region’s note gives, not where a plant grew. Coastline: Natural Earth, of today.
        ${map.otherYears > 0 ? `${map.otherYears} more records speak of other years.` : nothing}
      </p>
    `;
  }

  #place({ place, nth, x, y, name }: DrawnPlace) {
    const best = place.reaches[0];
    if (!best) return nothing;
    return svg`<g>
      <title>${`${place.title}: ${wordsOf(place)}`}</title>
      ${reachMark(best, x, y, place.doubtful)}
      ${name ? svg`<text class="name" x=${name.x} y=${name.y} text-anchor=${name.anchor}>${place.title}</text>` : svg`<text class="name" x=${x + 12} y=${y + 5}>${nth}</text>`}
      <text class="number" x=${x + 14} y=${y + 9}>${nth}</text>
    </g>`;
  }

  #legend({ places }: ReachMapView) {
    const drawn = REACHES.filter((reach) => places.some(({ reaches }) => reaches[0] === reach));
    const sample = (reach: Reach, doubtful: boolean) =>
      html`<svg viewBox="0 0 24 24" aria-hidden="true">${reachMark(reach, 12, 12, doubtful)}</svg>`;
    return html`<ul class="legend" aria-label="How to read it">
      ${drawn.map((reach) => html`<li>${sample(reach, false)}${REACH_WORDS[reach]}</li>`)}
      ${places.some(({ doubtful }) => doubtful) ? html`<li>${sample('imported', true)}dashed: doubtful, or only its doubtful years reach</li>` : nothing}
    </ul>`;
  }

  #table(map: ReachMapView) {
    return html`<div class="scroll">
      <table part="table">
        <caption>
          ${map.title}, ${map.reading}
        </caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col">Place</th>
            <th scope="col">How it reached it</th>
            <th scope="col">By which records</th>
          </tr>
        </thead>
        <tbody>
          ${map.places.map(
            (place, at) =>
              html`<tr>
                <td>${at + 1}</td>
                <th scope="row">${place.title}${place.point ? nothing : html`<span class="small">no point, not on the map</span>`}</th>
                <td>${wordsOf(place)}</td>
                <td>
                  ${place.claims.map(
                    (one) =>
                      html`<span class="small"
                        >${one.says}, ${one.years}${one.sure === '' ? nothing : ` (${one.sure})`}; ${one.evidence}; ${one.source};
                        <a href=${`#/notebook/${one.note}`}>note ${one.note}</a></span
                      >`,
                  )}
                </td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
  }

  #change(change: Partial<TypedReach>) {
    this.reach = { ...this.reach, ...change };
    this.dispatchEvent(new ReachChangeEvent(this.reach));
  }
}

function wordsOf({ reaches, doubtful, contested, somewhere }: ReachPlace): string {
  return [
    reaches.map((reach) => REACH_WORDS[reach]).join('; '),
    ...(somewhere ? ['somewhere in it'] : []),
    ...(contested ? ['contested'] : []),
    ...(doubtful ? ['doubtful'] : []),
  ].join(', ');
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-reach-map': TgReachMap;
  }
}
