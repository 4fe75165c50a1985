import { css } from 'lit';

/** What every element starts from: one box model, a drawn focus, words for ears only, buttons and tables as the page has them. */
export const baseStyles = css`
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }

  :host([hidden]) {
    display: none;
  }

  :focus-visible {
    outline: var(--tg-focus-width, 3px) solid var(--tg-focus, currentColor);
    outline-offset: var(--tg-focus-gap, 3px);
  }

  .visually-hidden {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    margin: -1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }

  /* Never the browser's own ground: on some of them, and in the dark, our ink is too faint on it. */
  button {
    border: var(--tg-line-1, 1px) solid var(--tg-edge, currentColor);
    border-radius: 2px;
    background: none;
    font: inherit;
    color: inherit;
  }

  ::file-selector-button {
    min-block-size: var(--tg-touch, 2.75rem);
    margin-inline-end: var(--tg-space-3, 0.75rem);
    padding: var(--tg-space-1, 0.25rem) var(--tg-space-4, 1rem);
    border: var(--tg-line-1, 1px) solid var(--tg-edge, currentColor);
    border-radius: 2px;
    background: none;
    font: 600 1em / 1.3 var(--tg-font-label, sans-serif);
    color: inherit;
    cursor: pointer;
  }

  .plain {
    padding: var(--tg-space-2, 0.5rem) 0;
    border: 0;
    background: none;
    font-family: var(--tg-font-label, sans-serif);
    font-size: var(--tg-type-small, 0.885rem);
    line-height: var(--tg-leading-label, 1.35);
    text-decoration: underline;
    text-decoration-thickness: var(--tg-line-1, 1px);
    text-underline-offset: 0.25em;
    cursor: pointer;
  }

  .plain:hover {
    text-decoration-thickness: var(--tg-line-2, 2px);
  }

  .plain:disabled {
    color: var(--tg-ink-quiet, GrayText);
    text-decoration: none;
    cursor: default;
  }

  table {
    inline-size: 100%;
    border-collapse: collapse;
    font-family: var(--tg-font-label, sans-serif);
    font-size: var(--tg-type-small, 0.885rem);
    line-height: var(--tg-leading-label, 1.35);
    font-variant-numeric: tabular-nums;
  }

  caption {
    padding-block: var(--tg-space-2, 0.5rem);
    text-align: start;
  }

  th,
  td {
    padding: var(--tg-space-2, 0.5rem) var(--tg-space-4, 1rem) var(--tg-space-2, 0.5rem) 0;
    border-block-end: var(--tg-line-1, 1px) solid var(--tg-hairline, currentColor);
    text-align: start;
    vertical-align: baseline;
  }

  td > .plain {
    padding: 0;
    text-align: start;
  }

  thead th {
    border-block-end: var(--tg-line-2, 2px) solid var(--tg-edge, currentColor);
  }

  th {
    font-weight: var(--tg-weight-strong, 700);
  }
`;
