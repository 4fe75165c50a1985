/** From a new browser process, its files out of the system's memory, to the first answer of the search (G4). */
import { noteDocument } from '../../web/domain/note/note-document.ts';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { FrozenIndex } from '../../web/search/frozen/frozen-index.ts';
import { IndexBuilder } from '../../web/search/frozen/index-builder.ts';
import type { Timing } from './alternate.ts';
import { benchOptions } from './bench-options.ts';
import { coldTimings, pageScript } from './cold-browser.ts';
import { madeNotes } from './made/made-notes.ts';
import { type Figure, report, timedFigure } from './report.ts';

const WAYS = ['index in a file', 'index in the database', 'the file’s bytes alone', 'notes'] as const;
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
  const [file, database, bytes, getAll] = await coldTimings({
    script,
    page: 'coldOpen',
    notes,
    answers: { '/index': () => new Uint8Array(index) },
    ways: WAYS,
    right: (way) => ({ notes: String(count), 'the file’s bytes alone': String(index.byteLength) })[way as string] ?? wantedAnswer,
    repetitions,
  });
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
