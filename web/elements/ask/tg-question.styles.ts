import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
  }
  h1 {
    margin: 0;
    font: 400 var(--tg-type-3) / 1.5 var(--tg-font-reading);
    text-wrap: pretty;
    max-inline-size: 34em;
  }
  .word {
    font: inherit;
    color: inherit;
    background: none;
    border: 0;
    padding: 0;
    text-align: start;
    min-block-size: 1.3em;
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.22em;
    cursor: pointer;
  }
  .word[aria-expanded='true'] {
    background: var(--tg-inverse);
    color: var(--tg-ink-inverse);
    text-decoration: none;
  }
  .word:hover {
    text-decoration-thickness: 4px;
  }
  .dab {
    display: inline-block;
    inline-size: 1.5em;
    block-size: 0.86em;
    margin-inline-end: 0.2em;
    vertical-align: -0.04em;
    background: var(--_dab);
    border: 1px solid var(--tg-edge);
    forced-color-adjust: none;
    print-color-adjust: exact;
  }
  :is(.word, button, input, select):focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  .panel {
    margin-block-start: var(--tg-space-4);
    padding: var(--tg-space-4) var(--tg-space-5) var(--tg-space-5);
    background: var(--tg-surface);
    border-block: var(--tg-line-2) solid var(--tg-ink);
    font: var(--tg-type-base) / var(--tg-leading-label) var(--tg-font-label);
  }
  .panel h2 {
    margin: 0 0 var(--tg-space-3);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  .fields {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-4);
    align-items: end;
  }
  label {
    display: grid;
    gap: var(--tg-space-1);
  }
  input[type='text'],
  select {
    font: inherit;
    color: inherit;
    background: var(--tg-ground);
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-3);
    min-block-size: var(--tg-touch);
    max-inline-size: 100%;
    box-sizing: border-box;
  }
  input[type='text'] {
    inline-size: 22em;
  }
  .plain {
    font: inherit;
    color: inherit;
    background: none;
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-4);
    min-block-size: var(--tg-touch);
    cursor: pointer;
  }
  .plain:hover {
    border-color: var(--tg-ink);
    box-shadow: inset 0 0 0 1px var(--tg-ink);
  }
  .plain[aria-pressed='true'] {
    background: var(--tg-inverse);
    color: var(--tg-ink-inverse);
  }
  .hint {
    margin: var(--tg-space-2) 0 0;
    color: var(--tg-ink-quiet);
    font-size: var(--tg-type-small);
  }
  .other {
    margin-block-start: var(--tg-space-4);
  }
  .year {
    display: grid;
    grid-template-columns: auto 1fr auto;
    gap: var(--tg-space-3);
    align-items: center;
    margin-block-start: var(--tg-space-4);
    font: var(--tg-type-small) / 1.3 var(--tg-font-label);
    color: var(--tg-ink-quiet);
    font-variant-numeric: tabular-nums;
  }
  .year input {
    inline-size: 100%;
    min-block-size: 2rem;
    accent-color: var(--tg-ink);
  }
  .problem {
    margin: var(--tg-space-3) 0 0;
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
    font: var(--tg-type-base) / 1.4 var(--tg-font-label);
  }
  @media (max-width: 40rem) {
    h1 {
      font-size: var(--tg-type-2);
      line-height: 1.6;
    }
    .panel {
      padding-inline: var(--tg-space-3);
    }
    input[type='text'] {
      inline-size: 100%;
    }
    .fields > label {
      inline-size: 100%;
    }
  }
  @media print {
    h1 {
      font-size: 15pt;
      line-height: 1.3;
    }
    .word {
      text-decoration-thickness: 0.5pt;
    }
    .year {
      display: block;
      margin-block-start: 1mm;
      font-size: 7.5pt;
    }
    .year span::before {
      content: 'Years: ';
    }
    .year > :not(span),
    .panel {
      display: none;
    }
  }
`;
