import { css } from 'lit';

/** A bare colour: `--_patch`, and on a screen that can show more of it `--_wide`. */
export const widePatchStyles = css`
  .patch {
    background: var(--_patch);
    forced-color-adjust: none;
    print-color-adjust: exact;
  }
  @media (color-gamut: p3) {
    @supports (color: color(display-p3 1 1 1)) {
      .patch {
        background: var(--_wide, var(--_patch));
      }
    }
  }
`;
