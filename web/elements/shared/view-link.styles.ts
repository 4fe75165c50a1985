import { css } from 'lit';

/** On somebody else's page a notebook's views are not there: what leads to them may be made to look like plain words. */
export const viewLinkStyles = css`
  a[href^='#/'] {
    text-decoration-color: var(--tg-view-mark, currentColor);
    pointer-events: var(--tg-view-pointer, auto);
  }
`;
