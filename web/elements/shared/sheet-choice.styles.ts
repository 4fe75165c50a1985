import { css } from 'lit';

/** How the choice of paper looks; it is never printed itself. */
export const sheetChoiceStyles = css`
  .print-ways {
    display: flex;
    flex-wrap: wrap;
    gap: var(--tg-space-3) var(--tg-space-5);
    align-items: center;
    font: var(--tg-type-base) / 1.3 var(--tg-font-label);
  }
  .print-ways :is(select, button) {
    min-block-size: var(--tg-touch);
    padding: var(--tg-space-2) var(--tg-space-4);
    border: 1px solid var(--tg-edge);
    border-radius: 2px;
    background: var(--tg-ground);
    color: inherit;
    font: inherit;
    cursor: pointer;
  }
  .print-ways :is(select, button):focus-visible {
    outline: var(--tg-focus-width) solid var(--tg-focus);
    outline-offset: var(--tg-focus-gap);
  }
  @media print {
    .print-ways {
      display: none;
    }
  }
`;
