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

  test('an answer names an over-dye that could be tried in both orders, and never judges it above plausible', async () => {
    const page = await site.open('#/ask?colour=38%2C12%2C16&tolerance=9&region=england&when=1660s&fibre=wool');
    await page.locator('summary', { hasText: 'Could be tried' }).click();
    await page
      .getByText(/^Dye .+, then .+ over it; or .+ first, then .+ over it\./)
      .first()
      .waitFor();
    const rows = page.getByRole('listitem').filter({ hasText: 'then' }).filter({ hasText: 'predicted, either bath first' });
    expect(await rows.count()).toBeGreaterThan(0);
    for (const row of await rows.allInnerTexts()) expect(row).toMatch(/Plausible|Disputed|Unsupported/);
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

describe('a colour in a note', () => {
  test('from a photo: corrected by its white card, written with where it comes from, the photo kept and shown beside it', async () => {
    const page = await site.open('#/notebook?new=trial&write=form');
    await page.getByLabel('Title').fill('A pot in June');
    await page.keyboard.press('Tab');
    await page.locator('tg-note-form #f-colour-add').click();
    await page
      .getByText(/^From a photo, a spectrum/)
      .first()
      .click();
    await page.getByRole('button', { name: 'From a photo' }).click();
    await page.getByLabel(/A photo of the cloth/).setInputFiles({ name: 'Skein.png', mimeType: 'image/png', buffer: await aPhoto(page) });
    const photo = page.getByRole('img', { name: 'The photo' });
    await photo.scrollIntoViewIfNeeded();
    for (const [from, to] of [
      [0.05, 0.4],
      [0.6, 0.95],
    ] as const) {
      const box = await photo.boundingBox();
      if (!box) throw new Error('no photo');
      await page.mouse.move(box.x + from * box.width, box.y + 0.2 * box.height);
      await page.mouse.down();
      await page.mouse.move(box.x + to * box.width, box.y + 0.8 * box.height, { steps: 4 });
      await page.mouse.up();
    }
    await page.getByRole('button', { name: 'Take this colour' }).click();
    await page.getByRole('link', { name: 'Text', exact: true }).click();
    await expect.poll(() => page.locator('tg-note-text .cm-content').innerText()).toMatch(/photo: photos\/skein-[\da-f]{8}\.png/);
    expect(await page.locator('tg-note-text .cm-content').innerText()).toMatch(/by: photo/);
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    // A new note goes on at its own address once it is kept.
    await expect.poll(() => page.url()).toContain('#/notebook/a-pot-in-june');
    await page.goto(`${site.origin}/#/notebook/a-pot-in-june`);
    const shown = page.getByRole('img', { name: /^Photo of/ });
    await expect.poll(() => shown.evaluate((one) => (one as HTMLImageElement).naturalWidth)).toBe(200);
    await page.context().close();
  });
});

/** Half cloth, half white card, as a PNG of 200 by 100. */
async function aPhoto(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [200, 100];
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('no canvas');
    for (const [x, colour] of [
      [0, '#7d4432'],
      [100, '#f0f0f0'],
    ] as const) {
      pen.fillStyle = colour;
      pen.fillRect(x, 0, 100, 100);
    }
    return canvas.toDataURL('image/png').split(',')[1] ?? '';
  });
  return Buffer.from(base64, 'base64');
}

describe('what all these pages did', () => {
  test('nothing was asked of another origin, and no console complained', () => {
    expect(site.strays).toEqual([]);
    expect(site.complaints).toEqual([]);
  });
});
