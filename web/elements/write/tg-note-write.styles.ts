import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  h1 {
    margin: 0;
    font: 600 var(--tg-type-3) / 1.2 var(--tg-font-reading);
  }
  .small {
    margin: 0;
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .bar {
    position: sticky;
    inset-block-start: 0;
    z-index: 2;
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2) var(--tg-space-3);
    align-items: center;
    margin-block: var(--tg-space-4);
    padding-block: var(--tg-space-2);
    background: var(--tg-ground);
    border-block-end: var(--tg-line-1) solid var(--tg-ink);
    font: var(--tg-type-small) / 1.35 var(--tg-font-label);
  }
  button,
  .bar a {
    display: inline-flex;
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  button {
    padding: var(--tg-space-2) var(--tg-space-4);
    border: var(--tg-line-1) solid var(--tg-edge);
    border-radius: 2px;
    background: none;
    font: var(--tg-type-small) / 1.3 var(--tg-font-label);
    cursor: pointer;
  }
  button:hover:not(:disabled) {
    border-color: var(--tg-ink);
  }
  button.first:not(:disabled) {
    background: var(--tg-inverse);
    color: var(--tg-ink-inverse);
    border-color: var(--tg-inverse);
  }
  button:disabled {
    border-color: var(--tg-hairline);
    color: var(--tg-ink-quiet);
    cursor: default;
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  a[aria-current='true'] {
    font-weight: 700;
    text-decoration-thickness: 2px;
  }
  .state {
    margin-inline-start: auto;
    color: var(--tg-ink-quiet);
  }
  .sides {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--tg-space-6);
  }
  .sides.both {
    grid-template-columns: repeat(auto-fit, minmax(min(26rem, 100%), 1fr));
    align-items: start;
  }
  .both tg-note-text {
    position: sticky;
    inset-block-start: 5rem;
  }
  .notice {
    margin-block: var(--tg-space-3);
    padding: var(--tg-space-3) var(--tg-space-4);
    border: var(--tg-line-2) solid var(--tg-ink);
    font: var(--tg-type-base) / 1.45 var(--tg-font-label);
  }
  .notice p {
    margin: 0 0 var(--tg-space-3);
  }
  .tools {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3);
  }
  .foot {
    margin-block: var(--tg-space-6);
    padding-block-start: var(--tg-space-3);
    border-block-start: var(--tg-line-1) solid var(--tg-hairline);
  }
  .problems {
    margin: var(--tg-space-4) 0 0;
    padding: 0;
    list-style: none;
    font: var(--tg-type-small) / 1.45 var(--tg-font-label);
  }
  .problems li {
    padding-block: var(--tg-space-2);
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
  }
  .problems button {
    min-block-size: 0;
    padding: 0;
    border: 0;
    font: inherit;
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }
  @media (max-width: 40rem) {
    .state {
      margin-inline-start: 0;
      inline-size: 100%;
    }
    h1 {
      font-size: var(--tg-type-2);
    }
  }
  @media print {
    .bar,
    .foot,
    .notice {
      display: none;
    }
  }
`;
