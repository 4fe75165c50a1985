import { html, svg, type TemplateResult } from 'lit';
import { bandMarks } from './band-shape.ts';
import { bandWords } from './availability-chart-view.ts';
import type { BandStyle } from './chart-row.ts';

const ENDS = { outerFrom: 1, from: 12, to: 38, outerTo: 49 };
const SAMPLE = { from: 0, to: 0, outerFrom: 0, outerTo: 0, label: '', claimKey: '', soft: false };

/** How to read the chart: each way of drawing with its word. */
export const chartLegend = (): TemplateResult => html`
  <ul class="legend" aria-label="How to read it">
    ${(Object.keys(bandWords) as BandStyle[]).map(
      (style) => html`
        <li>
          <svg class="sample" viewBox="0 0 50 20" aria-hidden="true">
            ${bandMarks({ ...SAMPLE, style }, ENDS, 10).map((mark) => svg`<path class=${mark.ink} d=${mark.d}></path>`)}
          </svg>
          ${bandWords[style]}
        </li>
      `,
    )}
    <li>a taper: perhaps</li>
  </ul>
`;
