import { css } from 'lit';

export const styles = css`
  :host {
    display: inline-block;
    font-family: var(--tg-font-label, sans-serif);
    line-height: var(--tg-leading-label, 1.35);
  }

  svg {
    display: inline-block;
    margin-inline-end: 0.3em;
    vertical-align: -0.85em;
    inline-size: var(--tg-verdict-mark-size, 3rem);
    block-size: auto;
    overflow: visible;
    forced-color-adjust: none;
    print-color-adjust: exact;
  }

  .cloth {
    fill: color-mix(in oklab, var(--_ink) 48%, var(--_paper));
  }
`;
