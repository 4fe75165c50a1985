import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    max-inline-size: var(--tg-measure);
  }
  h2 {
    margin-block: 0 var(--tg-space-3);
    font: 600 var(--tg-type-2) / 1.2 var(--tg-font-reading);
  }
  h3 {
    margin-block: var(--tg-space-5) var(--tg-space-2);
    font: 700 var(--tg-type-base) / 1.4 var(--tg-font-label);
  }
  p {
    margin: 0 0 var(--tg-space-4);
  }
  .ways {
    display: grid;
    gap: var(--tg-space-4);
    justify-items: start;
    margin-block: var(--tg-space-4);
    font-family: var(--tg-font-label);
  }
  .ways label {
    display: grid;
    gap: var(--tg-space-1);
    /* The name of a chosen file must not widen a phone's page. */
    max-inline-size: 100%;
  }
  fieldset label {
    display: flex;
    gap: var(--tg-space-2);
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  input[type='radio'] {
    flex: none;
    margin: 0;
  }
  input[type='file'] {
    min-inline-size: 0;
    max-inline-size: 100%;
    font: inherit;
    color: inherit;
  }
  fieldset {
    margin: 0;
    padding: 0;
    border: 0;
    font-family: var(--tg-font-label);
  }
  legend {
    padding: 0;
  }
  button {
    min-block-size: var(--tg-touch);
    padding: var(--tg-space-1) var(--tg-space-4);
    font: 600 var(--tg-type-base) / 1.3 var(--tg-font-label);
    cursor: pointer;
  }
  @media print {
    :host {
      display: none;
    }
  }
  progress {
    inline-size: 100%;
  }
  ul {
    padding-inline-start: var(--tg-space-5);
    overflow-wrap: anywhere;
  }
  .path {
    font-family: var(--tg-font-label);
  }
`;
