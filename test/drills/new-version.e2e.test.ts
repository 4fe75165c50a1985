import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { BuiltSite, launchChromium } from '../helpers/built-site.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(() => browser.close());

const editor = (page: Page) => page.getByRole('textbox', { name: 'Text of the note' });

/** Waits until the text of the note ends with these words: the editor draws only the lines that are looked at. */
async function endsWith(page: Page, words: string): Promise<void> {
  await editor(page).click();
  await page.keyboard.press('ControlOrMeta+End');
  await editor(page).getByText(words).waitFor();
}

/** A visit that has its own copy of the site, with a note open and words written into it. */
async function midEdit(): Promise<{ site: BuiltSite; context: BrowserContext; page: Page }> {
  const site = await new BuiltSite().open();
  const context = await browser.newContext();
  onTestFinished(async () => {
    await context.close();
    await site.remove();
  });
  const page = await context.newPage();
  await page.goto(`${site.address}#/notebook/weld?write=text`);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
  await editor(page).click();
  await page.keyboard.press('ControlOrMeta+End');
  await page.keyboard.type('Cut when the seed sets.');
  await page.getByText('Not saved yet.').waitFor();
  return { site, context, page };
}

async function publish(site: BuiltSite, page: Page): Promise<void> {
  site.publish('A newer Tenterground');
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await page.getByRole('button', { name: 'Use it now' }).waitFor();
}

const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true }).click();

describe('a newer version of the site in the midst of writing', () => {
  test('taken over in the tab itself: asked first, then loaded again with the draft, which saves', async () => {
    const { site, page } = await midEdit();
    await publish(site, page);
    await page.getByText('a note you are writing waits as a draft').waitFor();
    let asked = '';
    page.on('dialog', (dialog) => {
      asked = dialog.type();
      void dialog.accept();
    });
    await page.getByRole('button', { name: 'Use it now' }).click();
    await page.waitForFunction(() => document.title === 'A newer Tenterground');
    await endsWith(page, 'Cut when the seed sets.');
    expect(asked).toBe('beforeunload');
    await page.getByText('Not saved yet.').waitFor();
    await save(page);
    await page.getByText('Saved.', { exact: true }).waitFor();
    await page.getByRole('link', { name: 'Read', exact: true }).click();
    await page.getByText('Cut when the seed sets.').waitFor();
    expect(await page.evaluate(() => sessionStorage.getItem('drafts'))).toBe('[]');
  });

  test('taken over in another tab: the draft stays as it is, saves with no server, and the rest is there after loading again', async () => {
    const { site, context, page } = await midEdit();
    const other = await context.newPage();
    await other.goto(site.address);
    await publish(site, other);
    await other.getByRole('button', { name: 'Use it now' }).click();
    await other.waitForFunction(() => document.title === 'A newer Tenterground');
    await page.getByRole('button', { name: 'Load it again' }).waitFor();
    await endsWith(page, 'Cut when the seed sets.');
    await site.close();
    await save(page);
    await page.getByText('Saved.', { exact: true }).waitFor();
    await editor(page).click();
    await page.keyboard.press('ControlOrMeta+End');
    await page.keyboard.type(' Dried in the shade.');
    await page.getByRole('button', { name: 'Load it again' }).click();
    await page.waitForFunction(() => document.title === 'A newer Tenterground');
    await endsWith(page, 'Cut when the seed sets. Dried in the shade.');
    await page.getByRole('button', { name: 'Step back' }).click();
    await page.getByText('Not saved yet.').waitFor({ state: 'detached' });
    await endsWith(page, 'Cut when the seed sets.');
    expect(await editor(page).innerText()).not.toContain('Dried in the shade.');
  });
});
