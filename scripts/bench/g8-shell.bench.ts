import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import type { Timing } from './alternate.ts';
import { BUILT, freshBrowser, servedSite } from './built-page.ts';
import { printTable } from './print-table.ts';
import { report, timedFigure } from './report.ts';

const REPETITIONS = 7;

const site = await servedSite();
const built = readFileSync(join(BUILT, 'index.html'), 'utf8');
/** The same page with the same styles and fonts, and no script. */
const still = built.replace(/<script\b[^>]*><\/script>/g, '');
const application = /"(assets\/main-[^"]+\.js)"/.exec(
  readFileSync(join(BUILT, /src="\/(assets\/[^"]+)"/.exec(built)?.[1] ?? ''), 'utf8'),
)?.[1];
/** The same page, its application begun without waiting for a frame. */
const atOnce = built.replace(/src="\/assets\/[^"]+\.js"/, `src="/${application}"`);
if (/<script/.test(still) || !application || atOnce === built) throw new Error('the pages to compare with are not what they should be');

/** Opens the page as this HTML in a browser that was just started. All are handed over the same way, a little later than from the server. */
async function opened<T>(html: string, hash: string, look: (page: Page) => Promise<T>): Promise<T> {
  const browser = await freshBrowser();
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  await page.route(site.address, (route) => route.fulfill({ contentType: 'text/html', body: html }));
  await page.goto(`${site.address}${hash}`, { waitUntil: 'commit' });
  const seen = await look(page);
  await browser.close();
  return seen;
}

/** Milliseconds from the request to the first words on the page. As text, because what runs in the page must not be changed on the way. */
const firstPaint = (page: Page): Promise<number> =>
  page.evaluate<number>(`new Promise((resolve) =>
    new PerformanceObserver((list) => {
      const first = list.getEntriesByName('first-contentful-paint')[0];
      if (first) resolve(first.startTime);
    }).observe({ type: 'paint', buffered: true }))`);

/** Milliseconds from the request to the first answer, of the question that a page without an address asks. */
const firstAnswer = (page: Page): Promise<number> =>
  page.evaluate<number>(`new Promise((resolve) => {
    const within = (root, name) => root?.querySelector(name)?.shadowRoot;
    const look = () => within(within(within(document, 'tg-app'), 'tg-ask'), 'tg-answer')?.querySelector('h2')
      ? resolve(performance.now())
      : requestAnimationFrame(look);
    look();
  })`);

const painted = { built: [] as number[], still: [] as number[] };
const answered = { built: [] as number[], atOnce: [] as number[] };
for (let turn = 0; turn < REPETITIONS; turn += 1) {
  painted.built.push(await opened(built, '', firstPaint));
  painted.still.push(await opened(still, '', firstPaint));
  answered.built.push(await opened(built, '', firstAnswer));
  answered.atOnce.push(await opened(atOnce, '', firstAnswer));
}
const timing = (name: string, times: readonly number[]): Timing => ({ name, times });
report('shell', 'First paint and first answer in Chromium, by the wall', [
  timedFigure(
    { goal: 'G8', what: 'first paint', at: 'the built page', wanted: 1.1 },
    timing('the page', painted.built),
    timing('the same without scripts', painted.still),
  ),
  timedFigure(
    { goal: 'G8', what: 'first answer', at: 'the built page' },
    timing('the page', answered.built),
    timing('begun without waiting for a frame', answered.atOnce),
  ),
]);

/** A script and those it needs before it runs. */
function withImports(script: string, found = new Set<string>()): ReadonlySet<string> {
  if (found.has(script)) return found;
  found.add(script);
  const text = readFileSync(join(BUILT, 'assets', script), 'utf8');
  for (const [, name] of text.matchAll(/(?:import|from)\s*["']\.\/([^"']+\.js)["']/g)) if (name) withImports(name, found);
  return found;
}

/** Scripts fetched until something is there: those of the page, and those of its workers. */
async function fetched(hash: string, isThere: (page: Page) => Promise<unknown>): Promise<readonly [page: string[], workers: string[]]> {
  return opened(built, hash, async (page) => {
    await isThere(page);
    const workers = new Set(page.workers().flatMap((worker) => [...withImports(basename(worker.url()))]));
    const all = await page.evaluate<string[]>(`performance.getEntriesByType('resource').map(({ name }) => name)`);
    const scripts = [...new Set(all.filter((name) => name.endsWith('.js')).map((name) => basename(name)))];
    return [scripts.filter((name) => !workers.has(name)), [...workers]] as const;
  });
}
const kilobytes = (scripts: readonly string[]): number =>
  scripts.reduce((sum, name) => sum + gzipSync(readFileSync(join(BUILT, 'assets', name)), { level: 9 }).length / 1000, 0);
const [view, viewWorkers] = await fetched('', firstAnswer);
const [search, searchWorkers] = await fetched('#/notebook?find=weld', (page) => page.getByText('In these words').first().waitFor());
await site.close();
printTable(
  'Script fetched until then, kB gz',
  ['', 'page', 'scripts', 'wanted ≤', 'workers'],
  [
    ['G8 the first answer', kilobytes(view), view.length, 60, kilobytes(viewWorkers)],
    ['G8 the first search answer', kilobytes(search), search.length, 16, kilobytes(searchWorkers)],
  ],
);
