import { css } from 'lit';
import { pageStyles } from '../shared/page.styles.ts';

const own = css`
  h2 {
    margin-block-start: var(--tg-space-6);
  }
  p {
    margin: var(--tg-space-1) 0;
  }
  .lines > li {
    padding-block: var(--tg-space-2);
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
  }
  .ways {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-5);
    font: var(--tg-type-base) / 1.35 var(--tg-font-label);
  }
  .ways a {
    display: inline-flex;
    align-items: center;
    min-block-size: var(--tg-touch);
  }
  .code {
    font: 700 var(--tg-type-base) / 1.3 var(--tg-font-label);
    font-variant-numeric: tabular-nums;
    white-space: nowrap;
  }
  .codes {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--tg-space-4);
  }
  .codes a,
  .codes span {
    display: inline-flex;
    align-items: center;
    min-block-size: 1.75rem;
  }
  .asked {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3);
    align-items: end;
  }
  .asked .field {
    flex: 0 1 16rem;
  }
  .dab {
    display: inline-block;
    inline-size: 1rem;
    block-size: 1.3rem;
    margin-inline-end: var(--tg-space-2);
    vertical-align: middle;
    background: var(--_dab, transparent);
    border: var(--tg-line-1) solid var(--tg-hairline);
    forced-color-adjust: none;
  }
  .problem {
    font-weight: 700;
  }
  .big {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(9rem, 100%), 1fr));
    gap: var(--tg-space-3);
  }
  .big > button,
  .big > .photo {
    display: grid;
    place-items: center;
    min-block-size: 4.5rem;
    border: var(--tg-line-2) solid var(--tg-ink);
    font: 700 var(--tg-type-1) / 1.2 var(--tg-font-label);
    text-align: center;
    cursor: pointer;
  }
  .photo label {
    display: grid;
    place-items: center;
    inline-size: 100%;
    block-size: 100%;
    font: inherit;
    cursor: pointer;
  }
  .photo:focus-within {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  .entry {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 9rem;
    gap: var(--tg-space-3);
    align-items: end;
    margin-block-start: var(--tg-space-3);
  }
  .entry input {
    min-block-size: 3.5rem;
    font-size: var(--tg-type-1);
  }
  .entry button {
    min-block-size: 3.5rem;
    border: var(--tg-line-2) solid var(--tg-ink);
    font: 700 var(--tg-type-base) / 1.2 var(--tg-font-label);
    white-space: normal;
  }
  .pairof {
    display: grid;
    grid-template-columns: 7rem minmax(0, 1fr);
    gap: var(--tg-space-2);
  }
  .timer {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2) var(--tg-space-4);
    align-items: baseline;
    padding: var(--tg-space-3) var(--tg-space-4);
    border: var(--tg-line-2) solid var(--tg-ink);
    margin-block-start: var(--tg-space-3);
  }
  .timer strong {
    font: 700 var(--tg-type-3) / 1 var(--tg-font-label);
    font-variant-numeric: tabular-nums;
  }
  .timer.ended {
    background: var(--tg-inverse);
    color: var(--tg-ink-inverse);
  }
  .log > li {
    display: grid;
    grid-template-columns: minmax(4rem, auto) minmax(0, 1fr);
    gap: 0 var(--tg-space-4);
    padding-block: var(--tg-space-2);
    border-block-end: var(--tg-line-1) solid var(--tg-hairline);
  }
  .log .when {
    font: 700 var(--tg-type-base) / 1.55 var(--tg-font-label);
    font-variant-numeric: tabular-nums;
  }
  .log img {
    display: block;
    max-inline-size: min(100%, 20rem);
    forced-color-adjust: none;
  }
  .status {
    position: sticky;
    inset-block-start: 0;
    z-index: 1;
    padding-block: var(--tg-space-2);
    background: var(--tg-ground);
    font: 700 var(--tg-type-small) / 1.4 var(--tg-font-label);
  }
  .care {
    margin: var(--tg-space-1) 0 0;
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
    font: var(--tg-type-small) / 1.45 var(--tg-font-label);
  }
  summary {
    min-block-size: var(--tg-touch);
    font: var(--tg-type-base) / var(--tg-touch) var(--tg-font-label);
    cursor: pointer;
  }
  @media (max-width: 40rem) {
    .big {
      grid-template-columns: 1fr 1fr;
    }
    .entry {
      grid-template-columns: minmax(0, 1fr) 7.5rem;
    }
  }
  @media print {
    .screen {
      display: none;
    }
    :host {
      font-size: 10pt;
    }
  }
`;

/** Pages of the pot: headings, ruled lists, large buttons for wet hands. */
export const potStyles = [pageStyles, own];
