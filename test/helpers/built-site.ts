import { cpSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { preview, type PreviewServer } from 'vite';
import { describeSite } from '../../scripts/offline-plugin.mjs';
import { filesBelow } from '../../scripts/setup.mjs';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export const CHROMIUM = process.env['CHROMIUM_PATH'] || '/usr/bin/chromium';
export const CHROMIUM_ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const launchChromium = (): Promise<Browser> => chromium.launch({ executablePath: CHROMIUM, args: CHROMIUM_ARGS });

/** A copy of the built site with a server of its own, so that a test can publish a new version or cut it off. */
export class BuiltSite {
  readonly #folder = mkdtempSync(join(tmpdir(), 'tenterground-site-'));
  #server: PreviewServer | undefined;
  #assets = 'assets';
  address = '';

  constructor() {
    cpSync(join(ROOT, 'dist/site'), this.#folder, { recursive: true });
  }

  async open(): Promise<this> {
    this.#server = await preview({
      configFile: join(ROOT, 'vite.config.ts'),
      root: join(ROOT, 'web'),
      logLevel: 'silent',
      build: { outDir: this.#folder },
      preview: { host: '127.0.0.1', port: 0 },
    });
    this.address = this.#server.resolvedUrls?.local[0] ?? '';
    return this;
  }

  /** Publishes another version: the page with this title, all it loads under new addresses, as a build gives them, and its worker. */
  publish(title: string): void {
    const before = describeSite(this.#folder).hash;
    const [old, next] = [this.#assets, `newer-${this.#assets}`];
    renameSync(join(this.#folder, old), join(this.#folder, next));
    this.#assets = next;
    for (const file of filesBelow(this.#folder).filter((one) => /\.(?:js|css|html)$/.test(one))) {
      const text = readFileSync(file, 'utf8');
      writeFileSync(file, text.replaceAll(`${old}/`, `${next}/`));
    }
    this.#edit('index.html', (page) => page.replace(/<title>[^<]*<\/title>/, `<title>${title}</title>`));
    this.#edit('sw.js', (worker) => worker.replaceAll(before, describeSite(this.#folder).hash));
  }

  /** Puts a file beside the site's own, as whoever publishes a notebook does. */
  put(path: string, content: string | Uint8Array): void {
    const file = join(this.#folder, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, content);
  }

  async close(): Promise<void> {
    const server = this.#server;
    this.#server = undefined;
    if (!server) return;
    // Kept-alive connections would keep it open.
    const { httpServer } = server;
    if ('closeAllConnections' in httpServer) httpServer.closeAllConnections();
    await server.close();
  }

  async remove(): Promise<void> {
    await this.close();
    rmSync(this.#folder, { recursive: true, force: true });
  }

  #edit(name: string, change: (text: string) => string): void {
    const file = join(this.#folder, name);
    const text = readFileSync(file, 'utf8');
    const changed = change(text);
    if (changed === text) throw new Error(`${name} stayed as it was`);
    writeFileSync(file, changed);
  }
}
