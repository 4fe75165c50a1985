import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
    color: var(--tg-ink);
  }
  .alike,
  .side {
    margin: 0;
    overflow-wrap: anywhere;
  }
  .alike,
  .words {
    white-space: pre-wrap;
  }
  .alike {
    padding-block: var(--tg-space-1);
    color: var(--tg-ink-quiet);
  }
  .hidden {
    margin: 0;
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  fieldset {
    min-inline-size: 0;
    margin: var(--tg-space-3) 0;
    padding: var(--tg-space-2) 0 var(--tg-space-3);
    border: 0;
    border-block: var(--tg-line-1) solid var(--tg-ink);
  }
  legend {
    float: inline-start;
    inline-size: 100%;
    padding: 0 0 var(--tg-space-2);
    font: 700 var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .sides {
    clear: both;
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 16rem), 1fr));
    gap: var(--tg-space-3) var(--tg-space-5);
  }
  .side {
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-1) solid var(--tg-edge);
  }
  .taken {
    border-inline-start-width: var(--tg-line-3);
    border-inline-start-color: var(--tg-ink);
  }
  h4 {
    margin: 0 0 var(--tg-space-1);
    font: 400 var(--tg-type-small) / 1.5 var(--tg-font-label);
    color: var(--tg-ink-quiet);
  }
  strong {
    text-decoration: underline;
    text-decoration-thickness: var(--tg-line-1);
    text-underline-offset: 0.2em;
  }
  .choices,
  .tools {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-5);
    align-items: center;
    margin-block-start: var(--tg-space-2);
    font: var(--tg-type-base) / 1.4 var(--tg-font-label);
  }
  label {
    display: inline-flex;
    gap: var(--tg-space-2);
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  input {
    accent-color: var(--tg-ink);
  }
  button {
    min-block-size: var(--tg-touch);
  }
  .keep {
    padding: var(--tg-space-2) var(--tg-space-4);
    border: var(--tg-line-2) solid var(--tg-ink);
    border-radius: 2px;
    background: none;
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
    cursor: pointer;
  }
  p {
    margin: 0;
  }
  @media print {
    .tools {
      display: none;
    }
  }
`;
