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
    margin: var(--tg-space-7) 0 var(--tg-space-3);
    font: 600 var(--tg-type-2) / 1.2 var(--tg-font-reading);
  }
  h3 {
    margin: var(--tg-space-5) 0 var(--tg-space-2);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  p {
    max-inline-size: var(--tg-measure);
    margin: 0 0 var(--tg-space-3);
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  .quiet {
    color: var(--tg-ink-quiet);
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .drop {
    max-inline-size: var(--tg-measure);
    padding: var(--tg-space-4) var(--tg-space-5);
    border: var(--tg-line-1) dashed var(--tg-edge);
    font-family: var(--tg-font-label);
  }
  .drop.over {
    border: var(--tg-line-2) solid var(--tg-ink);
    padding: calc(var(--tg-space-4) - 1px) calc(var(--tg-space-5) - 1px);
  }
  .drop label {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--tg-space-2);
  }
  input[type='file'] {
    inline-size: 100%;
    min-block-size: var(--tg-touch);
    font: inherit;
    color: inherit;
  }
  .as {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2) var(--tg-space-3);
    align-items: center;
    margin-block: var(--tg-space-4);
    font-family: var(--tg-font-label);
  }
  .name {
    font-weight: 700;
    overflow-wrap: anywhere;
  }
  select,
  button {
    min-block-size: var(--tg-touch);
    max-inline-size: 100%;
    padding: var(--tg-space-1) var(--tg-space-4);
    border: var(--tg-line-1) solid var(--tg-edge);
    border-radius: 2px;
    background: none;
    color: inherit;
    font: var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  select {
    padding-inline: var(--tg-space-2);
    background: var(--tg-surface);
  }
  button {
    cursor: pointer;
  }
  button.first {
    font-weight: 700;
    border-width: var(--tg-line-2);
    border-color: var(--tg-ink);
  }
  .columns {
    display: grid;
    min-inline-size: 0;
    grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr));
    gap: var(--tg-space-3) var(--tg-space-4);
    max-inline-size: 60rem;
    margin: 0 0 var(--tg-space-4);
    padding: 0;
    border: 0;
    font: var(--tg-type-small) / 1.4 var(--tg-font-label);
  }
  .columns select {
    inline-size: 100%;
  }
  .columns legend {
    padding: 0 0 var(--tg-space-2);
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  .columns div {
    display: grid;
    gap: var(--tg-space-1);
    align-content: start;
    min-inline-size: 0;
  }
  .rows {
    max-inline-size: 60rem;
    margin: 0 0 var(--tg-space-4);
    padding: 0;
    list-style: none;
    font: var(--tg-type-base) / 1.45 var(--tg-font-label);
  }
  .rows > li {
    display: grid;
    grid-template-columns: 3.5rem minmax(0, 1fr);
    gap: 0 var(--tg-space-3);
    padding-block: var(--tg-space-2);
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
    overflow-wrap: anywhere;
  }
  .rows .nth {
    color: var(--tg-ink-quiet);
    font-variant-numeric: tabular-nums;
  }
  .rows p {
    margin: 0;
  }
  .says {
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-2) solid var(--tg-ink);
  }
  .problem {
    padding: var(--tg-space-2) var(--tg-space-4);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
  }
  .forms {
    max-inline-size: var(--tg-measure);
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .forms li {
    padding-block: var(--tg-space-3);
    border-block-start: var(--tg-line-1) solid var(--tg-hairline);
  }
  .forms p {
    margin: var(--tg-space-2) 0 0;
  }
  @media print {
    .drop,
    button,
    .forms {
      display: none;
    }
  }
`;
