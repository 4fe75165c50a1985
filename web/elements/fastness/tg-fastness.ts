import { css, html, LitElement, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { FastnessRow, LightTestView } from '../../notebook/views/fastness-view.ts';
import { GRADES_CAVEAT, LIGHT_TEST_CAVEAT } from '../../notebook/words/fastness-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { CURVE_BOX, lightCurve } from './light-curve.ts';

/**
 * @summary What was found of the fastness of a dyeing: grades with their scale, fibre, mordant and method, and light tests as curves.
 * @csspart grades - The list of grades.
 * @csspart test - One light test.
 */
@customElement('tg-fastness')
export class TgFastness extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        font: var(--tg-type-base) / var(--tg-leading-label) var(--tg-font-label);
      }
      ul {
        margin: 0;
        padding: 0;
        list-style: none;
      }
      [part='grades'] > li {
        display: grid;
        grid-template-columns: 9rem minmax(0, 1fr);
        gap: 0 var(--tg-space-4);
        padding-block: var(--tg-space-2);
        border-block-end: var(--tg-line-1) solid var(--tg-hairline);
      }
      .quiet {
        color: var(--tg-ink-quiet);
        font-size: var(--tg-type-small);
      }
      h3 {
        margin: var(--tg-space-5) 0 var(--tg-space-2);
        font: 600 var(--tg-type-1) / 1.3 var(--tg-font-reading);
      }
      a {
        color: inherit;
        text-underline-offset: 0.2em;
      }
      svg {
        display: block;
        inline-size: min(100%, 32rem);
        block-size: auto;
        overflow: visible;
      }
      svg text {
        font: 13px var(--tg-font-label);
        fill: var(--tg-ink-quiet);
        font-variant-numeric: tabular-nums;
      }
      .grade {
        stroke: var(--tg-hairline);
        stroke-width: 1;
      }
      .curve {
        fill: none;
        stroke: var(--tg-ink);
        stroke-width: 1.5;
      }
      .cloth {
        stroke: var(--tg-ink);
        stroke-width: 1;
        forced-color-adjust: none;
        print-color-adjust: exact;
      }
      .wide {
        overflow-x: auto;
      }
      p {
        max-inline-size: var(--tg-measure);
        margin: var(--tg-space-2) 0;
      }
      [part='test'] {
        break-inside: avoid;
      }
      @media (max-width: 40rem) {
        [part='grades'] > li {
          grid-template-columns: minmax(0, 1fr);
        }
        svg text {
          font-size: 17px;
        }
      }
    `,
  ];

  /** Grades, published or of one's own. */
  @property({ attribute: false }) rows: readonly FastnessRow[] = [];
  /** Light tests with their readings. */
  @property({ attribute: false }) tests: readonly LightTestView[] = [];

  override render() {
    return html`${
      this.rows.length === 0
        ? nothing
        : html`<ul part="grades">
              ${this.rows.map((row) => this.#grade(row))}
            </ul>
            <p class="quiet">${GRADES_CAVEAT}</p>`
    }
    ${this.tests.map((test) => this.#test(test))} ${this.tests.length === 0 ? nothing : html`<p class="quiet">${LIGHT_TEST_CAVEAT}</p>`}`;
  }

  #grade({ test, grade, scale, fibre, mordant, method, source }: FastnessRow) {
    return html`<li>
      <strong>${test}: ${grade}</strong>
      <span>${scale}; on ${fibre}, ${mordant}<br /><span class="quiet">${method}${source === '' ? '' : ` · ${source}`}</span></span>
    </li>`;
  }

  #test(test: LightTestView) {
    return html`<section part="test">
      <h3><a href=${`#/notebook/${encodeURIComponent(test.note)}`}>${test.title}</a></h3>
      ${this.#curve(test)}
      <div class="wide" tabindex="0" role="group" aria-label=${`Readings: ${test.title}`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Date</th>
              <th scope="col">Light</th>
              <th scope="col">What became of the colour</th>
            </tr>
          </thead>
          <tbody>
            ${test.readings.map(
              ({ date, dose, text }) =>
                html`<tr>
                  <td>${date}</td>
                  <td>${dose}</td>
                  <td>${text}</td>
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
      ${test.reference === '' ? html`<p>No blue wool lay beside it.</p>` : html`<p>Beside it: ${test.reference}. ${test.strips.join(' ')}</p>`}
    </section>`;
  }

  #curve(test: LightTestView) {
    const curve = lightCurve(test);
    if (!curve) return nothing;
    const { width, height, left, right, bottom } = CURVE_BOX;
    return html`<svg
      viewBox="0 0 ${width} ${height}"
      role="img"
      aria-label=${`Change in colour under light: ${test.title}. The readings stand in the table.`}
    >
      ${curve.grades.map(
        ({ grade, y }) =>
          svg`<line class="grade" x1=${left} x2=${width - right} y1=${y} y2=${y}></line><text x=${left - 10} y=${y + 5} text-anchor="end">${grade}</text>`,
      )}
      <path class="curve" d=${curve.path}></path>
      ${curve.points.map(
        ({ x, y, hex, label }, at) =>
          svg`<rect class="cloth" x=${x - 8} y=${y - 11} width="16" height="22" fill=${hex}></rect>
            <text x=${x} y=${height - bottom + 22} text-anchor=${at === curve.points.length - 1 ? 'end' : 'middle'} dx=${at === curve.points.length - 1 ? 12 : 0}>${label}</text>`,
      )}
      <text x=${left} y=${height - 4}>grade of change · ${curve.across}</text>
    </svg>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-fastness': TgFastness;
  }
}
