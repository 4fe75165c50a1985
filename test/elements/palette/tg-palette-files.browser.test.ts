import { page } from 'vitest/browser';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { drawnAsPng } from '../../../web/elements/palette/drawn-as-png.ts';
import '../../../web/elements/palette/tg-palette-files.ts';
import { paletteSvg, paletteSvgSize, type PaletteToFile } from '../../../web/notebook/palette-files.ts';

const palette: PaletteToFile = { place: 'York', reading: '1370', cloths: [], couldBeTried: [] };

beforeEach(() => void vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined));
afterEach(() => {
  vi.restoreAllMocks();
  document.body.replaceChildren();
});

describe('tg-palette-files', () => {
  test.each([
    ['CSV, for a spreadsheet', 'csv'],
    ['SVG', 'svg'],
    ['PNG', 'png'],
    ['CSS text', 'css'],
  ])('%s goes to the downloads and says so', async (name, ending) => {
    document.body.append(Object.assign(document.createElement('tg-palette-files'), { palette }));
    await page.getByRole('button', { name, exact: true }).click();
    await expect.element(page.getByRole('status')).toHaveTextContent(`palette-york-1370.${ending} went to your downloads.`);
  });

  test('before there is a palette nothing can be taken', async () => {
    document.body.append(document.createElement('tg-palette-files'));
    await expect.element(page.getByRole('button', { name: 'SVG' })).toBeDisabled();
  });
});

test('the picture has the colour of the cloth, point for point', async () => {
  const cloth = { id: 'a', title: 'A', hex: '#a5443a', inScreenGamut: true, weave: 'wool', fibre: '', verdict: 'attested' } as const;
  const more = { verdictWord: 'Attested', classes: 1, origin: '', dyes: '', group: '', lab: [40, 40, 30], lch: '', samples: 1 } as const;
  const one: PaletteToFile = { ...palette, cloths: [{ ...cloth, ...more, ruled: false, predicted: false }] };
  const png = await drawnAsPng(paletteSvg(one), paletteSvgSize(one));
  const bitmap = await createImageBitmap(png as Blob);
  expect([bitmap.width, bitmap.height]).toEqual([paletteSvgSize(one).width * 2, paletteSvgSize(one).height * 2]);
  const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d') as OffscreenCanvasRenderingContext2D;
  pen.drawImage(bitmap, 0, 0);
  expect([...pen.getImageData(160, 220, 1, 1).data]).toEqual([0xa5, 0x44, 0x3a, 255]);
});

test('what is no drawing gives no picture', async () => {
  expect(await drawnAsPng('<svg', { width: 1, height: 1 })).toBeUndefined();
});
