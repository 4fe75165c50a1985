import { describe, expect, test } from 'vitest';
import { hueAndDepth } from '../../../web/domain/colour/hue-and-depth.ts';
import { labToLch } from '../../../web/domain/colour/lab.ts';
import { labToScreen } from '../../../web/domain/colour/screen.ts';

describe('hueAndDepth', () => {
  test('what is chosen is what the screen shows, and deeper is darker', () => {
    for (let hue = 0; hue < 360; hue += 15) {
      let before = 101;
      for (let depth = 0; depth <= 1; depth += 0.1) {
        const lab = hueAndDepth(hue, depth);
        expect(labToScreen(lab).inGamut, `${hue} ${depth}`).toBe(true);
        expect(lab[0]).toBeLessThan(before);
        before = lab[0];
      }
    }
  });

  test('no depth is undyed, full depth keeps the hue within a few degrees', () => {
    expect(labToLch(hueAndDepth(35, 0)).c).toBeLessThan(1);
    for (const hue of [10, 35, 90, 150, 270]) {
      const found = labToLch(hueAndDepth(hue, 0.6)).h ?? NaN;
      expect(Math.min(Math.abs(found - hue), 360 - Math.abs(found - hue))).toBeLessThan(15);
    }
  });
});
