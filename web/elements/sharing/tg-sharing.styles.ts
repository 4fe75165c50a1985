import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  h1 {
    margin: 0 0 var(--tg-space-4);
    font: 600 var(--tg-type-4) / 1.15 var(--tg-font-reading);
  }
  h2 {
    margin: var(--tg-space-5) 0 var(--tg-space-2);
    font: 600 var(--tg-type-2) / 1.2 var(--tg-font-reading);
  }
  h3 {
    margin: var(--tg-space-4) 0 var(--tg-space-1);
    font: 700 var(--tg-type-base) / 1.4 var(--tg-font-label);
    overflow-wrap: anywhere;
  }
  p {
    margin: 0 0 var(--tg-space-2);
    max-inline-size: var(--tg-measure);
    overflow-wrap: anywhere;
  }
  .small {
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-5);
  }
  button {
    min-block-size: var(--tg-touch);
  }
  article {
    border-block-start: var(--tg-line-1) solid var(--tg-hairline);
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  @media print {
    button,
    .ways {
      display: none;
    }
  }
`;
