import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityFaults } from '../../helpers/watched-site.ts';

const BUILT = fileURLToPath(new URL('../../../dist/elements/', import.meta.url));
const TYPES: Readonly<Record<string, string>> = { html: 'text/html', js: 'text/javascript', json: 'application/json' };
/** A page of somebody else's: one script, five elements, its own ink. */
const PLAIN = `<!doctype html><html lang="en"><meta charset="utf-8"><title>A museum</title>
<style>:root { --tg-ink: rgb(10, 20, 30); }</style>
<script type="module" src="tenterground-elements.js"></script>
<main><h1>A museum</h1>
<tg-swatch hex="#b0453a" fibre="wool" verdict="feasible" label="Madder red"></tg-swatch>
<tg-recipe-card notebook="notebook.json" recipe="madder-alum-wool" grams="250"></tg-recipe-card>
<tg-ask notebook="notebook.json" colour="kermes-alum-wool" region="hanse-towns" when="c. 1370" fibre="wool"></tg-ask>
<tg-palette notebook="notebook.json" region="england" when="1370"></tg-palette>
<tg-availability-chart notebook="notebook.json" region="england" year="1370"></tg-availability-chart>
</main></html>`;

/** The demonstration with the madder recipe made private, whole as it is. */
function withPrivateRecipe(): string {
  const list = JSON.parse(readFileSync(`${BUILT}notebook.json`, 'utf8')) as { files: { path: string; text?: string }[] };
  const hidden = (text: string) => text.replace('---\n', '---\nprivate: true\n').replace(/^title: .*$/m, 'title: Zzyzx red');
  return JSON.stringify({
    files: list.files.map((file) => (file.path === 'recipes/madder-alum-wool.md' ? { ...file, text: hidden(file.text ?? '') } : file)),
  });
}

let server: Server;
let browser: Browser;
let origin = '';
const strays: string[] = [];
const complaints: string[] = [];

beforeAll(async () => {
  server = createServer((request, response) => {
    const name = (request.url ?? '').split('?')[0]?.slice(1) ?? '';
    try {
      const body = name === 'plain.html' ? PLAIN : name === 'private.json' ? withPrivateRecipe() : readFileSync(BUILT + name);
      response.setHeader('Content-Type', TYPES[name.split('.').at(-1) ?? ''] ?? 'text/plain');
      response.end(body);
    } catch {
      response.statusCode = name === 'favicon.ico' ? 204 : 404;
      response.end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  browser = await chromium.launch({
    executablePath: process.env['CHROMIUM_PATH'] || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--disable-background-networking'],
  });
});
afterAll(async () => {
  await browser.close();
  server.close();
});

async function opened(file: string, options: BrowserContextOptions = {}): Promise<Page> {
  const page = await browser.newPage(options);
  page.on('request', (request) => {
    if (!request.url().startsWith(origin) && !/^(?:data|blob):/.test(request.url())) strays.push(request.url());
  });
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (fault) => complaints.push(String(fault)));
  await page.goto(origin + file);
  return page;
}

describe('elements in a plain page', () => {
  test('one script and a published notebook: each shows its part', { timeout: 120_000 }, async () => {
    const page = await opened('plain.html');
    await page.getByRole('img', { name: 'Madder red, feasible' }).waitFor();
    const card = page.locator('tg-recipe-card');
    await card.getByRole('heading', { name: 'Madder red on alumed wool' }).waitFor();
    await card.getByText('For 250 g of fibre').waitFor();
    await page.locator('tg-ask').getByText('Attested as cloth').first().waitFor();
    await page.locator('tg-palette tg-swatch').nth(5).waitFor();
    await page.locator('tg-availability-chart').getByText('Madder').first().waitFor();

    // The page's own word about ink counts, and another attribute asks anew.
    expect(await card.evaluate((one) => getComputedStyle(one).color)).toBe('rgb(10, 20, 30)');
    await card.evaluate((one) => one.setAttribute('grams', '500'));
    await card.getByText('For 500 g of fibre').waitFor();
    await page.locator('tg-ask').evaluate((one) => one.setAttribute('region', 'england'));
    await page.locator('tg-ask').getByText('England').first().waitFor();

    // Other views of a notebook are not here: links to them are plain words, by key too, until a page of the notebook is named.
    const link = page
      .locator('tg-ask')
      .getByRole('link', { name: /^note / })
      .first();
    const looks = () => link.evaluate((one) => [getComputedStyle(one).textDecorationColor, getComputedStyle(one).pointerEvents] as const);
    expect(await looks()).toEqual(['rgba(0, 0, 0, 0)', 'none']);
    await link.press('Enter');
    expect(page.url()).toBe(`${origin}plain.html`);
    await page.locator('tg-ask').evaluate((one) => one.setAttribute('site', '/notebook/'));
    expect(await looks()).toEqual([await link.evaluate((one) => getComputedStyle(one).color), 'auto']);
    await page.locator('tg-ask').evaluate((one) => one.removeAttribute('site'));
    expect(await page.getByRole('button', { name: /^Print/ }).count()).toBe(0);
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(strays).toEqual([]);
    expect(complaints).toEqual([]);
  });

  test.each([
    ['on a desk, light', 1280, 'light'],
    ['on a phone, dark', 390, 'dark'],
  ] as const)(
    'the page of live examples shows every element without a fault axe knows: %s',
    { timeout: 120_000 },
    async (_, width, colorScheme) => {
      const page = await opened('index.html', { viewport: { width, height: 850 }, colorScheme });
      await page.locator('tg-palette tg-swatch').nth(5).waitFor();
      await page.locator('tg-availability-chart').getByText('Madder').first().waitFor();
      await page.locator('tg-ask').getByText('Feasible').first().waitFor();
      const card = page.locator('tg-recipe-card').first();
      expect(await card.locator('[part=steps] li').first().innerText()).toMatch(/^[A-Z][^[]+\./);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      expect(await accessibilityFaults(page)).toEqual([]);

      // What a page says of a token around an element counts there, and only there.
      const ink = (nth: number) =>
        page
          .locator('tg-recipe-card')
          .nth(nth)
          .evaluate((one) => getComputedStyle(one).color);
      await page.locator('tg-recipe-card').nth(1).getByRole('heading').waitFor();
      expect(await ink(1)).toBe('rgb(0, 0, 0)');
      expect(await ink(0)).not.toBe(await ink(1));
    },
  );

  test('a notebook that is not there is told, and the page goes on', async () => {
    const page = await opened('index.html');
    const told = page.evaluate(
      () =>
        new Promise<string>((resolve) => {
          document.addEventListener('tg-notebook-error', (event) => resolve((event as CustomEvent<{ reason: string }>).detail.reason));
          document.body.insertAdjacentHTML('beforeend', '<tg-ask notebook="nowhere.json" region="england" when="1370"></tg-ask>');
        }),
    );
    expect(await told).toMatch(/nowhere\.json answered 404/);
  });

  test('what is private in the notebook they are given is shown by none', { timeout: 120_000 }, async () => {
    const page = await opened('plain.html');
    const list = withPrivateRecipe();
    expect(list).toContain('Zzyzx red');
    await page.locator('tg-recipe-card').getByRole('heading', { name: 'Madder red on alumed wool' }).waitFor();
    await page.evaluate(() => {
      for (const one of document.querySelectorAll('[notebook]')) {
        const other = one.cloneNode() as Element;
        other.setAttribute('notebook', 'private.json');
        one.replaceWith(other);
      }
    });
    await page.locator('tg-palette tg-swatch').nth(5).waitFor();
    await page.locator('tg-ask').getByText('Attested as cloth').first().waitFor();
    expect(await page.getByText('Zzyzx').count()).toBe(0);
    expect(await page.getByRole('heading', { name: 'Madder red on alumed wool' }).count()).toBe(0);
  });

  // Custom Elements Manifest, schema 1.0.0: modules, their declarations and exports.
  test('the manifest and the types name every element', () => {
    interface Manifest {
      readonly schemaVersion: string;
      readonly modules: readonly {
        readonly declarations: readonly {
          readonly tagName: string;
          readonly summary: string;
          readonly attributes: readonly { readonly name: string }[];
          readonly cssProperties: readonly { readonly name: string; readonly default?: string }[];
        }[];
        readonly exports: readonly { readonly kind: string; readonly name: string }[];
      }[];
    }
    const manifest = JSON.parse(readFileSync(`${BUILT}custom-elements.json`, 'utf8')) as Manifest;
    const tags = ['tg-swatch', 'tg-recipe-card', 'tg-ask', 'tg-palette', 'tg-availability-chart'];
    expect(manifest.schemaVersion).toBe('1.0.0');
    expect(manifest.modules[0]?.declarations.map(({ tagName }) => tagName)).toEqual(tags);
    expect(manifest.modules[0]?.exports.map(({ kind, name }) => `${kind} ${name}`)).toEqual(
      tags.map((tag) => `custom-element-definition ${tag}`),
    );
    // Every token the page of examples names is in the manifest, with its default.
    const named = new Set(readFileSync(`${BUILT}index.html`, 'utf8').match(/--tg-[\w-]+/g));
    const tokens = new Map(manifest.modules[0]?.declarations[0]?.cssProperties.map(({ name, default: is }) => [name, is]));
    expect([...named].filter((name) => !tokens.has(name))).toEqual([]);
    expect(tokens.get('--tg-ink')).toMatch(/^light-dark\(/);
    for (const { summary, attributes } of manifest.modules[0]?.declarations ?? []) {
      expect(summary).not.toBe('');
      expect(attributes.length).toBeGreaterThan(0);
    }
    const types = readFileSync(`${BUILT}tenterground-elements.d.ts`, 'utf8');
    for (const tag of tags) expect(types).toContain(`'${tag}': `);
  });
});
