import { type Browser, chromium } from 'playwright-core';
import { preview } from 'vite';
import { findChromium, ROOT } from '../setup.mjs';

/** Where the built site lies. */
export const BUILT = `${ROOT}/dist/site`;

/** The built site, served on a free port. */
export interface ServedSite {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/** Serves the built site, as `npm start` does. */
export async function servedSite(): Promise<ServedSite> {
  const server = await preview({
    root: ROOT,
    configFile: `${ROOT}/vite.config.ts`,
    build: { outDir: BUILT },
    preview: { host: '127.0.0.1', port: 0 },
  });
  return { address: server.resolvedUrls?.local[0] ?? '', close: () => server.close() };
}

/** A browser that was just started and has nothing of the site yet. */
export const freshBrowser = (): Promise<Browser> =>
  chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'] });
