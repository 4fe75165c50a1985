import { css } from 'lit';
import { pageStyles } from '../shared/page.styles.ts';

const own = css`
  h1 {
    margin: 0;
  }
  section {
    margin-block: var(--tg-space-6);
  }
  .lines > li {
    padding-block: var(--tg-space-2);
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
    max-inline-size: var(--tg-measure);
  }
  .steps > li {
    counter-increment: step;
    display: grid;
    grid-template-columns: 2rem minmax(0, 1fr);
    padding-block: var(--tg-space-1);
    max-inline-size: var(--tg-measure);
  }
  .steps > li::before {
    content: counter(step);
    font: 700 var(--tg-type-small) / 1.85 var(--tg-font-label);
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-1) var(--tg-space-5);
    margin-block: var(--tg-space-3);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .ways a,
  .pick label {
    display: inline-flex;
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  dl {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: var(--tg-space-1) var(--tg-space-4);
    margin: var(--tg-space-4) 0;
    font: var(--tg-type-base) / 1.4 var(--tg-font-label);
  }
  dt {
    color: var(--tg-ink-quiet);
  }
  dd {
    margin: 0;
  }
  .cloths {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(11rem, 100%), 1fr));
    gap: var(--tg-space-5);
    --tg-swatch-size: 6rem;
  }
  .cloths > li {
    font: var(--tg-type-small) / 1.45 var(--tg-font-label);
    break-inside: avoid;
  }
  .cloths strong,
  .cloths a {
    display: block;
  }
  .index > li {
    display: grid;
    grid-template-columns: 1.75rem 1.7rem minmax(0, 1fr);
    gap: var(--tg-space-3);
    align-items: center;
    padding-block: var(--tg-space-2);
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
  }
  .index {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(24rem, 100%), 1fr));
    gap: 0 var(--tg-space-6);
  }
  input[type='checkbox'] {
    inline-size: 1.5rem;
    block-size: 1.5rem;
    margin: 0;
  }
  .dab {
    inline-size: 1.7rem;
    block-size: 2.2rem;
    background: var(--_dab, transparent);
    border: var(--tg-line-1) solid var(--tg-hairline);
    forced-color-adjust: none;
    print-color-adjust: exact;
  }
  .compare {
    position: sticky;
    inset-block-end: 0;
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3) var(--tg-space-5);
    align-items: center;
    padding-block: var(--tg-space-3);
    background: var(--tg-ground);
    border-block-start: var(--tg-line-2) solid var(--tg-ink);
    font: var(--tg-type-base) / 1.4 var(--tg-font-label);
  }
  h1 + .cloths {
    margin-block-start: var(--tg-space-5);
  }
  .wide {
    overflow-x: auto;
  }
  tbody th {
    font-weight: 400;
    color: var(--tg-ink-quiet);
  }
  .says {
    font: var(--tg-type-1) / 1.5 var(--tg-font-reading);
  }
  .care {
    padding: var(--tg-space-3) var(--tg-space-4);
    border: var(--tg-line-2) solid var(--tg-ink);
    max-inline-size: var(--tg-measure);
  }
  .care p {
    margin: 0 0 var(--tg-space-2);
  }
  summary {
    min-block-size: var(--tg-touch);
    align-content: center;
    cursor: pointer;
    font: var(--tg-type-small) / 1.75 var(--tg-font-label);
  }
  @media (max-width: 40rem) {
    h1 {
      font-size: var(--tg-type-3);
    }
  }
  @media print {
    :host {
      font-size: 9.5pt;
      line-height: 1.35;
    }
    h1 {
      font-size: 18pt;
    }
    .ways,
    .compare,
    input {
      display: none;
    }
    section {
      margin-block: 4mm;
      break-inside: avoid;
    }
    .cloths {
      --tg-swatch-size: 16mm;
      grid-template-columns: repeat(4, 1fr);
      gap: 4mm;
    }
    .index > li {
      grid-template-columns: 6mm minmax(0, 1fr);
      break-inside: avoid;
    }
    .dab {
      inline-size: 6mm;
      block-size: 8mm;
    }
  }
`;

export const styles = [pageStyles, own];
