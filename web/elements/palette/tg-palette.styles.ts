import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  h1 {
    margin: 0;
    font: inherit;
  }
  .line {
    margin-block: var(--tg-space-6) var(--tg-space-5);
  }
  h2 {
    margin: 0 0 var(--tg-space-3);
    padding-block-end: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-ink);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  .below {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(24rem, 100%), 1fr));
    gap: var(--tg-space-5) var(--tg-space-7);
    margin-block: var(--tg-space-5);
  }
  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .below li {
    padding-block: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-hairline);
  }
  .quiet {
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .taken {
    margin-block: var(--tg-space-5);
    padding-block-start: var(--tg-space-5);
    border-block-start: var(--tg-line-2) solid var(--tg-ink);
  }
  .taken header {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: var(--tg-space-4);
    align-items: start;
  }
  .taken h2 {
    border: 0;
    margin: 0;
    padding: 0;
    font: 600 var(--tg-type-3) / 1.2 var(--tg-font-reading);
  }
  .beside {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3) var(--tg-space-4);
    align-items: baseline;
    margin-block: var(--tg-space-3) 0;
    font: var(--tg-type-base) / 1.5 var(--tg-font-label);
  }
  .taken header > div {
    flex: 1 1 14rem;
  }
  .taken header > div,
  .beside label {
    min-inline-size: 0;
    max-inline-size: 100%;
  }
  .beside select {
    max-inline-size: min(18rem, 100%);
    min-block-size: var(--tg-touch);
    font: inherit;
    color: inherit;
    background: var(--tg-ground);
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-3);
  }
  .foretold {
    max-inline-size: var(--tg-measure);
    margin-block: var(--tg-space-4);
  }
  h3 {
    margin: 0;
    font: 600 var(--tg-type-2) / 1.25 var(--tg-font-reading);
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
  :is(button, a):focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  .problem {
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
  }
  @media print {
    :host {
      font-size: 9pt;
    }
    :is(button, .beside, .screen) {
      display: none;
    }
    .line {
      margin-block: 4mm;
      --tg-swatch-size: 17mm;
    }
    .below {
      grid-template-columns: 1fr 1fr;
      gap: 3mm 8mm;
      margin-block: 3mm;
    }
    .below li {
      padding-block: 0.8mm;
      break-inside: avoid;
    }
  }
`;
