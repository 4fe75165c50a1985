import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { publish } from '../../scripts/commands/publish.ts';
import { runCommand } from '../helpers/run-command.ts';
import { accessibilityFaults } from '../helpers/watched-site.ts';

const out = join(mkdtempSync(join(tmpdir(), 'tenterground-published-')), 'board');
let browser: Browser;

beforeAll(async () => {
  const ran = await runCommand(publish, 'corpus-demo', out, '--display', 'house-2-board');
  expect(ran.code).toBe(0);
  browser = await chromium.launch({
    executablePath: process.env['CHROMIUM_PATH'] || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--disable-background-networking'],
  });
});
afterAll(async () => {
  await browser.close();
  rmSync(join(out, '..'), { recursive: true, force: true });
});

/** A page of the folder, opened from disk with no network; what it asks for beside itself and what it complains of is kept. */
async function opened(file: string, options: BrowserContextOptions = {}) {
  const context = await browser.newContext({ offline: true, viewport: { width: 1280, height: 800 }, ...options });
  const page = await context.newPage();
  const asked: string[] = [];
  const complaints: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (fault) => complaints.push(String(fault)));
  const address = pathToFileURL(join(out, file)).href;
  await page.goto(address);
  return { page, address, others: () => asked.filter((url) => url !== address), complaints };
}

const section = (page: Page, name: string) => page.getByRole('region', { name, includeHidden: true });

describe('a published display', () => {
  test('is read from disk without a script: every caption, its verdict, how it is known', async () => {
    const { page, others, complaints } = await opened('index.html', { javaScriptEnabled: false });
    expect(await page.getByRole('heading', { level: 1 }).innerText()).toBe('House 2: the board by the counting-house door');
    const kermes = section(page, 'Kermes scarlet on alumed wool');
    expect(await kermes.innerText()).toContain('kermes came only as cloth (trade record, 1300–1450)');
    expect(await kermes.innerText()).toContain('Attested as cloth.');
    await kermes.getByText('How is this known?').click();
    expect(await kermes.innerText()).toContain('Encyclopaedia of Medieval Dress and Textiles');
    expect(await page.locator('section.colour').count()).toBe(9);
    await page.getByRole('link', { name: /Scarlet from over the sea/ }).click();
    expect(new URL(page.url()).hash).toBe('#kermes-alum-wool');
    expect(others()).toEqual([]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test('on a screen shows one cloth at a time in large targets, another language, and goes back', async () => {
    const { page, others, complaints } = await opened('gallery.html');
    const links = page.getByRole('link');
    expect(await links.count()).toBe(9);
    for (const box of await Promise.all((await links.all()).map((link) => link.boundingBox())))
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(64);
    await page.getByRole('link', { name: /A red for every day/ }).click();
    expect(await page.locator('section.colour:visible').count()).toBe(1);
    expect(await page.getByText('Red wool dyed with madder').isVisible()).toBe(true);
    await page.getByRole('button', { name: 'Deutsch' }).click();
    expect(await page.getByText('Rote Wolle, gefärbt mit Krapp').isVisible()).toBe(true);
    expect(await page.getByText('Red wool dyed with madder').isVisible()).toBe(false);
    await page.getByRole('button', { name: 'Back to the start' }).click();
    expect(await page.locator('section.colour:visible').count()).toBe(0);
    expect(others()).toEqual([]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test('left alone, the screen returns to its start and its first language', async () => {
    const text = readFileSync(join(out, 'gallery.html'), 'utf8');
    expect(text).toContain('data-idle="90"');
    writeFileSync(join(out, 'soon.html'), text.replace('data-idle="90"', 'data-idle="0.3"'));
    const { page } = await opened('soon.html');
    await page.getByRole('link', { name: /A red for every day/ }).click();
    await page.getByRole('button', { name: 'Deutsch' }).click();
    await expect.poll(() => page.locator('section.colour:visible').count()).toBe(0);
    expect(await page.getByRole('button', { name: 'English' }).getAttribute('aria-pressed')).toBe('true');
    rmSync(join(out, 'soon.html'));
    await page.context().close();
  });

  test('leads nowhere else: no link, no form, no frame, no address that could be followed', async () => {
    for (const file of ['index.html', 'gallery.html']) {
      const { page, address } = await opened(file, { javaScriptEnabled: file === 'gallery.html' });
      const hrefs = await page
        .locator('[href], [src], [action]')
        .evaluateAll((all) => all.map((one) => one.getAttribute('href') ?? one.getAttribute('src') ?? one.getAttribute('action') ?? ''));
      expect(hrefs.length).toBeGreaterThan(0);
      expect(hrefs.filter((href) => !href.startsWith('#'))).toEqual([]);
      if (file === 'gallery.html') {
        for (const link of await page.getByRole('link').all()) {
          await link.click({ modifiers: ['ControlOrMeta'] });
          await page.getByRole('button', { name: 'Back to the start' }).click();
        }
        expect(page.context().pages()).toHaveLength(1);
        expect(page.url()).toBe(address);
      }
      await page.context().close();
    }
  });

  test.each(['index.html', 'gallery.html'])('%s has no fault axe knows, by day, by night and on a phone', async (file) => {
    for (const options of [{}, { colorScheme: 'dark' }, { viewport: { width: 390, height: 800 } }] as const) {
      const { page } = await opened(file, { ...options, bypassCSP: true });
      expect(await accessibilityFaults(page)).toEqual([]);
      if (file === 'gallery.html') {
        await page.getByRole('link').first().click();
        expect(await accessibilityFaults(page)).toEqual([]);
      }
      await page.context().close();
    }
  });
});

describe('tenterground publish', () => {
  test('a preview writes nothing and says what goes out and what stays', async () => {
    const ran = await runCommand(publish, 'corpus-demo', '--display', 'house-2-board', '--preview');
    expect(ran.code).toBe(0);
    expect(ran.out).toMatch(/Would go out:[\s\S]*Kermes scarlet[\s\S]*Stays here:[\s\S]*Who dyed/);
    expect(readdirSync(out).sort()).toEqual(['board.txt', 'gallery.html', 'index.html']);
  });

  test('an unknown display, and a folder that holds something else, are refused by name', async () => {
    expect(await runCommand(publish, 'corpus-demo', out, '--display', 'nowhere')).toMatchObject({
      code: 2,
      err: expect.stringContaining('house-2-board') as string,
    });
    expect(await runCommand(publish, 'corpus-demo', 'corpus-demo', '--display', 'house-2-board')).toMatchObject({
      code: 2,
      err: expect.stringContaining('holds other files') as string,
    });
  });
});
