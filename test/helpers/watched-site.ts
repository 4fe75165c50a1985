import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { preview } from 'vite';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** How a page is opened. */
export interface Opening {
  readonly width?: number;
  readonly height?: number;
  readonly dark?: boolean;
  /** The reader's language and country, such as `de-DE`. */
  readonly locale?: string;
  /** Lets a test put its own script into the page. */
  readonly bypassPolicy?: boolean;
}

/** The built site, served, with a browser to look at it. */
export interface WatchedSite {
  readonly origin: string;
  /** A page of its own storage, at an address such as `#/ask`; what it asks elsewhere and what it complains of is kept. */
  readonly open: (hash?: string, opening?: Opening) => Promise<Page>;
  /** Another tab beside a page. */
  readonly openBeside: (page: Page, address: string) => Promise<Page>;
  /** Requests that left the origin. */
  readonly strays: string[];
  /** Errors and warnings of every console. */
  readonly complaints: string[];
  readonly close: () => Promise<void>;
}

/** Waits, where the application stands in a page, until it has begun: what stands there before it looks much alike. */
async function begun(page: Page): Promise<void> {
  if ((await page.locator('tg-app').count()) > 0) await page.locator('tg-app:defined').waitFor({ state: 'attached' });
}

/** Serves the built site on a free port and starts a browser. */
export async function watchedSite(): Promise<WatchedSite> {
  const server = await preview({
    configFile: `${ROOT}vite.config.ts`,
    root: `${ROOT}web`,
    logLevel: 'silent',
    preview: { host: '127.0.0.1', port: 0 },
  });
  const origin = new URL(server.resolvedUrls?.local[0] ?? '').origin;
  const browser: Browser = await chromium.launch({
    executablePath: process.env['CHROMIUM_PATH'] || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--disable-background-networking'],
  });
  const strays: string[] = [];
  const complaints: string[] = [];
  const watched = async (context: BrowserContext): Promise<Page> => {
    const page = await context.newPage();
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(`${origin}/`) && !/^(?:data|blob):/.test(url)) strays.push(url);
    });
    page.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
    });
    page.on('pageerror', (fault) => complaints.push(String(fault)));
    return page;
  };
  return {
    origin,
    strays,
    complaints,
    async open(hash = '', { width = 1280, height = 900, dark = false, locale = 'en-GB', bypassPolicy = false } = {}) {
      const context = await browser.newContext({
        viewport: { width, height },
        locale,
        colorScheme: dark ? 'dark' : 'light',
        bypassCSP: bypassPolicy,
      });
      const page = await watched(context);
      await page.goto(`${origin}/${hash}`);
      await begun(page);
      return page;
    },
    async openBeside(page, address) {
      const other = await watched(page.context());
      await other.goto(address);
      await begun(other);
      return other;
    },
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

/** How many things of a page move now, shadow trees included. */
export const moving = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const all = (root: Document | ShadowRoot): readonly Animation[] => [
      ...root.getAnimations(),
      ...[...root.querySelectorAll('*')].flatMap((one) => (one.shadowRoot ? all(one.shadowRoot) : [])),
    ];
    return new Set(all(document).filter(({ playState }) => playState === 'running')).size;
  });

/** Waits until nothing moves: what is still fading in has not its own contrast yet, and may wait a frame for its beginning. */
async function stillness(page: Page): Promise<void> {
  for (let still = 0; still < 3; still = (await moving(page)) === 0 ? still + 1 : 0)
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

/** What axe finds at WCAG 2.2 AA in a page opened with `bypassPolicy`, shadow trees included. */
export async function accessibilityFaults(page: Page): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe);
  await stillness(page);
  return page.evaluate(async () => {
    interface Found {
      readonly violations: readonly {
        readonly id: string;
        readonly nodes: readonly { readonly html: string; readonly target: unknown }[];
      }[];
    }
    const { run } = (globalThis as unknown as { axe: { run: (options: object) => Promise<Found> } }).axe;
    const { violations } = await run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html, target }) => `${id}: ${JSON.stringify(target)} ${html.slice(0, 120)}`));
  });
}
