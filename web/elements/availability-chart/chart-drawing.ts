import { svg, type SVGTemplateResult } from 'lit';
import type { DrawnRow } from './availability-chart-view.ts';

/** The pattern of what is known to be absent; once in a tree of elements is enough. */
export const hatching = svg`
  <defs>
    <pattern id="hatching" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="hatching" d="M0 0V5"></path>
    </pattern>
  </defs>`;

/**
 * A row's rule and bands.
 *
 * @param pick called with the key of the claim behind a band that is pressed; on paper nothing is.
 */
export const rowDrawing = ({ y, height, bands }: DrawnRow, width: number, pick?: (claimKey: string) => void): SVGTemplateResult => svg`
  <path class="rule" d="M0 ${y + height - 0.5}H${width}"></path>
  ${bands.map(
    ({ claimKey, words, marks, touch }) => svg`
      <g class="band" @click=${() => pick?.(claimKey)}>
        <title>${words}</title>
        <rect class="touch" x=${touch.x} y=${touch.y} width=${touch.width} height=${touch.height}></rect>
        ${marks.map((mark) => svg`<path class=${mark.ink} d=${mark.d}></path>`)}
      </g>`,
  )}`;
