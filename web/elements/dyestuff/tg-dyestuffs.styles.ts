import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  h1 {
    margin: 0;
    font: 600 var(--tg-type-4) / 1.15 var(--tg-font-reading);
  }
  h2 {
    margin: 0 0 var(--tg-space-3);
    padding-block-end: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-ink);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  section {
    margin-block: var(--tg-space-6);
  }
  .latin {
    font-style: italic;
    font-size: var(--tg-type-1);
    margin: var(--tg-space-1) 0 0;
  }
  .names {
    margin: var(--tg-space-3) 0 0;
    max-inline-size: var(--tg-measure);
  }
  .names span {
    white-space: nowrap;
  }
  .lang,
  .quiet {
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  dl {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: var(--tg-space-1) var(--tg-space-4);
    margin: var(--tg-space-4) 0 0;
    max-inline-size: var(--tg-measure);
  }
  dt {
    font: 700 var(--tg-type-small) / 1.75 var(--tg-font-label);
  }
  dd {
    margin: 0;
  }
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  ul.plain > li {
    padding-block: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-hairline);
  }
  .index {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(19rem, 100%), 1fr));
    gap: 0 var(--tg-space-6);
    margin-block-start: var(--tg-space-5);
  }
  .index a {
    display: grid;
    grid-template-columns: 1.7rem minmax(0, 1fr);
    gap: var(--tg-space-3);
    align-items: center;
    min-block-size: var(--tg-touch);
    padding-block: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-hairline);
    color: inherit;
    text-decoration: none;
  }
  .index a:hover {
    border-block-end-color: var(--tg-ink);
  }
  .index strong {
    font-weight: 600;
  }
  .dab {
    inline-size: 1.7rem;
    block-size: 2.2rem;
    background: var(--_dab, transparent);
    border: 1px solid var(--tg-hairline);
    forced-color-adjust: none;
  }
  .cloths {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(7.5rem, 1fr));
    gap: var(--tg-space-5) var(--tg-space-4);
    --tg-swatch-size: 5rem;
  }
  .cloths a {
    display: block;
    color: inherit;
    font: var(--tg-type-small) / 1.35 var(--tg-font-label);
  }
  .months {
    display: grid;
    grid-template-columns: repeat(12, minmax(0, 1fr));
    max-inline-size: 34rem;
    border: 1px solid var(--tg-edge);
  }
  .months li {
    padding-block: var(--tg-space-1);
    text-align: center;
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
    color: var(--tg-ink-quiet);
  }
  .months li + li {
    border-inline-start: 1px solid var(--tg-hairline);
  }
  .months li.gather {
    background: var(--tg-inverse);
    color: var(--tg-ink-inverse);
    font-weight: 700;
  }
  .caution {
    padding: var(--tg-space-3) var(--tg-space-4);
    border: var(--tg-line-2) solid var(--tg-ink);
    max-inline-size: var(--tg-measure);
  }
  .caution h2 {
    border: 0;
    margin: 0;
    padding: 0;
  }
  mark {
    background: none;
    color: inherit;
    font-weight: 700;
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  :is(a, input, summary):focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  input {
    font: inherit;
    color: inherit;
    background: var(--tg-surface);
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-3);
    min-block-size: var(--tg-touch);
    inline-size: min(24rem, 100%);
    box-sizing: border-box;
  }
  summary {
    min-block-size: 1.75rem;
    cursor: pointer;
    font: var(--tg-type-small) / 1.75 var(--tg-font-label);
  }
  @media print {
    :host {
      font-size: 9pt;
      line-height: 1.35;
    }
    input {
      display: none;
    }
    section {
      margin-block: 4mm;
    }
    ul.plain > li {
      padding-block: 0.8mm;
      break-inside: avoid;
    }
    .cloths {
      --tg-swatch-size: 14mm;
      grid-template-columns: repeat(7, 1fr);
      gap: 3mm;
    }
    details {
      display: none;
    }
  }
`;
