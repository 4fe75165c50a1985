import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Browser, chromium, type Page } from 'playwright-core';
import { preview, type PreviewServer } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const CHROMIUM = process.env['CHROMIUM_PATH'] || '/usr/bin/chromium';
const ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let server: PreviewServer;
let browser: Browser;
let address = '';

beforeAll(async () => {
  server = await preview({ preview: { host: '127.0.0.1', port: 0 } });
  address = server.resolvedUrls?.local[0] ?? '';
  browser = await chromium.launch({ executablePath: CHROMIUM, args: ARGS });
});
afterAll(async () => {
  await browser.close();
  await server.close();
});

async function open(hash: string, options: { width?: number; dark?: boolean } = {}): Promise<Page> {
  const page = await browser.newPage({
    viewport: { width: options.width ?? 1280, height: 900 },
    colorScheme: options.dark === true ? 'dark' : 'light',
    bypassCSP: true,
  });
  await page.goto(`${address}${hash}`);
  await page.locator('tg-app:defined').waitFor({ state: 'attached' });
  return page;
}

async function faults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const { run } = (
      globalThis as unknown as {
        axe: { run: (options: object) => Promise<{ violations: { id: string; nodes: { target: unknown }[] }[] }> };
      }
    ).axe;
    const { violations } = await run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
    return violations.map(({ id, nodes }) => `${id}: ${JSON.stringify(nodes[0]?.target)}`);
  });
}

describe('from a period name to the palette of another century', () => {
  test('find an insect, open its recipe, hang the palette of 1370, drag to 1670 and read what came and went', async () => {
    const page = await open('#/dyestuffs');
    await page.getByRole('searchbox').fill('Krapp');
    await expect.poll(() => page.getByRole('link', { name: /Madder/ }).count()).toBeGreaterThan(0);
    await page.getByRole('searchbox').fill('vermiculum');
    await expect.poll(async () => (await page.getByRole('main').getByRole('listitem').allInnerTexts()).join('|')).toContain('Kermes');
    await page.getByRole('link', { name: /^Kermes/ }).click();
    await page.getByRole('heading', { name: 'Kermes', level: 1 }).waitFor();
    await page.getByRole('heading', { name: 'Where it is named' }).waitFor();
    expect(await page.getByRole('link', { name: /Kermes scarlet/ }).count()).toBeGreaterThan(0);

    await page.getByRole('link', { name: 'Palette', exact: true }).click();
    await page.getByRole('combobox', { name: 'Place' }).selectOption({ value: 'england' });
    await page.getByRole('textbox', { name: 'Date' }).fill('1370');
    await page.getByRole('textbox', { name: 'Date' }).press('Tab');
    await page.getByRole('button', { name: 'Compare from 1370' }).click();
    const year = page.getByRole('slider', { name: 'Year' });
    await year.fill('1670');
    const changes = page
      .getByRole('region')
      .filter({ hasText: 'Since 1370' })
      .or(page.locator('section').filter({ hasText: 'Since 1370' }))
      .first();
    await expect.poll(() => changes.innerText()).toMatch(/Came: Cochineal crimson/);
    expect(await changes.innerText()).toMatch(/Came: Logwood black/);
    expect(page.url()).toContain('when=1670');
    expect(page.url()).toContain('since=1370');

    const shared = await browser.newPage();
    await shared.goto(page.url());
    await shared.getByText('Came: Logwood black', { exact: false }).waitFor();
    await shared.close();
    await page.close();
  });

  test('a cloth taken down shows everything behind it, and gives the focus back', async () => {
    const page = await open('#/palette?region=england&when=1370');
    const cloth = page.getByRole('button', { name: /Woad blue on wool/ }).first();
    await cloth.click();
    await page.getByRole('heading', { name: 'What speaks for it' }).waitFor();
    await page.getByRole('button', { name: 'Hang it up again' }).click();
    await expect.poll(() => page.getByRole('heading', { name: 'What speaks for it' }).count()).toBe(0);
    await page.close();
  });

  const views = [
    '#/dyestuffs',
    '#/dyestuffs/kermes',
    '#/palette?region=england&when=1370&since=1670',
    '#/palette/house-2-reds',
    '#/who-had-what?region=england&year=1370',
    '#/palette?from-region=england&from-when=1370&region=england&when=1670',
    '#/ask/table',
  ];
  test.each(
    views.flatMap(
      (hash) =>
        [
          [hash, false, 1280],
          [hash, true, 390],
        ] as const,
    ),
  )('%s (dark: %s, width %i) has no accessibility fault', async (hash, dark, width) => {
    const page = await open(hash, { dark, width });
    await page.getByRole('heading', { level: 1 }).first().waitFor();
    await page.waitForTimeout(700);
    expect(await faults(page)).toEqual([]);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    await page.close();
  });

  test.each(views)('%s prints on paper of its own size, nothing cut', async (hash) => {
    const page = await open(hash);
    await page.getByRole('heading', { level: 1 }).first().waitFor();
    await page.waitForTimeout(500);
    const pdf = await page.pdf({ preferCSSPageSize: true });
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    const sideways = await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);
    expect(sideways).toBe(false);
    await page.close();
  });
});
