import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { BuiltSite, launchChromium } from '../../helpers/built-site.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

async function visit(): Promise<{ site: BuiltSite; context: BrowserContext; page: Page; complaints: string[] }> {
  const site = await new BuiltSite().open();
  const context = await browser.newContext();
  onTestFinished(async () => {
    await context.close();
    await site.remove();
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => void (message.type() === 'error' && complaints.push(message.text())));
  page.on('pageerror', (error) => void complaints.push(error.message));
  await page.goto(site.address);
  await isAnswered(page);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
  return { site, context, page, complaints };
}

/** The question on the page has its answer. */
const isAnswered = (page: Page) => page.locator('tg-answer').getByRole('heading', { level: 2 }).first().waitFor();

/** What the browser does in its own time: looking whether there is a new version. */
const lookForUpdate = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update();
  });

describe('the site offline', () => {
  test('works after the first visit with no server and no network, on every view, in a new tab too', async () => {
    const { site, context, page, complaints } = await visit();
    await site.close();
    await context.setOffline(true);
    await page.reload();
    await isAnswered(page);
    expect(await page.getByRole('contentinfo').innerText()).toMatch(/\d notes/);

    const other = await context.newPage();
    await other.goto(`${site.address}?shared=yes#/palette`);
    await other.locator('tg-palette').getByRole('heading', { level: 1 }).waitFor();
    await other.goto(`${site.address}#/who-had-what`);
    await other.reload();
    await other.locator('tg-who-had-what').getByRole('heading', { level: 1 }).waitFor();
    await other.goto(`${site.address}#/notebook?read-in=1`);
    await other.getByRole('heading', { name: /Read in/ }).waitFor();
    expect(complaints).toEqual([]);
  });

  test('a new version is announced, waits, and comes only when its reader asks', async () => {
    const { site, page } = await visit();
    const title = await page.title();
    site.publish('A newer Tenterground');
    await lookForUpdate(page);
    const offer = page.getByRole('button', { name: 'Use it now' });
    await offer.waitFor();
    // It waits: also a page loaded now is the old one, whole.
    await page.reload();
    await isAnswered(page);
    expect(await page.title()).toBe(title);
    await offer.click();
    await page.waitForFunction(() => document.title === 'A newer Tenterground');
    await isAnswered(page);
    expect(await page.getByRole('button', { name: 'Use it now' }).count()).toBe(0);
  });

  test('taking it over in one tab leaves the other as it is, with a word about it', async () => {
    const { site, context, page } = await visit();
    const writing = await context.newPage();
    await writing.goto(`${site.address}#/dyestuffs`);
    await writing.getByRole('searchbox').fill('weld');
    site.publish('A newer Tenterground');
    await lookForUpdate(page);
    await page.getByRole('button', { name: 'Use it now' }).click();
    await page.waitForFunction(() => document.title === 'A newer Tenterground');
    await writing.getByRole('button', { name: 'Load it again' }).waitFor();
    expect(await writing.getByRole('searchbox').inputValue()).toBe('weld');
    // Its own files, of the older version, are still there for it.
    await site.close();
    await writing.getByRole('link', { name: 'Who had what' }).click();
    await writing.getByRole('heading', { level: 1 }).waitFor();
  });

  test('put away, the offer comes back with the next visit', async () => {
    const { site, page } = await visit();
    site.publish('A newer Tenterground');
    await lookForUpdate(page);
    await page.getByRole('button', { name: 'Put away' }).click();
    expect(await page.getByRole('button', { name: 'Use it now' }).count()).toBe(0);
    await page.reload();
    await page.getByRole('button', { name: 'Use it now' }).waitFor();
  });
});
