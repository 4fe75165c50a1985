import { css, html, LitElement, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Engine } from '../../notebook/engine.ts';
import type { DossierView } from '../../notebook/views/dossier-view.ts';
import type { EvidenceSheetView } from '../../notebook/views/evidence-sheet-view.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { LatestTask } from '../shared/latest-task.ts';
import '../swatch/tg-swatch.ts';
import { onShowStyles } from './on-show.styles.ts';
import { captionsTemplate, dossierHead, sheetTemplate, sourcesTemplate } from './sheet-parts.ts';

/**
 * @summary Everything behind a colour of a display, for paper: verdict, claims with their sources, recipe, trial, what is not known.
 *   Without a colour, every sheet of the display: its dossier.
 * @csspart sheet - One colour's sheet.
 */
@customElement('tg-evidence-sheet')
export class TgEvidenceSheet extends LitElement {
  static override styles = [
    baseStyles,
    onShowStyles,
    css`
      .lines > li {
        padding-block: var(--tg-space-2);
        border-block-end: 1px solid var(--tg-hairline);
      }
      header + article,
      article + article {
        margin-block-start: var(--tg-space-8);
      }
      @media print {
        header + article,
        article + article,
        article + section {
          margin: 0;
          break-before: page;
        }
      }
    `,
  ];

  /** Where the notebook is. */
  @property({ attribute: false }) engine?: Engine;
  /** Id of the display note. */
  @property({ attribute: 'display-id' }) displayId = '';
  /** The colour, as the display names it; the whole dossier without one. */
  @property() colour = '';
  /** Grows when the notebook changes. */
  @property({ type: Number }) version = 0;

  @state() private listed: 'note' | 'author-date' = 'note';
  @state() private view?: { readonly sheet: EvidenceSheetView } | { readonly dossier: DossierView } | 'none';

  readonly #opening = new LatestTask<TgEvidenceSheet['view']>((view) => (this.view = view ?? 'none'));

  override willUpdate(changed: PropertyValues<this>) {
    const { engine, displayId, colour } = this;
    if (!engine || !(['engine', 'displayId', 'colour', 'version'] as const).some((name) => changed.has(name))) return;
    this.#opening.run(
      colour === ''
        ? engine.dossier(displayId).then((dossier) => dossier && { dossier })
        : engine.evidenceSheet(displayId, colour).then((sheet) => sheet && { sheet }),
    );
  }

  override render() {
    const { view } = this;
    if (view === undefined) return html`<p role="status">Gathering the evidence.</p>`;
    if (view === 'none') return html`<p role="alert">There is no such colour on this board, or it cannot be judged.</p>`;
    return html`
      <p class="asked quiet screen">
        <a href=${`#/on-show/${encodeURIComponent(this.displayId)}`}>The board</a>
        <label
          >Sources
          <select @change=${this.#styled}>
            <option value="note">as notes</option>
            <option value="author-date" ?selected=${this.listed === 'author-date'}>author and date</option>
          </select></label
        >
      </p>
      ${
        'sheet' in view
          ? html`<article part="sheet">${sheetTemplate(view.sheet, this.listed, true)}</article>`
          : html`${dossierHead(view.dossier)}
              ${view.dossier.sheets.map(
                (sheet) =>
                  html`<article part="sheet">${sheetTemplate(sheet, this.listed, false)} ${captionsTemplate(sheet.captions)}</article>`,
              )}
              <section>${sourcesTemplate(view.dossier.references, view.dossier.missing, this.listed)}</section>`
      }
    `;
  }

  #styled(event: Event) {
    this.listed = event.target instanceof HTMLSelectElement && event.target.value === 'author-date' ? 'author-date' : 'note';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-evidence-sheet': TgEvidenceSheet;
  }
}
