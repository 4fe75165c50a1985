import { css } from 'lit';
import { pageStyles } from '../shared/page.styles.ts';

const own = css`
  h3 {
    margin: 0;
    font: 600 var(--tg-type-1) / 1.3 var(--tg-font-reading);
  }
  h4 {
    margin: var(--tg-space-4) 0 var(--tg-space-1);
    font: 700 var(--tg-type-small) / 1.4 var(--tg-font-label);
  }
  section {
    margin-block: var(--tg-space-6);
  }
  p {
    margin: var(--tg-space-1) 0;
  }
  em {
    font-style: italic;
  }
  .items > li,
  .baths > li {
    padding-block: var(--tg-space-4);
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
  }
  .item {
    display: grid;
    grid-template-columns: minmax(14rem, 2fr) repeat(4, minmax(6.5rem, 1fr)) auto;
    gap: var(--tg-space-3);
    align-items: end;
  }
  .open {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3);
    margin-block-start: var(--tg-space-3);
  }
  .open .field {
    inline-size: 11rem;
  }
  .asked {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3) var(--tg-space-5);
    align-items: end;
    margin-block-start: var(--tg-space-4);
  }
  .asked .field {
    inline-size: 9rem;
  }
  .baths > li {
    display: grid;
    grid-template-columns: 3rem minmax(0, 1fr);
    gap: var(--tg-space-2);
  }
  .nth {
    font: 600 var(--tg-type-3) / 1 var(--tg-font-reading);
  }
  .two {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    gap: var(--tg-space-3) var(--tg-space-6);
    margin-block-start: var(--tg-space-3);
  }
  .weights > li,
  .shop > li {
    display: grid;
    grid-template-columns: 1.35rem 7.5rem minmax(0, 1fr);
    gap: var(--tg-space-2);
    align-items: baseline;
    padding-block: var(--tg-space-1);
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
  }
  .shop > li {
    grid-template-columns: 1.35rem minmax(0, 1fr) minmax(0, 1fr);
  }
  .box {
    inline-size: 0.9rem;
    block-size: 0.9rem;
    border: var(--tg-line-1) solid var(--tg-edge);
    align-self: center;
  }
  .amount {
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
    font-variant-numeric: tabular-nums;
  }
  .step {
    margin-block-end: var(--tg-space-2);
  }
  .step .care {
    margin: var(--tg-space-1) 0 0;
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
    font: var(--tg-type-small) / 1.45 var(--tg-font-label);
  }
  .times {
    display: grid;
    gap: var(--tg-space-2);
  }
  .times > li {
    display: grid;
    grid-template-columns: minmax(10rem, 1fr) minmax(0, 2fr);
    gap: 0 var(--tg-space-4);
    align-items: center;
    font: var(--tg-type-small) / 1.4 var(--tg-font-label);
  }
  .track {
    position: relative;
    block-size: 0.6rem;
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
  }
  .track span {
    position: absolute;
    inset-block: 0;
    inset-inline-start: calc(var(--_from) * 100%);
    inline-size: max(2px, calc((var(--_to) - var(--_from)) * 100%));
    background: var(--tg-ink);
  }
  .clock {
    grid-column: 2;
    color: var(--tg-ink-quiet);
    font-variant-numeric: tabular-nums;
  }
  .months {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(13rem, 100%), 1fr));
    gap: var(--tg-space-4) var(--tg-space-5);
    margin-block: var(--tg-space-4);
  }
  .plants > li {
    padding-block: var(--tg-space-2);
    border-block-start: var(--tg-line-1) solid var(--tg-hairline);
    break-inside: avoid;
  }
  .carelist {
    padding: var(--tg-space-3) var(--tg-space-4);
    border: var(--tg-line-2) solid var(--tg-ink);
  }
  .carelist > div {
    columns: 2 24rem;
    column-gap: var(--tg-space-6);
  }
  .carelist li {
    break-inside: avoid;
    margin-block-end: var(--tg-space-2);
    font: var(--tg-type-small) / 1.45 var(--tg-font-label);
  }
  .problem {
    font-weight: 700;
  }
  @media (max-width: 56rem) {
    .item {
      grid-template-columns: 1fr 1fr;
    }
    .item > :first-child {
      grid-column: 1 / -1;
    }
    .two {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  @media (max-width: 40rem) {
    .times > li {
      grid-template-columns: minmax(0, 1fr);
    }
    .clock {
      grid-column: 1;
    }
    .baths > li {
      grid-template-columns: 2rem minmax(0, 1fr);
    }
  }
  .paper {
    display: none;
  }
  @media print {
    :host {
      font-size: 9.5pt;
      line-height: 1.35;
    }
    h1 {
      font-size: 17pt;
    }
    .screen {
      display: none;
    }
    .paper {
      display: block;
      margin: 1mm 0 0;
    }
    section {
      margin-block: 4mm;
    }
    .baths > li,
    .times > li,
    .months > li,
    h2 {
      break-inside: avoid;
    }
    h2 {
      break-after: avoid;
    }
    .items > li,
    .baths > li {
      padding-block: 2mm;
    }
    .track span {
      print-color-adjust: exact;
      background: var(--tg-ink);
    }
  }
`;

export const styles = [pageStyles, own];
