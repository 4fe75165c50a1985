import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  .verdict {
    display: grid;
    grid-template: 'head lead' auto 'reasons lead' 1fr / minmax(0, 1fr) auto;
    column-gap: var(--tg-space-5);
    align-items: start;
    margin-block: var(--tg-space-6) var(--tg-space-5);
    padding-block-start: var(--tg-space-5);
    border-block-start: var(--tg-line-2) solid var(--tg-ink);
  }
  .head {
    grid-area: head;
  }
  .lead {
    grid-area: lead;
  }
  .reasons {
    grid-area: reasons;
  }
  h2.word {
    margin: 0;
    font: 600 var(--tg-type-5) / 1.1 var(--tg-font-reading);
    letter-spacing: -0.01em;
  }
  .why {
    margin: var(--tg-space-3) 0 0;
    font-size: var(--tg-type-1);
    line-height: 1.45;
    max-inline-size: 34em;
  }
  .means {
    margin: var(--tg-space-2) 0 0;
    color: var(--tg-ink-quiet);
    max-inline-size: var(--tg-measure);
  }
  .because {
    margin: var(--tg-space-4) 0 0;
    padding-inline-start: 1.1em;
    max-inline-size: var(--tg-measure);
  }
  .because li {
    margin-block-end: var(--tg-space-1);
  }
  .sides {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(24rem, 100%), 1fr));
    gap: var(--tg-space-5) var(--tg-space-7);
    margin-block: var(--tg-space-6);
  }
  h3 {
    margin: 0 0 var(--tg-space-3);
    padding-block-end: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-ink);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  ul.lines {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  ul.lines > li {
    padding-block: var(--tg-space-3);
    border-block-end: 1px solid var(--tg-hairline);
  }
  .says {
    font-weight: 600;
  }
  a.small {
    display: inline-block;
    min-block-size: 1.5rem;
  }
  .small {
    display: block;
    font: var(--tg-type-small) / 1.45 var(--tg-font-label);
    color: var(--tg-ink-quiet);
    font-variant-numeric: tabular-nums;
  }
  .doubt {
    font-weight: 700;
    color: var(--tg-ink);
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  a:focus-visible,
  button:focus-visible,
  summary:focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  section.block {
    margin-block: var(--tg-space-6);
  }
  .cloths {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(21rem, 100%), 1fr));
    gap: var(--tg-space-5) var(--tg-space-6);
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .cloth {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: var(--tg-space-4);
    align-items: start;
  }
  .cloth tg-swatch {
    --tg-swatch-size: 5.25rem;
  }
  .beside {
    padding-block-start: var(--tg-space-3);
    border-block-start: 1px solid var(--tg-ink);
  }
  .beside .name {
    margin: 0;
    font-weight: 600;
    line-height: 1.3;
  }
  .tools {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3);
    margin-block: var(--tg-space-5);
  }
  .tools button {
    font: var(--tg-type-base) / 1.3 var(--tg-font-label);
    color: inherit;
    background: none;
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-4);
    min-block-size: var(--tg-touch);
    cursor: pointer;
  }
  summary {
    cursor: pointer;
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
    min-block-size: 1.75rem;
  }
  .lead tg-swatch {
    --tg-swatch-size: 8.5rem;
  }
  .again {
    margin: 0;
  }
  .apart {
    margin-block: var(--tg-space-4) 0;
  }
  .besides section.block {
    margin: 0;
  }
  .sources {
    margin: 0;
    padding: 0;
    list-style: none;
    font: var(--tg-type-small) / 1.45 var(--tg-font-label);
    overflow-wrap: anywhere;
  }
  .sources li {
    padding-block: var(--tg-space-1);
    max-inline-size: var(--tg-measure);
  }
  @media (max-width: 40rem) {
    h2.word {
      font-size: var(--tg-type-4);
    }
    .verdict {
      grid-template: 'head lead' auto 'reasons reasons' auto / minmax(0, 1fr) auto;
      margin-block-start: var(--tg-space-4);
      column-gap: var(--tg-space-3);
    }
    .why {
      font-size: var(--tg-type-base);
    }
    .lead tg-swatch {
      --tg-swatch-size: 5.5rem;
    }
  }
  @media print {
    :host {
      font-size: 9pt;
      line-height: 1.35;
    }
    .tools {
      display: none;
    }
    .verdict {
      margin-block: 4mm 3mm;
      padding-block-start: 3mm;
    }
    h2.word {
      font-size: 22pt;
    }
    .why {
      font-size: 11pt;
      margin-block-start: 1.5mm;
    }
    .because {
      margin-block-start: 1.5mm;
    }
    .sides {
      grid-template-columns: 1fr 1fr;
      gap: 2mm 8mm;
      margin-block: 3mm;
    }
    h3 {
      font-size: 9.5pt;
      margin-block-end: 1mm;
      padding-block-end: 0.5mm;
    }
    ul.lines > li {
      padding-block: 1mm;
      break-inside: avoid;
    }
    .small {
      font-size: 7.5pt;
      line-height: 1.3;
    }
    section.block {
      margin-block: 3mm;
      break-inside: avoid;
    }
    .apart {
      margin-block: 1mm 0;
    }
    .cloths {
      grid-template-columns: repeat(3, 1fr);
      gap: 3mm 5mm;
    }
    .cloth {
      gap: 3mm;
    }
    .cloth tg-swatch {
      --tg-swatch-size: 15mm;
    }
    .lead tg-swatch {
      --tg-swatch-size: 20mm;
    }
    .sources {
      columns: 2;
      column-gap: 8mm;
      font-size: 7pt;
      line-height: 1.3;
    }
    .sources li {
      padding-block: 0.2mm;
      break-inside: avoid;
    }
    details {
      display: none;
    }
  }
`;
