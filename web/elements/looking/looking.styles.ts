import { css } from 'lit';
import { pressStyles } from '../shared/press.styles.ts';
import { widePatchStyles } from '../shared/wide-patch.styles.ts';

const own = css`
  :host {
    display: block;
    font: var(--tg-type-base) / var(--tg-leading-label) var(--tg-font-label);
  }
  h1 {
    margin: 0;
    font: 400 var(--tg-type-3) / 1.3 var(--tg-font-reading);
  }
  h2 {
    margin: 0;
    font: 600 var(--tg-type-1) / 1.3 var(--tg-font-reading);
  }
  a {
    color: inherit;
  }
  .lights {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2);
    margin-block: var(--tg-space-4);
  }
  [part='side'] {
    display: flex;
    flex-wrap: wrap;
    justify-content: center;
    gap: var(--tg-space-5);
  }
  [part='side'] tg-swatch {
    --tg-swatch-size: clamp(7rem, 22vw, 15rem);
  }
  [part='joined'] {
    display: flex;
    inline-size: min(100%, 36rem);
    block-size: 9rem;
    margin-block: var(--tg-space-4);
  }
  [part='joined'] > span {
    flex: 1;
  }
  [part='difference'] {
    margin-block: var(--tg-space-4);
    font: var(--tg-type-1) / 1.5 var(--tg-font-reading);
    max-inline-size: var(--tg-measure);
  }
  [part='difference'] p {
    margin: 0 0 var(--tg-space-2);
  }
  [part='difference'] p + p,
  .quiet {
    font: var(--tg-type-small) / 1.4 var(--tg-font-label);
    color: var(--tg-ink-quiet);
  }
  .cloths {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 16rem), 1fr));
    gap: var(--tg-space-5);
    margin: var(--tg-space-4) 0;
    padding: 0;
    list-style: none;
  }
  .cloths > li {
    border-block-start: var(--tg-line-2) solid var(--tg-ink);
    padding-block-start: var(--tg-space-3);
  }
  p {
    margin: 0 0 var(--tg-space-2);
  }
  summary {
    min-block-size: var(--tg-touch);
    display: list-item;
    align-content: center;
    cursor: pointer;
  }
  dl {
    display: grid;
    grid-template-columns: auto 1fr;
    gap: var(--tg-space-1) var(--tg-space-3);
    margin: 0 0 var(--tg-space-3);
    font-variant-numeric: tabular-nums;
  }
  dd {
    margin: 0;
  }
  .range {
    display: flex;
    gap: 0;
    margin-block: var(--tg-space-2);
  }
  .range figure {
    flex: 1;
    margin: 0;
  }
  .range .patch {
    display: block;
    block-size: 4rem;
  }
  .range figcaption {
    font-size: var(--tg-type-small);
    padding-inline-end: var(--tg-space-2);
  }
  .dose {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-4);
    align-items: end;
    margin-block: var(--tg-space-4);
  }
  .dose label {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    max-inline-size: 100%;
    gap: var(--tg-space-1);
  }
  :is(input, select) {
    font: inherit;
    color: inherit;
    background: var(--tg-ground);
    border: var(--tg-line-1) solid var(--tg-edge);
    border-radius: 2px;
    padding: var(--tg-space-2) var(--tg-space-3);
    min-block-size: var(--tg-touch);
    max-inline-size: 100%;
  }
  .dose input {
    inline-size: 7em;
  }
  @media print {
    .lights,
    .plain,
    .dose,
    .more {
      display: none;
    }
  }
`;

export const lookingStyles = [pressStyles, widePatchStyles, own];
