import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { heldIn } from '../drills/kill-page.ts';
import { hashOf } from '../drills/kill-plan.ts';
import { BuiltSite } from '../helpers/built-site.ts';
import { KillableChromium } from '../helpers/killable-chromium.ts';
import { makeZip } from '../helpers/make-zip.ts';

const COUNT = 5000;
const pathOf = (at: number) => `n/note-${String(at).padStart(4, '0')}.md`;
const textOf = (at: number) => `---\nkind: text\ntitle: Note ${at}\n---\n\n${`Line ${at} of a dyer’s book. `.repeat(20 + (at % 60))}\n`;

let site: BuiltSite;
let folder: string;
let zip: string;

beforeAll(async () => {
  site = await new BuiltSite().open();
  folder = mkdtempSync(join(tmpdir(), 'tenterground-killed-'));
  zip = join(folder, 'five-thousand.zip');
  const encoder = new TextEncoder();
  const entries = Array.from({ length: COUNT }, (_, at) => ({ path: `book/${pathOf(at)}`, bytes: encoder.encode(textOf(at)) }));
  writeFileSync(zip, makeZip(entries.map((entry) => ({ ...entry, options: { level: 1 } }))));
});
afterAll(async () => {
  await site.remove();
  rmSync(folder, { recursive: true, force: true });
});

async function startReadIn(page: Page): Promise<void> {
  await page.goto(`${site.address}#/notebook?read-in=1`);
  await page.getByLabel('A zip').setInputFiles(zip);
}

/** Waits until the page has said that so many are saved, and gives the number it said. */
async function saidSaved(page: Page, least: number): Promise<number> {
  const handle = await page.waitForFunction(
    (wanted) => {
      const search = (root: Document | ShadowRoot): Element | undefined => {
        const found = root.querySelector('[data-saved]');
        if (found) return found;
        for (const one of root.querySelectorAll('*')) {
          const inside = one.shadowRoot && search(one.shadowRoot);
          if (inside) return inside;
        }
        return undefined;
      };
      const said = Number(search(document)?.getAttribute('data-saved') ?? -1);
      return said >= wanted ? { said } : undefined;
    },
    least,
    { polling: 5, timeout: 60_000 },
  );
  const { said = 0 } = (await handle.jsonValue()) ?? {};
  return said;
}

describe('an import of 5,000 notes, the browser killed on the way', () => {
  test.each([1, 1500, 4000])(
    'after %i notes were said to be saved, none of them is missing, and the next start says which are',
    async (least) => {
      const profile = mkdtempSync(join(folder, 'profile-'));
      const browser = await KillableChromium.start(profile);
      onTestFinished(() => browser.kill());
      const page = await browser.page();
      await startReadIn(page);
      const said = await saidSaved(page, least);
      await browser.kill();
      expect(said).toBeLessThan(COUNT);

      const next = await KillableChromium.start(profile);
      onTestFinished(() => next.kill());
      const again = await next.page();
      await again.goto(site.address);
      const notice = again.getByText(/was cut off/);
      await notice.waitFor();

      const { files: stored } = await heldIn(again);
      const count = Object.keys(stored).length;
      const lost = Array.from({ length: said }, (_, at) => at).filter((at) => stored[pathOf(at)] !== hashOf(textOf(at)));
      expect(lost).toEqual([]);
      // Nothing half written either.
      expect(Object.entries(stored).filter(([path, hash]) => hashOf(textOf(Number(/\d{4}/.exec(path)?.[0]))) !== hash)).toEqual([]);

      const words = (await notice.innerText()).replaceAll(',', '');
      const [there, planned, missing] =
        /“five-thousand\.zip” was cut off: (\d+) of (\d+) files are in the notebook (\d+) are missing/.exec(words)?.slice(1).map(Number) ??
        [];
      expect([there, planned, missing]).toEqual([count, COUNT, COUNT - count]);
      expect((await again.getByRole('contentinfo').innerText()).replaceAll(',', '')).toContain(`${count} notes`);

      await again.getByRole('button', { name: 'Read it in again' }).click();
      await again.getByLabel('A zip').setInputFiles(zip);
      await again.getByText(/^5,000 files of “five-thousand.zip” are in the notebook/).waitFor({ timeout: 60_000 });
      expect(await again.getByText(/were there already, the same to the byte/).innerText()).toContain(count.toLocaleString('en'));
      await again.reload();
      await again.getByText('Your notebook in this browser: 5,000 notes.').waitFor();
      expect(await again.getByText(/was cut off/).count()).toBe(0);
    },
    120_000,
  );
});
