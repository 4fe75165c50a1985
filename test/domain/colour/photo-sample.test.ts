import Color from 'colorjs.io';
import { describe, expect, test } from 'vitest';
import { deltaE00 } from '../../../web/domain/colour/delta-e.ts';
import { asLab2 } from '../../../web/domain/colour/lab.ts';
import type { LinearRgb, RgbSpace } from '../../../web/domain/colour/linear-rgb.ts';
import { decodeChannel, encodeChannel, linearToLab2 } from '../../../web/domain/colour/linear-rgb.ts';
import type { PhotoPatch } from '../../../web/domain/colour/photo-patch.ts';
import { averagePatch } from '../../../web/domain/colour/photo-patch.ts';
import { samplePhoto } from '../../../web/domain/colour/photo-sample.ts';
import { referenceTable } from '../../helpers/reference-table.ts';
import { fc } from '../../helpers/property.ts';

type Bytes = readonly [number, number, number];
const rgba = (...colours: readonly Bytes[]): Uint8ClampedArray => Uint8ClampedArray.from(colours.flatMap((c) => [...c, 255]));
function patch(colour: Bytes, space: RgbSpace = 'srgb'): PhotoPatch {
  const result = averagePatch(rgba(colour, colour), space);
  if (!result.ok) throw new Error(result.error);
  return result.value;
}
const bytes = (text: string): Bytes => text.split(',').map(Number) as unknown as Bytes;

describe('averagePatch', () => {
  test('averages in linear light, not in bytes', () => {
    const result = averagePatch(rgba([0, 0, 0], [200, 200, 200]));
    const linear = decodeChannel(200 / 255) / 2;
    expect(result).toMatchObject({ ok: true, value: { pixels: 2 } });
    for (const channel of result.ok ? result.value.mean : []) expect(channel).toBeCloseTo(linear, 12);
    expect(Math.round(255 * encodeChannel(linear))).toBe(146);
  });

  test('leaves out pixels that are not opaque', () => {
    const result = averagePatch([200, 0, 0, 255, 0, 200, 0, 254, 0, 0, 200, 0]);
    expect(result).toMatchObject({ ok: true, value: { pixels: 1 } });
  });

  test('reports how uneven the patch is', () => {
    const even = averagePatch(rgba(...new Array<Bytes>(50).fill([150, 60, 52])));
    const uneven = averagePatch(rgba(...Array.from({ length: 50 }, (_, i): Bytes => [150 + (i % 2) * 20, 60, 52])));
    expect(even.ok && even.value.spread).toBeCloseTo(0, 9);
    expect(uneven.ok && uneven.value.spread).toBeGreaterThan(1);
  });

  test.each<[string, ArrayLike<number>, string]>([
    ['no pixels', [], 'patch-empty'],
    ['only transparent pixels', [1, 2, 3, 0], 'patch-empty'],
    ['a blown-out channel', rgba([255, 200, 150], [200, 180, 150]), 'patch-clipped'],
    ['near black', rgba([8, 9, 10], [9, 9, 9]), 'patch-dark'],
  ])('refuses %s', (_, pixels, error) => expect(averagePatch(pixels)).toEqual({ ok: false, error }));

  test('one glint in two hundred is let pass', () => {
    const pixels = Array.from({ length: 200 }, (_, i): Bytes => (i === 7 ? [255, 255, 255] : [120, 80, 60]));
    expect(averagePatch(rgba(...pixels)).ok).toBe(true);
    expect(averagePatch(rgba(...pixels, [255, 255, 255], [255, 255, 255]))).toEqual({ ok: false, error: 'patch-clipped' });
  });
});

describe('linearToLab2', () => {
  test.each(['srgb', 'p3'] as const)('agrees with colorjs.io in %s', (theirs) => {
    const channel = fc.integer({ min: 0, max: 255 }).map((n) => n / 255);
    fc.assert(
      fc.property(fc.tuple(channel, channel, channel), (encoded) => {
        const expected = new Color(theirs, encoded).to('lab-d65').coords as [number, number, number];
        const found = linearToLab2(encoded.map(decodeChannel) as unknown as LinearRgb, theirs === 'p3' ? 'display-p3' : 'srgb');
        expected.forEach((value, i) => expect(Math.abs((found[i] ?? NaN) - value)).toBeLessThan(0.03));
      }),
    );
  });

  test('encoding and decoding undo each other', () => {
    for (let byte = 0; byte <= 255; byte++) expect(encodeChannel(decodeChannel(byte / 255))).toBeCloseTo(byte / 255, 6);
  });
});

describe('samplePhoto', () => {
  const rows = referenceTable('colour-extra-examples.csv');
  const ofKind = (kind: string) => rows.filter((row) => row['kind'] === kind).map((row) => [row['id'] ?? '', row] as const);
  const expectedLab = (text: string | undefined) =>
    asLab2((/\)? (-?[\d.]+ -?[\d.]+ -?[\d.]+)$/.exec(text ?? '')?.[1] ?? '').split(' ').map(Number) as [number, number, number]);

  test('the reference has three and one cases', () =>
    expect([ofKind('photo white patch').length, ofKind('photo white+grey').length]).toEqual([3, 1]));

  test.each(ofKind('photo white patch'))('%s: white patch', (_, row) => {
    const [, fabric, white, reflectance] = /fabric \(([^)]*)\).*patch \(([^)]*)\).*reflectance ([\d.]+)/.exec(row['input'] ?? '') ?? [];
    const found = samplePhoto(patch(bytes(fabric ?? '')), {
      kind: 'white',
      white: patch(bytes(white ?? '')),
      whiteReflectance: Number(reflectance),
    });
    expect(found.ok && deltaE00(found.value.lab2, expectedLab(row['expected']))).toBeLessThan(0.05);
    expect(found).toMatchObject({ value: { origin: 'photo' } });
  });

  test.each(ofKind('photo white+grey'))('%s: white and grey', (_, row) => {
    const [, fabric, white, w, grey, g] =
      /fabric \(([^)]*)\) ; white \(([^)]*)\) known ([\d.]+) ; grey \(([^)]*)\) known ([\d.]+)/.exec(row['input'] ?? '') ?? [];
    const found = samplePhoto(patch(bytes(fabric ?? '')), {
      kind: 'white-grey',
      white: patch(bytes(white ?? '')),
      whiteReflectance: Number(w),
      grey: patch(bytes(grey ?? '')),
      greyReflectance: Number(g),
    });
    expect(found.ok && deltaE00(found.value.lab2, expectedLab(row['expected']))).toBeLessThan(0.05);
  });

  const CHART: readonly Bytes[] = [[115, 82, 68], [194, 150, 130], [98, 122, 157], [87, 108, 67], [133, 128, 177], [103, 189, 170], [214, 126, 44], [80, 91, 166], [193, 90, 99], [160, 160, 160], [52, 52, 52]]; // prettier-ignore
  const known = (colour: Bytes) => linearToLab2(colour.map((v) => decodeChannel(v / 255)) as unknown as LinearRgb, 'srgb');
  /** The photo of a colour by a camera whose channels run into one another, under warm dim light. */
  const photographed = (colour: Bytes): PhotoPatch => {
    const [r, g, b] = colour.map((v) => decodeChannel(v / 255)) as [number, number, number];
    return { space: 'srgb', mean: [0.8 * r + 0.1 * g, 0.05 * r + 0.6 * g + 0.05 * b, 0.1 * g + 0.4 * b], pixels: 100, spread: 0.5 };
  };

  test('a chart undoes the camera, and a white patch alone does not', () => {
    const madder: Bytes = [155, 58, 46];
    const patches = CHART.map((colour) => ({ seen: photographed(colour), known: known(colour) }));
    const byChart = samplePhoto(photographed(madder), { kind: 'chart', patches });
    expect(byChart.ok && deltaE00(byChart.value.lab2, known(madder))).toBeLessThan(0.05);
    expect(byChart).toMatchObject({ value: { origin: 'photo-with-chart', spread: 0.5 } });
    expect(byChart.ok && byChart.value.chartError).toBeLessThan(0.05);
    const byWhite = samplePhoto(photographed(madder), {
      kind: 'white',
      white: photographed([240, 240, 240]),
      whiteReflectance: decodeChannel(240 / 255),
    });
    expect(byWhite.ok && deltaE00(byWhite.value.lab2, known(madder))).toBeGreaterThan(2);
  });

  test('a chart that does not fit says so by its error', () => {
    const patches = CHART.map((colour, i) => ({ seen: photographed(colour), known: known(CHART[(i + 3) % CHART.length] ?? colour) }));
    const found = samplePhoto(photographed([155, 58, 46]), { kind: 'chart', patches });
    expect(found.ok && found.value.chartError).toBeGreaterThan(10);
  });

  test('refuses what cannot be', () => {
    const [fabric, white, grey] = [patch([110, 70, 60]), patch([240, 232, 214]), patch([118, 114, 106])];
    expect(samplePhoto(fabric, { kind: 'white', white, whiteReflectance: 1.2 })).toEqual({ ok: false, error: 'reference-impossible' });
    expect(samplePhoto(fabric, { kind: 'white-grey', white: grey, whiteReflectance: 0.9, grey: white, greyReflectance: 0.18 })).toEqual({
      ok: false,
      error: 'reference-impossible',
    });
    expect(samplePhoto(fabric, { kind: 'chart', patches: [] })).toEqual({ ok: false, error: 'chart-too-small' });
    expect(samplePhoto(fabric, { kind: 'chart', patches: new Array(8).fill({ seen: fabric, known: asLab2([40, 20, 10]) }) })).toEqual({
      ok: false,
      error: 'reference-impossible',
    });
    expect(samplePhoto(fabric, { kind: 'white', white: patch([240, 232, 214], 'display-p3'), whiteReflectance: 0.9 })).toEqual({
      ok: false,
      error: 'spaces-differ',
    });
  });

  test('without a reference the camera is believed', () => {
    const found = samplePhoto(patch([155, 58, 46]), { kind: 'none' });
    expect(found.ok && deltaE00(found.value.lab2, known([155, 58, 46]))).toBeCloseTo(0, 9);
  });
});
