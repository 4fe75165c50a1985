import { css } from 'lit';

/** A page to read: its heading, headings with a rule under them, bare lists, links and quiet words. */
export const pageStyles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  h1 {
    margin: 0 0 var(--tg-space-3);
    font: 600 var(--tg-type-4) / 1.15 var(--tg-font-reading);
  }
  h2 {
    margin: 0 0 var(--tg-space-3);
    padding-block-end: var(--tg-space-2);
    border-block-end: var(--tg-line-1) solid var(--tg-ink);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  p {
    max-inline-size: var(--tg-measure);
  }
  ul,
  ol {
    margin: 0;
    padding: 0;
    list-style: none;
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  .quiet {
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
`;
