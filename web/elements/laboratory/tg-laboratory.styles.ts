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
  .on-paper {
    display: none;
  }
  .form {
    margin-block: var(--tg-space-5);
    font-family: var(--tg-font-label);
  }
  .findings {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .findings > li {
    display: grid;
    grid-template-columns: minmax(8rem, 16rem) minmax(0, 1fr) auto;
    gap: var(--tg-space-2) var(--tg-space-4);
    align-items: center;
    border-block-end: 1px solid var(--tg-hairline);
  }
  fieldset {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-4);
    border: 0;
    margin: 0;
    padding: 0;
  }
  fieldset label {
    display: inline-flex;
    gap: var(--tg-space-2);
    align-items: center;
    min-block-size: var(--tg-touch);
    cursor: pointer;
  }
  input[type='radio'],
  input[type='checkbox'] {
    accent-color: var(--tg-ink);
    inline-size: 1.1rem;
    block-size: 1.1rem;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3);
    align-items: end;
    margin-block: var(--tg-space-4);
  }
  .row > label {
    display: grid;
    gap: var(--tg-space-1);
    font-size: var(--tg-type-small);
  }
  .row > label.check {
    display: inline-flex;
    gap: var(--tg-space-2);
    align-items: center;
    min-block-size: var(--tg-touch);
    font-size: inherit;
  }
  .row :is(input[type='text'], select),
  textarea {
    font: var(--tg-type-base) / 1.3 var(--tg-font-label);
    color: inherit;
    background: var(--tg-surface);
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-3);
    min-block-size: var(--tg-touch);
    box-sizing: border-box;
    max-inline-size: 100%;
  }
  .number {
    inline-size: 6rem;
  }
  textarea {
    inline-size: 100%;
    line-height: 1.5;
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
  button.plain {
    border: 0;
    padding: 0 var(--tg-space-2);
    text-decoration: underline;
    text-underline-offset: 0.2em;
    font-size: var(--tg-type-small);
  }
  .figures > p {
    max-inline-size: var(--tg-measure);
    margin-block: var(--tg-space-2);
  }
  .lines > li.figure {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: var(--tg-space-2) var(--tg-space-6);
    max-inline-size: 60rem;
  }
  .figure > p {
    grid-column: 1 / -1;
    margin: 0;
  }
  .figure label {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2) var(--tg-space-3);
    align-items: center;
    font: var(--tg-type-base) / 1.35 var(--tg-font-label);
  }
  .figure .number {
    font: inherit;
    color: inherit;
    background: var(--tg-surface);
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-1) var(--tg-space-3);
    min-block-size: var(--tg-touch);
  }
  .families {
    columns: 2 18rem;
    column-gap: var(--tg-space-6);
    margin-block: var(--tg-space-3);
  }
  .families div {
    break-inside: avoid;
    margin-block-end: var(--tg-space-3);
  }
  .families p {
    margin: 0;
    font-size: var(--tg-type-small);
    font-weight: 700;
  }
  summary {
    cursor: pointer;
    min-block-size: 1.75rem;
    font: var(--tg-type-small) / 1.75 var(--tg-font-label);
  }
  .verdict {
    margin-block: var(--tg-space-6) var(--tg-space-5);
    padding-block-start: var(--tg-space-5);
    border-block-start: var(--tg-line-2) solid var(--tg-ink);
  }
  h2.word {
    margin: 0;
    font: 600 var(--tg-type-5) / 1.1 var(--tg-font-reading);
    letter-spacing: -0.01em;
  }
  .why {
    margin: var(--tg-space-3) 0 0;
    font-size: var(--tg-type-1);
    line-height: 1.45;
    max-inline-size: 34em;
  }
  .means {
    margin: var(--tg-space-2) 0 0;
    max-inline-size: var(--tg-measure);
  }
  .sides {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(24rem, 100%), 1fr));
    gap: var(--tg-space-5) var(--tg-space-7);
    margin-block: var(--tg-space-6);
  }
  h3 {
    margin: 0 0 var(--tg-space-3);
    padding-block-end: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-ink);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  .lines {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .lines > li {
    padding-block: var(--tg-space-2);
    border-block-end: 1px solid var(--tg-hairline);
    max-inline-size: var(--tg-measure);
  }
  .lines p {
    margin: 0 0 var(--tg-space-1);
  }
  .share {
    color: var(--tg-ink-quiet);
    margin-inline-start: var(--tg-space-3);
    font: var(--tg-type-small) / 1.4 var(--tg-font-label);
  }
  .dye {
    margin-block-start: var(--tg-space-3);
  }
  .small {
    display: block;
    font: var(--tg-type-small) / 1.45 var(--tg-font-label);
    color: var(--tg-ink-quiet);
  }
  p.small {
    margin: 0;
  }
  section.block {
    margin-block: var(--tg-space-6);
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  .problem {
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
  }
  :is(a, button, input, select, summary, textarea):focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  @media (max-width: 40rem) {
    .lines > li.figure {
      grid-template-columns: minmax(0, 1fr);
    }
    .findings > li {
      grid-template-columns: minmax(0, 1fr) auto;
    }
    .findings fieldset {
      grid-column: 1 / -1;
      grid-row: 2;
    }
    h2.word {
      font-size: var(--tg-type-3);
    }
  }
  @media print {
    .form,
    .keep,
    button,
    details {
      display: none;
    }
    :host {
      font-size: 10pt;
    }
    .on-paper {
      display: block;
    }
    h3 {
      break-after: avoid;
    }
    .lines > li,
    section.block {
      break-inside: avoid;
    }
  }
`;
