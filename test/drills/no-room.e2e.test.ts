import type { Page } from 'playwright-core';
import { describe, expect, onTestFinished, test } from 'vitest';
import { chance } from '../helpers/random.ts';
import { readIn } from '../helpers/read-in.ts';
import { siteAndBrowser } from '../helpers/site-and-browser.ts';
import { heldIn } from './kill-page.ts';
import { hashOf } from './kill-plan.ts';

const open = siteAndBrowser();

/**
 * A profile with so many bytes of room, and a way to give it as much as the browser has. It is small from the first write on:
 * the browser remembers for a while how much room there was. The site's own copy is left out, which would take a share of it.
 */
async function smallProfile(bytes: number): Promise<{ page: Page; giveRoom: () => Promise<void> }> {
  const context = await open.browser.newContext({ serviceWorkers: 'block' });
  onTestFinished(() => context.close());
  const page = await context.newPage();
  const devtools = await context.newCDPSession(page);
  const { origin } = new URL(open.site.address);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: bytes });
  const giveRoom = async () => {
    await devtools.send('Storage.overrideQuotaForOrigin', { origin });
  };
  return { page, giveRoom };
}

const letters = chance(1401);
/** Words nobody can pack any smaller, in lines; a browser packs what it stores. */
const scribble = (length: number): string =>
  Array.from({ length: length / 400 }, () => Array.from({ length: 399 }, () => letters.below(36).toString(36)).join('')).join('\n');
const note = (title: string, body: string) => `---\nkind: text\ntitle: ${title}\n---\n\n${body}\n`;
const save = (page: Page) => page.getByRole('button', { name: 'Save', exact: true }).click();

describe('a browser that gives no more room', () => {
  test('saving says so and keeps the draft; with room again it is saved', async () => {
    const { page, giveRoom } = await smallProfile(50_000);
    const roll = note('The roll', 'Said of ʿudar.');
    await readIn(page, open.site.address, { 'roll.md': roll });
    const before = await heldIn(page);
    const more = scribble(80_000);
    await page.goto(`${open.site.address}#/notebook/roll?write=text`);
    await page.getByRole('textbox', { name: 'Text of the note' }).click();
    await page.keyboard.press('ControlOrMeta+End');
    await page.keyboard.insertText(more);
    await save(page);
    await page.getByText(/^Not saved: the browser gives this notebook no more room/).waitFor();
    await page.getByText(more.slice(-399)).waitFor();
    expect(await heldIn(page)).toEqual(before);
    await giveRoom();
    await save(page);
    await page.getByText('Saved.', { exact: true }).waitFor();
    const held = await heldIn(page);
    expect(held.files).toEqual({ 'roll.md': hashOf(roll + more) });
    expect(held.earlier).toEqual({ 'roll.md': [hashOf(roll)] });
  });

  test('an import stops with a word, what it says is in the notebook is, and the rest comes when read in again', async () => {
    const { page, giveRoom } = await smallProfile(5_000_000);
    const notes = Object.fromEntries(Array.from({ length: 500 }, (_, at) => [`n${at}.md`, note(`Note ${at}`, scribble(20_000))]));
    await readIn(page, open.site.address, notes);
    const report = page.getByRole('region', { name: 'Report' });
    await report.getByText(/are missing\. The browser gives this notebook no more room/).waitFor();
    const words = (await report.innerText()).replaceAll(',', '');
    const [there, missing] = [/(\d+) files of “notes\.zip” are in the notebook/, /(\d+) files are missing/].map((one) =>
      Number(one.exec(words)?.[1]),
    );
    const { files } = await heldIn(page);
    expect(Object.keys(files)).toHaveLength(there ?? -1);
    expect(there).toBeGreaterThan(0);
    expect((there ?? 0) + (missing ?? 0)).toBe(500);
    expect(Object.entries(files).filter(([path, hash]) => hash !== hashOf(notes[path] ?? ''))).toEqual([]);
    await giveRoom();
    await readIn(page, open.site.address, notes);
    await report.getByText('500 files of “notes.zip” are in the notebook').waitFor();
    expect(Object.keys((await heldIn(page)).files)).toHaveLength(500);
  });

  test('no room at the first start: the page says so, and nothing is said to be saved', async () => {
    const { page, giveRoom } = await smallProfile(1);
    await page.goto(`${open.site.address}#/notebook/weld?write=text`);
    await page.getByRole('textbox', { name: 'Text of the note' }).click();
    await page.keyboard.type('Typed since.');
    await save(page);
    await page.getByText(/^Not saved: the browser gives this notebook no more room/).waitFor();
    await page.getByText('Typed since.').waitFor();
    await giveRoom();
    await page.reload();
    await page.getByRole('textbox', { name: 'Text of the note' }).getByText('Typed since.').waitFor();
    await save(page);
    await page.getByText('Saved.', { exact: true }).waitFor();
  });
});
