import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    container-type: inline-size;
  }
  .sheet {
    --_mm: calc(100cqi / var(--_w));
    position: relative;
    inline-size: calc(var(--_w) * var(--_mm));
    block-size: calc(var(--_h) * var(--_mm));
    overflow: hidden;
    border: var(--tg-line-1) solid var(--tg-edge);
    background: var(--tg-surface);
    color: var(--tg-ink);
    font: calc(var(--_type) * var(--_mm)) / 1.35 var(--tg-font-reading);
  }
  .at {
    position: absolute;
    inset-inline-start: calc(var(--_x) * var(--_mm));
    inset-block-start: calc(var(--_y) * var(--_mm));
    inline-size: calc(var(--_bw) * var(--_mm));
    block-size: calc(var(--_bh) * var(--_mm));
    margin: 0;
  }
  h2 {
    position: absolute;
    inset-inline: calc(14 * var(--_mm));
    inset-block-start: calc(8 * var(--_mm));
    margin: 0;
    font: 600 2em / 1.15 var(--tg-font-reading);
  }
  .question {
    position: absolute;
    inset-inline: calc(14 * var(--_mm));
    inset-block-start: calc(19 * var(--_mm));
    margin: 0;
    color: var(--tg-ink-quiet);
  }
  .group {
    overflow: hidden;
    border-block-end: calc(0.3 * var(--_mm)) solid var(--tg-ink);
    font: 700 1em / 1.3 var(--tg-font-label);
    white-space: nowrap;
  }
  .cloth {
    padding: 0;
    border: 0;
    background: none;
    cursor: grab;
    touch-action: none;
  }
  .cloth:active {
    cursor: grabbing;
  }
  .cloth tg-swatch {
    --tg-swatch-size: calc(var(--_bw) * var(--_mm) * 0.64);
    pointer-events: none;
  }
  .window {
    position: absolute;
    inset: 0;
    display: none;
    place-content: end center;
    padding: 1em;
    border: calc(0.25 * var(--_mm)) dashed var(--tg-ink);
    color: var(--tg-ink);
    font: 0.85em / 1.3 var(--tg-font-label);
    text-align: center;
  }
  .windows .window {
    display: grid;
  }
  .windows .window + tg-swatch {
    display: none;
  }
  .caption h3 {
    margin: 0;
    font: 700 1.05em / 1.25 var(--tg-font-reading);
  }
  .caption p {
    margin: 0;
  }
  .tag {
    color: var(--tg-ink-quiet);
    font: 0.8em / 1.35 var(--tg-font-label);
    font-variant-numeric: tabular-nums;
  }
  .foot {
    position: absolute;
    inset-inline: calc(14 * var(--_mm));
    inset-block-end: calc(5 * var(--_mm));
    display: flex;
    justify-content: space-between;
    gap: 1em;
    margin: 0;
    color: var(--tg-ink-quiet);
    font: 0.8em / 1.3 var(--tg-font-label);
  }
  @media print {
    .sheet {
      --_mm: 1mm;
      border: 0;
      background: none;
      break-inside: avoid;
    }
    .window {
      display: grid;
    }
    .window + tg-swatch {
      display: none;
    }
  }
`;
