import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { BuiltSite } from '../helpers/built-site.ts';
import { KillableChromium } from '../helpers/killable-chromium.ts';
import { inFolder, linkFolder, pickOwnFolder, setFolder, writeInFolder } from '../helpers/own-folder.ts';
import { readIn } from '../helpers/read-in.ts';
import { heldIn } from './kill-page.ts';
import { hashOf } from './kill-plan.ts';

let site: BuiltSite;
let folder: string;
beforeAll(async () => {
  site = await new BuiltSite().open();
  folder = mkdtempSync(join(tmpdir(), 'tenterground-folder-'));
});
afterAll(async () => {
  await site.remove();
  rmSync(folder, { recursive: true, force: true });
});

const WELD = '---\nkind: dyestuff\ntitle: Weld\nmatter: plant\n---\nYellow.\n\nSown in spring.\n';
const TYPED = 'Cut when the seed sets.';

async function start(profile: string): Promise<{ browser: KillableChromium; page: Page; context: BrowserContext }> {
  const browser = await KillableChromium.start(profile);
  onTestFinished(() => browser.kill());
  const page = await browser.page();
  await pickOwnFolder(page.context());
  return { browser, page, context: page.context() };
}

/** A browser with one note that its folder has too. */
async function linked(): Promise<Awaited<ReturnType<typeof start>> & { readonly profile: string }> {
  const profile = mkdtempSync(join(folder, 'profile-'));
  const started = await start(profile);
  await readIn(started.page, site.address, { 'weld.md': WELD });
  await linkFolder(started.page, site.address);
  return { ...started, profile };
}

async function typeInto(page: Page): Promise<void> {
  await page.goto(`${site.address}#/notebook/weld?write=text`);
  await page.getByRole('textbox', { name: 'Text of the note' }).click();
  await page.keyboard.press('ControlOrMeta+End');
  await page.keyboard.type(TYPED);
}

const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true }).click();

describe('a linked folder in trouble', () => {
  test.each(['before', 'after'] as const)(
    'killed while a file of it is written, %s it is in place: the folder has the old text or the new one whole, and the next start makes both alike',
    async (stops) => {
      const { browser, page, profile } = await linked();
      await typeInto(page);
      await setFolder(page, 'stops', stops);
      await save(page);
      await page.getByText('Saved.', { exact: true }).waitFor();
      await page.waitForFunction((wanted) => document.title === wanted, `stopped ${stops} it was in place`);
      await setFolder(page, 'stops', undefined);
      await browser.kill();

      const next = await start(profile);
      await next.page.goto(`${site.address}icon.svg`);
      expect(await inFolder(next.page, 'weld.md')).toBe(stops === 'before' ? WELD : WELD + TYPED);
      await next.page.goto(`${site.address}#/notebook?share=1`);
      await next.page.getByText('Linked with “notes”: what you save').waitFor();
      expect(await inFolder(next.page, 'weld.md')).toBe(WELD + TYPED);
      await next.page.getByText('None: no file was changed on two sides').waitFor();
      const held = await heldIn(next.page);
      expect(held).toEqual({ files: { 'weld.md': hashOf(WELD + TYPED) }, earlier: { 'weld.md': [hashOf(WELD)] }, missing: {} });
    },
    120_000,
  );

  test('the file is changed on the disk while its note is being written: both texts are kept, and the writer chooses', async () => {
    const { page } = await linked();
    await typeInto(page);
    const theirs = WELD.replace('spring', 'autumn');
    await writeInFolder(page, 'weld.md', theirs);
    await expect.poll(async () => (await heldIn(page)).files['weld.md'], { timeout: 60_000 }).toBe(hashOf(theirs));
    await page.getByText(TYPED).waitFor();
    await save(page);
    await page.getByText('This note was changed elsewhere, in another tab perhaps, or in the linked folder').waitFor();
    expect(await inFolder(page, 'weld.md')).toBe(theirs);
    await page.getByRole('button', { name: /^Keep my text/ }).click();
    await page.getByText('Saved.', { exact: true }).waitFor();
    await expect.poll(() => inFolder(page, 'weld.md'), { timeout: 60_000 }).toBe(WELD + TYPED);
    const held = await heldIn(page);
    expect(held.files).toEqual({ 'weld.md': hashOf(WELD + TYPED) });
    expect(held.earlier).toEqual({ 'weld.md': [hashOf(WELD), hashOf(theirs)] });
  }, 120_000);

  test('the permission is taken back while a note is written: it is saved here, the page says so, and the folder has it once allowed', async () => {
    const { page } = await linked();
    await typeInto(page);
    await setFolder(page, 'taken', 'yes');
    await save(page);
    await page.getByText('Saved.', { exact: true }).waitFor();
    await page.getByText('The browser no longer lets this page into the folder').first().waitFor();
    expect(await inFolder(page, 'weld.md')).toBe(WELD);
    expect((await heldIn(page)).files).toEqual({ 'weld.md': hashOf(WELD + TYPED) });
    await page.getByRole('button', { name: 'See to it' }).click();
    await page.getByRole('button', { name: 'Allow the folder again' }).click();
    await expect.poll(() => inFolder(page, 'weld.md'), { timeout: 60_000 }).toBe(WELD + TYPED);
  }, 120_000);
});
