import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { preview } from 'vite';
import { findChromium, ROOT } from '../setup.mjs';
import type { Timing } from './alternate.ts';
import { report, timedFigure } from './report.ts';

const REPETITIONS = 7;

const server = await preview({
  root: ROOT,
  configFile: `${ROOT}/vite.config.ts`,
  build: { outDir: `${ROOT}/dist/site` },
  preview: { host: '127.0.0.1', port: 0 },
});
const address = server.resolvedUrls?.local[0] ?? '';
const built = readFileSync(join(ROOT, 'dist/site/index.html'), 'utf8');
/** The same page with the same styles and fonts, and no script. */
const still = built.replace(/<script\b[^>]*><\/script>/g, '').replace(/<link rel="modulepreload"[^>]*>/g, '');
if (still === built || /<script/.test(still)) throw new Error('the page without scripts is not what it should be');

/** Milliseconds from the request to the first words on the page, in a browser that was just started. */
async function firstPaint(html?: string): Promise<number> {
  const browser = await chromium.launch({
    executablePath: findChromium(),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  if (html !== undefined) await page.route(address, (route) => route.fulfill({ contentType: 'text/html', body: html }));
  await page.goto(address);
  const painted = (await page.evaluate(`new Promise((resolve) =>
    new PerformanceObserver((list) => {
      const first = list.getEntriesByName('first-contentful-paint')[0];
      if (first) resolve(first.startTime);
    }).observe({ type: 'paint', buffered: true }))`)) as number;
  await browser.close();
  return painted;
}

const [whole, bare]: readonly [number[], number[]] = [[], []];
for (let turn = 0; turn < REPETITIONS; turn += 1) {
  // Both are handed over the same way: a page that a test answers comes a little later than one from the server.
  whole.push(await firstPaint(built));
  bare.push(await firstPaint(still));
}
await server.close();
const timing = (name: string, times: readonly number[]): Timing => ({ name, times });
report('shell', 'First paint in Chromium, by the wall', [
  timedFigure(
    { goal: 'G8', what: 'first paint', at: 'the built page', wanted: 1.1 },
    timing('the page', whole),
    timing('the same without scripts', bare),
  ),
]);
