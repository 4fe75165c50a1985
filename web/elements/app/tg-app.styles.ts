import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    min-block-size: 100vh;
    background: var(--tg-ground);
    color: var(--tg-ink);
  }
  header,
  main,
  footer {
    max-inline-size: 76rem;
    margin-inline: auto;
    padding-inline: clamp(var(--tg-space-4), 4vw, var(--tg-space-7));
  }
  header {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2) var(--tg-space-6);
    align-items: baseline;
    padding-block: var(--tg-space-4);
  }
  .name {
    margin: 0;
    font: 600 var(--tg-type-1) / 1.2 var(--tg-font-reading);
  }
  nav ul {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-4);
    margin: 0;
    padding: 0;
    list-style: none;
    font: var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  nav a {
    display: inline-flex;
    align-items: center;
    min-block-size: var(--tg-touch);
    color: inherit;
    text-decoration: none;
  }
  nav a:hover {
    text-decoration: underline;
    text-underline-offset: 0.3em;
  }
  nav a[aria-current='page'] {
    font-weight: 700;
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.35em;
  }
  a:focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  main {
    padding-block: var(--tg-space-4) var(--tg-space-8);
    font: var(--tg-type-base) / var(--tg-leading-reading) var(--tg-font-reading);
  }
  footer {
    padding-block: var(--tg-space-4) var(--tg-space-6);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
    color: var(--tg-ink-quiet);
  }
  main a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  main > h1 {
    margin: 0 0 var(--tg-space-5);
    font: 600 var(--tg-type-4) / 1.15 var(--tg-font-reading);
  }
  .keys {
    margin: 0;
  }
  .keys button {
    min-block-size: var(--tg-touch);
    padding: 0;
    border: 0;
    background: none;
    color: inherit;
    font: inherit;
    text-decoration: underline;
    text-underline-offset: 0.25em;
    cursor: pointer;
  }
  .keys button:focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  .in-and-out {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--tg-space-7);
  }
  .in-and-out h2 {
    margin: 0 0 var(--tg-space-3);
    font: 600 var(--tg-type-2) / 1.2 var(--tg-font-reading);
  }
  .in-and-out p {
    max-inline-size: var(--tg-measure);
    margin: 0 0 var(--tg-space-4);
  }
  .more-ways {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-5);
    margin: 0;
    padding: var(--tg-space-3) 0 0;
    border-block-start: var(--tg-line-1) solid var(--tg-hairline);
    list-style: none;
    font-family: var(--tg-font-label);
  }
  .more-ways a {
    display: inline-flex;
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  @media (min-width: 60rem) {
    .in-and-out {
      grid-template: auto auto 1fr / repeat(2, minmax(0, 1fr));
    }
    .more-ways {
      grid-column: 1 / -1;
    }
    .in-and-out tg-begin {
      grid-row: span 2;
    }
  }
  @media print {
    .more-ways,
    .out {
      display: none;
    }
    :host {
      min-block-size: 0;
      background: none;
    }
    header,
    footer {
      padding: 0;
    }
    nav,
    .keys,
    .own-paper {
      display: none;
    }
    .name {
      font-size: 9pt;
    }
    main {
      max-inline-size: none;
      padding: 0;
    }
    .whole-paper {
      margin: 0;
    }
    footer p {
      margin: 2mm 0 0;
      font-size: 7.5pt;
    }
  }
`;
