import Color from 'colorjs.io';
import { describe, expect, test } from 'vitest';
import { deltaECmc } from '../../../web/domain/colour/delta-e-cmc.ts';
import { asLab10 } from '../../../web/domain/colour/lab.ts';
import { fc } from '../../helpers/property.ts';

describe('deltaECmc', () => {
  const lab = fc.tuple(fc.integer({ min: 1, max: 100 }), fc.integer({ min: -90, max: 90 }), fc.integer({ min: -90, max: 90 }));

  test('is 2:1 and agrees with colorjs.io', () => {
    fc.assert(
      fc.property(lab, lab, (standard, sample) => {
        const theirs = new Color('lab', standard).deltaECMC(new Color('lab', sample), { l: 2, c: 1 });
        expect(Math.abs(deltaECmc(asLab10(standard), asLab10(sample)) - theirs)).toBeLessThan(1e-6);
      }),
    );
  });

  test('is not symmetric: the standard comes first', () => {
    const [a, b] = [asLab10([30, 10, -40]), asLab10([60, 5, -20])];
    expect(Math.abs(deltaECmc(a, b) - deltaECmc(b, a))).toBeGreaterThan(1);
  });
});
