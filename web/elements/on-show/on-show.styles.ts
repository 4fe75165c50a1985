import { css } from 'lit';

/** What the parts of "On show" share. */
export const onShowStyles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  h1 {
    margin: 0;
    font: 600 var(--tg-type-4) / 1.15 var(--tg-font-reading);
  }
  h2 {
    margin: var(--tg-space-6) 0 var(--tg-space-3);
    padding-block-end: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-ink);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  h1 + ul {
    margin-block: var(--tg-space-4);
  }
  h3 {
    margin: 0;
    font: 600 var(--tg-type-1) / 1.25 var(--tg-font-reading);
  }
  p {
    margin-block: var(--tg-space-2);
    max-inline-size: var(--tg-measure);
  }
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  li {
    max-inline-size: var(--tg-measure);
  }
  .quiet {
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .notice {
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
  }
  .pair {
    display: grid;
    grid-template-columns: 6rem minmax(0, 1fr);
    gap: var(--tg-space-4);
    align-items: start;
    padding-block: var(--tg-space-4);
    border-block-end: 1px solid var(--tg-hairline);
    --tg-swatch-size: 4rem;
  }
  blockquote {
    margin: var(--tg-space-2) 0;
    max-inline-size: 48ch;
    font-size: var(--tg-type-base);
  }
  mark {
    background: none;
    color: inherit;
    text-decoration: underline;
    text-decoration-thickness: var(--tg-line-1);
    text-underline-offset: 0.25em;
  }
  mark.faulty {
    text-decoration-style: wavy;
    text-decoration-thickness: var(--tg-line-2);
  }
  label {
    display: inline-grid;
    gap: var(--tg-space-1);
    font: var(--tg-type-small) / 1.3 var(--tg-font-label);
  }
  input,
  select {
    min-block-size: var(--tg-touch);
    padding: var(--tg-space-2);
    border: 1px solid var(--tg-edge);
    border-radius: 0;
    background: var(--tg-surface);
    color: var(--tg-ink);
    font: var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  input[type='number'] {
    inline-size: 6rem;
  }
  button[type='submit'] {
    min-block-size: var(--tg-touch);
    padding-inline: var(--tg-space-4);
  }
  summary {
    padding-block: var(--tg-space-2);
  }
  .asked {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3) var(--tg-space-4);
    align-items: last baseline;
    margin-block: var(--tg-space-4);
  }
  .asked > button:not(.plain) {
    min-block-size: var(--tg-touch);
    padding-inline: var(--tg-space-4);
  }
  .asked > a {
    padding-block: var(--tg-space-2);
    font: var(--tg-type-small) / 1.35 var(--tg-font-label);
    text-decoration-thickness: var(--tg-line-1);
    text-underline-offset: 0.25em;
  }
  .scroll {
    overflow-x: auto;
  }
  button.plain {
    min-block-size: var(--tg-touch);
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  @media print {
    :host {
      font-size: 9.5pt;
      line-height: 1.4;
    }
    h1 {
      font-size: 18pt;
    }
    h2 {
      margin-block: 5mm 2mm;
      break-after: avoid;
    }
    p,
    li {
      max-inline-size: none;
    }
    li,
    tr,
    .pair {
      break-inside: avoid;
    }
    .screen {
      display: none;
    }
  }
`;
