import { css } from 'lit';

/** Fields of a form: labels above, hints below, rows of a list on ruled lines. */
export const fieldStyles = css`
  .field {
    display: grid;
    gap: var(--tg-space-1);
    min-inline-size: 0;
  }
  label,
  .label {
    font: 700 var(--tg-type-small) / 1.35 var(--tg-font-label);
  }
  .needed {
    font-weight: 400;
    color: var(--tg-ink-quiet);
  }
  .hint,
  .reading {
    margin: 0;
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.45 var(--tg-font-label);
  }
  .reading {
    color: var(--tg-ink);
    font-variant-numeric: tabular-nums;
  }
  .fault {
    margin: 0;
    padding-inline-start: var(--tg-space-2);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
    font: var(--tg-type-small) / 1.45 var(--tg-font-label);
  }
  .fault[data-severity='warning'] {
    border-inline-start: var(--tg-line-2) solid var(--tg-edge);
  }
  input,
  select,
  textarea {
    box-sizing: border-box;
    inline-size: 100%;
    min-block-size: var(--tg-touch);
    padding: var(--tg-space-2) var(--tg-space-3);
    border: var(--tg-line-1) solid var(--tg-edge);
    border-radius: 2px;
    background: var(--tg-surface);
    color: inherit;
    font: var(--tg-type-base) / 1.4 var(--tg-font-label);
  }
  textarea {
    min-block-size: 5.5rem;
    resize: vertical;
    field-sizing: content;
    font: var(--tg-type-base) / 1.5 var(--tg-font-reading);
  }
  input[type='checkbox'] {
    inline-size: 1.35rem;
    min-block-size: 1.35rem;
    margin: 0;
    accent-color: var(--tg-ink);
  }
  .check {
    display: flex;
    gap: var(--tg-space-3);
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  .row {
    display: flex;
    gap: var(--tg-space-2);
    align-items: start;
  }
  .row > input,
  .row > textarea,
  .row > select {
    flex: 1 1 auto;
    min-inline-size: 0;
  }
  .rows {
    display: grid;
    gap: var(--tg-space-2);
    margin: 0;
    padding: 0;
    list-style: none;
  }
  button {
    min-block-size: var(--tg-touch);
    padding: var(--tg-space-2) var(--tg-space-3);
    border: var(--tg-line-1) solid var(--tg-edge);
    border-radius: 2px;
    background: none;
    font: var(--tg-type-small) / 1.3 var(--tg-font-label);
    cursor: pointer;
    white-space: nowrap;
  }
  button:hover {
    border-color: var(--tg-ink);
  }
  button:disabled {
    border-color: var(--tg-hairline);
    color: var(--tg-ink-quiet);
    cursor: default;
  }
  .add {
    justify-self: start;
  }
  details.group {
    border-block-start: var(--tg-line-1) solid var(--tg-hairline);
  }
  details.group:last-of-type {
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
  }
  details.group > summary {
    min-block-size: var(--tg-touch);
    padding-block: var(--tg-space-2);
    font: var(--tg-type-base) / 1.4 var(--tg-font-reading);
    cursor: pointer;
    overflow-wrap: anywhere;
  }
  details.group[open] > summary {
    font-weight: 600;
  }
  .inside {
    display: grid;
    gap: var(--tg-space-4);
    padding: var(--tg-space-2) 0 var(--tg-space-4) var(--tg-space-4);
    border-inline-start: var(--tg-line-2) solid var(--tg-hairline);
  }
  .pair {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(14rem, 100%), 1fr));
    gap: var(--tg-space-4);
  }
  .wide {
    grid-column: 1 / -1;
  }
  .tools {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2);
  }
  .swatch-row {
    display: flex;
    gap: var(--tg-space-4);
    align-items: start;
    --tg-swatch-size: 3.5rem;
  }
  .swatch-row > .inside {
    flex: 1 1 auto;
  }
  summary.more {
    min-block-size: var(--tg-touch);
    padding-block: var(--tg-space-3);
    font: var(--tg-type-small) / 1.4 var(--tg-font-label);
    cursor: pointer;
  }
  @media print {
    button {
      display: none;
    }
  }
`;
