/** From a new browser process, its files out of the system's memory, to the first answer of the search (G4). */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { AddressInfo } from 'node:net';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import { noteDocument } from '../../web/domain/note/note-document.ts';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { FrozenIndex } from '../../web/search/frozen/frozen-index.ts';
import { IndexBuilder } from '../../web/search/frozen/index-builder.ts';
import { findChromium, ROOT } from '../setup.mjs';
import { alternate, type Timing } from './alternate.ts';
import { benchOptions } from './bench-options.ts';
import { madeNotes } from './made/made-notes.ts';
import { type Figure, report, timedFigure } from './report.ts';

const WAYS = ['index in a file', 'index in the database', 'the file’s bytes alone', 'notes'] as const;
/** Notes the page takes at once. */
const AT_ONCE = 500;
const WANTED: Readonly<Record<string, { readonly file?: number; readonly database?: number }>> = {
  '10k': { file: 1 / 100, database: 1 / 20 },
  '100k': { file: 1 / 400 },
};

const page = join(ROOT, 'dist', 'bench', 'page');
await build({
  root: ROOT,
  configFile: false,
  logLevel: 'error',
  build: { outDir: page, lib: { entry: 'scripts/bench/page/cold-open.ts', formats: ['es'], fileName: () => 'cold-open.js' } },
});
const script = readFileSync(join(page, 'cold-open.js'));

/** Serves the page, the notes and their index. */
async function served(notes: readonly { readonly path: string; readonly text: string }[], index: ArrayBuffer) {
  const server = createServer((request, reply) => {
    const { pathname, searchParams } = new URL(request.url ?? '/', 'http://localhost');
    const from = Number(searchParams.get('from') ?? 0);
    if (pathname === '/cold-open.js') reply.writeHead(200, { 'Content-Type': 'text/javascript' }).end(script);
    else if (pathname === '/notes') reply.end(JSON.stringify(notes.slice(from, from + AT_ONCE)));
    else if (pathname === '/index') reply.end(new Uint8Array(index));
    else
      reply
        .writeHead(200, { 'Content-Type': 'text/html' })
        .end('<!doctype html><title>bench</title><script type="module" src="/cold-open.js"></script>');
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  return { address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`, close: () => server.close() };
}

/** Runs something in a browser process of its own over a profile. */
async function inBrowser<T>(profile: string, address: string, work: string): Promise<T> {
  const browser = await chromium.launchPersistentContext(profile, {
    executablePath: findChromium(),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  const opened = await browser.newPage();
  await opened.goto(address);
  await opened.waitForFunction('globalThis.coldOpen');
  const done = (await opened.evaluate(work)) as T;
  await browser.close();
  return done;
}

/** Asks the system to forget what it holds of a folder's files; others' stay. */
function dropFromMemory(folder: string): void {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  for (const { parentPath, name } of files) spawnSync('dd', [`if=${join(parentPath, name)}`, 'iflag=nocache', 'count=0', 'status=none']);
}

const figures: Figure[] = [];
const { sizes, repetitions } = benchOptions();
for (const [at, count] of sizes) {
  const notes = [...madeNotes(count)];
  const builder = new IndexBuilder();
  for (const { path, text } of notes) builder.add(noteDocument(parseNote(path, text).value));
  const index = builder.freeze();
  const wantedAnswer = (FrozenIndex.open(index)?.rank([{ term: 'ma', beginning: true, near: false, swaps: [] }], 20) ?? [])
    .map(({ note }) => note)
    .join();
  const { address, close } = await served(notes, index);
  const profile = mkdtempSync(join(tmpdir(), 'cold-open-'));
  await inBrowser(profile, address, 'coldOpen.fill()');

  // The page says itself how long each took: the browser's own start is not what is compared.
  let took = 0;
  const clock = () => took;
  const contenders = WAYS.map((name) => ({
    name,
    run: async () => {
      dropFromMemory(profile);
      const taken = await inBrowser<{ said: string; took: number }>(profile, address, `coldOpen.take(${JSON.stringify(name)})`);
      const right = { notes: String(count), 'the file’s bytes alone': String(index.byteLength) }[name as string] ?? wantedAnswer;
      if (taken.said !== right) throw new Error(`${name}: ${taken.said}, not ${right}`);
      took += taken.took;
    },
  }));
  const [file, database, bytes, getAll] = await alternate(contenders, repetitions, clock, 0);
  close();
  rmSync(profile, { recursive: true, force: true });
  const { file: wantedFile, database: wantedDatabase } = WANTED[at] ?? {};
  const add = (what: string, mine: Timing | undefined, theirs: Timing | undefined, wanted?: number) => {
    if (mine && theirs)
      figures.push(timedFigure({ goal: 'G4', what: `first search answer, ${what}`, at, ...(wanted && { wanted }) }, mine, theirs));
  };
  add('index in a file', file, getAll, wantedFile);
  add('index in a file', file, bytes, 1.3);
  add('index in IndexedDB', database, getAll, wantedDatabase);
}
report('g4-cold-open', 'From a new browser process to the first search answer, in Chromium (wall)', figures);
