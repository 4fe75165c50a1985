import { playwright } from '@vitest/browser-playwright';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { demoNotebook } from './scripts/demo-plugin.mjs';
import { worksOffline } from './scripts/offline-plugin.mjs';
import { policyHeaders, policyOnlyWhenBuilt } from './scripts/policy-plugin.mjs';
import { tellReadingCode } from './scripts/reading-code-plugin.mjs';

const checkout = fileURLToPath(new URL('.', import.meta.url));

const launchOptions = {
  executablePath: process.env['CHROMIUM_PATH'] || '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};

/** What is polled for may be a while in coming on a busy machine; one second, as it comes, is too short. */
const patience = { poll: { timeout: 30_000 } };
/** A browser on a busy machine may stumble once. `npm test` names every test that needed its second go. */
const secondGo = 1;

export default defineConfig({
  root: 'web',
  base: '/',
  publicDir: 'public',
  // Else the cache would lie in web/, among the sources a build is made from.
  cacheDir: `${checkout}node_modules/.vite`,
  plugins: [demoNotebook(), policyOnlyWhenBuilt(), worksOffline(), tellReadingCode()],
  build: {
    outDir: '../dist/site',
    emptyOutDir: true,
    target: 'es2022',
    // The first browsers with light-dark(), which the tokens use as it stands.
    cssTarget: ['chrome123', 'firefox120', 'safari17.5'],
    // The policy allows fonts from our own origin only, so none may become a data: address.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  resolve: {
    // The browser build of this package reads entities through a document: a worker has none, and Trusted Types forbid it.
    alias: [
      {
        find: 'decode-named-character-reference',
        replacement: `${checkout}node_modules/decode-named-character-reference/index.js`,
      },
      // The whole of it fetches from the network; the readers of BibTeX and RIS need two small parts.
      { find: /^@citation-js\/core$/, replacement: `${checkout}web/notebook/references/citation-core.ts` },
    ],
  },
  worker: { format: 'es' },
  // The fonts lie in node_modules, beside the site's root.
  server: { host: '127.0.0.1', fs: { allow: [checkout] } },
  preview: { headers: policyHeaders() },
  test: {
    projects: [
      {
        extends: true,
        root: checkout,
        test: {
          name: 'unit',
          environment: 'node',
          include: ['test/**/*.test.ts'],
          exclude: ['**/*.browser.test.ts', '**/*.e2e.test.ts'],
          // Nothing is timed here: the limit only ends what hangs, also on a busy machine.
          testTimeout: 60_000,
          hookTimeout: 60_000,
          expect: patience,
        },
      },
      {
        extends: true,
        root: checkout,
        optimizeDeps: {
          include: [
            'lit',
            'lit/decorators.js',
            'lit/directives/style-map.js',
            'lit/directives/repeat.js',
            'axe-core',
            'idb',
            'minisearch',
            'fflate',
            'culori',
            'yaml',
            'mdast-util-from-markdown',
            'd3-geo',
            'topojson-client',
          ],
        },
        test: {
          name: 'browser',
          include: ['test/**/*.browser.test.ts'],
          setupFiles: ['test/helpers/browser-setup.ts'],
          testTimeout: 60_000,
          expect: patience,
          retry: secondGo,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({ launchOptions }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
      {
        extends: true,
        root: checkout,
        test: {
          name: 'e2e',
          environment: 'node',
          include: ['test/**/*.e2e.test.ts'],
          testTimeout: 90_000,
          hookTimeout: 60_000,
          expect: patience,
          fileParallelism: false,
          retry: secondGo,
        },
      },
    ],
  },
});
