import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { BuiltSite, launchChromium } from '../helpers/built-site.ts';

// Out of one profile and into another, to the byte: test/app/in-and-out.e2e.test.ts.

const DEMONSTRATION = fileURLToPath(new URL('../../corpus-demo', import.meta.url));
const QUESTION = '#/ask?colour=kermes-alum-wool&region=hanse-towns&when=1370&fibre=wool';
const PALETTE = '#/palette?region=hanse-towns&when=1370';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

interface Visit {
  readonly site: BuiltSite;
  readonly context: BrowserContext;
  readonly page: Page;
  /** What the console complained about. */
  readonly complaints: string[];
}

/** A first visit in a profile of its own. */
async function visit(hash = ''): Promise<Visit> {
  const site = await new BuiltSite().open();
  const context = await browser.newContext();
  onTestFinished(async () => {
    await context.close();
    await site.remove();
  });
  const complaints: string[] = [];
  context.on('page', (page) => {
    page.setDefaultTimeout(45_000);
    page.on('console', (message) => void (message.type() === 'error' && complaints.push(message.text())));
    page.on('pageerror', (error) => void complaints.push(error.message));
  });
  // No browser lets a test choose in its own folder dialog; without it the page offers the upload that others have.
  await context.addInitScript(() => delete (globalThis as { showDirectoryPicker?: unknown }).showDirectoryPicker);
  const page = await context.newPage();
  await page.goto(`${site.address}${hash}`);
  await page.getByText('Wadholm Quay, the demonstration notebook').waitFor();
  return { site, context, page, complaints };
}

const go = (page: Page, hash: string) => page.evaluate((to) => void (globalThis.location.hash = to), hash);
const heading = (page: Page, name: string | RegExp, level = 1) => page.getByRole('heading', { level, name });

/** Finds the insect under its period name, corrects a claim of it, sees what follows, and lets the earlier version stand again. */
async function correctAClaim(page: Page): Promise<void> {
  await go(page, QUESTION);
  await page.getByText('Attested as cloth', { exact: true }).first().waitFor();
  await go(page, PALETTE);
  const scarlet = page.getByRole('button', { name: /Kermes scarlet/ });
  await scarlet.first().waitFor();

  await page.keyboard.press('/');
  await page.getByRole('searchbox').waitFor();
  await expect.poll(() => page.evaluate(() => globalThis.location.hash)).toBe('#/notebook?find=');
  await page.getByRole('searchbox').pressSequentially('vermiculum');
  await page.getByRole('link', { name: 'everything on kermes' }).click();
  await heading(page, 'Kermes').waitFor();
  await page.getByRole('heading', { name: 'Where it is named' }).waitFor();

  await go(page, '#/notebook/kermes?write=form');
  await page.locator('summary', { hasText: 'Hanse towns, 1300–1450, came only as cloth' }).click();
  const when = page.locator('details[open]').getByLabel('When', { exact: true });
  await when.fill('1400–1450');
  await when.press('Tab');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Saved.', { exact: true }).waitFor();

  await go(page, QUESTION);
  await page.getByText('Plausible', { exact: true }).first().waitFor();
  await go(page, PALETTE);
  await page.getByText(/colours hang here/).waitFor();
  await expect.poll(() => scarlet.count()).toBe(0);

  await go(page, '#/notebook/kermes?versions=all');
  await page.getByText('1 line gone, 1 new.').waitFor();
  await page.getByRole('button', { name: 'Let the earlier one stand again' }).click();
  await page.getByText(/It stands again/).waitFor();
  await go(page, QUESTION);
  await page.getByText('Attested as cloth', { exact: true }).first().waitFor();
  await go(page, PALETTE);
  await scarlet.first().waitFor();
}

// A journey is long; the limit only ends what hangs.
describe('journeys', { timeout: 180_000 }, () => {
  test('from empty to the folder of the demonstration, to an answer, to its recipe and back', async () => {
    const { page, complaints } = await visit('#/notebook');
    await page.getByRole('button', { name: 'An empty notebook' }).click();
    await heading(page, 'An empty notebook', 2).waitFor();
    await page.getByText('Your notebook in this browser: 0 notes.').waitFor();
    await page.reload();
    await heading(page, 'An empty notebook', 2).waitFor();
    await go(page, '#/palette');
    await heading(page, 'Nothing can be asked of an empty notebook').waitFor();

    await go(page, '#/notebook');
    await page.getByLabel('A folder').setInputFiles(DEMONSTRATION);
    await page.getByRole('region', { name: 'Report' }).waitFor({ timeout: 60_000 });
    await page.getByText(/Your notebook in this browser: [3-9]\d\d notes\./).waitFor();

    await go(page, '#/ask?colour=madder-alum-wool&region=hanse-towns&when=1370&fibre=wool');
    await page.getByText('Feasible', { exact: true }).first().waitFor();
    const asked = page.url();
    await go(page, '#/palette?region=hanse-towns&when=1370');
    await page
      .getByRole('button', { name: /^Madder red/ })
      .first()
      .click();
    await page.getByRole('link', { name: 'The recipe' }).click();
    await heading(page, /Madder/).waitFor();
    await page.goBack();
    await page.getByText(/colours hang here/).waitFor();
    await page.goBack();
    await page.getByText('Feasible', { exact: true }).first().waitFor();
    expect(page.url()).toBe(asked);
    expect(complaints).toEqual([]);
  });

  test('a starter shelf without claims has every name and answers nothing it does not know', async () => {
    const { page, complaints } = await visit('#/notebook');
    await page.getByRole('checkbox', { name: /with claims/ }).uncheck();
    await page.getByRole('button', { name: 'A starter shelf' }).click();
    await page.getByText(/Your notebook in this browser: \d+ notes\./).waitFor({ timeout: 60_000 });
    await go(page, '#/notebook?find=vermiculum');
    await page.getByRole('link', { name: 'everything on kermes' }).waitFor();
    await go(page, '#/notebook/kermes');
    await heading(page, 'Kermes').waitFor();
    expect(await page.getByRole('main').innerText()).not.toContain('munro-2012');
    expect(complaints).toEqual([]);
  });

  test('an insect under a period name; a claim corrected, its verdict and palette, the earlier version again', async () => {
    const { page, complaints } = await visit();
    await correctAClaim(page);
    expect(complaints).toEqual([]);
  });

  test('the same after one visit, without a server and without a network', async () => {
    const { site, context, page, complaints } = await visit();
    await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
    await site.close();
    await context.setOffline(true);
    await page.reload();
    await page.getByText('Wadholm Quay, the demonstration notebook').waitFor();
    await correctAClaim(page);
    expect(complaints).toEqual([]);
  });

  test('two tabs change one note: the second is told, and neither text is lost', async () => {
    const { site, context, page, complaints } = await visit();
    const other = await context.newPage();
    await page.goto(`${site.address}#/notebook/weld?write=form`);
    await other.goto(`${site.address}#/notebook/weld?write=form`);
    for (const [tab, title] of [
      [page, 'Weld, as the first has it'],
      [other, 'Weld, as the second has it'],
    ] as const) {
      await tab.getByLabel('Title').fill(title);
      await tab.getByLabel('Title').press('Tab');
      await tab.getByText('Not saved yet.').waitFor();
    }
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('Saved.', { exact: true }).waitFor();
    const save = other.getByRole('button', { name: 'Save', exact: true });
    if (await save.isEnabled()) await save.click();
    await other.getByRole('alert').filter({ hasText: 'changed elsewhere' }).waitFor();
    expect(await other.getByLabel('Title').inputValue()).toBe('Weld, as the second has it');
    await other.getByRole('button', { name: /Keep my text/ }).click();
    await other.getByText('Saved.', { exact: true }).waitFor();

    await go(page, '#/notebook/weld');
    await heading(page, 'Weld, as the second has it').waitFor();
    await go(page, '#/notebook/weld?versions=all');
    await page.getByText('title: Weld, as the first has it').waitFor();
    expect(complaints).toEqual([]);
  });

  test('the keys: a list whose focus returns, evening and paper, and none while one types', async () => {
    const { page, complaints } = await visit('#/dyestuffs');
    const link = page.getByRole('link', { name: 'Palette', exact: true });
    await link.focus();
    await page.keyboard.press('?');
    await page.getByRole('dialog', { name: 'Keys' }).waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
    expect(await link.evaluate((element) => (element.getRootNode() as ShadowRoot).activeElement === element)).toBe(true);
    const view = () => page.evaluate(() => document.documentElement.dataset['view']);
    await page.keyboard.press('e');
    expect(await view()).toBe('evening');
    await page.reload();
    expect(await view()).toBe('evening');
    await page.getByRole('searchbox').fill('');
    await page.getByRole('searchbox').pressSequentially('e?/');
    expect(await view()).toBe('evening');
    expect(await page.getByRole('searchbox').inputValue()).toBe('e?/');
    expect(await page.getByRole('dialog').count()).toBe(0);
    expect(complaints).toEqual([]);
  });

  test('a fortnight after a change a line says what was not exported; the export settles it', async () => {
    const { page } = await visit();
    await go(page, '#/notebook?new=plain');
    await page.getByLabel('Title').fill('A thought');
    await page.getByLabel('Title').press('Tab');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText(/Your notebook in this browser/).waitFor();
    expect(await page.getByText(/never exported/).count()).toBe(0);
    const later = await page.context().newPage();
    await later.clock.setFixedTime(Date.now() + 15 * 24 * 60 * 60 * 1000);
    await later.goto(page.url());
    await later.getByText(/notes of this notebook were never exported\./).waitFor();
    const [download] = await Promise.all([
      later.waitForEvent('download'),
      later
        .getByRole('contentinfo')
        .getByRole('button', { name: /Export/ })
        .click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^tenterground-.*\.zip$/);
    await expect.poll(() => later.getByText(/never exported/).count()).toBe(0);
  });
});
