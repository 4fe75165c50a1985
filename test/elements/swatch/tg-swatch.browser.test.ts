import { page } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import { ciede2000 } from '../../../web/domain/colour/ciede2000.ts';
import { cssToLab2 } from '../../../web/domain/colour/screen.ts';
import { VERDICTS } from '../../../web/domain/verdict/standing-words.ts';
import { BOX } from '../../../web/elements/swatch/cloth-shape.ts';
import { linearOf } from '../../../web/elements/swatch/shade.ts';
import '../../../web/elements/swatch/tg-swatch.ts';
import type { TgSwatch } from '../../../web/elements/swatch/tg-swatch.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

async function aSwatch(given: Partial<TgSwatch>, size = '96px'): Promise<TgSwatch> {
  const swatch = Object.assign(document.createElement('tg-swatch'), { label: 'Madder on wool', seed: 'madder-3' }, given);
  swatch.style.setProperty('--tg-swatch-size', size);
  document.body.append(swatch);
  await swatch.updateComplete;
  return swatch;
}

/** Mean colour of the cloth as it stands on the screen, averaged in linear light, away from its edges, tag and hem. */
async function meanOnScreen(swatch: TgSwatch): Promise<string> {
  const base64 = await page.screenshot({ element: swatch, save: false });
  const image = new Image();
  image.src = `data:image/png;base64,${base64}`;
  await image.decode();
  const scale = image.width / BOX.width;
  const [x, y, w, h] = [10, 16, 74, 100].map((n) => Math.round(n * scale)) as [number, number, number, number];
  const canvas = new OffscreenCanvas(image.width, image.height);
  const pen = canvas.getContext('2d');
  pen?.drawImage(image, 0, 0);
  const data = pen?.getImageData(x, y, w, h).data ?? new Uint8ClampedArray();
  const sums = [0, 0, 0];
  for (let i = 0; i < data.length; i += 4) {
    const hex = [0, 1, 2].map((c) => (data[i + c] ?? 0).toString(16).padStart(2, '0')).join('');
    linearOf(`#${hex}`)?.forEach((v, c) => (sums[c] = (sums[c] ?? 0) + v));
  }
  return `color(srgb-linear ${sums.map((sum) => sum / (data.length / 4)).join(' ')})`;
}

/** The same out of the drawing itself, painted onto a canvas of Display P3: the test's own screen is an ordinary one. */
async function meanInWideLight(swatch: TgSwatch): Promise<string> {
  const drawing = swatch.shadowRoot?.querySelector('svg')?.cloneNode(true) as SVGSVGElement;
  // Edge, shadow and tag take their look from a sheet that does not go with the drawing.
  drawing.querySelectorAll('[class]').forEach((one) => one.remove());
  const scale = 4;
  drawing.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  drawing.setAttribute('width', String(BOX.width * scale));
  drawing.setAttribute('height', String(BOX.height * scale));
  const image = new Image();
  image.src = `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(drawing))}`;
  await image.decode();
  const canvas = new OffscreenCanvas(BOX.width * scale, BOX.height * scale);
  const pen = canvas.getContext('2d', { colorSpace: 'display-p3' });
  pen?.drawImage(image, 0, 0);
  const [x, y, w, h] = [10, 16, 74, 100].map((n) => n * scale) as [number, number, number, number];
  const data = pen?.getImageData(x, y, w, h, { colorSpace: 'display-p3' }).data ?? new Uint8ClampedArray();
  const sums = [0, 0, 0];
  for (let i = 0; i < data.length; i += 4)
    linearOf(`color(display-p3 ${[0, 1, 2].map((c) => (data[i + c] ?? 0) / 255).join(' ')})`)?.forEach(
      (v, c) => (sums[c] = (sums[c] ?? 0) + v),
    );
  const encode = (v: number) => (v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055);
  return `color(display-p3 ${sums.map((sum) => encode(sum / (data.length / 4))).join(' ')})`;
}

const difference = (one: string, other: string): number => {
  const [a, b] = [cssToLab2(one), cssToLab2(other)];
  return a && b ? ciede2000([a[0], a[1], a[2]], [b[0], b[1], b[2]]) : NaN;
};

describe('tg-swatch', () => {
  const fibres = ['wool', 'linen', 'silk', 'cotton', 'alum-tawed-skin'];
  const hexes = ['#a63d2b', '#24415f', '#e2c23a', '#f4efe2', '#1c1a1d', '#6b7f3a', '#7a1f5d', '#ffff00'];

  test.each(fibres.flatMap((fibre) => ['48px', '96px', '160px'].map((size) => [fibre, size] as const)))(
    '%s, %s wide: the mean colour on the screen is the given one within ΔE00 1',
    async (fibre, size) => {
      for (const hex of hexes) {
        const swatch = await aSwatch({ hex, fibre, seed: hex }, size);
        expect(difference(await meanOnScreen(swatch), hex), hex).toBeLessThan(1);
        swatch.remove();
      }
    },
  );

  test('drawn for paper, the mean stays, and the screen comes back after', async () => {
    for (const fibre of fibres) {
      const swatch = await aSwatch({ hex: '#6b7f3a', fibre }, '96px');
      dispatchEvent(new Event('beforeprint'));
      expect(swatch.shadowRoot?.querySelector('pattern')).toBeNull();
      expect(difference(await meanOnScreen(swatch), '#6b7f3a'), fibre).toBeLessThan(1);
      dispatchEvent(new Event('afterprint'));
      expect(swatch.shadowRoot?.querySelector('pattern')).not.toBeNull();
      swatch.remove();
    }
  });

  test('it is drawn again when its colour changes', async () => {
    const swatch = await aSwatch({ hex: '#a63d2b' });
    swatch.hex = '#24415f';
    await swatch.updateComplete;
    expect(difference(await meanOnScreen(swatch), '#24415f')).toBeLessThan(1);
  });

  test('a wide colour is drawn woven where the screen is wide, and its mean in Display P3 is the given one within ΔE00 1', async () => {
    const real = globalThis.matchMedia;
    globalThis.matchMedia = (query) =>
      query === '(color-gamut: p3)' ? (Object.assign(new EventTarget(), { ...real(query), matches: true }) as MediaQueryList) : real(query);
    try {
      for (const fibre of fibres) {
        const wide = 'color(display-p3 0.72 0.12 0.2)';
        const swatch = await aSwatch({ hex: '#c80033', wide, fibre, outOfGamut: true });
        const mean = await meanInWideLight(swatch);
        expect(difference(mean, wide), fibre).toBeLessThan(1);
        swatch.remove();
      }
    } finally {
      globalThis.matchMedia = real;
    }
  });

  test('predicted: the middle keeps the colour, and the word is said', async () => {
    const swatch = await aSwatch({ hex: '#24415f', verdict: 'plausible', predicted: true });
    await expect.element(page.getByRole('img', { name: /predicted/ })).toBeVisible();
    await expect.element(page.getByText('predicted')).toBeVisible();
    expect(swatch.shadowRoot?.querySelector('[part="remark"]')).not.toBeNull();
  });

  test('the name tells what is drawn, verdict with it', async () => {
    await aSwatch({ hex: '#a63d2b', verdict: 'attested', classes: 2 });
    await expect.element(page.getByRole('img', { name: 'Madder on wool, attested' })).toBeVisible();
  });

  test('every verdict passes axe', async () => {
    for (const verdict of VERDICTS) await aSwatch({ hex: '#a63d2b', verdict, predicted: verdict === 'plausible' }, '48px');
    expect(await axeFaults(document.body)).toEqual([]);
  });
});
