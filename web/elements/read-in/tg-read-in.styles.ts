import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    max-inline-size: var(--tg-measure);
  }
  h1 {
    margin-block: 0 var(--tg-space-4);
    font-size: var(--tg-type-3);
    line-height: var(--tg-leading-tight);
  }
  h2 {
    margin-block: var(--tg-space-5) var(--tg-space-2);
    font-size: var(--tg-type-1);
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3) var(--tg-space-5);
    margin-block: var(--tg-space-4);
    font-family: var(--tg-font-label);
  }
  label {
    display: inline-flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2);
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  input[type='file'] {
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
  button {
    min-block-size: var(--tg-touch);
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
