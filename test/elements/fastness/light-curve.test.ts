import { describe, expect, test } from 'vitest';
import { lightCurve } from '../../../web/elements/fastness/light-curve.ts';

const reading = (change: number, megaluxHours?: number) => ({
  date: '',
  dose: '',
  text: '',
  hex: '#aa3322',
  change,
  ...(megaluxHours === undefined ? {} : { megaluxHours }),
});

describe('lightCurve', () => {
  test('stands by the dose, and falls as the colour changes', () => {
    const curve = lightCurve({ readings: [reading(0, 0), reading(1.7, 1), reading(3.4, 4)] });
    const [first, second, third] = curve?.points ?? [];
    expect((second?.x ?? 0) - (first?.x ?? 0)).toBeCloseTo(((third?.x ?? 0) - (first?.x ?? 0)) / 4, 0);
    // ISO 105-A02: ΔE 1.7 is grade 4, 3.4 grade 3.
    expect(curve?.grades.find(({ grade }) => grade === '4')?.y).toBe(second?.y);
    expect(curve?.grades.find(({ grade }) => grade === '3')?.y).toBe(third?.y);
  });

  test('without doses readings stand at even steps, and it says so', () => {
    const curve = lightCurve({ readings: [reading(0), reading(1, 5), reading(2)] });
    const [a, b, c] = (curve?.points ?? []).map(({ x }) => x);
    expect((b ?? 0) - (a ?? 0)).toBeCloseTo((c ?? 0) - (b ?? 0), 5);
    expect(curve?.across).toMatch(/not measured/);
  });

  test('one reading is no curve', () => expect(lightCurve({ readings: [reading(0, 0)] })).toBeUndefined());
});
