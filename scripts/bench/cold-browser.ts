import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import { findChromium, ROOT } from '../setup.mjs';
import { alternate, type Timing } from './alternate.ts';

/** Notes the page takes at once. */
const AT_ONCE = 500;

/** What a page gives by path, besides its script. */
type Answers = Readonly<Record<string, (query: URLSearchParams) => string | Uint8Array>>;

/** Several ways to something, each taken in a browser process of its own over one profile, with its files out of the system's memory. */
export interface ColdWays<W extends string> {
  readonly script: Buffer;
  /** What the script puts on its page: `fill()` takes the notes in, `take(way, …given)` says the answer and how long it took. */
  readonly page: string;
  readonly notes: readonly unknown[];
  /** What the page asks for besides the notes. */
  readonly answers?: Answers;
  readonly ways: readonly W[];
  readonly given?: readonly string[];
  /** What a way must answer. */
  readonly right: (way: W) => string;
  readonly repetitions: number;
}

/** Times the ways in turn, by what the page says each took: the browser's own start is not what is compared. */
export async function coldTimings<W extends string>(cold: ColdWays<W>): Promise<readonly Timing[]> {
  const { page, notes, given = [] } = cold;
  const { address, close } = await servedPage(cold.script, {
    '/notes': (query) => JSON.stringify(notes.slice(Number(query.get('from')), Number(query.get('from')) + AT_ONCE)),
    ...cold.answers,
  });
  const profile = mkdtempSync(join(tmpdir(), 'cold-'));
  await inBrowser(profile, address, page, `${page}.fill()`);
  let took = 0;
  const contenders = cold.ways.map((name) => ({
    name,
    run: async () => {
      dropFromMemory(profile);
      const work = `${page}.take(${[name, ...given].map((one) => JSON.stringify(one)).join(', ')})`;
      const taken = await inBrowser<{ said: string; took: number }>(profile, address, page, work);
      if (taken.said !== cold.right(name)) throw new Error(`${name}: ${taken.said}, not ${cold.right(name)}`);
      took += taken.took;
    },
  }));
  const timings = await alternate(contenders, cold.repetitions, () => took, 0);
  close();
  rmSync(profile, { recursive: true, force: true });
  return timings;
}

/** A page with one script, and what it asks for by path. */
export async function servedPage(script: Buffer, answers: Answers) {
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
async function inBrowser<T>(profile: string, address: string, ready: string, work: string): Promise<T> {
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
function dropFromMemory(folder: string): void {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  for (const { parentPath, name } of files) spawnSync('dd', [`if=${join(parentPath, name)}`, 'iflag=nocache', 'count=0', 'status=none']);
}
