import { css } from 'lit';

/** A sentence whose words are the controls: a select or a field that looks like an underlined word. */
export const sentenceStyles = css`
  .sentence {
    margin: 0;
    font: 400 var(--tg-type-2) / 1.75 var(--tg-font-reading);
    text-wrap: pretty;
    max-inline-size: 40em;
  }
  /* A word and the comma or full stop behind it. */
  .sentence .held {
    white-space: nowrap;
  }
  .sentence :is(select, input) {
    font: inherit;
    color: inherit;
    background: none;
    border: 0;
    border-block-end: 2px solid var(--tg-ink);
    border-radius: 0;
    padding: 0 0.1em;
    min-block-size: 1.6em;
    max-inline-size: 100%;
    field-sizing: content;
    cursor: pointer;
  }
  /* It stands in the sentence as a word like the others. */
  .sentence input::placeholder {
    color: inherit;
    opacity: 1;
  }
  .sentence input {
    min-inline-size: 2.5em;
    inline-size: 6em;
    cursor: text;
  }
  @supports (field-sizing: content) {
    .sentence input {
      inline-size: auto;
    }
  }
  .sentence select {
    appearance: none;
  }
  .sentence option {
    font: var(--tg-type-base) / 1.4 var(--tg-font-label);
    color: var(--tg-ink);
    background: var(--tg-surface);
  }
  .sentence :is(select, input):hover {
    border-block-end-width: 4px;
  }
  .sentence :is(select, input):focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  @media (max-width: 40rem) {
    .sentence {
      font-size: var(--tg-type-1);
    }
  }
  @media print {
    .sentence {
      font-size: 13pt;
      line-height: 1.4;
    }
    .sentence :is(select, input) {
      border-block-end-width: 0.5pt;
    }
  }
`;
