import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';

const launchOptions = {
  executablePath: process.env['CHROMIUM_PATH'] || '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
};

export default defineConfig({
  root: 'web',
  base: '/',
  publicDir: 'public',
  build: { outDir: '../dist/site', emptyOutDir: true, target: 'es2022' },
  test: {
    projects: [
      { extends: true, root: '.', test: { name: 'unit', environment: 'node', include: ['test/**/*.test.ts'], exclude: ['**/*.browser.test.ts', '**/*.e2e.test.ts'] } },
      {
        extends: true,
        root: '.',
        optimizeDeps: { include: ['lit', 'lit/decorators.js', 'lit/directives/style-map.js', 'idb', 'minisearch', 'fflate', 'culori', 'yaml', 'mdast-util-from-markdown'] },
        test: {
          name: 'browser',
          include: ['test/**/*.browser.test.ts'],
          setupFiles: ['test/helpers/browser-setup.ts'],
          browser: { enabled: true, headless: true, screenshotFailures: false, provider: playwright({ launchOptions }), instances: [{ browser: 'chromium' }] },
        },
      },
      { extends: true, root: '.', test: { name: 'e2e', environment: 'node', include: ['test/**/*.e2e.test.ts'], testTimeout: 30_000, hookTimeout: 60_000, fileParallelism: false } },
    ],
  },
});
