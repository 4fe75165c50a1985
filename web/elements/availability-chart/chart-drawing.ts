import { svg, type SVGTemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { DrawnBand, DrawnRow } from './availability-chart-view.ts';

/** The pattern of what is known to be absent; once in a tree of elements is enough. */
export const hatching = svg`
  <defs>
    <pattern id="hatching" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="hatching" d="M0 0V5"></path>
    </pattern>
  </defs>`;

/** What bands do on a screen, each told the key of its claim. */
export interface BandHandling {
  /** The one band that Tab leads to; keys lead from it to the others. */
  readonly tabStop: string | undefined;
  readonly pick: (claimKey: string) => void;
  readonly key: (event: KeyboardEvent, claimKey: string) => void;
}

/**
 * A row's rule and bands.
 *
 * @param handling without it, as on paper, a band is only drawn.
 */
export const rowDrawing = ({ y, height, bands }: DrawnRow, width: number, handling?: BandHandling): SVGTemplateResult => svg`
  <path class="rule" d="M0 ${y + height - 0.5}H${width}"></path>
  ${repeat(
    bands,
    ({ claimKey }) => claimKey,
    (band) => (handling ? pressable(band, handling) : svg`<g>${marksOf(band)}</g>`),
  )}`;

const pressable = (band: DrawnBand, { tabStop, pick, key }: BandHandling): SVGTemplateResult => svg`
  <g
    class="band"
    role="button"
    tabindex=${band.claimKey === tabStop ? 0 : -1}
    aria-label=${band.words}
    data-claim=${band.claimKey}
    @click=${() => pick(band.claimKey)}
    @keydown=${(event: KeyboardEvent) => key(event, band.claimKey)}
  >
    <title>${band.words}</title>
    <rect class="touch" x=${band.touch.x} y=${band.touch.y} width=${band.touch.width} height=${band.touch.height}></rect>
    ${marksOf(band)}
  </g>`;

const marksOf = ({ marks }: DrawnBand) => marks.map((mark) => svg`<path class=${mark.ink} d=${mark.d}></path>`);
