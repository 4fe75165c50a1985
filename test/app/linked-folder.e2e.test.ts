import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { BuiltSite, launchChromium } from '../helpers/built-site.ts';
import { makeZip } from '../helpers/make-zip.ts';

let site: BuiltSite;
let browser: Browser;
beforeAll(async () => {
  site = await new BuiltSite().open();
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
  await site.remove();
});

const WELD = '---\nkind: dyestuff\ntitle: Weld\nmatter: plant\n---\nYellow.\n\nSown in spring.\n';

/** A picker that gives a folder of the browser's own file system, and a permission that a test can take back. */
const STUB = () => {
  const root = () => navigator.storage.getDirectory().then((own) => own.getDirectoryHandle('notes', { create: true }));
  const page = globalThis as unknown as Record<string, unknown>;
  page['showDirectoryPicker'] = root;
  const handle = FileSystemDirectoryHandle.prototype as unknown as Record<string, unknown>;
  const isTaken = () => localStorage.getItem('taken') === 'yes';
  handle['queryPermission'] = () => Promise.resolve(isTaken() ? 'prompt' : 'granted');
  handle['requestPermission'] = () => {
    localStorage.removeItem('taken');
    return Promise.resolve('granted');
  };
  const values = handle['values'] as () => unknown;
  handle['values'] = function (this: unknown) {
    if (isTaken()) throw new DOMException('taken back', 'NotAllowedError');
    return values.call(this);
  };
};

async function fresh(stub: () => void = STUB): Promise<{ page: Page; complaints: string[] }> {
  const context = await browser.newContext();
  onTestFinished(() => context.close());
  await context.addInitScript(stub);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => void (message.type() === 'error' && complaints.push(message.text())));
  page.on('pageerror', (error) => void complaints.push(error.message));
  return { page, complaints };
}

const there = (page: Page, path: string): Promise<string | undefined> =>
  page.evaluate(async (name) => {
    const notes = await (await navigator.storage.getDirectory()).getDirectoryHandle('notes', { create: true });
    return notes
      .getFileHandle(name)
      .then((file) => file.getFile())
      .then((file) => file.text())
      .catch(() => undefined);
  }, path);

const writeThere = (page: Page, path: string, text: string): Promise<void> =>
  page.evaluate(
    async ([name, content]) => {
      const notes = await (await navigator.storage.getDirectory()).getDirectoryHandle('notes', { create: true });
      const writing = await (await notes.getFileHandle(name, { create: true })).createWritable();
      await writing.write(content);
      await writing.close();
    },
    [path, text] as const,
  );

async function readIn(page: Page, path: string, text: string): Promise<void> {
  await page.goto(`${site.address}#/notebook?read-in=1`);
  const buffer = Buffer.from(makeZip([{ path, bytes: new TextEncoder().encode(text) }]));
  await page.getByLabel('A zip').setInputFiles({ name: 'notes.zip', mimeType: 'application/zip', buffer });
  await page.getByRole('region', { name: 'Report' }).waitFor();
}

async function link(page: Page): Promise<void> {
  await page.goto(`${site.address}#/notebook?share=1`);
  await page.getByRole('button', { name: 'Link a folder' }).click();
  await page.getByText('Linked with “notes”: what you save').waitFor();
}

describe('a linked folder', () => {
  test('what is saved is written there, what changes there comes in, and after a reload both still do', async () => {
    const { page, complaints } = await fresh();
    await readIn(page, 'weld.md', WELD);
    await writeThere(page, 'madder.md', WELD.replaceAll('Weld', 'Madder'));
    await link(page);
    expect(await there(page, 'weld.md')).toBe(WELD);
    await page.getByText('Your notebook in this browser: 2 notes.').waitFor();

    await page.reload();
    await page.goto(`${site.address}#/notebook/weld?write=text`);
    const editor = page.getByRole('textbox').first();
    await editor.click();
    await page.keyboard.press('ControlOrMeta+End');
    await page.keyboard.type('Cut when the seed sets.');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await expect.poll(() => there(page, 'weld.md'), { timeout: 10_000 }).toBe(`${WELD}Cut when the seed sets.`);

    await writeThere(page, 'madder.md', WELD.replaceAll('Weld', 'Madder root'));
    await page.goto(`${site.address}#/notebook/madder`);
    await page.getByRole('heading', { name: 'Madder root' }).first().waitFor({ timeout: 15_000 });
    expect(complaints).toEqual([]);
  });

  test('one line changed on both sides is offered side by side, and both are kept', async () => {
    const { page, complaints } = await fresh();
    await readIn(page, 'weld.md', WELD);
    await link(page);
    // A permission taken back holds the looks off until both sides have changed.
    await page.evaluate(() => localStorage.setItem('taken', 'yes'));
    await writeThere(page, 'weld.md', WELD.replace('spring', 'autumn'));
    await readIn(page, 'weld.md', WELD.replace('spring', 'March'));
    await page.getByText('The browser no longer lets this page into the folder').first().waitFor({ timeout: 15_000 });
    expect(await there(page, 'weld.md')).toContain('autumn');

    await page.getByRole('button', { name: 'See to it' }).click();
    await page.getByRole('button', { name: 'Allow the folder again' }).click();
    await page.getByRole('button', { name: 'Look at them side by side' }).click();
    await page.getByText('Sown in March.').first().waitFor();
    await page.getByText('Sown in autumn.').first().waitFor();
    expect(await there(page, 'weld.md')).toContain('autumn');
    await page.getByRole('radio', { name: 'Keep both' }).check();
    await page.getByRole('button', { name: 'Keep the note like this' }).click();
    await page.getByText('Both versions stay among the earlier ones').waitFor();
    const text = WELD.replace('Sown in spring.\n', 'Sown in March.\n\nSown in autumn.\n');
    expect(await there(page, 'weld.md')).toBe(text);
    await page.goto(`${site.address}#/notebook/weld`);
    await page.getByText('Sown in March.').waitFor();
    await page.getByText('Sown in autumn.').waitFor();
    expect(complaints).toEqual([]);
  });

  test('after a restart without permission the page says so, keeps working, and catches up when allowed', async () => {
    const { page } = await fresh();
    await readIn(page, 'weld.md', WELD);
    await link(page);
    await page.evaluate(() => localStorage.setItem('taken', 'yes'));
    await page.reload();
    await page.getByText('Linked with “notes”, but not allowed in yet').first().waitFor();
    await readIn(page, 'woad.md', WELD.replaceAll('Weld', 'Woad'));
    expect(await there(page, 'woad.md')).toBeUndefined();
    await page.goto(`${site.address}#/notebook?share=1`);
    await page.getByRole('button', { name: 'Allow the folder again' }).click();
    await expect.poll(() => there(page, 'woad.md'), { timeout: 10_000 }).toContain('Woad');
    await page.getByRole('button', { name: 'Unlink' }).click();
    await page.getByRole('button', { name: 'Link a folder' }).waitFor();
  });

  test('a second copy of a note that a sync program left is offered too', async () => {
    const { page } = await fresh();
    await page.goto(site.address);
    await writeThere(page, 'weld.md', WELD);
    await writeThere(page, 'weld (conflicted copy 2024-05-01).md', WELD.replace('spring', 'autumn'));
    await link(page);
    await page.getByText('A second copy of this note lies beside it').waitFor();
    await page.getByRole('radio', { name: 'Take that' }).check();
    await page.getByRole('button', { name: 'Keep the note like this' }).click();
    await expect.poll(() => there(page, 'weld.md'), { timeout: 10_000 }).toContain('autumn');
    await expect.poll(() => there(page, 'weld (conflicted copy 2024-05-01).md'), { timeout: 10_000 }).toBeUndefined();
  });

  test('where the browser has no picker the page says which way there is', async () => {
    const { page } = await fresh(() => {
      delete (globalThis as { showDirectoryPicker?: unknown }).showDirectoryPicker;
    });
    await page.goto(`${site.address}#/notebook?share=1`);
    await page.getByText('This browser cannot keep a folder linked.').waitFor();
    await page.getByRole('link', { name: /Read a folder in, and export the notebook as a zip/ }).click();
    await page.getByLabel('A zip').waitFor();
  });
});
