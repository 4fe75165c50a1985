import { css } from 'lit';
import { widePatchStyles } from '../shared/wide-patch.styles.ts';

const own = css`
  :host {
    display: block;
    margin-block: var(--tg-space-5);
    font: var(--tg-type-base) / var(--tg-leading-label) var(--tg-font-label);
  }
  h2 {
    margin: 0 0 var(--tg-space-2);
    font: 600 var(--tg-type-2) / 1.25 var(--tg-font-reading);
  }
  .hypothesis {
    padding-block: var(--tg-space-3);
    border-block-start: var(--tg-line-2) solid var(--tg-ink);
  }
  .says {
    margin: 0;
    font: var(--tg-type-1) / 1.45 var(--tg-font-reading);
    max-inline-size: var(--tg-measure);
  }
  summary {
    min-block-size: var(--tg-touch);
    cursor: pointer;
  }
  summary .says {
    display: inline;
  }
  h3 {
    margin: var(--tg-space-4) 0 var(--tg-space-2);
    font: 400 var(--tg-type-base) / 1.4 var(--tg-font-reading);
  }
  .strip {
    display: grid;
    grid-template-columns: repeat(5, minmax(0, 1fr));
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .patch {
    display: block;
    block-size: 6rem;
  }
  .strip a {
    display: block;
    color: inherit;
    text-decoration-thickness: 1px;
    text-underline-offset: 0.2em;
    min-block-size: var(--tg-touch);
  }
  .strip strong {
    display: block;
    font-weight: var(--tg-weight-strong);
  }
  .strip li > span {
    display: block;
    padding-inline-end: var(--tg-space-2);
    overflow-wrap: anywhere;
  }
  .small {
    color: var(--tg-ink-quiet);
    font-size: var(--tg-type-small);
    line-height: 1.35;
  }
  p {
    max-inline-size: var(--tg-measure);
  }
  .named {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-4);
    align-items: end;
    margin-block: var(--tg-space-4);
  }
  label {
    display: grid;
    /* A long choice does not push past the page. */
    grid-template-columns: minmax(0, 1fr);
    gap: var(--tg-space-1);
    max-inline-size: 100%;
  }
  select {
    font: inherit;
    color: inherit;
    background: var(--tg-ground);
    border: var(--tg-line-1) solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-3);
    min-block-size: var(--tg-touch);
    max-inline-size: 100%;
  }
  @media (max-width: 40rem) {
    .strip {
      grid-template-columns: 1fr;
      gap: var(--tg-space-2);
    }
    .strip li {
      display: grid;
      grid-template-columns: 6rem 1fr;
      gap: 0 var(--tg-space-3);
    }
    .patch {
      grid-row: 1 / span 3;
      block-size: 100%;
      min-block-size: 4rem;
    }
  }
  @media print {
    .named {
      display: none;
    }
    .patch {
      block-size: 14mm;
    }
  }
`;

export const asFoundStyles = [widePatchStyles, own];
