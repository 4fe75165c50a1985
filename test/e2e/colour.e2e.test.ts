import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityFaults, type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

const sideBySide = (page: Page) => page.getByRole('heading', { level: 1, name: 'This cloth and that cloth' });

describe('looking on the built page', () => {
  test('from an answer: a cloth is laid beside what was asked, the lamp changes the sentence, Back returns', async () => {
    const page = await site.open('#/ask?colour=%23b2423d&region=england&when=1450&fibre=wool');
    await page
      .getByRole('link', { name: /^Lay it beside what was asked/ })
      .first()
      .click();
    await sideBySide(page).waitFor();
    expect(page.url()).toContain('#/palette?look=');
    await expect.poll(() => page.getByText(/^In daylight they/).count()).toBe(1);
    await page.getByRole('button', { name: 'lamp' }).click();
    await expect.poll(() => page.getByText(/^By the lamp they/).count()).toBe(1);
    await page.goBack();
    await page.getByRole('heading', { level: 3, name: 'What speaks for it' }).waitFor();
    await page.context().close();
  });

  test('on a phone a cloth taken down, with the ways to look at it, stays inside the page', async () => {
    const page = await site.open('#/palette?region=hanse-towns&when=1370', { width: 360 });
    await page.locator('tg-cloth-line button[part="cloth"]').first().click();
    await page.getByRole('link', { name: 'Lay the two side by side' }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    await page.context().close();
  });

  test('from a palette: one taken down is laid beside another of the line, by keyboard', async () => {
    const page = await site.open('#/palette?region=hanse-towns&when=1370');
    const first = page.locator('tg-cloth-line button[part="cloth"]').first();
    await first.focus();
    await page.keyboard.press('Enter');
    const other = page.getByRole('combobox', { name: 'Beside' });
    await other.selectOption({ index: 3 });
    const link = page.getByRole('link', { name: 'Lay the two side by side' });
    await link.focus();
    await page.keyboard.press('Enter');
    await sideBySide(page).waitFor();
    expect(await page.locator('tg-looking tg-swatch').count()).toBe(2);
    await page
      .getByRole('button', { name: /^Take .* away$/ })
      .first()
      .click();
    await page.getByRole('heading', { level: 1, name: 'This cloth', exact: true }).waitFor();
    await page.goBack();
    await sideBySide(page).waitFor();
    await page.context().close();
  });

  test.each(['#/recipes/madder-alum-wool', '#/dyestuffs/madder'])('from %s its cloths are laid side by side', async (hash) => {
    const page = await site.open(hash);
    await page.getByRole('link', { name: /^Lay them side by side/ }).click();
    await sideBySide(page).waitFor();
    expect(await page.locator('tg-looking tg-swatch').count()).toBeGreaterThan(1);
    expect(await page.getByRole('alert').count()).toBe(0);
    await page.context().close();
  });

  test('an over-dye shows what was predicted beside what was made, and a palette hangs what could be tried with both orders', async () => {
    const page = await site.open('#/palette?region=hanse-towns&when=1370&try=over-dyes');
    await page.getByRole('heading', { name: 'Could be tried' }).waitFor();
    const line = page.locator('tg-cloth-line').nth(1);
    await line.locator('button[part="cloth"]').first().click();
    const orders = page.getByText(/^Dye .+, then .+ over it; or .+ first, then/);
    await orders.waitFor();
    expect(await page.getByText(/likely spread ΔE00/).count()).toBeGreaterThan(0);
    await page.getByRole('link', { name: 'Lay it beside the single dyes' }).click();
    await sideBySide(page).waitFor();
    expect(await page.locator('tg-looking tg-swatch').count()).toBe(3);
    await page.context().close();
  });

  test.each([
    ['light', 1280],
    ['dark', 390],
  ] as const)('axe finds nothing, and nothing runs out of the page: %s, %i px', async (scheme, width) => {
    const page = await site.open('#/palette?look=madder-alum-wool%3B%23b2423d', { width, dark: scheme === 'dark', bypassPolicy: true });
    await sideBySide(page).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await page.context().close();
  });
});

describe('what all these pages did', () => {
  test('nothing was asked of another origin, and no console complained', () => {
    expect(site.strays).toEqual([]);
    expect(site.complaints).toEqual([]);
  });
});
