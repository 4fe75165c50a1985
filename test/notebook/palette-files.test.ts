import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import {
  paletteCss,
  paletteCsv,
  paletteFileStem,
  paletteSvg,
  paletteSvgSize,
  type PaletteToFile,
} from '../../web/notebook/palette-files.ts';
import type { PaletteCloth } from '../../web/notebook/views/palette-view.ts';

const aCloth = (change: Partial<PaletteCloth> = {}): PaletteCloth => ({
  id: 'madder-alum-wool',
  title: 'Madder red on wool',
  hex: '#a5443a',
  inScreenGamut: true,
  weave: 'wool',
  fibre: 'Wool',
  verdict: 'attested',
  verdictWord: 'Attested',
  classes: 2,
  origin: 'local dyestuff',
  dyes: 'Madder',
  group: 'red',
  lab: [42.13, 38, -0.001],
  lch: '',
  samples: 3,
  ruled: false,
  predicted: false,
  ...change,
});
const aPalette = (...cloths: PaletteCloth[]): PaletteToFile => ({ place: 'England', reading: 'c. 1370', cloths, couldBeTried: [] });

describe('paletteCsv', () => {
  test('is read back by another reader, numbers as numbers, L* a* b* under their light and observer', () => {
    const { data, errors } = Papa.parse<string[]>(paletteCsv(aPalette(aCloth({ lab: [42.5, -3.25, -12] }))), { skipEmptyLines: true });
    expect(errors).toEqual([]);
    expect(data[0]).toContain('L* (D65/10°)');
    expect(data[1]).toEqual(
      'England|c. 1370|Madder red on wool|Madder|Wool|local dyestuff|Attested|no|3|42.50|-3.25|-12.00|#a5443a|yes'.split('|'),
    );
  });

  test('a title that a spreadsheet would run is text, quotes and lines stay one cell', () => {
    const { data } = Papa.parse<string[]>(paletteCsv(aPalette(aCloth({ title: '=HYPERLINK("x")' }), aCloth({ title: 'a "b"\nc' }))));
    expect(data[1]?.[2]).toBe('\'=HYPERLINK("x")');
    expect(data[2]?.[2]).toBe('a "b"\nc');
  });

  test('a predicted colour says so', () => {
    const { data } = Papa.parse<string[]>(paletteCsv({ ...aPalette(), couldBeTried: [aCloth({ predicted: true })] }));
    expect(data[1]?.[7]).toBe('yes');
  });
});

describe('paletteCss', () => {
  test('a custom property a cloth, the numbers of the notes in a comment, no lab()', () => {
    const css = paletteCss(aPalette(aCloth(), aCloth({ inScreenGamut: false })));
    expect(css).toContain('  --madder-red-on-wool: #a5443a; /* Madder red on wool, attested, L* 42.13 a* 38.00 b* 0.00 */');
    expect(css).toContain('  --madder-red-on-wool-2: #a5443a;');
    expect(css).toContain('outside sRGB');
    expect(css.replace(/\/\*[^]*?\*\//g, '')).not.toContain('lab(');
  });

  test('no title gets out of its comment', () => {
    const css = paletteCss(aPalette(aCloth({ title: '*/ } body { display: none } /*' })));
    expect(css.replace(/\/\*[^]*?\*\//g, '').trim()).toBe(':root {\n  --body-display-none: #a5443a; \n}');
  });
});

describe('paletteSvg', () => {
  test('each cloth is a rectangle of its colour with its name as text, inside the picture', () => {
    const palette = aPalette(aCloth(), aCloth({ title: 'Weld', hex: '#d2b43c' }));
    const svg = paletteSvg(palette);
    const cloths = [...svg.matchAll(/<rect x="\d+" y="(\d+)" width="\d+" height="(\d+)" fill="(#[0-9a-f]{6})"\/>/g)];
    expect(cloths.map(([, , , fill]) => fill)).toEqual(['#a5443a', '#d2b43c']);
    for (const [, y, height] of cloths) expect(Number(y) + Number(height)).toBeLessThan(paletteSvgSize(palette).height);
    expect(svg).toContain('>Weld</text>');
  });

  test('markup in a name stays text', () => {
    const svg = paletteSvg(aPalette(aCloth({ title: '</text><script>alert(1)</script>&\u0000"' })));
    expect(svg).not.toContain('<script');
    expect(svg).toContain('&lt;/text&gt;&lt;script&gt;alert(1)&lt;/script&gt;&amp;&quot;');
  });
});

test('a file is named after place and date', () => {
  expect(paletteFileStem(aPalette())).toBe('palette-england-c-1370');
});
