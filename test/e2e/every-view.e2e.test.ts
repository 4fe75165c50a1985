import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeZip } from '../helpers/make-zip.ts';
import { printedPages } from '../helpers/printed.ts';
import { accessibilityFaults, watchedSite, type WatchedSite } from '../helpers/watched-site.ts';

/** A place of every sort, with the words that say it is drawn. */
const PLACES: readonly (readonly [hash: string, words: string | RegExp])[] = [
  ['#/ask?dye=madder&region=hanse-towns&when=1370&fibre=wool', 'Feasible'],
  ['#/dyestuffs', 'Madder'],
  ['#/dyestuffs/kermes', /^Where it is named/],
  ['#/palette?region=hanse-towns&when=1370', 'colours hang here'],
  ['#/who-had-what?region=hanse-towns&year=1370', 'Kermes'],
  ['#/recipes', 'Madder'],
  ['#/on-show', 'On show'],
  ['#/on-show/house-2-board', 'What is not on it'],
  ['#/on-show/house-2-board?publish=1', 'Take the folder as a zip'],
  ['#/notebook', 'Read in a folder or a zip'],
  ['#/notebook?by=dyestuff', 'Madder'],
  ['#/notebook?find=weld', 'In these words'],
  ['#/notebook?new=note', 'A new note'],
  ['#/notebook?capture=1', 'Where it is from'],
  ['#/notebook/kermes', 'Change this note'],
  ['#/notebook/kermes?write=form', 'Other names'],
  ['#/notebook/kermes?write=text', 'leaves the text'],
  ['#/notebook/kermes?versions=all', 'Earlier versions of Kermes'],
  ['#/notebook?share=1', 'A file of remarks'],
];

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

async function drawn(page: Page, hash: string, words: string | RegExp): Promise<void> {
  await page.evaluate((to) => void (globalThis.location.hash = to), hash);
  await page.getByRole('main').getByText(words).first().waitFor();
}

describe('every view', { timeout: 240_000 }, () => {
  test.each([
    ['light', false],
    ['dark', true],
  ])('on the narrowest phone, %s: no scrolling sideways, and clean for those who hear or key it', async (_, dark) => {
    const page = await site.open('', { width: 360, height: 780, dark, bypassPolicy: true });
    const wide: string[] = [];
    const faults: string[] = [];
    for (const [hash, words] of PLACES) {
      await drawn(page, hash, words);
      if (await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)) wide.push(hash);
      faults.push(...(await accessibilityFaults(page)).map((fault) => `${hash} ${fault}`));
    }
    expect(wide).toEqual([]);
    expect(faults).toEqual([]);
  });

  test('on paper: its matter is there, what can only be pressed is not', async () => {
    const page = await site.open('', { width: 1280, height: 900 });
    for (const [hash, words, gone] of [
      ['#/notebook', 'Trials', /Read in a folder|Export the whole|Choose a folder|Link a folder|Keys/],
      ['#/notebook/kermes', 'Kermes vermilio', /Change this note/],
      ['#/notebook/kermes?write=form', 'Other names', /One more|Step back|Save/],
      ['#/notebook/kermes?write=text', 'kind: dyestuff', /Step back|leaves the text/],
      ['#/dyestuffs/kermes', 'Found on', /Keys/],
    ] as const) {
      await drawn(page, hash, words);
      const pages = await printedPages(await page.pdf({ preferCSSPageSize: true }));
      const text = pages.map((one) => one.text).join(' ');
      expect(text, hash).toContain(words);
      expect(text, hash).not.toMatch(gone);
    }
  });

  test('a phone may install it: manifest, icon, start and worker are what the browser asks for', async () => {
    const page = await site.open();
    await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
    const session = await page.context().newCDPSession(page);
    const { errors } = await session.send('Page.getAppManifest');
    expect(errors).toEqual([]);
    const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
    // A profile that keeps nothing may install nothing; that alone is the test's own doing.
    expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual([]);
  });

  test('numbers and dates stand as the reader’s own country writes them', async () => {
    const page = await site.open('#/notebook', { locale: 'de-DE' });
    const entries = Array.from({ length: 10_001 }, (_, at) => ({
      path: `${at}.md`,
      bytes: new Uint8Array(),
      options: { level: 0 } as const,
    }));
    await page.getByLabel('A zip').setInputFiles({ name: 'many.zip', mimeType: 'application/zip', buffer: Buffer.from(makeZip(entries)) });
    // A full stop parts thousands in German; a day is written before its month, with a full stop (CLDR 46, de).
    await page.getByText('This zip holds 10.001 files').waitFor();
    const pages = await printedPages(await page.pdf({ preferCSSPageSize: true }));
    expect(pages.map(({ text }) => text).join(' ')).toMatch(/Printed on \d{1,2}\. [A-Z][a-zä]+ \d{4}/);
  });
});
