/** Search as one types (G1), making the index (G2), and its bytes in store and memory (G3). */
import MiniSearch from 'minisearch';
import type { NoteDocument } from '../../web/domain/note/note-document.ts';
import { noteDocument } from '../../web/domain/note/note-document.ts';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { FrozenIndex } from '../../web/search/frozen/frozen-index.ts';
import { IndexBuilder } from '../../web/search/frozen/index-builder.ts';
import { EXACT_OPTIONS, INDEX_OPTIONS, WEIGHTS } from '../../web/search/search-options.ts';
import { alternate, alternateQueries, wallClock } from './alternate.ts';
import { benchOptions } from './bench-options.ts';
import { FullTextTable } from './full-text-table.ts';
import { madeNotes } from './made/made-notes.ts';
import { NotesOnDisk } from './notes-on-disk.ts';
import { type Figure, report, timedFigure } from './report.ts';
import { typedQueries } from './typed-queries.ts';

/** Goals by size of notebook; where none is set the figure only informs. */
const WANTED: Readonly<
  Record<string, { readonly fts5?: number; readonly mini?: number; readonly rg?: number; readonly build?: number; readonly bytes?: number }>
> = {
  '10k': { fts5: 1 / 8, mini: 1 / 250, build: 1 / 12, bytes: 1 / 6 },
  '100k': { fts5: 1 / 20, rg: 1 / 1000, build: 1 / 14, bytes: 1 / 6 },
};
const MOST = 20;
/** Of the queries: what so many take at most is told. */
const SHARES = [0.95, 0.5];

const documentsOf = (count: number): readonly NoteDocument[] =>
  Array.from(madeNotes(count), ({ path, text }, nth) => noteDocument(parseNote(path, text).value, nth + 1));

function build(documents: readonly NoteDocument[]): ArrayBuffer {
  const builder = new IndexBuilder();
  for (const document of documents) builder.add(document);
  return builder.freeze();
}

function opened(bytes: ArrayBuffer): FrozenIndex {
  const index = FrozenIndex.open(bytes);
  if (!index) throw new Error('the index does not open');
  return index;
}

const typed = (query: string) => query.split(' ');
const asYouType = (index: FrozenIndex, query: string, most = MOST) =>
  index.rank(
    typed(query).map((term, at, all) => ({ term, beginning: at === all.length - 1, near: false, swaps: [] })),
    most,
  );
const miniAsYouType = (mini: MiniSearch<NoteDocument>, query: string) => {
  const words = typed(query);
  const queries = words.map((term, at) => ({ queries: [term], prefix: at === words.length - 1 }));
  return mini.search({ combineWith: 'AND', queries }, EXACT_OPTIONS);
};
const oneSlip = (index: FrozenIndex, term: string, most = MOST) => index.rank([{ term, beginning: false, near: true, swaps: [] }], most);
const miniOneSlip = (mini: MiniSearch<NoteDocument>, term: string) =>
  mini.search({ queries: [term] }, { ...EXACT_OPTIONS, prefix: false, fuzzy: 1, weights: WEIGHTS });

/** Stops where two do not agree: a fast wrong answer is no figure. */
function checkAnswers(
  index: FrozenIndex,
  mini: MiniSearch<NoteDocument>,
  table: FullTextTable,
  keystrokes: readonly string[],
  slips: readonly string[],
): void {
  const rounded = (score: number | undefined) => score?.toPrecision(8);
  const same = (query: string, what: string, mine: unknown, theirs: unknown) => {
    if (mine !== theirs) throw new Error(`“${query}”: ${what}: ${String(mine)}, not ${String(theirs)}`);
  };
  for (const [ask, askMini, queries] of [
    [asYouType, miniAsYouType, keystrokes],
    [oneSlip, miniOneSlip, slips],
  ] as const) {
    for (const query of queries) {
      const [all, theirs] = [ask(index, query, Infinity), askMini(mini, query)];
      same(query, 'notes', all.length, theirs.length);
      for (let at = 0; at < MOST; at += 1) same(query, 'score', rounded(all[at]?.score), rounded(theirs[at]?.score));
      same(
        query,
        'the best',
        ask(index, query)
          .map(({ note }) => note)
          .join(),
        all
          .slice(0, MOST)
          .map(({ note }) => note)
          .join(),
      );
    }
  }
  for (const query of keystrokes) same(query, 'notes in FTS5', asYouType(index, query, Infinity).length, table.count(typed(query)));
}

/** Bytes held beyond the index's own, by what the process holds. */
function residentBytes(bytes: ArrayBuffer): number {
  const held = () => {
    globalThis.gc?.();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    return heapUsed + arrayBuffers;
  };
  const before = held();
  const many = Array.from({ length: 10 }, () => opened(bytes));
  return bytes.byteLength + (held() - before) / many.length;
}

/** Bytes of minisearch's JSON, part by part: of 100,000 notes it would be longer than a string may be. */
function jsonBytes(mini: MiniSearch<NoteDocument>): number {
  const bytes = (value: unknown): number => Buffer.byteLength(JSON.stringify(value));
  const parts = mini.toJSON();
  const terms = parts.index.reduce((sum, term) => sum + bytes(term) + 1, 0);
  return bytes({ ...parts, index: [] }) + Math.max(0, terms - 1);
}

/** Eight beginnings of single words, by the wall because ripgrep is a process of its own. */
function againstRipgrep(index: FrozenIndex, at: string, count: number, version: string, wanted: number | undefined): Figure {
  const single = queries.keystrokes.filter((query) => !query.includes(' '));
  const eight = single.filter((_, nth) => nth % Math.ceil(single.length / 8) === 0);
  const notes = new NotesOnDisk(count);
  try {
    const answerers = [
      { name: 'frozen index', ask: (query: string) => asYouType(index, query) },
      { name: `${version} -l -i`, ask: (query: string) => notes.holding(query) },
    ];
    const [[mine, theirs] = []] = alternateQueries(answerers, eight, [0.95], 5, wallClock);
    if (!mine || !theirs) throw new Error('nothing was asked of ripgrep');
    return timedFigure({ goal: 'G1', what: 'as you type, p95, by the wall', at, ...(wanted && { wanted }) }, mine, theirs);
  } finally {
    notes.remove();
  }
}

const { sizes, repetitions } = benchOptions();
const queries = typedQueries(documentsOf(1000));
const figures: Figure[] = [];
for (const [at, count] of sizes) {
  const wanted = WANTED[at] ?? {};
  const documents = documentsOf(count);
  let bytes = new ArrayBuffer(0);
  let mini = new MiniSearch<NoteDocument>(INDEX_OPTIONS);
  const makeOurs = () => (bytes = build(documents));
  const makeMini = () => (mini = new MiniSearch<NoteDocument>(INDEX_OPTIONS)).addAll(documents);
  // Where minisearch needs a second or more for a query, some of them are enough.
  const every = count > 10_000 ? 32 : count > 1000 ? 4 : 1;
  const some = (all: readonly string[]) => all.filter((_, nth) => nth % every === 0);
  const turns = count > 10_000 ? 1 : 5;
  const [keystrokes, slips] = [some(queries.keystrokes), some(queries.slips)];
  const [ours, addAll] = await alternate(
    [
      { name: 'frozen index', run: makeOurs },
      { name: 'minisearch addAll', run: makeMini },
    ],
    repetitions,
    undefined,
    count > 1000 ? 0 : 1,
  );
  const table = new FullTextTable(documents);
  const index = opened(bytes);
  checkAnswers(index, mini, table, keystrokes, slips);
  if (ours && addAll)
    figures.push(timedFigure({ goal: 'G2', what: 'making the index', at, ...(wanted.build && { wanted: wanted.build }) }, ours, addAll));

  const answerers = [
    { name: 'frozen index', ask: (query: string) => asYouType(index, query) },
    { name: `SQLite ${table.version} FTS5`, ask: (query: string) => table.best(typed(query)) },
    { name: 'minisearch', ask: (query: string) => miniAsYouType(mini, query) },
  ];
  const slipAnswerers = [
    { name: 'frozen index', ask: (query: string) => oneSlip(index, query) },
    { name: 'minisearch', ask: (query: string) => miniOneSlip(mini, query) },
  ];
  const asked = alternateQueries(answerers, keystrokes, SHARES, turns);
  const slipped = alternateQueries(slipAnswerers, slips, SHARES, turns);
  for (const [nth, share] of SHARES.entries()) {
    const name = `p${100 * share}`;
    const goals = share === 0.95 ? wanted : {};
    const [mine, fts5, bare] = asked[nth] ?? [];
    const what = `as you type, ${name}`;
    if (mine && fts5) figures.push(timedFigure({ goal: 'G1', what, at, ...(goals.fts5 && { wanted: goals.fts5 }) }, mine, fts5));
    if (mine && bare) figures.push(timedFigure({ goal: 'G1', what, at, ...(goals.mini && { wanted: goals.mini }) }, mine, bare));
    const [near, bareNear] = slipped[nth] ?? [];
    if (near && bareNear) figures.push(timedFigure({ goal: 'G1', what: `one slip, ${name}`, at, wanted: 1 / 3 }, near, bareNear));
  }
  table.close();
  if (NotesOnDisk.version === undefined) console.log('ripgrep (rg) is not installed: nothing is measured against it.');
  else figures.push(againstRipgrep(index, at, count, NotesOnDisk.version, wanted.rg));

  const resident = residentBytes(bytes);
  const stored = { goal: 'G3', at, candidate: bytes.byteLength, yardstick: 0, ratio: NaN };
  figures.push({
    ...stored,
    what: 'bytes held',
    against: 'bytes stored',
    candidate: resident,
    yardstick: bytes.byteLength,
    ratio: resident / bytes.byteLength,
    wanted: 1.1,
  });
  const json = jsonBytes(mini);
  figures.push({
    ...stored,
    what: 'bytes stored',
    against: 'minisearch as JSON',
    yardstick: json,
    ratio: bytes.byteLength / json,
    ...(wanted.bytes && { wanted: wanted.bytes }),
  });
}
report('g1-g2-g3-search', 'Search: as one types, making the index, its bytes (milliseconds of processor time; bytes in G3)', figures);
