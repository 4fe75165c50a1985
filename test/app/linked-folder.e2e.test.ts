import type { Page } from 'playwright-core';
import { describe, expect, onTestFinished, test } from 'vitest';
import { aFolder } from '../helpers/a-folder.ts';
import { faultsInBothLooks } from '../helpers/both-looks.ts';
import { inFolder, linkFolder, pickOwnFolder, setFolder, writeInFolder } from '../helpers/own-folder.ts';
import { readIn } from '../helpers/read-in.ts';
import { siteAndBrowser } from '../helpers/site-and-browser.ts';

const open = siteAndBrowser();

const WELD = '---\nkind: dyestuff\ntitle: Weld\nmatter: plant\n---\nYellow.\n\nSown in spring.\n';

async function fresh(bypassCSP = false): Promise<{ page: Page; complaints: string[] }> {
  const context = await open.browser.newContext({ bypassCSP });
  onTestFinished(() => context.close());
  await pickOwnFolder(context);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => void (message.type() === 'error' && complaints.push(message.text())));
  page.on('pageerror', (error) => void complaints.push(error.message));
  return { page, complaints };
}

const read = (page: Page, path: string, text: string) => readIn(page, open.site.address, { [path]: text });
const link = (page: Page) => linkFolder(page, open.site.address);

describe('a linked folder', () => {
  test('what is saved is written there, what changes there comes in, and after a reload both still do', async () => {
    const { page, complaints } = await fresh();
    await read(page, 'weld.md', WELD);
    await writeInFolder(page, 'madder.md', WELD.replaceAll('Weld', 'Madder'));
    await link(page);
    expect(await inFolder(page, 'weld.md')).toBe(WELD);
    await page.getByText('Your notebook in this browser: 2 notes.').waitFor();

    await page.reload();
    await page.goto(`${open.site.address}#/notebook/weld?write=text`);
    const editor = page.getByRole('textbox').first();
    await editor.click();
    await page.keyboard.press('ControlOrMeta+End');
    await page.keyboard.type('Cut when the seed sets.');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect.poll(() => inFolder(page, 'weld.md'), { timeout: 30_000 }).toBe(`${WELD}Cut when the seed sets.`);

    await writeInFolder(page, 'madder.md', WELD.replaceAll('Weld', 'Madder root'));
    await page.goto(`${open.site.address}#/notebook/madder`);
    await page.getByRole('heading', { name: 'Madder root' }).first().waitFor({ timeout: 30_000 });
    expect(complaints).toEqual([]);
  });

  test('one line changed on both sides is offered side by side, and both are kept', async () => {
    const { page, complaints } = await fresh();
    await read(page, 'weld.md', WELD);
    await link(page);
    // A permission taken back holds the looks off until both sides have changed.
    await setFolder(page, 'taken', 'yes');
    await writeInFolder(page, 'weld.md', WELD.replace('spring', 'autumn'));
    await read(page, 'weld.md', WELD.replace('spring', 'March'));
    await page.getByText('The browser no longer lets this page into the folder').first().waitFor({ timeout: 30_000 });
    expect(await inFolder(page, 'weld.md')).toContain('autumn');

    await page.getByRole('button', { name: 'See to it' }).click();
    await page.getByRole('button', { name: 'Allow the folder again' }).click();
    await page.getByRole('button', { name: 'Look at them side by side' }).click();
    await page.getByText('Sown in March.').first().waitFor();
    await page.getByText('Sown in autumn.').first().waitFor();
    expect(await inFolder(page, 'weld.md')).toContain('autumn');
    await page.getByRole('radio', { name: 'Keep both' }).check();
    await page.getByRole('button', { name: 'Keep the note like this' }).click();
    await page.getByText('Both versions stay among the earlier ones').waitFor();
    const text = WELD.replace('Sown in spring.\n', 'Sown in March.\n\nSown in autumn.\n');
    expect(await inFolder(page, 'weld.md')).toBe(text);
    await page.goto(`${open.site.address}#/notebook/weld`);
    await page.getByText('Sown in March.').waitFor();
    await page.getByText('Sown in autumn.').waitFor();
    expect(complaints).toEqual([]);
  });

  test('after a restart without permission the page says so, keeps working, and catches up when allowed', async () => {
    const { page } = await fresh();
    await read(page, 'weld.md', WELD);
    await link(page);
    await setFolder(page, 'taken', 'yes');
    await page.reload();
    await page.getByText('Linked with “notes”, but not allowed in yet').first().waitFor();
    await read(page, 'woad.md', WELD.replaceAll('Weld', 'Woad'));
    expect(await inFolder(page, 'woad.md')).toBeUndefined();
    await page.goto(`${open.site.address}#/notebook?share=1`);
    await page.getByRole('button', { name: 'Allow the folder again' }).click();
    await expect.poll(() => inFolder(page, 'woad.md'), { timeout: 30_000 }).toContain('Woad');
    await page.getByRole('button', { name: 'Unlink' }).click();
    await page.getByRole('button', { name: 'Link a folder' }).waitFor();
  });

  test('while a large folder is looked through, the page says how many of how many files', async () => {
    const { page, complaints } = await fresh();
    await page.goto(open.site.address);
    await page.evaluate(async (text) => {
      const notes = await (await navigator.storage.getDirectory()).getDirectoryHandle('notes', { create: true });
      for (let at = 100; at < 350; at++) {
        const writing = await (await notes.getFileHandle(`n${at}.md`, { create: true })).createWritable();
        await writing.write(text);
        await writing.close();
      }
    }, WELD);
    await page.goto(`${open.site.address}#/notebook?share=1`);
    await setFolder(page, 'held', 'n249.md');
    await page.getByRole('button', { name: 'Link a folder' }).click();
    await page.getByText('Looking through “notes”: 100 of 250 files.').waitFor({ timeout: 30_000 });
    await setFolder(page, 'held', undefined);
    await page.getByText('Linked with “notes”: what you save').waitFor({ timeout: 30_000 });
    await page.getByText('250 changes came in from the folder').waitFor();
    expect(complaints).toEqual([]);
  });

  test('a second copy of a note that a sync program left is offered too, on pages that axe finds nothing on', async () => {
    const { page } = await fresh(true);
    await page.goto(open.site.address);
    await writeInFolder(page, 'weld.md', WELD);
    await writeInFolder(page, 'weld (conflicted copy 2024-05-01).md', WELD.replace('spring', 'autumn'));
    await link(page);
    await page.getByText('A second copy of this note lies beside it').waitFor();
    expect(await faultsInBothLooks(page)).toEqual([]);
    await page.getByRole('radio', { name: 'Take that' }).check();
    await page.getByRole('button', { name: 'Keep the note like this' }).click();
    await expect.poll(() => inFolder(page, 'weld.md'), { timeout: 30_000 }).toContain('autumn');
    await expect.poll(() => inFolder(page, 'weld (conflicted copy 2024-05-01).md'), { timeout: 30_000 }).toBeUndefined();
  });

  test('where the browser has no picker the page says which way there is: a folder is read in as files are uploaded', async () => {
    const { page, complaints } = await fresh();
    await page.addInitScript(() => {
      delete (globalThis as { showDirectoryPicker?: unknown }).showDirectoryPicker;
    });
    await page.goto(`${open.site.address}#/notebook?share=1`);
    await page.getByText('This browser cannot keep a folder linked.').waitFor();
    await page.getByRole('link', { name: /Read a folder in, and export the notebook as a zip/ }).click();
    await page.getByLabel('A zip').waitFor();
    const folder = await aFolder({ 'dyestuffs/weld.md': WELD, 'dyestuffs/woad.md': WELD.replaceAll('Weld', 'Woad'), '.git/config': 'x' });
    onTestFinished(folder.remove);
    await page.getByLabel('A folder').setInputFiles(folder.path);
    await page.getByRole('region', { name: 'Report' }).waitFor();
    await page.getByText('Your notebook in this browser: 2 notes').waitFor();
    await page.goto(`${open.site.address}#/notebook/woad`);
    await page.getByRole('heading', { level: 1, name: 'Woad' }).waitFor();
    await page.getByText('Sown in spring.').waitFor();
    expect(complaints).toEqual([]);
  });
});
