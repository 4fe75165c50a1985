import { describe, expect, test } from 'vitest';
import { spectrumFileView } from '../../../web/elements/colour-input/spectrum-view.ts';
import { readCarriedColour } from '../../../web/notebook/typed-colour.ts';

const nms = Array.from({ length: 31 }, (_, i) => 400 + i * 10);
const grey = (value: number): string => nms.map(() => String(value)).join(',');

describe('spectrumFileView', () => {
  test('every sample can be chosen, marked as measured under the cloth’s conditions', () => {
    const view = spectrumFileView(`sample,${nms.join(',')}\nA1,${grey(0.2)}\nA2,${grey(0.5)}\n`);
    expect(view.samples.map(({ id }) => id)).toEqual(['A1', 'A2']);
    const carried = readCarriedColour(view.samples[0]?.text ?? '');
    expect(carried).toMatchObject({ illuminant: 'D65', observer: 10, by: 'spectrum' });
    expect(carried?.lab[0]).toBeCloseTo(51.84, 1);
    expect(view.under).toContain('not stated');
  });

  test.each([
    ['empty', ''],
    ['binary', '\0\0\u0001\u0002'],
    ['a page', '<html></html>'],
    ['no wavelengths', 'a,b\n1,2\n'],
    ['unordered', `sample,${[...nms].reverse().join(',')}\nA,${grey(0.2)}\n`],
    ['short', `sample,${nms.join(',')}\nA,0.1,0.2\n`],
    ['fluorescent', `sample,${nms.join(',')}\nA,${grey(0.2).replace('0.2', '1.4')}\n`],
  ])('%s: no sample, one message at least', (_, text) => {
    const view = spectrumFileView(text);
    expect(view.samples).toEqual([]);
    expect(view.errors.length).toBeGreaterThan(0);
    expect(view.errors.every((line) => /^Line \d+: \p{Lu}/u.test(line))).toBe(true);
  });
});
