import { svg, type SVGTemplateResult } from 'lit';
import type { Reach } from '../../notebook/views/reach-map-view.ts';

/** What each mark says. */
export const REACH_WORDS: Readonly<Record<Reach, string>> = {
  wild: 'grew wild',
  grown: 'was grown',
  made: 'was made',
  imported: 'arrived as dyestuff',
  'cloth-only': 'arrived only as cloth',
  'on-cloth': 'is on a find',
  absent: 'known not to have been there',
};

/** A mark around a point, drawn in greys: told apart by shape, never by colour. Doubtful ones are dashed. */
export function reachMark(reach: Reach, x: number, y: number, doubtful: boolean): SVGTemplateResult {
  const kind = doubtful ? 'mark doubtful' : 'mark';
  switch (reach) {
    case 'wild':
      return svg`<circle class=${kind} cx=${x} cy=${y} r="9"></circle><circle class="solid" cx=${x} cy=${y} r="3"></circle>`;
    case 'grown':
      return doubtful
        ? svg`<circle class=${kind} cx=${x} cy=${y} r="9"></circle><circle class="solid" cx=${x} cy=${y} r="6"></circle>`
        : svg`<circle class="solid" cx=${x} cy=${y} r="9"></circle>`;
    case 'made':
      return svg`<rect class=${doubtful ? kind : 'solid'} x=${x - 8} y=${y - 8} width="16" height="16"></rect>`;
    case 'imported':
      return svg`<circle class=${kind} cx=${x} cy=${y} r="9"></circle><circle class=${kind} cx=${x} cy=${y} r="5"></circle>`;
    case 'cloth-only':
      return svg`<circle class="mark dotted" cx=${x} cy=${y} r="9"></circle>`;
    case 'on-cloth':
      return svg`<path class=${kind} d=${`M${x} ${y - 10} L${x + 10} ${y} L${x} ${y + 10} L${x - 10} ${y} Z`}></path>`;
    case 'absent':
      return svg`<path class=${kind} d=${`M${x - 7} ${y - 7} L${x + 7} ${y + 7} M${x + 7} ${y - 7} L${x - 7} ${y + 7}`}></path>`;
  }
}
