import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { packNotebook } from '../../scripts/demo-plugin.mjs';
import { makeZip } from '../helpers/make-zip.ts';
import { printedPages } from '../helpers/printed.ts';
import { accessibilityFaults, type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

const DATES = '#/palette?from-region=england&from-when=1370&region=england&when=1670';
const OTHER = '#/palette?with=other-notebook&region=england&when=1670';

/** The demonstration as a zip, as somebody else keeps it: weld is said to be imported, and nobody ran a pot of cochineal. */
const OTHERS_ZIP = (): Buffer =>
  Buffer.from(
    makeZip(
      packNotebook()
        .files.filter(({ text }) => !/^recipe: .*cochineal/m.test(text))
        .map(({ path, text }) => ({
          path: `harbour-house/${path}`,
          bytes: new TextEncoder().encode(
            path.endsWith('dyestuffs/weld.md') ? text.replaceAll(/status: (?:grown|wild)/g, 'status: imported') : text,
          ),
        })),
    ),
  );

async function layBeside(page: Page): Promise<void> {
  await page.getByLabel('A zip').setInputFiles({ name: 'harbour-house.zip', mimeType: 'application/zip', buffer: OTHERS_ZIP() });
  await page.getByText('The other notebook is “harbour-house.zip”').waitFor();
  await page.getByRole('heading', { name: /^This notebook: England, 1670/ }).waitFor();
}

describe('comparing', () => {
  test('from a palette to two dates: both lines hang above each other, and each change says why, with its source', async () => {
    const page = await site.open('#/palette?region=england&when=1670');
    await page.getByRole('link', { name: 'another place, date or wearer' }).click();
    const first = page.getByRole('textbox', { name: 'First date' });
    await first.fill('1370');
    await first.press('Enter');
    await page.getByRole('heading', { name: 'England, 1370' }).waitFor();
    await page.getByRole('heading', { name: 'England, 1670' }).waitFor();
    expect(page.url()).toContain('from-when=1370');
    const words = await page.locator('[part=changes]').innerText();
    for (const change of ['American cochineal came to hand', 'Kermes went', 'Alum changed origin']) expect(words).toContain(change);
    expect(words).toMatch(/Cochineal crimson on alumed wool, feasible; before, American cochineal known to be absent/);
    await page.getByText('lee-1951: ').waitFor();
    await page.getByRole('combobox', { name: 'Second place' }).selectOption('low-countries');
    await page.getByRole('heading', { name: 'Low Countries, 1670' }).waitFor();
    expect(site.complaints).toEqual([]);
    await page.context().close();
  });

  test('two notebooks: the other is read from a zip and kept nowhere, and what differs is told in its own words', async () => {
    const page = await site.open(OTHER);
    await page.getByText('Choose the other notebook').waitFor();
    await layBeside(page);
    const words = await page.locator('[part=changes]').innerText();
    expect(words).toMatch(/Cochineal crimson on alumed wool, feasible; in the other notebook, no coloured sample of it/);
    expect(words).toMatch(/Weld yellow on alumed wool.*, imported dyestuff in the other notebook, in this one local dyestuff/);
    expect(words).toContain('Weld changed origin');
    // This notebook is what it was: the demonstration, still only shown.
    await page.getByText('Wadholm Quay, the demonstration notebook').waitFor();
    await page.reload();
    await page.getByText('Choose the other notebook').waitFor();
    await page.getByLabel('A zip').setInputFiles({ name: 'x.zip', mimeType: 'application/zip', buffer: Buffer.from('no zip') });
    await page.getByText('This file is no zip. Nothing was read.').waitFor();
    expect(site.complaints).toEqual([]);
    expect(site.strays).toEqual([]);
    await page.context().close();
  });

  test.each([
    ['A4', '595×842', 6],
    ['A3', '842×1191', 3],
  ] as const)('prints on %s: both lines, every change, the sources', async (paper, size, most) => {
    const page = await site.open(DATES);
    await page.getByRole('heading', { name: 'Sources' }).waitFor();
    await page.getByLabel('Paper').selectOption(paper);
    const pages = await printedPages(await page.pdf({ preferCSSPageSize: true }));
    expect(new Set(pages.map((one) => one.size))).toEqual(new Set([size]));
    expect(pages.length).toBeLessThanOrEqual(most);
    const words = pages.map(({ text }) => text).join(' ');
    for (const part of [
      'From England about 1370',
      'England, 1370',
      'England, 1670',
      'Tin came to hand',
      'Sources',
      'lee-1951',
      'Printed on',
    ])
      expect(words).toContain(part);
    await page.context().close();
  });

  test.each([
    ['light', 1280],
    ['dark', 1280],
    ['light', 390],
    ['dark', 390],
  ] as const)('axe finds nothing, and nothing runs off the page: %s, %i px', { timeout: 120_000 }, async (scheme, width) => {
    const page = await site.open(DATES, { width, dark: scheme === 'dark', bypassPolicy: true });
    await page.getByRole('heading', { name: 'Sources' }).waitFor();
    // On a phone the details lie folded, and one press opens them.
    expect(await page.getByText('lee-1951: ').isVisible()).toBe(width > 600);
    if (width < 600) for (const summary of await page.locator('tg-compare summary').all()) await summary.click();
    await page.getByText('lee-1951: ').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await page.goto(`${site.origin}/${OTHER}`);
    await page.getByText('Choose the other notebook').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.context().close();
  });
});
