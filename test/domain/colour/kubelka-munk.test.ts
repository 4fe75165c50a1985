import { describe, expect, test } from 'vitest';
import type { Illuminant, Observer } from '../../../web/domain/colour/conditions.ts';
import { deltaE00 } from '../../../web/domain/colour/delta-e.ts';
import { atDepth, fromKs, onGround, overDye, toKs } from '../../../web/domain/colour/kubelka-munk.ts';
import { reconstructFromLab } from '../../../web/domain/colour/reconstruct.ts';
import { cssToLab2 } from '../../../web/domain/colour/screen.ts';
import type { Spectrum } from '../../../web/domain/colour/spectrum.ts';
import { asLab2 } from '../../../web/domain/colour/lab.ts';
import { spectrumToLab, spectrumToLab10, spectrumToLab2 } from '../../../web/domain/colour/xyz-lab.ts';
import { referenceTable } from '../../helpers/reference-table.ts';
import type { ReferenceRow } from '../../helpers/reference-table.ts';
import { flatSpectrum, inventedSample } from '../../helpers/spectral-samples.ts';
import { fc } from '../../helpers/property.ts';

const rows = referenceTable('km-worked-examples.csv');
const ofKind = (kind: string): (readonly [string, ReferenceRow])[] =>
  rows.filter((row) => row['kind'] === kind).map((row) => [`${row['id']} ${row['input']}`, row] as const);
const given = (row: ReferenceRow, name: string): number => Number(new RegExp(`${name}=(\\S+)`).exec(row['input'] ?? '')?.[1]);
const wanted = (row: ReferenceRow, name: string): number => Number(new RegExp(`\\b${name}=([\\d.e+-]+)`).exec(row['expected'] ?? '')?.[1]);
const first = (spectrum: Spectrum): number => spectrum.values[0] ?? NaN;

function expectPredicted(row: ReferenceRow, predicted: Spectrum): void {
  const listed = (/R380\.\.730=\[([^\]]*)\]/.exec(row['expected'] ?? '')?.[1] ?? '').split(' ').map(Number);
  expect(listed).toHaveLength(36);
  listed.forEach((r, i) => expect(Math.abs((predicted.values[i] ?? NaN) - r)).toBeLessThan(0.0003));
  const labs = [...(row['expected'] ?? '').matchAll(/Lab_(\w+?)_(\d+) \[([^\]]*)\]/g)];
  expect(labs).toHaveLength(3);
  for (const [, illuminant, observer, numbers] of labs) {
    const { lab } = spectrumToLab(predicted, illuminant as Illuminant, Number(observer) as Observer);
    (numbers ?? '')
      .split(' ')
      .map(Number)
      .forEach((value, i) => expect(Math.abs((lab[i] ?? NaN) - value)).toBeLessThan(0.1));
  }
}

describe('toKs and fromKs', () => {
  test('the reference has 15 and 14 rows', () => expect([ofKind('R_to_KS').length, ofKind('KS_to_R').length]).toEqual([15, 14]));
  test.each(ofKind('R_to_KS'))('%s', (_, row) => expect(Math.abs(toKs(given(row, 'R')) - Number(row['expected']))).toBeLessThan(1e-6));
  test.each(ofKind('KS_to_R'))('%s', (_, row) => {
    const expected = Number(row['expected']);
    expect(Math.abs(fromKs(given(row, 'KS')) - expected)).toBeLessThan(1e-6 * Math.min(1, expected * 1000));
  });

  test('come back, both ways', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), (n) => {
        expect(fromKs(toKs(n / 1000))).toBeCloseTo(n / 1000, 12);
      }),
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400_000 }), (n) => {
        expect(toKs(fromKs(n / 1000)) / (n / 1000)).toBeCloseTo(1, 9);
      }),
    );
    expect(toKs(fromKs(0))).toBe(0);
  });
});

describe('one band', () => {
  const layers = (row: ReferenceRow): Spectrum =>
    overDye(
      flatSpectrum(given(row, 'Rground')),
      [1, 2].map((n) => ({ dyed: flatSpectrum(given(row, `Rdye${n}_on_ground`)), ground: flatSpectrum(given(row, 'Rground')) })),
    );
  test.each(ofKind('two_dyes_one_band'))('%s', (_, row) => expect(Math.abs(first(layers(row)) - wanted(row, 'R'))).toBeLessThan(1e-5));
  test.each(ofKind('depth_one_band'))('%s', (_, row) =>
    expect(
      Math.abs(
        first(atDepth(flatSpectrum(given(row, 'Rdyed_at_depth_1')), flatSpectrum(given(row, 'Rground')), given(row, 'depth'))) -
          wanted(row, 'R'),
      ),
    ).toBeLessThan(1e-5),
  );
  test.each(ofKind('other_ground_one_band'))('%s', (_, row) =>
    expect(
      Math.abs(
        first(
          onGround(
            flatSpectrum(given(row, 'Rdyed_on_old')),
            flatSpectrum(given(row, 'Rold_ground')),
            flatSpectrum(given(row, 'Rnew_ground')),
          ),
        ) - wanted(row, 'R'),
      ),
    ).toBeLessThan(1e-5),
  );
});

describe('whole spectra', () => {
  const ground = inventedSample('W0');
  test.each(ofKind('overdye_spectrum'))('%s', (_, row) => {
    const predicted = overDye(
      ground,
      ['dye1', 'dye2'].map((name) => ({ dyed: inventedSample(new RegExp(`${name}=(\\w+)`).exec(row['input'] ?? '')?.[1] ?? ''), ground })),
    );
    expectPredicted(row, predicted);
    const [, measured, difference] = /de00_vs_invented_measured_(\w+)=([\d.]+)/.exec(row['expected'] ?? '') ?? [];
    expect(
      Math.abs(deltaE00(spectrumToLab10(predicted), spectrumToLab10(inventedSample(measured ?? ''))) - Number(difference)),
    ).toBeLessThan(0.02);
  });
  test.each(ofKind('depth_spectrum'))('%s', (_, row) => expectPredicted(row, atDepth(inventedSample('B2'), ground, given(row, 'depth'))));
  test.each(ofKind('other_ground_spectrum'))('%s', (input, row) => {
    const other = /R=(0\.\d+)/.exec(input)?.[1];
    expectPredicted(row, onGround(inventedSample('R1'), ground, other ? flatSpectrum(Number(other)) : inventedSample('Y1')));
  });
  test('the listed mistakes are not ours', () => {
    const right = spectrumToLab10(
      overDye(
        ground,
        ['Y2', 'B2'].map((name) => ({ dyed: inventedSample(name), ground })),
      ),
    );
    for (const [, row] of ofKind('wrong_way')) {
      const lab = (/Lab_D65_10 \[([^\]]*)\]/.exec(row['expected'] ?? '')?.[1] ?? '').split(' ').map(Number) as [number, number, number];
      expect(Math.hypot(...lab.map((value, i) => value - (right[i] ?? 0)))).toBeGreaterThan(0.5);
    }
    expect(ofKind('wrong_way')).toHaveLength(4);
  });

  test('over-dye from three screen colours alone', () => {
    const [undyed, yellow, blue] = ['#e8e0cf', '#d8b63a', '#2c3f63'].map(
      (hex) =>
        reconstructFromLab([...(cssToLab2(hex) ?? ([0, 0, 0] as const))] as [number, number, number], { illuminant: 'D65', observer: 2 })
          .spectrum,
    );
    if (!undyed || !yellow || !blue) throw new Error('unreachable');
    const green = spectrumToLab2(
      overDye(undyed, [
        { dyed: yellow, ground: undyed },
        { dyed: blue, ground: undyed },
      ]),
    );
    expect(deltaE00(green, asLab2([25.54, -7.53, -4.25]))).toBeLessThan(0.3);
  });
});

describe('properties', () => {
  const curve = fc
    .array(fc.integer({ min: 5, max: 990 }), { minLength: 36, maxLength: 36 })
    .map((n): Spectrum => ({ startNm: 380, stepNm: 10, values: n.map((v) => v / 1000) }));
  const depth = fc.integer({ min: 0, max: 500 }).map((n) => n / 100);

  test('the order of dyes makes no difference', () => {
    fc.assert(
      fc.property(curve, fc.array(fc.record({ dyed: curve, ground: curve, depth }), { minLength: 1, maxLength: 4 }), (ground, dyes) => {
        const [there, back] = [overDye(ground, dyes), overDye(ground, [...dyes].reverse())];
        there.values.forEach((value, i) => expect(value).toBeCloseTo(back.values[i] ?? NaN, 12));
      }),
    );
  });

  test('more dye never lightens, and spectra stay inside 0–1', () => {
    fc.assert(
      fc.property(curve, curve, depth, depth, (ground, dyed, a, b) => {
        const [less, more] = [atDepth(dyed, ground, Math.min(a, b)), atDepth(dyed, ground, Math.max(a, b))];
        more.values.forEach((value, i) => {
          expect(value).toBeLessThanOrEqual((less.values[i] ?? NaN) + 1e-12);
          expect(value > 0 && value <= 1).toBe(true);
        });
      }),
    );
  });

  test('no dye leaves the ground', () => {
    fc.assert(
      fc.property(curve, curve, (ground, dyed) =>
        atDepth(dyed, ground, 0).values.forEach((value, i) => expect(value).toBeCloseTo(ground.values[i] ?? NaN, 10)),
      ),
    );
  });
});
