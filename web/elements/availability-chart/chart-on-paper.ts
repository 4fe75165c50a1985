import { html, nothing, svg, type TemplateResult } from 'lit';
import { formatYear } from '../../domain/date/format-years.ts';
import type { ChartView } from './availability-chart-view.ts';
import { hatching, rowDrawing } from './chart-drawing.ts';

const warp = (ink: 'warp' | 'asked', x: number, { y, height }: { readonly y: number; readonly height: number }) =>
  svg`<path class=${ink} d="M${x} ${y}V${y + height}"></path>`;

/**
 * The chart as paper takes it: a table, so that no row is cut between two pages and the years stand at the head of each.
 *
 * @param head what stands at the head of a row.
 */
export function chartOnPaper(
  { rows, ticks, thread }: ChartView,
  width: number,
  year: number,
  head: (row: ChartView['rows'][number]) => TemplateResult,
): TemplateResult {
  const share = (x: number) => `inset-inline-start: ${(x / Math.max(1, width)) * 100}%`;
  return html`<table class="paper">
    <thead>
      <tr>
        <td></td>
        <td>
          <div class="scale">
            ${ticks.map(({ x, words }) => (words ? html`<span class="tick" style=${share(x)}>${words}</span>` : nothing))}
            ${thread === undefined ? nothing : html`<span class="spool" style=${share(thread)}>${formatYear(year)}</span>`}
          </div>
        </td>
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (drawn, at) =>
          html`<tr>
            <th scope="row">${head(drawn)}</th>
            <td class="plot">
              <svg
                aria-hidden="true"
                height=${drawn.height}
                viewBox="0 ${drawn.y} ${Math.max(1, width)} ${drawn.height}"
                preserveAspectRatio="none"
              >
                ${at === 0 ? hatching : nothing} ${ticks.map(({ x }) => warp('warp', x, drawn))} ${rowDrawing(drawn, width)}
                ${thread === undefined ? nothing : warp('asked', thread, drawn)}
              </svg>
            </td>
          </tr>`,
      )}
    </tbody>
  </table>`;
}
