import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { BuiltSite } from '../helpers/built-site.ts';
import { KillableChromium } from '../helpers/killable-chromium.ts';
import { readIn } from '../helpers/read-in.ts';
import { heldIn } from './kill-page.ts';
import { hashOf } from './kill-plan.ts';
import { holdOlderNotebook } from './older-notebook.ts';

let site: BuiltSite;
let folder: string;
beforeAll(async () => {
  site = await new BuiltSite().open();
  folder = mkdtempSync(join(tmpdir(), 'tenterground-killed-'));
});
afterAll(async () => {
  await site.remove();
  rmSync(folder, { recursive: true, force: true });
});

const note = (title: string, body: string) => `---\nkind: text\ntitle: ${title}\n---\n\n${body}\n`;

async function start(profile: string): Promise<{ browser: KillableChromium; page: Page }> {
  const browser = await KillableChromium.start(profile);
  onTestFinished(() => browser.kill());
  return { browser, page: await browser.page() };
}

describe('a browser killed', () => {
  test.each([
    ['as “imports” is made', 'createObjectStore', 'imports'],
    ['as “batches” is made', 'createObjectStore', 'batches'],
    ['as the first transaction after it begins', 'transaction', ''],
  ] as const)(
    'while a notebook of years ago is brought up to date, %s: the next start has every note, and has it up to date',
    async (_, method, store) => {
      const profile = mkdtempSync(join(folder, 'profile-'));
      const notes = Object.fromEntries(Array.from({ length: 200 }, (_, at) => [`n${at}.md`, note(`Note ${at}`, `Said of ʿudar, ${at}.`)]));
      const old = await start(profile);
      await old.page.goto(`${site.address}icon.svg`);
      await holdOlderNotebook(old.page, notes);
      await old.page.close();

      const page = await old.browser.page();
      let reach = () => {};
      const reached = new Promise<void>((done) => (reach = done));
      await page.route('**/stands-still', () => reach());
      await page.addInitScript(
        ([name, wanted]) => {
          const prototype = IDBDatabase.prototype as unknown as Record<string, (this: IDBDatabase, ...given: unknown[]) => unknown>;
          const call = prototype[name];
          prototype[name] = function (...given) {
            const made = call?.apply(this, given);
            if (wanted !== '' && given[0] !== wanted) return made;
            // The page stands still in the midst of it, as nobody answers, until it is killed.
            const asking = new XMLHttpRequest();
            asking.open('GET', '/stands-still', false);
            asking.send();
            return made;
          };
        },
        [method, store] as const,
      );
      void page.goto(site.address).catch(() => undefined);
      await reached;
      await old.browser.kill();

      const next = await start(profile);
      await next.page.goto(`${site.address}#/notebook/n7`);
      await next.page.getByText('Said of ʿudar, 7.').waitFor();
      await next.page.getByText('Your notebook in this browser: 200 notes.').waitFor();
      const wanted = Object.fromEntries(Object.entries(notes).map(([path, text]) => [path, hashOf(text)]));
      expect(await heldIn(next.page)).toEqual({ files: wanted, earlier: {}, missing: {} });
    },
  );

  test('the moment the page has said “Saved.”: the note is there, with the one before among its versions', async () => {
    const profile = mkdtempSync(join(folder, 'profile-'));
    const { browser, page } = await start(profile);
    const roll = note('The roll', 'Said of ʿudar.');
    await readIn(page, site.address, { 'roll.md': roll });
    await page.goto(`${site.address}#/notebook/roll?write=text`);
    await page.getByRole('textbox', { name: 'Text of the note' }).click();
    await page.keyboard.press('ControlOrMeta+End');
    await page.keyboard.type('Typed since.');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('Saved.', { exact: true }).waitFor();
    await browser.kill();

    const next = await start(profile);
    await next.page.goto(`${site.address}#/notebook/roll`);
    await next.page.getByText('Typed since.').waitFor();
    const text = `${roll}Typed since.`;
    expect(await heldIn(next.page)).toEqual({ files: { 'roll.md': hashOf(text) }, earlier: { 'roll.md': [hashOf(roll)] }, missing: {} });
  });
});
