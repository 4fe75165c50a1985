import { css } from 'lit';

/** A button that stays pressed, one choice among several. */
export const pressStyles = css`
  .press {
    font: inherit;
    color: inherit;
    background: none;
    border: var(--tg-line-1) solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-4);
    min-block-size: var(--tg-touch);
    cursor: pointer;
  }
  .press:hover {
    box-shadow: inset 0 0 0 1px var(--tg-ink);
  }
  .press[aria-pressed='true'] {
    background: var(--tg-inverse);
    color: var(--tg-ink-inverse);
  }
`;
