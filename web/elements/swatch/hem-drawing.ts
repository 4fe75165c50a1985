import { css, svg, type SVGTemplateResult } from 'lit';
import type { HemMark } from './hem.ts';

/** The shapes of a hem, for a drawing whose styles hold `hemStyles`. */
export const hemDrawing = (marks: readonly HemMark[]): readonly SVGTemplateResult[] =>
  marks.map(({ d, ink }) => svg`<path class=${ink} d=${d}></path>`);

/** The inks of a hem: greys only, taken from the page's roles, so that they stand out by day, by night and on paper. */
export const hemStyles = css`
  :host {
    --_paper: var(--tg-surface, Canvas);
    --_ink: color-mix(in oklab, var(--tg-ink, CanvasText) 86%, var(--_paper));
    --_band: color-mix(in oklab, var(--_ink) 30%, var(--_paper));
    --_fold: color-mix(in oklab, var(--_ink) 9%, var(--_paper));
  }

  .band,
  .fold,
  .paper,
  .line,
  .thin,
  .cord,
  .core,
  .halo {
    stroke: var(--_ink);
    stroke-linecap: round;
    stroke-linejoin: round;
    fill: none;
  }

  .band {
    fill: var(--_band);
    stroke-width: 1.2;
  }

  .fold {
    fill: var(--_fold);
    stroke-width: 1.2;
  }

  .paper {
    fill: var(--_paper);
    stroke-width: 1.2;
  }

  .ink {
    fill: var(--_ink);
  }

  .line {
    stroke-width: 1.4;
  }

  .thin {
    stroke-width: 1;
  }

  .cord {
    stroke-width: 4.4;
    stroke-linecap: butt;
  }

  .core,
  .halo {
    stroke: var(--_paper);
    stroke-linecap: butt;
  }

  .core {
    stroke-width: 1.9;
  }

  .halo {
    stroke-width: 6.6;
  }

  @media (forced-colors: active) {
    :host {
      --_ink: CanvasText;
      --_paper: Canvas;
    }
  }
`;
