import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  .given {
    margin-block: var(--tg-space-5);
  }
  .given > label {
    display: grid;
    gap: var(--tg-space-2);
    font: var(--tg-type-base) / 1.4 var(--tg-font-label);
  }
  textarea {
    font: var(--tg-type-base) / 1.6 var(--tg-font-label);
    color: inherit;
    background: var(--tg-surface);
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-3);
    inline-size: 100%;
    box-sizing: border-box;
    resize: vertical;
  }
  .file {
    text-decoration: underline;
    text-underline-offset: 0.2em;
    cursor: pointer;
  }
  .file:focus-within {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  .file input {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    opacity: 0;
  }
  .samples {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2) var(--tg-space-4);
    align-items: end;
    font: var(--tg-type-base) / 1.4 var(--tg-font-label);
  }
  .samples label {
    display: grid;
    flex: 1 1 16rem;
    gap: var(--tg-space-1);
    min-inline-size: 0;
    max-inline-size: 34rem;
  }
  .samples select {
    inline-size: 100%;
    min-inline-size: 0;
    min-block-size: var(--tg-touch);
    font: inherit;
    color: inherit;
    background: var(--tg-surface);
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
  }
  .quiet {
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .sum {
    font-size: var(--tg-type-1);
  }
  .lines {
    margin: 0;
    padding: 0;
    list-style: none;
    --tg-swatch-size: 4rem;
    --tg-verdict-mark-size: 4rem;
  }
  .lines > li {
    display: grid;
    grid-template-columns: 7rem minmax(0, 1fr);
    gap: var(--tg-space-4);
    padding-block: var(--tg-space-4);
    border-block-start: 1px solid var(--tg-ink);
  }
  .lines p {
    margin: 0 0 var(--tg-space-1);
    max-inline-size: var(--tg-measure);
  }
  .answer {
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
    margin-inline-start: var(--tg-space-3);
    padding: 0.1em 0.5em;
    border: var(--tg-line-2) solid var(--tg-ink);
  }
  .problem {
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
  }
  button {
    font: var(--tg-type-base) / 1.3 var(--tg-font-label);
    color: inherit;
    background: none;
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-4);
    min-block-size: var(--tg-touch);
    cursor: pointer;
  }
  :is(button, textarea, summary):focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  summary {
    cursor: pointer;
    min-block-size: 1.75rem;
    font: var(--tg-type-small) / 1.75 var(--tg-font-label);
  }
  @media (max-width: 40rem) {
    .lines > li {
      grid-template-columns: 5rem minmax(0, 1fr);
      gap: var(--tg-space-3);
      --tg-swatch-size: 3.25rem;
    }
  }
  @media print {
    :host {
      font-size: 9pt;
      line-height: 1.3;
    }
    .given,
    button {
      display: none;
    }
    .lines {
      --tg-swatch-size: 11mm;
    }
    .lines > li {
      grid-template-columns: 18mm minmax(0, 1fr);
      padding-block: 2mm;
      break-inside: avoid;
    }
    .lines ul {
      margin: 0;
      padding-inline-start: 4mm;
      font-size: 8pt;
    }
  }
`;
