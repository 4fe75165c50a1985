import { html, type TemplateResult } from 'lit';
import { bandWords, whenWords } from './availability-chart-view.ts';
import type { ChartRow } from './chart-row.ts';

/**
 * The chart's claims as a table: the same data, in words.
 *
 * @param pick called with the key of the claim a reader wants to see.
 */
export const chartTable = (rows: readonly ChartRow[], caption: string, pick: (claimKey: string) => void): TemplateResult => html`
  <table>
    <caption>
      ${caption}
    </caption>
    <thead>
      <tr>
        <th scope="col">Source</th>
        <th scope="col">How</th>
        <th scope="col">When</th>
        <th scope="col">Claim</th>
      </tr>
    </thead>
    ${rows.map(
      ({ title, bands }) => html`
        <tbody>
          ${
            bands.length === 0
              ? html`<tr>
                  <th scope="row">${title}</th>
                  <td colspan="3">nothing recorded</td>
                </tr>`
              : bands.map(
                  (band, i) => html`
                    <tr>
                      ${i === 0 ? html`<th scope="rowgroup" rowspan=${bands.length}>${title}</th>` : ''}
                      <td>${bandWords[band.style]}${band.soft ? ', uncertain' : ''}</td>
                      <td>${whenWords(band)}</td>
                      <td><button class="plain" type="button" @click=${() => pick(band.claimKey)}>${band.label}</button></td>
                    </tr>
                  `,
                )
          }
        </tbody>
      `,
    )}
  </table>
`;
