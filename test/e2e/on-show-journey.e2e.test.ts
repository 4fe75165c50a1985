import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { inflateSync } from 'node:zlib';
import Color from 'colorjs.io';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type SwatchColour, swatchFromCss } from '../../web/domain/colour/swatch-colour.ts';
import { spectrumToLab10 } from '../../web/domain/colour/xyz-lab.ts';
import { shownColours } from '../../web/notebook/shown-colours.ts';
import { demoNotebook } from '../helpers/demo-notebook.ts';
import { printedPages } from '../helpers/printed.ts';
import { accessibilityFaults, type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

let site: WatchedSite;
let folder = '';
beforeAll(async () => {
  site = await watchedSite();
  folder = mkdtempSync(join(tmpdir(), 'tenterground-journey-'));
});
afterAll(async () => {
  await site.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Saves a note with a change in it, as its editor does; gives the words that went. */
async function changeNote(page: Page, id: string, from: string, to: string): Promise<void> {
  await page.evaluate(
    async ([note, was, now]) => {
      interface App extends Element {
        readonly engine: { noteText(id: string): Promise<{ readonly path: string; readonly text: string } | undefined> };
      }
      const app = document.querySelector<App>('tg-app');
      const found = await app?.engine.noteText(note);
      if (!app || !found?.text.includes(was)) throw new Error(`“${was}” does not stand in ${note}`);
      const detail = { path: found.path, text: found.text.replace(was, now), basedOn: found.text };
      await new Promise<unknown>((resolve) => {
        const wish = new CustomEvent('tg-note-save-request', { detail, bubbles: true, composed: true });
        app.dispatchEvent(Object.assign(wish, { respondWith: resolve }));
      });
    },
    [id, from, to] as const,
  );
}

/** Every colour a PDF is filled with, as hex: `r g b rg` in its content. @source ISO 32000-2, 8.6.8. */
function printedFills(pdf: Buffer): ReadonlySet<string> {
  const found = new Set<string>();
  const hex = (share: string | undefined): string =>
    Math.round(Number(share) * 255)
      .toString(16)
      .padStart(2, '0');
  for (let at = pdf.indexOf('stream\n'); at >= 0; at = pdf.indexOf('stream\n', at + 1)) {
    let content = '';
    try {
      content = inflateSync(pdf.subarray(at + 7)).toString('latin1');
    } catch {
      continue;
    }
    for (const [, r, g, b] of content.matchAll(/(?:^|\s)([\d.]+) ([\d.]+) ([\d.]+) rg\b/g)) found.add(`#${hex(r)}${hex(g)}${hex(b)}`);
  }
  return found;
}

/**
 * ΔE00 of a printed fill from the Lab shown beside its cloth, both under one observer. The Lab shown is D65/10°, a fill D65/2°.
 * Where a curve was measured the Lab is that curve's, and fill and curve meet at 2°: the largest of the board is 0.30, the rounding
 * of a hex. Elsewhere the fill goes through the smoothest curve that gives it, as a typed colour does, and they meet at 10°: 0.21.
 * Taken that way a measured weld would be 1.42 off, because its own curve is not the smoothest of its colour.
 */
function printedOff(fill: string, cloth: SwatchColour, lab10: readonly number[]): number {
  const apart = (one: readonly number[], other: readonly number[]): number => labD65(one).deltaE(labD65(other), '2000');
  if (cloth.spectrumIs !== 'measured') {
    const typed = swatchFromCss(fill);
    return typed.ok ? apart(typed.value.lab10, lab10) : Infinity;
  }
  expect(apart(spectrumToLab10(cloth.spectrum), lab10)).toBeLessThan(0.01);
  return apart(new Color(fill).to('lab-d65').coords.map(Number), cloth.lab2);
}

const labD65 = ([l = 0, a = 0, b = 0]: readonly number[]): Color => new Color('lab-d65', [l, a, b]);

test('palette → display → caption → a claim dated anew → stale, named → mended → printed → published', { timeout: 180_000 }, async () => {
  const page = await site.open('#/palette/house-2-hanse-merchant', { bypassPolicy: true });
  await page.getByRole('link', { name: 'Put it on a board' }).click({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Begin its board' }).click();
  await page.getByRole('heading', { level: 1, name: /: the board$/ }).waitFor({ timeout: 30_000 });

  // A caption is drafted from the claims and saved.
  const kermes = page.locator('tg-display section.pair').filter({ hasText: 'Kermes scarlet on alumed wool' });
  await kermes.getByRole('button', { name: 'Draft a caption from the claims' }).click();
  const text = kermes.getByRole('textbox', { name: 'Caption, 20 to 60 words' });
  await expect.poll(() => text.inputValue()).toContain('(trade record, 1300–1450)');
  await kermes.getByRole('button', { name: 'Save the caption' }).click();
  await page.getByText('Every caption still stands on its claims.').waitFor({ timeout: 30_000 });
  await kermes.getByRole('button', { name: 'Edit this caption' }).waitFor();
  expect(await accessibilityFaults(page)).toEqual([]);

  // Its claim is dated anew: the caption is stale, and says why.
  await changeNote(page, 'kermes', 'region: hanse-towns\n    when: 1300–1450', 'region: hanse-towns\n    when: 1310–1450');
  await page.getByText('1 caption is stale.').waitFor({ timeout: 30_000 });
  await page.getByText('Kermes: its date was 1300–1450, now 1310–1450.').waitFor();

  // It is mended: the words, and what they rest on.
  await kermes.getByRole('button', { name: 'Edit this caption' }).click();
  await text.fill((await text.inputValue()).replace('1300–1450', '1310–1450'));
  const clause = kermes.getByRole('combobox', { name: /rests on nothing yet/ });
  const claim = clause.locator('option').filter({ hasText: /^Kermes came only as cloth, Hanse towns, 1310–1450/ });
  await clause.selectOption((await claim.first().getAttribute('value')) ?? '');
  await kermes.getByRole('button', { name: 'Save the caption' }).click();
  await page.getByText('Every caption still stands on its claims.').waitFor({ timeout: 30_000 });
  await kermes.getByText(/version 2 · en/).waitFor();

  // The board on paper: its size, its words, its colours.
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  const sheets = await printedPages(pdf);
  expect(sheets.map(({ size }) => size)).toEqual(['842×1191']);
  expect(sheets[0]?.text).toContain('(trade record, 1310–1450)');
  expect(sheets[0]?.text).toContain('Version 1');
  const shown = await page.evaluate(() => {
    const display = document.querySelector('tg-app')?.shadowRoot?.querySelector('tg-on-show')?.shadowRoot?.querySelector('tg-display');
    const board = display?.shadowRoot?.querySelector('tg-board') as unknown as
      { display: { colours: readonly { what: string; hex: string; lab10?: readonly number[] }[] } } | undefined;
    return board?.display.colours.map(({ what, hex, lab10 }) => ({ what, hex, lab10 })) ?? [];
  });
  expect(shown).toHaveLength(9);
  const cloths = new Map(shownColours(await demoNotebook(), 'house-2-board')?.colours.map(({ what, swatch }) => [what, swatch]));
  const fills = [...printedFills(pdf)];
  for (const { what, hex, lab10 = [] } of shown) {
    const cloth = cloths.get(what);
    if (!cloth) throw new Error(`${what} has no colour`);
    const off = (fill: string) => new Color(fill).deltaE(new Color(hex), '2000');
    const fill = fills.reduce((best, one) => (off(one) < off(best) ? one : best));
    expect(printedOff(fill, cloth, lab10), what).toBeLessThan(1);
  }

  // The published folder, from disk: read without a script, then touched without a network.
  await page.getByRole('link', { name: 'Publish it' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Take the folder as a zip' }).click(),
  ]);
  for (const [path, bytes] of Object.entries(unzipSync(readFileSync(await download.path())))) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), bytes);
  }
  const published = join(folder, download.suggestedFilename().replace('.zip', ''));
  const browser = page.context().browser();
  const reading = await browser?.newPage({ javaScriptEnabled: false, offline: true });
  await reading?.goto(pathToFileURL(join(published, 'index.html')).href);
  expect(await reading?.locator('main').innerText()).toContain('(trade record, 1310–1450)');
  const touched = await browser?.newPage({ offline: true });
  await touched?.goto(pathToFileURL(join(published, 'gallery.html')).href);
  await touched?.getByRole('link').first().click();
  expect(await touched?.locator('section.colour:visible').count()).toBe(1);
  expect(site.strays).toEqual([]);
  expect(site.complaints).toEqual([]);
});
