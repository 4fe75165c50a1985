/** From a new browser process, its files out of the system's memory, to the first answer of the search (G4). */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { noteDocument } from '../../web/domain/note/note-document.ts';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { FrozenIndex } from '../../web/search/frozen/frozen-index.ts';
import { IndexBuilder } from '../../web/search/frozen/index-builder.ts';
import { alternate, type Timing } from './alternate.ts';
import { benchOptions } from './bench-options.ts';
import { dropFromMemory, inBrowser, pageScript, servedPage } from './cold-browser.ts';
import { madeNotes } from './made/made-notes.ts';
import { type Figure, report, timedFigure } from './report.ts';

const WAYS = ['index in a file', 'index in the database', 'the file’s bytes alone', 'notes'] as const;
/** Notes the page takes at once. */
const AT_ONCE = 500;
const WANTED: Readonly<Record<string, { readonly file?: number; readonly database?: number }>> = {
  '10k': { file: 1 / 100, database: 1 / 20 },
  '100k': { file: 1 / 400 },
};

const script = await pageScript('cold-open');
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
  const { address, close } = await servedPage(script, {
    '/notes': (query) => JSON.stringify(notes.slice(Number(query.get('from')), Number(query.get('from')) + AT_ONCE)),
    '/index': () => new Uint8Array(index),
  });
  const profile = mkdtempSync(join(tmpdir(), 'cold-open-'));
  await inBrowser(profile, address, 'coldOpen', 'coldOpen.fill()');

  // The page says itself how long each took: the browser's own start is not what is compared.
  let took = 0;
  const clock = () => took;
  const contenders = WAYS.map((name) => ({
    name,
    run: async () => {
      dropFromMemory(profile);
      const taken = await inBrowser<{ said: string; took: number }>(profile, address, 'coldOpen', `coldOpen.take(${JSON.stringify(name)})`);
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
