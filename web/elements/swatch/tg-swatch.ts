import { html, LitElement, nothing, svg, type SVGTemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Verdict } from '../../domain/verdict/standing-words.ts';
import { baseStyles } from '../shared/base.styles.ts';
import { OnPaper } from '../shared/on-paper.ts';
import { OnWideScreen } from '../shared/on-wide-screen.ts';
import { BOX } from './cloth-shape.ts';
import { hemDrawing, hemStyles } from './hem-drawing.ts';
import { swatchView, tilePlaces, type SwatchView } from './swatch-view.ts';
import { styles } from './tg-swatch.styles.ts';

/**
 * @summary A piece of cloth in one colour, woven as its fibre is, with a grey hem that says the verdict and a parcel tag tied on.
 * @csspart drawing - The cloth with its hem and tag.
 * @csspart remark - The words under it: predicted, or that the screen shows it duller.
 * @slot - Name, recipe and numbers, beside or under the cloth as the page likes.
 * @cssproperty [--tg-swatch-size=6rem] - Width of the cloth; the tag beside it takes two fifths more.
 */
@customElement('tg-swatch')
export class TgSwatch extends LitElement {
  static override styles = [baseStyles, hemStyles, styles];

  /** Mean colour of the cloth, `#rrggbb`. Anything else is drawn undyed grey. */
  @property() hex = '';
  /** The colour for a wide screen, CSS `color(display-p3 r g b)`, where an ordinary one cannot show it; else ''. */
  @property() wide = '';
  /** Fibre by id: wool, linen, silk, cotton, alum-tawed-skin… decides the weave. */
  @property() fibre = 'wool';
  /** What can be said of the colour; without one the cloth has no hem. */
  @property() verdict?: Verdict;
  /** How many independent classes of evidence: knots on an attested hem. */
  @property({ type: Number }) classes = 0;
  /** The colour was computed and not dyed: it is drawn with a soft edge. */
  @property({ type: Boolean }) predicted = false;
  /** The screen cannot show the colour; `hex` is the nearest it can. */
  @property({ type: Boolean, attribute: 'out-of-gamut' }) outOfGamut = false;
  /** Decides how the cloth is uneven; the sample's id does. */
  @property() seed = '';
  /** What the cloth is called, for those who hear the page. */
  @property() label = '';

  private readonly onPaper = new OnPaper(this, () => this.performUpdate());
  private readonly onWideScreen = new OnWideScreen(this);

  override render() {
    const { hex, fibre, verdict, classes, predicted, outOfGamut, seed, label } = this;
    const wide = this.onWideScreen.value && !this.onPaper.value ? this.wide : '';
    const view = swatchView({ hex, wide, fibre, verdict, classes, predicted, outOfGamut, seed, label });
    return html`
      <svg part="drawing" role="img" aria-label=${view.name} viewBox="0 0 ${BOX.width} ${BOX.height}">
        ${this.#cloth(view)} ${hemDrawing(view.hem)} ${this.#tag(view)}
      </svg>
      ${view.remarks.length > 0 ? html`<p part="remark" aria-hidden="true">${view.remarks.join(', ')}</p>` : nothing}
      <slot></slot>
    `;
  }

  #cloth(view: SwatchView): SVGTemplateResult {
    const { outline, fill, sheen } = view;
    const soft = this.predicted;
    return svg`
      <defs>
        ${this.onPaper.value ? nothing : this.#patterns(view)}
        <linearGradient id="sheen">
          ${sheen.map((stop) => svg`<stop offset=${stop.at} stop-color=${stop.colour} stop-opacity=${stop.opacity}></stop>`)}
        </linearGradient>
        <filter id="blur" x="-10%" y="-10%" width="120%" height="120%"><feGaussianBlur stdDeviation="4.5"></feGaussianBlur></filter>
        <mask id="soft"><rect x="13" y="19" width="76" height="117" fill="#fff" filter="url(#blur)"></rect></mask>
      </defs>
      ${soft ? nothing : svg`<path class="lie" d=${outline} transform="translate(1.2 1.6)"></path>`}
      <g mask=${soft ? 'url(#soft)' : nothing}>
        <path d=${outline} fill=${fill}></path>
        ${this.onPaper.value ? this.#threads(view) : view.tiles.map((_, i) => svg`<path d=${outline} fill="url(#weave-${i})"></path>`)}
        ${sheen.length > 0 ? svg`<path d=${outline} fill="url(#sheen)" fill-opacity="0.6"></path>` : nothing}
      </g>
      <path class="edge" d=${outline}></path>`;
  }

  #patterns({ tiles, lean }: SwatchView): readonly SVGTemplateResult[] {
    return tiles.map(
      ({ size, paths }, i) => svg`
        <pattern id="weave-${i}" width=${size} height=${size} patternUnits="userSpaceOnUse" patternTransform="rotate(${lean})">
          ${paths.map((path) => svg`<path d=${path.d} fill=${path.fill}></path>`)}
        </pattern>`,
    );
  }

  /** On paper every thread is drawn: browsers print a pattern as a large picture, a megabyte for each cloth. */
  #threads({ outline, tiles, lean }: SwatchView): SVGTemplateResult {
    return svg`
      <clipPath id="cut"><path d=${outline}></path></clipPath>
      <g clip-path="url(#cut)">
        <g transform="rotate(${lean})">
          ${tiles.map(
            ({ size, paths }, i) => svg`
              <defs><g id="tile-${i}">${paths.map((path) => svg`<path d=${path.d} fill=${path.fill}></path>`)}</g></defs>
              ${tilePlaces(size).map(([x, y]) => svg`<use href="#tile-${i}" x=${x} y=${y}></use>`)}`,
          )}
        </g>
      </g>`;
  }

  #tag({ tag }: SwatchView): SVGTemplateResult {
    return svg`
      <path class="card" d=${tag.card}></path>
      <circle class="hole" cx=${tag.hole[0]} cy=${tag.hole[1]} r="2.2"></circle>
      <path class="thread" d=${tag.thread}></path>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'tg-swatch': TgSwatch;
  }
}
