import { css } from 'lit';

export const styles = css`
  :host {
    --_width: var(--tg-swatch-size, 6rem);
    display: inline-grid;
    justify-items: start;
    vertical-align: top;
  }

  svg {
    display: block;
    /* The drawing is wider than the cloth by the tag that hangs beside it. */
    inline-size: calc(var(--_width) * 134 / 96);
    block-size: auto;
    overflow: visible;
    forced-color-adjust: none;
    print-color-adjust: exact;
  }

  .lie {
    fill: var(--_ink);
    opacity: 0.14;
  }

  .edge {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 0.7;
    stroke-linejoin: round;
    opacity: 0.45;
  }

  .card {
    fill: var(--_paper);
    stroke: var(--_ink);
    stroke-width: 0.8;
    stroke-linejoin: round;
  }

  .hole {
    fill: var(--tg-ground, Canvas);
    stroke: var(--_ink);
    stroke-width: 0.9;
  }

  .thread {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 0.9;
    stroke-linecap: round;
  }

  [part='remark'] {
    margin: 0;
    color: var(--tg-ink-quiet, CanvasText);
    font-family: var(--tg-font-label, sans-serif);
    font-size: var(--tg-type-small, 0.885rem);
    line-height: var(--tg-leading-label, 1.35);
  }

  @media (forced-colors: active) {
    .edge {
      stroke-width: 2;
      opacity: 1;
    }

    .lie {
      display: none;
    }
  }

  @media print {
    .lie {
      display: none;
    }
  }
`;
