import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { printedPages } from '../helpers/printed.ts';
import { accessibilityFaults, type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

const CHART = '#/who-had-what?region=hanse-towns&year=1370';

const bands = (page: Page) => page.getByRole('group', { name: 'Claims' }).getByRole('button');
const thread = (page: Page) => page.getByRole('slider', { name: 'Asked year' });
const claim = (page: Page) => page.getByRole('region', { name: 'The claim behind it' });
const heads = (page: Page) => page.locator('tg-availability-chart .heads li').allInnerTexts();
/** The years written on the scale. */
const ticks = (page: Page) => page.locator('tg-availability-chart .scale .tick').allInnerTexts();
/** The astronomical year that is written. */
const yearOf = (words = ''): number => (words.endsWith('BCE') ? 1 - Number.parseInt(words, 10) : Number(words));
/** What has the keys, through every shadow tree: its name for those who hear it. */
const held = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => {
    let active = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    return active?.getAttribute('aria-label') ?? active?.textContent?.trim();
  });

async function opened(hash = CHART, opening: Parameters<WatchedSite['open']>[1] = {}): Promise<Page> {
  const page = await site.open(hash, opening);
  await thread(page).waitFor();
  return page;
}

/** Goes on with Tab until something of this name has the keys. */
async function tabTo(page: Page, name: RegExp): Promise<string> {
  for (let presses = 0; presses < 80; presses++) {
    await page.keyboard.press('Tab');
    const now = await held(page);
    if (now !== undefined && name.test(now)) return now;
  }
  throw new Error(`Tab never led to ${String(name)}`);
}

describe('who had what, when', () => {
  test('by keyboard alone: Tab to the bands, arrows among them, Enter shows the claim, and the keys come back', async () => {
    const page = await opened();
    const names = await bands(page).evaluateAll((all) => all.map((band) => band.getAttribute('aria-label') ?? ''));
    const first = await tabTo(page, /^(?!Asked).+: .+, .*\d{3,4}/);
    expect(first).toBe(names[0]);
    // Only one band is a stop of Tab; the next stop is the thread.
    await page.keyboard.press('Tab');
    expect(await held(page)).toBe('Asked year');
    await page.keyboard.press('Shift+Tab');
    expect(await held(page)).toBe(first);

    // Arrows lead to every row that has a band, and stop at the last.
    const rows = [first];
    for (;;) {
      await page.keyboard.press('ArrowDown');
      const now = (await held(page)) ?? '';
      if (now === rows.at(-1)) break;
      rows.push(now);
    }
    expect(rows.map((words) => words.slice(0, words.indexOf(':')))).toEqual([
      ...new Set(names.map((words) => words.slice(0, words.indexOf(':')))),
    ]);
    const reached = rows.at(-1) ?? '';
    await page.keyboard.press('Enter');
    await claim(page).waitFor();
    const words = await claim(page).innerText();
    expect(words.startsWith(reached.slice(0, reached.indexOf(':')))).toBe(true);
    // Claim and band are both to be seen, whatever the chart's length.
    const seen = async (part: Locator) => {
      const { y = -1, height = 0 } = (await part.boundingBox()) ?? {};
      return y >= 0 && y + height <= 900 ? 'in the window' : `from ${y} to ${y + height}`;
    };
    for (const part of [claim(page), page.locator('.band:focus')]) await expect.poll(() => seen(part)).toBe('in the window');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Space');
    await expect.poll(() => claim(page).innerText()).not.toBe(words);
    await tabTo(page, /^note /);
    await tabTo(page, /^Put the claim away$/);
    await page.keyboard.press('Enter');
    await claim(page).waitFor({ state: 'detached' });
    expect(await held(page)).toBe(rows.at(-2));
    // The claim leads to its note.
    await page.keyboard.press('Enter');
    await tabTo(page, /^note /);
    await page.keyboard.press('Enter');
    await page.getByText('Change this note').waitFor();
    await page.context().close();
  });

  test('a band, pressed, shows its claim', async () => {
    const page = await opened();
    const weld = bands(page)
      .filter({ has: page.locator('.solid') })
      .first();
    const name = await weld.getAttribute('aria-label');
    await weld.locator('.touch').click();
    expect(await claim(page).innerText()).toContain(name?.slice(0, name.indexOf(':')) ?? 'a name');
    await page.context().close();
  });

  test('closer by keys and by dragging across the scale, and back to all years', async () => {
    const page = await opened();
    const all = await ticks(page);
    await thread(page).focus();
    await page.keyboard.press('+');
    await expect.poll(() => ticks(page)).not.toEqual(all);
    const near = await ticks(page);
    expect(yearOf(near.at(-1)) - yearOf(near[0])).toBeLessThan(yearOf(all.at(-1)) - yearOf(all[0]));
    await page.keyboard.press('-');
    await expect.poll(() => ticks(page)).toEqual(all);
    await page.keyboard.press('+');
    await page.keyboard.press('0');
    await expect.poll(() => ticks(page)).toEqual(all);

    await page.locator('tg-availability-chart .scale').scrollIntoViewIfNeeded();
    const { y = 0 } = (await page.locator('tg-availability-chart .scale').boundingBox()) ?? {};
    // From the first written year to the second: those two are then the ends.
    const at = async (index: number) => {
      const box = await page.locator('tg-availability-chart .scale .tick').nth(index).boundingBox();
      return (box?.x ?? 0) + (box?.width ?? 0) / 2;
    };
    const [from, to] = [await at(0), await at(1)];
    await page.mouse.move(from, y + 8);
    await page.mouse.down();
    await page.mouse.move((from + to) / 2, y + 8);
    await page.mouse.move(to, y + 8);
    await page.mouse.up();
    await expect.poll(() => ticks(page)).not.toEqual(all);
    const between = (await ticks(page)).map(yearOf);
    // A pixel is some years wide.
    expect(Math.min(...between)).toBeGreaterThanOrEqual(yearOf(all[0]) - 20);
    expect(Math.max(...between)).toBeLessThanOrEqual(yearOf(all[1]) + 20);
    await page.getByRole('button', { name: /^All years/ }).click();
    await expect.poll(() => ticks(page)).toEqual(all);
    await page.context().close();
  });

  test('the thread moves by keys and by dragging, and address and palette follow it', async () => {
    const page = await opened();
    const line = (year: number) => page.getByRole('list', { name: `Colours of ${year}` });
    const cloths = async (year: number) => (await line(year).getByRole('button').allInnerTexts()).toSorted();
    await line(1370).waitFor();
    const before = await cloths(1370);
    await thread(page).focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => page.url()).toContain('year=1371');
    await line(1371).waitFor();
    for (const _ of [1, 2, 3, 4, 5, 6]) await page.keyboard.press('PageUp');
    await expect.poll(() => page.url()).toContain('year=1671');
    await line(1671).waitFor();
    await expect.poll(async () => (await cloths(1671)).length).toBeGreaterThan(0);
    expect(await cloths(1671)).not.toEqual(before);
    // What hangs here is what the palette of that place and year has.
    const other = await site.openBeside(page, `${site.origin}/#/palette?region=hanse-towns&when=1671&group=none`);
    const said = await other.getByText(/^\d+ colours hang here/).innerText();
    await expect.poll(async () => (await cloths(1671)).length).toBe(Number.parseInt(said, 10));

    const spool = thread(page).getByText('1671');
    await spool.scrollIntoViewIfNeeded();
    const box = await spool.boundingBox();
    if (!box) throw new Error('no thread');
    const y = box.y + box.height / 2;
    await page.mouse.move(box.x + box.width / 2, y);
    await page.mouse.down();
    await page.mouse.move(box.x - 40, y);
    await page.mouse.move(box.x - 120, y);
    await page.mouse.up();
    await expect.poll(() => Number(/year=(\d+)/.exec(page.url())?.[1])).toBeLessThan(1671);
    const year = Number(/year=(\d+)/.exec(page.url())?.[1]);
    await line(year).waitFor();
    await page.context().close();
  });

  test('one key away it is a table with a row a claim; as CSV it is the same claims', async () => {
    const page = await opened();
    const names = await heads(page);
    const count = await bands(page).count();
    await thread(page).focus();
    await page.keyboard.press('t');
    const table = page.getByRole('table', { name: /^Who had what in .+, when$/ });
    await table.waitFor();
    expect((await table.getByRole('rowheader').allInnerTexts()).map((name) => name.trim())).toEqual(names.map((name) => name.trim()));
    expect(await table.getByRole('button').count()).toBe(count);
    const claims = await table.getByRole('button').allInnerTexts();

    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name: 'The chart as CSV' }).click()]);
    expect(download.suggestedFilename()).toBe('who-had-what.csv');
    const text = readFileSync(await download.path(), 'utf8');
    // RFC 4180, read by a reader of its own.
    const { data, errors } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
    expect(errors).toEqual([]);
    expect(data.map((row) => row['claim'])).toEqual(claims);
    expect([...new Set(data.map((row) => row['source']))]).toEqual(names.map((name) => name.trim()));
    for (const { start, end } of data) for (const year of [start, end]) expect(year === '' || Number.isInteger(Number(year))).toBe(true);
    await page.context().close();
  });

  test.each([
    ['A4', '595×842'],
    ['A3', '842×1191'],
  ] as const)('prints on %s, each source once', { timeout: 300_000 }, async (paper, size) => {
    const page = await opened();
    const names = (await heads(page)).map((name) => name.trim());
    const cloths = (await page.getByRole('list', { name: 'Colours of 1370' }).allInnerTexts()).join(' ');
    await page.getByLabel('Paper').selectOption(paper);
    const pages = await printedPages(await page.pdf({ preferCSSPageSize: true }));
    expect(new Set(pages.map((one) => one.size))).toEqual(new Set([size]));
    const words = pages.map(({ text }) => text).join(' ');
    const count = (text: string, name: string) => text.replace(/\s+/g, ' ').split(name).length - 1;
    expect(names.length).toBeGreaterThan(10);
    // The cloths above the chart carry names of their own.
    expect(names.filter((name) => count(words, name) - count(cloths, name) !== 1)).toEqual([]);
    for (const part of ['1370', 'known to be absent', 'No claim here', 'Printed on']) expect(words).toContain(part);
    await page.context().close();
  });

  test.each([
    ['light', 1280],
    ['dark', 390],
  ] as const)('axe finds nothing, and nothing runs off the page: %s, %i px', { timeout: 120_000 }, async (scheme, width) => {
    const page = await opened(CHART, { width, dark: scheme === 'dark', bypassPolicy: true });
    await bands(page).first().focus();
    await page.keyboard.press('Enter');
    await claim(page).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await page.getByRole('button', { name: 'Show as table' }).click();
    await page.getByRole('table').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    await page.context().close();
  });

  test('nothing was asked elsewhere, nothing complained of', () => {
    expect(site.strays).toEqual([]);
    expect(site.complaints).toEqual([]);
  });
});
