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
  ul,
  ol {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .index {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(20rem, 100%), 1fr));
    gap: 0 var(--tg-space-6);
    margin-block-start: var(--tg-space-5);
  }
  .index a {
    display: grid;
    grid-template-columns: 1.7rem minmax(0, 1fr);
    gap: var(--tg-space-3);
    align-items: center;
    padding-block: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-hairline);
    color: inherit;
    text-decoration: none;
  }
  .index a:hover {
    border-block-end-color: var(--tg-ink);
  }
  .dab {
    inline-size: 1.7rem;
    block-size: 2.2rem;
    background: var(--_dab, transparent);
    border: 1px solid var(--tg-hairline);
    forced-color-adjust: none;
  }
  .paper {
    display: none;
  }
  .quiet {
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .mass {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3);
    align-items: end;
    margin-block: var(--tg-space-4);
    font: var(--tg-type-base) / 1.4 var(--tg-font-label);
  }
  :host([large]) {
    font-size: 1.6rem;
  }
  :host([large]) .amount {
    font-size: 2rem;
  }
  .settled {
    display: grid;
    gap: var(--tg-space-1);
    justify-items: start;
    margin: var(--tg-space-2) 0 0;
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  select {
    box-sizing: border-box;
    max-inline-size: 100%;
    min-block-size: var(--tg-touch);
    padding: var(--tg-space-2) var(--tg-space-3);
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    background: var(--tg-surface);
    color: inherit;
    font: inherit;
  }
  .spread {
    margin: var(--tg-space-3) 0;
    display: grid;
    grid-template-columns: 8.5rem minmax(0, 1fr);
    gap: 0 var(--tg-space-4);
    font: var(--tg-type-small) / 1.6 var(--tg-font-label);
    font-variant-numeric: tabular-nums;
  }
  .spread dt {
    grid-column: 1;
    font-weight: 700;
  }
  .spread dd {
    grid-column: 2;
    margin: 0;
  }
  .tick {
    inline-size: 1.35rem;
    min-block-size: 1.35rem;
    margin-inline-end: var(--tg-space-2);
  }
  .atstep {
    display: block;
    font: 700 var(--tg-type-small) / 1.45 var(--tg-font-label);
  }
  .on {
    display: inline-flex;
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  input {
    font: inherit;
    color: inherit;
    background: var(--tg-surface);
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-3);
    min-block-size: var(--tg-touch);
    inline-size: 7rem;
    box-sizing: border-box;
  }
  .ingredients > li {
    display: grid;
    grid-template-columns: 8.5rem minmax(0, 1fr);
    gap: var(--tg-space-4);
    padding-block: var(--tg-space-3);
    border-block-end: 1px solid var(--tg-hairline);
  }
  .amount {
    font: 700 var(--tg-type-1) / 1.3 var(--tg-font-label);
    font-variant-numeric: tabular-nums;
  }
  .steps {
    counter-reset: step;
    max-inline-size: var(--tg-measure);
  }
  .steps > li {
    counter-increment: step;
    display: grid;
    grid-template-columns: 2rem minmax(0, 1fr);
    padding-block: var(--tg-space-2);
  }
  .steps > li::before {
    content: counter(step);
    font: 700 var(--tg-type-base) / 1.65 var(--tg-font-label);
  }
  .care {
    padding: var(--tg-space-3) var(--tg-space-4);
    border: var(--tg-line-2) solid var(--tg-ink);
    max-inline-size: var(--tg-measure);
  }
  .care p {
    margin: 0 0 var(--tg-space-2);
  }
  .skeins {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(7.5rem, 1fr));
    gap: var(--tg-space-5) var(--tg-space-4);
    --tg-swatch-size: 5rem;
  }
  .foretold {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(22rem, 100%), 1fr));
    gap: var(--tg-space-5);
    --tg-swatch-size: 5rem;
  }
  .foretold li {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3);
    align-items: start;
  }
  .foretold li > span {
    flex: 1 1 8rem;
    display: grid;
    font: var(--tg-type-small) / 1.35 var(--tg-font-label);
  }
  .skeins a {
    display: block;
    font: var(--tg-type-small) / 1.35 var(--tg-font-label);
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  button {
    font: inherit;
    background: none;
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-4);
    min-block-size: var(--tg-touch);
    cursor: pointer;
  }
  summary {
    min-block-size: 1.75rem;
    cursor: pointer;
    font: var(--tg-type-small) / 1.75 var(--tg-font-label);
  }
  @media (max-width: 40rem) {
    .ingredients > li {
      grid-template-columns: minmax(0, 1fr);
      gap: 0;
    }
    .steps {
      font-size: var(--tg-type-1);
    }
  }
  :host([large]) .steps {
    font-size: inherit;
  }
  @media print {
    :host {
      font-size: 9pt;
      line-height: 1.3;
    }
    h1 {
      font-size: 16pt;
    }
    h2 {
      margin-block-end: 1.5mm;
      padding-block-end: 0.5mm;
    }
    p {
      margin-block: 0.5mm;
    }
    .quiet,
    .atstep,
    .skeins a {
      font-size: 7pt;
      line-height: 1.25;
    }
    .doing {
      display: grid;
      grid-template-columns: minmax(0, 2.4fr) minmax(0, 1fr);
      gap: 0 6mm;
    }
    .steps {
      max-inline-size: none;
    }
    .steps > li {
      grid-template-columns: 6mm minmax(0, 1fr);
      padding-block: 0.3mm;
    }
    .steps > li::before {
      line-height: 1.3;
    }
    .care {
      grid-column: 1 / -1;
      max-inline-size: none;
      padding: 1.5mm 3mm 0.5mm;
      columns: 3;
      column-gap: 5mm;
      break-inside: avoid;
    }
    .care p {
      margin: 0 0 1mm;
      max-inline-size: none;
      break-inside: avoid;
      font-size: 7.5pt;
      line-height: 1.2;
    }
    .skeins .quiet,
    .way,
    .mass,
    .settled,
    .spread,
    button {
      display: none;
    }
    section {
      margin-block: 1.5mm;
    }
    .ingredients {
      display: grid;
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      gap: 0 6mm;
    }
    .ingredients > li {
      grid-template-columns: 20mm minmax(0, 1fr);
      gap: 1mm;
      padding-block: 0.5mm;
      break-inside: avoid;
    }
    .amount {
      font-size: 11pt;
    }
    .paper {
      display: block;
      font: 7pt / 1.25 var(--tg-font-label);
    }
    .links {
      display: inline-block;
      margin-inline-end: 6mm;
    }
    .skeins {
      --tg-swatch-size: 10mm;
      grid-template-columns: repeat(9, 1fr);
      gap: 2mm;
    }
    .foretold {
      --tg-swatch-size: 8mm;
      grid-template-columns: repeat(3, minmax(0, 1fr));
      gap: 2mm 6mm;
    }
    .foretold li {
      flex-wrap: nowrap;
      gap: 2mm;
    }
    .foretold tg-swatch::part(remark) {
      margin: 0;
      font-size: 6.75pt;
      line-height: 1.2;
    }
    .foretold li > span {
      flex-basis: 0;
      font-size: 6.75pt;
      line-height: 1.2;
    }
    .skeins > :nth-child(n + 10),
    .foretold > :nth-child(n + 4),
    details {
      display: none;
    }
  }
`;
