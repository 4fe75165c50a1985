import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { printedPages } from '../helpers/printed.ts';
import { accessibilityFaults, watchedSite, type WatchedSite } from '../helpers/watched-site.ts';

/** A4 in points of 1/72 inch: 210 × 297 mm (ISO 216). */
const A4 = '595×842';
const RECIPES = readdirSync(join(fileURLToPath(new URL('../..', import.meta.url)), 'corpus-demo/recipes')).map((name) =>
  name.replace(/\.md$/, ''),
);

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

describe('the recipe page', { timeout: 240_000 }, () => {
  test('every recipe prints on one A4 page, what is weighed and done on it', async () => {
    const page = await site.open('#/recipes', { width: 1280, height: 900 });
    for (const id of RECIPES) {
      await page.evaluate((to) => void (globalThis.location.hash = to), `#/recipes/${id}`);
      await page.locator(`tg-recipe-period p[part=verdict]`).waitFor();
      await page.locator(`a[href="#/notebook/${id}"]`).first().waitFor();
      const pages = await printedPages(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
      expect([id, pages.map(({ size }) => size)]).toEqual([id, [A4]]);
      expect(pages[0]?.text).toMatch(/What is weighed.*What is done; time and temperature do not scale/);
    }
  });

  test('tin stays behind the switch for staff, and the page says so', async () => {
    const page = await site.open('#/recipes/cochineal-tin-wool', { width: 1280, height: 900 });
    const tin = page.locator('.ingredients > li', { hasText: /tin/i }).first();
    await tin.getByText('for staff who work by its safety data sheet').waitFor();
    expect(await tin.locator('.amount').innerText()).toBe('—');
    await page.getByLabel('Staff, by safety data sheet').check();
    await page.getByText('never for children or the public').first().waitFor();
    // The demonstration writes no amount of tin down; amounts that are written are tested where the view is.
    await tin.getByText('The recipe gives no amount.').waitFor();
    await page.getByLabel('Staff, by safety data sheet').uncheck();
    await tin.getByText('for staff who work by its safety data sheet').waitFor();
    expect(await tin.locator('.amount').innerText()).toBe('—');
  });

  test.each([false, true])('for wet hands it is large on a phone and keeps the screen on (dark: %s)', async (dark) => {
    const page = await site.open('#/recipes/madder-alum-wool', { width: 390, height: 844, dark, bypassPolicy: true });
    const step = page.locator('.steps > li').first();
    await step.waitFor();
    const sizeOf = () => step.evaluate((line) => Number.parseFloat(getComputedStyle(line).fontSize));
    const before = await sizeOf();
    const button = page.getByRole('button', { name: 'Large, for wet hands' });
    await button.click();
    await page.getByText(/The screen (?:stays on|may go dark)\./).waitFor();
    expect(await button.getAttribute('aria-pressed')).toBe('true');
    expect(await sizeOf()).toBeGreaterThan(before * 1.2);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect(await accessibilityFaults(page)).toEqual([]);
  });

  test('fresh in the place of dried follows the ratio that the reader writes', async () => {
    const page = await site.open('#/recipes/madder-alum-wool', { width: 1280, height: 900 });
    await page.getByText('Fresh instead of dried; how far it reaches').first().click();
    const fresh = page.locator('tg-fresh-dry').first();
    // 7 to 1 by mass (a madder grower, 2013) stands first; the reader’s own 4 to 1 goes in its place.
    await fresh.getByText(/fresh for .* dried/).waitFor();
    await fresh.getByLabel('At least, to 1').fill('4');
    await fresh.getByLabel('At most, to 1').fill('4');
    await fresh.getByLabel('Dried, g').fill('1200');
    await fresh.getByLabel('% of fibre, from').fill('80');
    await fresh.getByLabel('to', { exact: true }).fill('80');
    await fresh.getByLabel('to', { exact: true }).blur();
    // 1.2 kg at 80 % of the fibre’s weight dyes 1.5 kg: dyestuff ÷ (% ÷ 100).
    await fresh.getByText('1.2 kg dyes 1.5 kg of fibre.').waitFor();
  });
});
