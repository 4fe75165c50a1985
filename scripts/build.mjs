/** Builds the site (dist/site), the command line (dist/cli/tenterground.mjs) and the elements for other pages (dist/elements). */
import { chmodSync, copyFileSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { checkNode, installPackages, ROOT } from './setup.mjs';

const DIST = join(ROOT, 'dist');

/**
 * Puts a finished folder where the old one stood, so that nobody meets a half-written build.
 * @param {string} from
 * @param {string} to
 */
function replaceFolder(from, to) {
  const old = `${to}.old-${process.pid}`;
  if (existsSync(to)) renameSync(to, old);
  renameSync(from, to);
  rmSync(old, { recursive: true, force: true });
}

/** @param {string} outDir */
async function buildSite(outDir) {
  const { build } = await import('vite');
  await build({
    configFile: join(ROOT, 'vite.config.ts'),
    root: join(ROOT, 'web'),
    logLevel: 'warn',
    build: { outDir, emptyOutDir: true },
  });
}

/**
 * One file with everything in it, so that it runs without node_modules.
 * @param {string} outDir
 */
async function buildCommandLine(outDir) {
  const { build } = await import('vite');
  await build({
    configFile: false,
    root: ROOT,
    publicDir: false,
    logLevel: 'warn',
    ssr: { noExternal: true, target: 'node' },
    resolve: { alias: [{ find: /^@citation-js\/core$/, replacement: join(ROOT, 'web/notebook/references/citation-core.ts') }] },
    build: {
      ssr: 'scripts/cli.ts',
      outDir,
      emptyOutDir: true,
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { format: 'es', entryFileNames: 'tenterground.mjs', codeSplitting: false } },
    },
  });
  const file = join(outDir, 'tenterground.mjs');
  const text = readFileSync(file, 'utf8');
  if (!text.startsWith('#!')) writeFileSync(file, `#!/usr/bin/env node\n${text}`);
  chmodSync(file, 0o755);
}

/**
 * The elements for other people's pages: one module with everything in it, its types, its manifest, and a page of examples.
 * @param {string} outDir
 */
async function buildElements(outDir) {
  const { build } = await import('vite');
  // They need packages, which a fresh clone has only now.
  const { elementsManifest, elementsTypes } = await import('./elements-manifest.mjs');
  const { packNotebook } = await import('./demo-plugin.mjs');
  const module = 'tenterground-elements.js';
  await build({
    configFile: false,
    root: ROOT,
    publicDir: false,
    logLevel: 'warn',
    resolve: {
      alias: [
        { find: 'decode-named-character-reference', replacement: join(ROOT, 'node_modules/decode-named-character-reference/index.js') },
        { find: /^@citation-js\/core$/, replacement: join(ROOT, 'web/notebook/references/citation-core.ts') },
      ],
    },
    build: {
      outDir,
      emptyOutDir: true,
      target: 'es2022',
      lib: { entry: join(ROOT, 'web/app/others/elements.ts'), formats: ['es'], fileName: () => module },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  const manifest = elementsManifest(module);
  writeFileSync(join(outDir, 'custom-elements.json'), `${JSON.stringify(manifest, undefined, 2)}\n`);
  writeFileSync(join(outDir, 'tenterground-elements.d.ts'), elementsTypes(manifest));
  copyFileSync(join(ROOT, 'web/app/others/example.html'), join(outDir, 'index.html'));
  writeFileSync(join(outDir, 'notebook.json'), JSON.stringify(packNotebook()));
}

/** Builds all three; each replaces the one before it only when it is whole. */
export async function buildAll() {
  const next = join(DIST, `.next-${process.pid}`);
  mkdirSync(next, { recursive: true });
  try {
    await buildSite(join(next, 'site'));
    await buildCommandLine(join(next, 'cli'));
    await buildElements(join(next, 'elements'));
    replaceFolder(join(next, 'site'), join(DIST, 'site'));
    replaceFolder(join(next, 'cli'), join(DIST, 'cli'));
    replaceFolder(join(next, 'elements'), join(DIST, 'elements'));
  } finally {
    rmSync(next, { recursive: true, force: true });
  }
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  checkNode();
  installPackages();
  await buildAll();
  console.log('Built dist/site, dist/cli/tenterground.mjs and dist/elements.');
}
