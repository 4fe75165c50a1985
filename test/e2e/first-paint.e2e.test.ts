import { afterAll, beforeAll, expect, test } from 'vitest';
import { type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

test('the first words are painted while no script has come, whatever the notebook holds', async () => {
  // Not the page itself, which would keep a copy of its scripts.
  const page = await site.open('icon.svg');
  await page.route(/\.js$/, () => undefined);
  await page.goto(`${site.origin}/#/ask`, { waitUntil: 'commit' });
  await page.getByRole('heading', { level: 1 }).waitFor();
  const painted = await page.evaluate(`new Promise((resolve) =>
    new PerformanceObserver((list) => {
      if (list.getEntriesByName('first-contentful-paint').length > 0) resolve(true);
    }).observe({ type: 'paint', buffered: true }))`);
  expect(painted).toBe(true);
  expect(await page.evaluate(`document.querySelector('tg-app').matches(':defined')`)).toBe(false);
  expect(await page.getByRole('navigation').getByRole('link').count()).toBe(8);
});
