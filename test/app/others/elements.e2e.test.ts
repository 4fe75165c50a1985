import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
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

async function opened(file: string): Promise<Page> {
  const page = await browser.newPage();
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

    // Links to other views of a notebook lead nowhere here.
    await page.locator('tg-ask').getByRole('link', { name: 'Ask what dyed the thread' }).click();
    expect(page.url()).toBe(`${origin}plain.html`);
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(strays).toEqual([]);
    expect(complaints).toEqual([]);
  });

  test('the page of live examples shows every element without a fault axe knows', { timeout: 120_000 }, async () => {
    const page = await opened('index.html');
    await page.locator('tg-palette tg-swatch').nth(5).waitFor();
    await page.locator('tg-availability-chart').getByText('Madder').first().waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
  });

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
    for (const { summary, attributes } of manifest.modules[0]?.declarations ?? []) {
      expect(summary).not.toBe('');
      expect(attributes.length).toBeGreaterThan(0);
    }
    const types = readFileSync(`${BUILT}tenterground-elements.d.ts`, 'utf8');
    for (const tag of tags) expect(types).toContain(`'${tag}': `);
  });
});
