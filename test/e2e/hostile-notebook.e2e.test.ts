import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { publish } from '../../scripts/commands/publish.ts';
import { launchChromium } from '../helpers/built-site.ts';
import { hostileNotebook } from '../helpers/hostile-notebook.ts';
import { makeZip } from '../helpers/make-zip.ts';
import { runCommand } from '../helpers/run-command.ts';
import { watchedSite, type WatchedSite } from '../helpers/watched-site.ts';

/** A place of every sort that shows what somebody wrote, with words that say it is drawn. */
const PLACES: readonly (readonly [hash: string, words: string | RegExp])[] = [
  ['#/ask?dye=madder&region=hanse-towns&when=1370&fibre=wool', 'Feasible'],
  ['#/ask?dye=%3Cimg%20src%3Dx%20onerror%3Dfired()%3E&region=__proto__&when=%3Cscript%3Efired()%3C%2Fscript%3E', 'fired()'],
  ['#/dyestuffs', 'Madder'],
  ['#/dyestuffs/kermes', /^Where it is named/],
  ['#/palette?region=hanse-towns&when=1370', 'colours hang here'],
  ['#/who-had-what?region=hanse-towns&year=1370', 'Kermes'],
  ['#/recipes', 'Madder'],
  ['#/recipes/madder-alum-wool', 'Madder'],
  ['#/trials', 'Evil photo'],
  ['#/trials/wq23-001', 'Cochineal'],
  ['#/trials/evil-photo', 'Evil photo'],
  ['#/pot/wq23-001', 'Cochineal'],
  ['#/on-show', 'On show'],
  ['#/on-show/house-2-board', 'What is not on it'],
  ['#/on-show/house-2-board?publish=1', 'Take the folder as a zip'],
  ['#/notebook', 'Read in a folder or a zip'],
  ['#/notebook?find=onerror', 'In these words'],
  ['#/notebook/kermes', 'Change this note'],
  ['#/notebook/evil-photo', 'Change this note'],
  ['#/notebook/__proto__', 'Change this note'],
  ['#/notebook/kermes?write=form', 'Other names'],
  ['#/notebook/kermes?write=text', 'leaves the text'],
  ['#/notebook/kermes?versions=all', 'Earlier versions of Kermes'],
  ['#/notebook?share=1', 'A file of remarks'],
];

/** Elements that run or fetch something, handlers in attributes, and addresses that are script, in every shadow tree of the page. */
const planted = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const look = (root: Document | ShadowRoot): void => {
      for (const one of root.querySelectorAll('*')) {
        const own = one.localName === 'script' && root === document && (one as HTMLScriptElement).src.startsWith(location.origin);
        if (/^(?:script|iframe|object|embed|base|frame|applet)$/.test(one.localName) && !own && one.id !== 'start')
          found.push(one.outerHTML.slice(0, 120));
        for (const { name, value } of one.attributes)
          if (
            name.startsWith('on') ||
            (/^(?:href|src|action|formaction|data|xlink:href)$/.test(name) &&
              /^(?:javascript|vbscript|data:(?!text\/csv;))/i.test([...value].filter((sign) => sign > ' ').join('')))
          )
            found.push(`${one.localName} ${name}=${value}`);
        if (one.shadowRoot) look(one.shadowRoot);
      }
    };
    look(document);
    return found;
  });

/** Counts what runs, what the policy had to stop, and what opened a window of its own. */
async function watch(page: Page): Promise<string[]> {
  const alarms: string[] = [];
  await page.exposeFunction('fired', () => void alarms.push('a script of the notebook ran'));
  await page.exposeFunction('stopped', (what: string) => void alarms.push(`the policy stopped ${what}`));
  await page.addInitScript(() => {
    const { stopped } = globalThis as unknown as { stopped: (what: string) => void };
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI }) =>
      stopped(`${effectiveDirective} ${blockedURI}`),
    );
  });
  page.on('dialog', (dialog) => {
    alarms.push(`dialog ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('pageerror', (fault) => alarms.push(String(fault)));
  return alarms;
}

describe('a notebook with script in all of its words', { timeout: 240_000 }, () => {
  const files = hostileNotebook();
  let site: WatchedSite;
  let folder: string;
  beforeAll(async () => {
    site = await watchedSite();
    folder = mkdtempSync(join(tmpdir(), 'tenterground-hostile-'));
  });
  afterAll(async () => {
    await site.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test('runs nothing and fetches nothing from elsewhere, in any view', async () => {
    const page = await site.open();
    const alarms = await watch(page);
    await page.goto(`${site.origin}/#/notebook?read-in=1`);
    await page.reload();
    const zip = makeZip(files.map(({ path, text }) => ({ path, bytes: new TextEncoder().encode(text) })));
    await page
      .getByLabel('A zip')
      .setInputFiles({ name: '<img src=x onerror=fired()>.zip', mimeType: 'application/zip', buffer: Buffer.from(zip) });
    await page.getByRole('region', { name: 'Report' }).waitFor();
    const found: string[] = [...(await planted(page))];
    for (const [hash, words] of PLACES) {
      await page.evaluate((to) => void (globalThis.location.hash = to), hash);
      await page.getByRole('main').getByText(words).first().waitFor();
      found.push(...(await planted(page)).map((what) => `${hash} ${what}`));
    }
    expect(found).toEqual([]);
    expect(alarms).toEqual([]);
    expect(site.strays).toEqual([]);
    // The alarm itself works: what the page's own script is told to run is counted.
    await page.evaluate(() => (globalThis as unknown as { fired: () => Promise<void> }).fired());
    expect(alarms).toHaveLength(1);
  });

  test('runs nothing when it is published and opened from disk', async () => {
    for (const { path, text } of files) {
      mkdirSync(dirname(join(folder, 'in', path)), { recursive: true });
      writeFileSync(join(folder, 'in', path), text);
    }
    const ran = await runCommand(publish, join(folder, 'in'), join(folder, 'out'), '--display', 'house-2-board');
    expect(ran.code).toBe(0);
    const browser = await launchChromium();
    try {
      for (const name of ['index.html', 'gallery.html']) {
        const page = await browser.newPage();
        const alarms = await watch(page);
        const asked: string[] = [];
        page.on('request', (request) => asked.push(request.url()));
        const address = pathToFileURL(join(folder, 'out', name)).href;
        await page.goto(address);
        expect(await page.getByRole('heading', { level: 1 }).innerText()).toContain('House 2');
        const scripts = await page.locator('script').count();
        expect([name, scripts, alarms, asked]).toEqual([name, name === 'gallery.html' ? 1 : 0, [], [address]]);
        expect((await planted(page)).filter((what) => !what.startsWith('<script>'))).toEqual([]);
        await page.close();
      }
    } finally {
      await browser.close();
    }
  });
});
