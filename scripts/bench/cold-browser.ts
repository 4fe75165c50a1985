import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import { findChromium, ROOT } from '../setup.mjs';

/** A page with one script, and what it asks for by path. */
export async function servedPage(script: Buffer, answers: Readonly<Record<string, (query: URLSearchParams) => string | Uint8Array>>) {
  const server = createServer((request, reply) => {
    const { pathname, searchParams } = new URL(request.url ?? '/', 'http://localhost');
    const answer = answers[pathname];
    if (pathname === '/page.js') reply.writeHead(200, { 'Content-Type': 'text/javascript' }).end(script);
    else if (answer) reply.end(answer(searchParams));
    else
      reply
        .writeHead(200, { 'Content-Type': 'text/html' })
        .end('<!doctype html><title>bench</title><script type="module" src="/page.js"></script>');
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  return { address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`, close: () => server.close() };
}

/** One script made of a file of `scripts/bench/page`. */
export async function pageScript(name: string): Promise<Buffer> {
  const outDir = join(ROOT, 'dist', 'bench', 'page');
  await build({
    root: ROOT,
    configFile: false,
    logLevel: 'error',
    resolve: { alias: [{ find: /^@citation-js\/core$/, replacement: join(ROOT, 'web/notebook/references/citation-core.ts') }] },
    build: {
      outDir,
      emptyOutDir: false,
      lib: { entry: `scripts/bench/page/${name}.ts`, formats: ['es'], fileName: () => `${name}.js` },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  return readFileSync(join(outDir, `${name}.js`));
}

/** Runs something in a browser process of its own over a profile. */
export async function inBrowser<T>(profile: string, address: string, ready: string, work: string): Promise<T> {
  const browser = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  const opened = await browser.newPage();
  await opened.goto(address);
  await opened.waitForFunction(`globalThis.${ready}`);
  const done = (await opened.evaluate(work)) as T;
  await browser.close();
  return done;
}

/** Asks the system to forget what it holds of a folder's files; others' stay. */
export function dropFromMemory(folder: string): void {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  for (const { parentPath, name } of files) spawnSync('dd', [`if=${join(parentPath, name)}`, 'iflag=nocache', 'count=0', 'status=none']);
}
