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
  figure {
    margin: var(--tg-space-5) 0;
  }
  svg.map {
    display: block;
    inline-size: 100%;
    block-size: auto;
    border: 1px solid var(--tg-hairline);
    background: var(--tg-surface);
  }
  .lines {
    fill: none;
    stroke: var(--tg-hairline);
    stroke-width: 0.6;
  }
  .land {
    fill: var(--tg-well);
    stroke: var(--tg-edge);
    stroke-width: 0.8;
  }
  .mark {
    fill: var(--tg-surface);
    stroke: var(--tg-ink);
    stroke-width: 2;
  }
  .solid {
    fill: var(--tg-ink);
    stroke: var(--tg-surface);
    stroke-width: 1;
  }
  .doubtful {
    stroke-dasharray: 4 3;
  }
  .dotted {
    stroke-dasharray: 0.1 4.6;
    stroke-linecap: round;
    stroke-width: 3;
  }
  svg text {
    font: 15px var(--tg-font-label);
    fill: var(--tg-ink);
    paint-order: stroke;
    stroke: var(--tg-surface);
    stroke-width: 4px;
    stroke-linejoin: round;
  }
  .legend {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-2) var(--tg-space-5);
    margin: var(--tg-space-3) 0 0;
    padding: 0;
    list-style: none;
    font: var(--tg-type-small) / 1.5 var(--tg-font-label);
  }
  .legend li {
    display: inline-flex;
    align-items: center;
    gap: var(--tg-space-2);
  }
  .legend svg {
    inline-size: 1.6rem;
    block-size: 1.6rem;
  }
  .sum {
    font-size: var(--tg-type-1);
    max-inline-size: 34em;
  }
  .scroll {
    overflow-x: auto;
  }
  .small {
    display: block;
    color: var(--tg-ink-quiet);
    font-size: var(--tg-type-small);
  }
  p.small {
    font-family: var(--tg-font-label);
  }
  a {
    color: inherit;
    text-underline-offset: 0.2em;
  }
  .problem {
    padding-inline-start: var(--tg-space-3);
    border-inline-start: var(--tg-line-3) solid var(--tg-ink);
  }
  @media (max-width: 40rem) {
    svg.map text {
      font-size: 26px;
    }
    svg.map text.name {
      display: none;
    }
  }
  @media (min-width: 40.01rem) {
    svg.map text.number {
      display: none;
    }
  }
  @media print {
    :host {
      font-size: 9pt;
    }
    figure {
      break-inside: avoid;
    }
  }
`;
