import { html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Verdict } from '../../domain/verdict/standing-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { hemDrawing, hemStyles } from '../swatch/hem-drawing.ts';
import { styles } from './tg-verdict-mark.styles.ts';
import { MARK_BOX, verdictMarkView } from './verdict-mark-view.ts';

/**
 * @summary A verdict in a line of text: the hem it gives a cloth, and the word beside it.
 * @csspart mark - The hem.
 * @csspart word - The verdict's word.
 * @slot - Another way of putting the word.
 * @cssproperty [--tg-verdict-mark-size=3rem] - Width of the mark.
 */
@customElement('tg-verdict-mark')
export class TgVerdictMark extends LitElement {
  static override styles = [baseStyles, hemStyles, styles];

  /** The verdict to show. */
  @property() verdict?: Verdict;
  /** Independent classes of evidence: knots on an attested hem. */
  @property({ type: Number }) classes = 0;

  override render() {
    if (!this.verdict) return nothing;
    const { word, means, cloth, hem } = verdictMarkView(this.verdict, this.classes);
    return html`
      <svg part="mark" aria-hidden="true" viewBox="0 0 ${MARK_BOX.width} ${MARK_BOX.height}">
        <path class="cloth" d=${cloth}></path>
        ${hemDrawing(hem)}
      </svg>
      <span part="word" title=${means}><slot>${word}</slot></span>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-verdict-mark': TgVerdictMark;
  }
}
