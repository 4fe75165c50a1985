import { join } from 'node:path';
import { chromium } from 'playwright-core';
import type { Browser, Page } from 'playwright-core';
import { preview } from 'vite';
import type { PreviewServer } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ROOT } from './web-files.ts';

let server: PreviewServer;
let browser: Browser;
let origin: string;

beforeAll(async () => {
  server = await preview({
    configFile: join(ROOT, 'vite.config.ts'),
    root: join(ROOT, 'web'),
    logLevel: 'silent',
    preview: { host: '127.0.0.1', port: 0 },
  });
  origin = new URL(server.resolvedUrls?.local[0] ?? '').origin;
  browser = await chromium.launch({ executablePath: process.env['CHROMIUM_PATH'] || '/usr/bin/chromium', args: ['--no-sandbox'] });
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** The built page, with every address it asked for and every word of its console. */
async function opened(): Promise<{ page: Page; requests: string[]; complaints: string[] }> {
  const page = await browser.newPage();
  const requests: string[] = [];
  const complaints: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  await page.goto(origin);
  await page.getByText('Wadholm Quay, the demonstration notebook').waitFor();
  await page.waitForLoadState('networkidle');
  return { page, requests, complaints };
}

describe('the built page under its policy', () => {
  test('opens without a complaint and asks nobody else for anything', async () => {
    const { page, requests, complaints } = await opened();
    expect(complaints).toEqual([]);
    expect(requests.length).toBeGreaterThan(2);
    expect(requests.filter((url) => !url.startsWith(`${origin}/`) && !/^(?:data|blob):/.test(url))).toEqual([]);
    await page.close();
  });

  test('sets its words in its own two typefaces', async () => {
    const { page } = await opened();
    const loaded = await page.evaluate(async () => {
      await Promise.all([document.fonts.load('1rem Literata'), document.fonts.load('1rem "Atkinson Hyperlegible Next"')]);
      return [...document.fonts].filter((face) => face.status === 'loaded').map((face) => face.family.replaceAll('"', ''));
    });
    expect(loaded).toEqual(expect.arrayContaining(['Literata', 'Atkinson Hyperlegible Next']));
    await page.close();
  });

  test('refuses markup from text, a script in the page, and another origin', async () => {
    const { page } = await opened();
    const outcome = await page.evaluate(async () => {
      const tried: Record<string, string> = {};
      try {
        document.body.innerHTML = '<p>no</p>';
        tried['markup'] = 'taken';
      } catch (error) {
        tried['markup'] = (error as Error).name;
      }
      tried['elsewhere'] = await fetch('https://example.invalid/').then(
        () => 'taken',
        () => 'refused',
      );
      return tried;
    });
    const violated = await page.evaluate(
      () =>
        new Promise<string>((resolve) => {
          document.addEventListener('securitypolicyviolation', (event) => resolve(event.effectiveDirective), { once: true });
          document.head.append(Object.assign(document.createElement('style'), { textContent: 'p { color: red }' }));
        }),
    );
    expect(outcome).toEqual({ markup: 'TypeError', elsewhere: 'refused' });
    expect(violated).toBe('style-src-elem');
    await page.close();
  });

  test('serves the demonstration notebook', async () => {
    const demo = (await (await fetch(`${origin}/demo.json`)).json()) as { files: { path: string; text: string }[] };
    expect(demo.files.map(({ path }) => path)).toContain('bibliography.json');
  });
});
