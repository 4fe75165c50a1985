import { css } from 'lit';
import { pressStyles } from '../shared/press.styles.ts';

const own = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-label) var(--tg-font-label);
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-4);
    align-items: end;
    margin-block-start: var(--tg-space-4);
  }
  .row:first-child {
    margin-block-start: 0;
  }
  label {
    display: grid;
    /* A long choice does not push past the page. */
    grid-template-columns: minmax(0, 1fr);
    max-inline-size: 100%;
    gap: var(--tg-space-1);
  }
  :is(input:not([type='range'], [type='file']), select, textarea) {
    font: inherit;
    color: inherit;
    background: var(--tg-ground);
    border: var(--tg-line-1) solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-3);
    min-block-size: var(--tg-touch);
    max-inline-size: 100%;
  }
  input[type='text'] {
    inline-size: 22em;
  }
  input[type='number'] {
    inline-size: 6em;
  }
  input[type='file'] {
    font: inherit;
    max-inline-size: 100%;
    min-block-size: var(--tg-touch);
  }
  textarea {
    inline-size: 22em;
    min-block-size: 8em;
  }
  .press:hover {
    border-color: var(--tg-ink);
  }
  .press:disabled {
    color: var(--tg-ink-quiet);
    cursor: default;
    box-shadow: none;
  }
  .hint {
    margin: var(--tg-space-2) 0 0;
    color: var(--tg-ink-quiet);
    font-size: var(--tg-type-small);
  }
  .refused {
    margin: var(--tg-space-3) 0 0;
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
  }
  .found {
    display: flex;
    gap: var(--tg-space-4);
    align-items: start;
    margin-block-start: var(--tg-space-4);
  }
  .found p {
    margin: 0;
  }
  .patch {
    flex: none;
    inline-size: 5rem;
    block-size: 6.5rem;
    background: var(--_patch);
    border: var(--tg-line-1) solid var(--tg-edge);
    forced-color-adjust: none;
  }
  @media (max-width: 40rem) {
    :is(input[type='text'], textarea, select),
    .row > label {
      inline-size: 100%;
    }
  }
`;

/** What every way of giving a colour looks like. */
export const colourInputStyles = [pressStyles, own];
