import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  .form {
    display: grid;
    gap: var(--tg-space-5);
    max-inline-size: var(--tg-measure);
  }
  h2 {
    margin: var(--tg-space-3) 0 0;
    padding-block-end: var(--tg-space-2);
    border-block-end: var(--tg-line-1) solid var(--tg-ink);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  fieldset {
    display: grid;
    gap: var(--tg-space-2);
    min-inline-size: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }
  legend {
    padding: 0;
    margin-block-end: var(--tg-space-1);
    font: 700 var(--tg-type-small) / 1.35 var(--tg-font-label);
  }
  dl {
    display: grid;
    grid-template-columns: max-content minmax(0, 1fr);
    gap: var(--tg-space-1) var(--tg-space-4);
    margin: 0;
  }
  dt {
    font: 700 var(--tg-type-small) / 1.86 var(--tg-font-label);
  }
  dd {
    margin: 0;
    overflow-wrap: anywhere;
  }
  .body textarea {
    min-block-size: 12rem;
  }
`;
