import { unzipSync } from 'fflate';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, onTestFinished, test } from 'vitest';
import { readIn } from '../helpers/read-in.ts';
import { siteAndBrowser } from '../helpers/site-and-browser.ts';
import { hashOf } from './kill-plan.ts';
import { heldIn } from './kill-page.ts';
import { holdOlderNotebook } from './older-notebook.ts';

const open = siteAndBrowser();

const note = (title: string, body: string) => `---\nkind: text\ntitle: ${title}\n---\n\n${body}\n`;
const NOTES = { 'texts/roll.md': note('The roll', 'Said of ʿudar.'), 'ledgers/bill.md': note('The bill', 'Four ells.') };

/** Two tabs of one reader; the second is of the same origin and no page of ours. */
async function twoTabs(): Promise<{ page: Page; other: Page }> {
  const context = await open.browser.newContext();
  onTestFinished(() => context.close());
  const [page, other] = [await context.newPage(), await context.newPage()];
  await other.goto(`${open.site.address}icon.svg`);
  return { page, other };
}

/** Writes into the text of a note that is open for writing. */
async function type(page: Page, words: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Text of the note' }).click();
  await page.keyboard.press('ControlOrMeta+End');
  await page.keyboard.type(words);
}

const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true }).click();

/** Opens the database as a program of years to come would. */
const ofTheFuture = (other: Page): Promise<void> =>
  other.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('tenterground', 9_999);
        opening.addEventListener('success', () => {
          opening.result.close();
          done();
        });
        opening.addEventListener('error', () => failed(new Error('not opened')));
      }),
  );

describe('a notebook that another program holds', () => {
  test('an old tab that does not let go: the page says which, takes nothing that would be lost, and the notes come when it is closed', async () => {
    const { page, other } = await twoTabs();
    const old = note('Old', 'Kept for years.');
    await holdOlderNotebook(other, { 'old.md': old });
    await page.goto(`${open.site.address}#/notebook/weld?write=text`);
    await page.getByText(/^Another tab still has this notebook open in an older version/).waitFor();
    await type(page, 'Written meanwhile.');
    await save(page);
    await page.getByText(/^Not saved: another tab holds an older state/).waitFor();
    await page.getByText('Written meanwhile.').waitFor();
    await readIn(page, open.site.address, NOTES);
    await page.getByText(/^2 files are missing\. Another tab holds an older state/).waitFor();
    await other.close();
    await page.goto(`${open.site.address}#/notebook/old`);
    await page.reload();
    await page.getByRole('heading', { level: 1, name: 'Old' }).waitFor();
    expect((await heldIn(page)).files).toEqual({ 'old.md': hashOf(old) });
  });

  test('a newer notebook on the disk: nothing of it is touched, and nothing else is taken for it', async () => {
    const { page, other } = await twoTabs();
    await readIn(page, open.site.address, NOTES);
    const before = await heldIn(page);
    await ofTheFuture(other);
    // The page that was open says so too.
    await page.getByText(/^A newer version of this page, in another tab, has taken the notebook over/).waitFor();
    await page.goto(`${open.site.address}#/notebook/weld?write=text`);
    await page.reload();
    await page.getByText(/^This notebook was last kept by a newer version of the page/).waitFor();
    await type(page, 'Written meanwhile.');
    await save(page);
    await page.getByText(/^Not saved: the notebook was made by a newer version/).waitFor();
    await page.getByText('Written meanwhile.').waitFor();
    expect(await heldIn(page)).toEqual(before);
  });
});

describe('a notebook that is deleted while the page is open', () => {
  test.each([
    ['by another program', (other: Page) => other.evaluate(() => void indexedDB.deleteDatabase('tenterground'))],
    [
      'in the browser’s settings',
      async (other: Page) => {
        const devtools = await other.context().newCDPSession(other);
        await devtools.send('Storage.clearDataForOrigin', { origin: new URL(open.site.address).origin, storageTypes: 'indexeddb' });
      },
    ],
  ])('%s: the page says so, and what it shows still goes out, byte for byte', async (_, remove) => {
    const { page, other } = await twoTabs();
    await readIn(page, open.site.address, NOTES);
    await page.goto(`${open.site.address}#/notebook/roll?write=text`);
    await type(page, 'Typed since.');
    await remove(other);
    await page.getByText(/^The browser took away the notebook it kept/).waitFor();
    await save(page);
    await page.getByText(/^Not saved: the browser closed the notebook/).waitFor();
    await page.getByText('Typed since.').waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Export what is at hand' }).click(),
    ]);
    const files = unzipSync(new Uint8Array(readFileSync(await download.path())));
    const decoder = new TextDecoder();
    const texts = Object.fromEntries(
      Object.entries(files).map(([path, bytes]) => [path.replace(/^notebook\//, ''), decoder.decode(bytes)]),
    );
    expect(texts).toEqual(NOTES);
    // The offer stays: a download may be refused.
    await page.getByRole('button', { name: 'Export what is at hand' }).waitFor();
    await page.reload();
    await readIn(page, open.site.address, texts);
    const held = await heldIn(page);
    expect(held.files).toEqual(Object.fromEntries(Object.entries(NOTES).map(([path, text]) => [path, hashOf(text)])));
  });
});
