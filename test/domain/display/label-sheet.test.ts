import { describe, expect, test } from 'vitest';
import { LABEL_SHEETS, labelBoxes } from '../../../web/domain/display/label-sheet.ts';

describe('labelBoxes', () => {
  test.each(LABEL_SHEETS.map((labels) => [labels.name, labels] as const))('%s: every label lies on A4, none on another', (_, labels) => {
    const boxes = labelBoxes(labels, labels.across * labels.down).map(({ box }) => box);
    for (const { x, y, widthMm, heightMm } of boxes) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(x + widthMm).toBeLessThanOrEqual(210 + 1e-9);
      expect(y + heightMm).toBeLessThanOrEqual(297 + 1e-9);
    }
    const apart = boxes.every((a, at) =>
      boxes.slice(at + 1).every((b) => Math.abs(a.x - b.x) >= a.widthMm - 1e-9 || Math.abs(a.y - b.y) >= a.heightMm - 1e-9),
    );
    expect(apart).toBe(true);
  });

  test('goes on to a second sheet, and begins where labels are left', () => {
    const [first] = LABEL_SHEETS;
    if (!first) throw new Error('no sheet');
    expect(labelBoxes(first, 25).map(({ page }) => page)).toEqual([...Array<number>(24).fill(0), 1]);
    expect(labelBoxes(first, 2, 23).map(({ page, box }) => [page, box.x, box.y])).toEqual([
      [0, 140, 259.5],
      [1, 0, 0.5],
    ]);
    expect(labelBoxes(first, 1, 99)[0]?.page).toBe(0);
  });
});
