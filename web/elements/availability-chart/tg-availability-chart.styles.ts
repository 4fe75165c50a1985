import { css } from 'lit';

export const styles = css`
  :host {
    --_ink: var(--tg-ink, CanvasText);
    --_quiet: var(--tg-ink-quiet, CanvasText);
    --_ground: var(--tg-ground, Canvas);
    --_pale: color-mix(in oklab, var(--_ink) 35%, var(--_ground));
    display: block;
    container-type: inline-size;
    font-family: var(--tg-font-label, sans-serif);
    font-size: var(--tg-type-small, 0.885rem);
    line-height: var(--tg-leading-label, 1.35);
  }

  .tools {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-4, 1rem);
    margin-block-end: var(--tg-space-2, 0.5rem);
  }

  .tools .plain {
    min-block-size: var(--tg-touch, 2.75rem);
  }

  [part='chart'] {
    display: grid;
    grid-template-columns: clamp(6rem, 24cqi, 14rem) minmax(0, 1fr);
    column-gap: var(--tg-space-3, 0.75rem);
  }

  .scale {
    position: relative;
    grid-column: 2;
    block-size: 2.25rem;
    border-block-end: var(--tg-line-2, 2px) solid var(--tg-edge, currentColor);
    cursor: ew-resize;
    touch-action: pan-y;
    user-select: none;
  }

  .tick {
    position: absolute;
    inset-block-end: 0;
    padding-block-end: 0.45rem;
    translate: -50% 0;
    white-space: nowrap;
    color: var(--_quiet);
    font-variant-numeric: tabular-nums;
  }

  .tick::after {
    content: '';
    position: absolute;
    inset-inline-start: 50%;
    inset-block-end: 0;
    block-size: 0.35rem;
    border-inline-start: var(--tg-line-1, 1px) solid var(--tg-edge, currentColor);
  }

  .chosen {
    position: absolute;
    inset-block: 0;
    background: var(--_pale);
    opacity: 0.5;
  }

  .heads {
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .heads li {
    display: flex;
    align-items: center;
    gap: var(--tg-space-2, 0.5rem);
    overflow-wrap: break-word;
    border-block-end: var(--tg-line-1, 1px) solid var(--tg-hairline, currentColor);
    line-height: var(--tg-leading-tight, 1.2);
    hyphens: auto;
  }

  .heads tg-swatch {
    --tg-swatch-size: 1.35rem;
    flex: none;
    inline-size: 1.9rem;
    margin-block-start: 0.35rem;
  }

  .nothing {
    inline-size: 1.9rem;
    flex: none;
  }

  .plot {
    position: relative;
  }

  .plot > svg {
    display: block;
    inline-size: 100%;
    overflow: hidden;
    print-color-adjust: exact;
  }

  .rule {
    stroke: var(--tg-hairline, currentColor);
    stroke-width: 1;
  }

  .warp {
    stroke: var(--tg-hairline, currentColor);
    stroke-width: 1;
    stroke-dasharray: 1 5;
  }

  .touch {
    fill: transparent;
  }

  .band {
    cursor: pointer;
  }

  .band:focus-visible {
    outline: none;
  }

  .band:focus-visible .touch {
    stroke: var(--tg-focus, currentColor);
    stroke-width: var(--tg-focus-width, 3px);
  }

  .band:hover .touch {
    fill: var(--_pale);
    fill-opacity: 0.28;
  }

  .solid,
  .dots,
  .knot {
    fill: var(--_ink);
  }

  .pale {
    fill: var(--_pale);
  }

  .line,
  .thin,
  .hatch {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.4;
    stroke-linecap: round;
  }

  .thin {
    stroke: var(--_quiet);
    stroke-width: 0.9;
  }

  .hatch {
    fill: url(#hatching);
    stroke-width: 0.8;
  }

  .hatching {
    stroke: var(--_ink);
    stroke-width: 1.2;
  }

  /* Pressed at its year or on its line; the bands beside the line can be pressed too. */
  [part='thread'] {
    position: absolute;
    inset-block: -2.25rem -0.4rem;
    inline-size: 1.5rem;
    translate: -50% 0;
    cursor: grab;
    touch-action: none;
  }

  [part='thread']:active {
    cursor: grabbing;
  }

  [part='thread']:focus-visible {
    outline: none;
  }

  [part='thread']::before {
    content: '';
    position: absolute;
    inset-block: 0;
    inset-inline-start: calc(50% - 1px);
    /* A border, because paper leaves backgrounds out. */
    border-inline-start: 2px solid var(--_ink);
    outline: 1.5px solid var(--_ground);
  }

  .spool {
    position: absolute;
    inset-block-end: 100%;
    inset-inline-start: 50%;
    translate: -50% 0;
    padding: 0.1rem 0.5rem;
    border: var(--tg-line-2, 2px) solid var(--_ink);
    background: var(--_ground);
    color: var(--_ink);
    font-weight: var(--tg-weight-strong, 700);
    font-variant-numeric: tabular-nums;
    white-space: nowrap;
  }

  :focus-visible > .spool {
    outline: var(--tg-focus-width, 3px) solid var(--tg-focus, currentColor);
    outline-offset: var(--tg-focus-gap, 3px);
  }

  /* Room above the scale for the year the thread carries. */
  .scale {
    margin-block-start: 1.75rem;
  }

  .paper {
    inline-size: 100%;
    border-collapse: collapse;
    table-layout: fixed;
    font-size: 8.5pt;
  }

  .paper :is(th, td) {
    padding: 0;
    border: 0;
    font-weight: inherit;
    text-align: start;
    vertical-align: middle;
  }

  .paper tr {
    break-inside: avoid;
  }

  .paper tr > :first-child {
    inline-size: 40mm;
    padding-inline-end: 4mm;
  }

  .paper th {
    border-block-end: var(--tg-line-1, 1px) solid var(--tg-hairline, currentColor);
  }

  .paper th tg-swatch {
    --tg-swatch-size: 1.35rem;
    display: inline-block;
    inline-size: 1.9rem;
    vertical-align: middle;
  }

  .paper .nothing {
    display: inline-block;
  }

  .paper .scale {
    position: relative;
    block-size: 11mm;
    margin: 0;
  }

  .paper .spool {
    inset-block: 0 auto;
  }

  .asked {
    stroke: var(--_ink);
    stroke-width: 2;
  }

  .legend {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-1, 0.25rem) var(--tg-space-4, 1rem);
    margin: var(--tg-space-4, 1rem) 0 0;
    padding: 0;
    list-style: none;
    color: var(--_quiet);
  }

  .legend li {
    display: flex;
    align-items: center;
    gap: var(--tg-space-2, 0.5rem);
  }

  .sample {
    inline-size: 3.1rem;
    block-size: 1.25rem;
  }

  @container (max-width: 30rem) {
    .heads li {
      gap: var(--tg-space-1, 0.25rem);
      font-size: 0.8rem;
    }

    .heads tg-swatch {
      --tg-swatch-size: 0.85rem;
      inline-size: 1.2rem;
    }

    .nothing {
      inline-size: 1.2rem;
    }
  }

  @media (forced-colors: active) {
    .plot > svg,
    .sample {
      forced-color-adjust: none;
      --_ink: CanvasText;
      --_quiet: CanvasText;
      --_ground: Canvas;
    }
  }

  @media print {
    .tools {
      display: none;
    }

    .legend {
      break-inside: avoid;
    }
  }
`;
