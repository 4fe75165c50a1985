import { css } from 'lit';

/** The year as a thread that can be drawn along, with its reading beside it. */
export const yearThreadStyles = css`
  .year {
    display: grid;
    grid-template-columns: auto 1fr auto;
    gap: var(--tg-space-3);
    align-items: center;
    margin-block-start: var(--tg-space-4);
    font: var(--tg-type-small) / 1.3 var(--tg-font-label);
    color: var(--tg-ink-quiet);
    font-variant-numeric: tabular-nums;
  }
  .year input {
    inline-size: 100%;
    min-block-size: 2rem;
    accent-color: var(--tg-ink);
  }
  .year input:focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  @media print {
    .year {
      display: none;
    }
  }
`;
