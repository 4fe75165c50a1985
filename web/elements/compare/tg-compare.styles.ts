import { css } from 'lit';

export const styles = css`
  .line {
    margin-block: var(--tg-space-5);
    --tg-swatch-size: 3.25rem;
  }
  .changes {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(26rem, 100%), 1fr));
    gap: var(--tg-space-5) var(--tg-space-7);
    margin-block: var(--tg-space-5);
  }
  .changes li,
  dl > div {
    padding-block: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-hairline);
    overflow-wrap: anywhere;
  }
  h3 {
    margin: var(--tg-space-4) 0 0;
    font: 700 var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  summary {
    inline-size: fit-content;
    padding-block: var(--tg-space-3);
    font: var(--tg-type-small) / 1.4 var(--tg-font-label);
    cursor: pointer;
  }
  dl {
    margin: 0;
  }
  dt {
    font-weight: 600;
  }
  dd {
    margin: 0;
  }
  dd.was {
    color: var(--tg-ink-quiet);
  }
  .sources {
    columns: 2 24rem;
    column-gap: var(--tg-space-7);
  }
  .sources li {
    padding-block: var(--tg-space-1);
    break-inside: avoid;
    font: var(--tg-type-small) / 1.4 var(--tg-font-label);
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3) var(--tg-space-5);
    align-items: center;
    margin-block: var(--tg-space-4);
    font: var(--tg-type-base) / 1.4 var(--tg-font-label);
  }
  .ways label {
    display: inline-flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2);
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  .ways input {
    max-inline-size: 100%;
    font: inherit;
    color: inherit;
  }
  @media print {
    .line {
      margin-block: 3mm;
      --tg-swatch-size: 10mm;
    }
    .changes {
      grid-template-columns: 1fr 1fr;
      gap: 3mm 8mm;
      margin-block: 3mm;
    }
    .changes li,
    dl > div {
      padding-block: 0.6mm;
      break-inside: avoid;
    }
    .changes,
    .sources {
      line-height: 1.25;
    }
    .sources {
      columns: 2;
    }
    h2,
    h3 {
      break-after: avoid;
    }
    h3 {
      margin-block-start: 2mm;
      font-size: 8pt;
    }
    .sources li {
      padding-block: 0.3mm;
      font-size: 7.5pt;
    }
    .ways,
    .elsewhere {
      display: none;
    }
  }
`;
