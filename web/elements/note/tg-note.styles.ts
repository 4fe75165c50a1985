import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  article {
    max-inline-size: var(--tg-measure);
  }
  header {
    margin-block-end: var(--tg-space-5);
  }
  h1 {
    margin: 0;
    font: 600 var(--tg-type-4) / 1.15 var(--tg-font-reading);
    text-wrap: balance;
  }
  h2 {
    margin: var(--tg-space-6) 0 var(--tg-space-3);
    padding-block-end: var(--tg-space-2);
    border-block-end: var(--tg-line-1) solid var(--tg-ink);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  .body h2,
  .body h3,
  .body h4 {
    margin: var(--tg-space-5) 0 var(--tg-space-2);
    padding: 0;
    border: 0;
    font: 600 var(--tg-type-1) / 1.3 var(--tg-font-reading);
  }
  .body h4 {
    font-size: var(--tg-type-base);
    font-style: italic;
  }
  p {
    margin: 0 0 var(--tg-space-3);
    text-wrap: pretty;
    hanging-punctuation: first;
  }
  .quiet,
  .small {
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .kind {
    margin: 0 0 var(--tg-space-1);
  }
  .latin {
    margin: var(--tg-space-1) 0 0;
    font-size: var(--tg-type-1);
    font-style: italic;
  }
  .names {
    margin: var(--tg-space-2) 0 0;
  }
  .names span {
    white-space: nowrap;
  }
  .steps {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-5);
    margin: var(--tg-space-3) 0 0;
    padding: 0;
    list-style: none;
    font: var(--tg-type-small) / 1.35 var(--tg-font-label);
  }
  .steps a {
    display: inline-flex;
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  dl {
    display: grid;
    grid-template-columns: minmax(6.5rem, max-content) minmax(0, 1fr);
    gap: var(--tg-space-1) var(--tg-space-4);
    margin: 0 0 var(--tg-space-4);
  }
  dt {
    font: 700 var(--tg-type-small) / 1.86 var(--tg-font-label);
  }
  dd {
    margin: 0;
  }
  ul.lines,
  ul.cloths {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  ul.lines > li {
    padding-block: var(--tg-space-2);
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
  }
  ol {
    margin: 0 0 var(--tg-space-3);
    padding-inline-start: 1.6em;
  }
  ol > li {
    padding-block: var(--tg-space-1);
  }
  ol > li::marker {
    font: var(--tg-type-small) var(--tg-font-label);
    font-variant-numeric: tabular-nums;
  }
  .body ul {
    padding-inline-start: 1.2em;
    list-style: '– ';
  }
  .body li > p {
    margin: 0;
  }
  blockquote {
    margin: 0 0 var(--tg-space-3);
    padding-inline-start: var(--tg-space-4);
    border-inline-start: var(--tg-line-2) solid var(--tg-edge);
    white-space: pre-line;
  }
  .body blockquote {
    white-space: normal;
  }
  pre {
    margin: 0 0 var(--tg-space-3);
    padding: var(--tg-space-3);
    overflow-x: auto;
    background: var(--tg-well);
    font-size: var(--tg-type-small);
    white-space: pre-wrap;
    overflow-wrap: anywhere;
  }
  .photo img {
    max-inline-size: 12rem;
    max-block-size: 12rem;
  }
  img {
    display: block;
    max-inline-size: 100%;
    margin-block: var(--tg-space-3);
    forced-color-adjust: none;
  }
  .wide {
    overflow-x: auto;
    margin-block-end: var(--tg-space-3);
  }
  hr {
    margin-block: var(--tg-space-5);
    border: 0;
    border-block-start: var(--tg-line-1) solid var(--tg-hairline);
  }
  .cloths {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(18rem, 100%), 1fr));
    gap: var(--tg-space-5);
  }
  .cloths > li {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: var(--tg-space-4);
    align-items: start;
    --tg-swatch-size: 5.25rem;
  }
  .beside {
    padding-block-start: var(--tg-space-2);
    border-block-start: var(--tg-line-1) solid var(--tg-ink);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
    font-variant-numeric: tabular-nums;
  }
  .beside strong {
    font: 600 var(--tg-type-base) / 1.3 var(--tg-font-reading);
  }
  .beside > * {
    display: block;
  }
  .caution {
    margin-block: var(--tg-space-4);
    padding: var(--tg-space-3) var(--tg-space-4);
    border: var(--tg-line-2) solid var(--tg-ink);
  }
  .caution h2 {
    margin: 0 0 var(--tg-space-1);
    padding: 0;
    border: 0;
  }
  .caution p:last-child {
    margin: 0;
  }
  .problem {
    margin: 0;
    padding-block: var(--tg-space-2);
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-2) solid var(--tg-edge);
  }
  .problem[data-severity='error'] {
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
  }
  .says::first-letter {
    text-transform: uppercase;
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
    overflow-wrap: anywhere;
  }
  td:first-child a {
    overflow-wrap: normal;
  }
  @media (max-width: 32rem) {
    dl {
      grid-template-columns: minmax(0, 1fr);
      gap: 0;
    }
    dd {
      margin-block-end: var(--tg-space-2);
    }
    h1 {
      font-size: var(--tg-type-3);
    }
  }
  @media print {
    :host {
      font-size: 9.5pt;
      line-height: 1.4;
    }
    article {
      max-inline-size: none;
    }
    .steps,
    .problems {
      display: none;
    }
    .beside {
      font-size: 7.5pt;
      line-height: 1.35;
    }
    .beside strong {
      font-size: 9pt;
      white-space: nowrap;
    }
    [part='links'] ul {
      columns: 2;
      column-gap: 8mm;
    }
    ul.lines > li {
      padding-block: 0.8mm;
    }
    h1 {
      font-size: 18pt;
    }
    h2 {
      margin-block: 5mm 2mm;
      break-after: avoid;
    }
    ul.lines > li,
    .cloths > li,
    ol > li {
      break-inside: avoid;
    }
    .cloths {
      grid-template-columns: repeat(3, 1fr);
      gap: 3mm 5mm;
    }
    .cloths > li {
      gap: 3mm;
      --tg-swatch-size: 14mm;
    }
    .body a[href^='http']::after {
      content: ' (' attr(href) ')';
      font-size: 8pt;
    }
    .visually-hidden {
      display: none;
    }
  }
`;
