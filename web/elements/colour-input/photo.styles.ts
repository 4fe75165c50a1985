import { css } from 'lit';

export const photoStyles = css`
  [part='photo'] {
    position: relative;
    inline-size: fit-content;
    max-inline-size: 100%;
    /* An area's name may reach past the photo's edge. */
    overflow: hidden;
    margin-block-start: var(--tg-space-3);
    border: var(--tg-line-1) solid var(--tg-edge);
    cursor: crosshair;
    touch-action: none;
    forced-color-adjust: none;
  }
  canvas {
    display: block;
    max-inline-size: 100%;
    max-block-size: 34rem;
    block-size: auto;
  }
  .area,
  .cell {
    position: absolute;
    inset-inline-start: var(--_x);
    inset-block-start: var(--_y);
    inline-size: var(--_w);
    block-size: var(--_h);
    padding: 0;
    background: none;
    /* Light beside dark: one of them is seen on every photo. */
    border: var(--tg-line-2) solid var(--tg-ink);
    outline: var(--tg-line-1) solid var(--tg-ground);
    pointer-events: none;
  }
  .area:focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-ground);
    outline-offset: 0;
  }
  .area span {
    position: absolute;
    inset-block-end: 100%;
    inset-inline-start: -2px;
    padding: 0 var(--tg-space-1);
    background: var(--tg-ground);
    color: var(--tg-ink);
    font: var(--tg-type-small) / 1.3 var(--tg-font-label);
    white-space: nowrap;
  }
  .cell {
    border-width: var(--tg-line-1);
    outline: 0;
  }
`;
