import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    container-type: inline-size;
  }

  ul {
    /* Three cloths go side by side even on a phone. */
    --_cloth: min(var(--tg-swatch-size, 5rem), 18cqi);
    --_across: calc(var(--_cloth) * 134 / 96);
    --_label: 0rem;
    display: flex;
    flex-wrap: wrap;
    row-gap: var(--tg-space-5, 1.5rem);
    margin: 0;
    /* Room for the focus ring at the ends of a row; the line is clipped there. */
    padding: var(--tg-space-1, 0.25rem);
    list-style: none;
    overflow-x: clip;
  }

  ul.grouped {
    --_label: calc(var(--tg-type-small, 0.885rem) * 1.35 + var(--tg-space-2, 0.5rem));
  }

  li {
    position: relative;
    padding-block-start: var(--_label);
    padding-inline-end: var(--tg-space-2, 0.5rem);
    opacity: 1;
    transition:
      opacity var(--tg-pace, 160ms),
      translate var(--tg-pace, 160ms);
    break-inside: avoid;
  }

  /* The line runs on past every cloth to both ends of its row; the list clips it. */
  li::before {
    content: '';
    position: absolute;
    inset-inline: -200vw;
    inset-block-start: calc(var(--_label) + var(--_cloth) * 4 / 96);
    border-block-start: var(--tg-line-1, 1px) solid var(--tg-edge, currentColor);
  }

  li.ends {
    padding-inline-end: var(--tg-space-7, 3rem);
  }

  li.leaving {
    opacity: 0;
    translate: 0 0.75rem;
    pointer-events: none;
  }

  [part='group'] {
    position: absolute;
    inset-block-start: 0;
    margin: 0;
    white-space: nowrap;
    color: var(--tg-ink-quiet, CanvasText);
    font-family: var(--tg-font-label, sans-serif);
    font-size: var(--tg-type-small, 0.885rem);
    line-height: var(--tg-leading-label, 1.35);
  }

  /* Words as wide as the group's name keep two names from running into one another. */
  .room {
    display: block;
    block-size: 0;
    overflow: hidden;
    visibility: hidden;
    white-space: nowrap;
    padding-inline-end: var(--tg-space-4, 1rem);
    font-family: var(--tg-font-label, sans-serif);
    font-size: var(--tg-type-small, 0.885rem);
  }

  [part='cloth'] {
    display: block;
    position: relative;
    inline-size: max(var(--_across), 5.75rem);
    padding: 0;
    border: 0;
    background: none;
    color: inherit;
    text-align: start;
    cursor: pointer;
  }

  .hooks {
    display: block;
    position: absolute;
    inset-block-start: 0;
    inset-inline-start: 0;
    inline-size: var(--_across);
    block-size: auto;
    overflow: visible;
    fill: none;
    stroke: var(--tg-ink, CanvasText);
    stroke-width: 1.3;
    stroke-linecap: round;
  }

  .hangs {
    display: block;
    padding-block-start: calc(var(--_cloth) * 9 / 96);
    transform-origin: 50% 0;
    transition: rotate var(--tg-pace, 160ms);
  }

  tg-swatch {
    --tg-swatch-size: var(--_cloth);
  }

  tg-swatch::part(remark) {
    display: none;
  }

  .words {
    display: grid;
    gap: 0.1rem;
    inline-size: calc(100% - var(--tg-space-1, 0.25rem));
    font-family: var(--tg-font-label, sans-serif);
    font-size: var(--tg-type-small, 0.885rem);
    line-height: var(--tg-leading-label, 1.35);
    overflow-wrap: break-word;
    hyphens: auto;
  }

  .name {
    padding-block-end: 0.15rem;
    border-block-end: var(--tg-line-1, 1px) solid var(--tg-hairline, currentColor);
    font-family: var(--tg-font-reading, serif);
    font-size: var(--tg-type-base, 1.0625rem);
    line-height: var(--tg-leading-tight, 1.2);
  }

  .detail {
    color: var(--tg-ink-quiet, CanvasText);
  }

  [part='cloth']:hover .name,
  [aria-current='true'] .name {
    border-block-end-color: var(--tg-ink, currentColor);
  }

  [aria-current='true'] .name {
    border-block-end-width: var(--tg-line-2, 2px);
  }

  @media (prefers-reduced-motion: no-preference) {
    li {
      @starting-style {
        opacity: 0;
        translate: 0 -0.5rem;
      }
    }

    [part='cloth']:hover .hangs {
      rotate: 0.6deg;
    }
  }

  @media (prefers-reduced-motion: reduce) {
    li,
    .hangs {
      transition: none;
    }
  }

  @media print {
    ul {
      --_cloth: var(--tg-swatch-size, 20mm);
      row-gap: 3mm;
    }

    ul.grouped {
      --_label: 4mm;
    }

    li {
      padding-inline-end: 1.5mm;
    }

    li.ends {
      padding-inline-end: 5mm;
    }

    [part='cloth'] {
      inline-size: max(var(--_across), 20mm);
    }

    .words,
    .room,
    [part='group'] {
      font-size: 6.5pt;
    }

    .name {
      font-size: 8pt;
    }
  }
`;
