import { describe, expect, test } from 'vitest';
import type { Notebook } from '../../../web/notebook/notebook.ts';
import { captionDraft, displayView } from '../../../web/notebook/views/display-view.ts';
import { dossierView } from '../../../web/notebook/views/dossier-view.ts';
import { dueListView } from '../../../web/notebook/views/due-list-view.ts';
import { evidenceSheetView } from '../../../web/notebook/views/evidence-sheet-view.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const BOARD = 'house-2-board';
const notebook = await demoNotebook();
const board = displayView(notebook, BOARD);
if (!board) throw new Error('the demonstration has no board');

/** The demonstration with one file's text changed. */
async function changed(path: string, change: (text: string) => string): Promise<Notebook> {
  const other = await demoNotebook();
  const note = other.base.noteIn(path);
  if (!note) throw new Error(`no note: ${path}`);
  const text = change(note.source);
  if (text === note.source) throw new Error(`nothing changed in ${path}`);
  other.put({ path, bytes: new TextEncoder().encode(text) });
  return other;
}

describe('displayView', () => {
  test('the board of the demonstration: A2, nine colours, all judged and laid, no caption stale or wanting', () => {
    expect(board.sheet).toEqual({ widthMm: 420, heightMm: 594, name: 'A2 portrait' });
    expect(board.colours).toHaveLength(9);
    expect(board.problems).toEqual([]);
    expect(board.colours.every(({ box, cloth }) => box && cloth)).toBe(true);
    expect(
      board.colours.flatMap(({ captions }) => captions.flatMap(({ notices, stale }) => [...notices.map(({ says }) => says), ...stale])),
    ).toEqual([]);
  });

  test('what is plausible only does not hang under the heading of what is sure', () => {
    const { colours, headings } = board;
    const [yellow] = colours.filter(({ what }) => what === 'weld-alum-wool');
    const over = headings.filter(({ x, y }) => y < (yellow?.box?.y ?? 0) && x <= (yellow?.box?.x ?? 0)).sort((a, b) => b.y - a.y);
    expect(yellow?.cloth?.verdict).toBe('plausible');
    expect(over[0]?.text).toBe('origin not certain');
    expect(headings.map(({ text }) => text)).toEqual(['imported dyestuff', 'came as cloth', 'origin not certain', 'undyed']);
  });

  test('places for real cloth are windows, with the sample that hangs there', () => {
    const kermes = board.colours.find(({ what }) => what === 'kermes-alum-wool');
    expect(kermes).toMatchObject({
      material: 'real',
      form: 'skein',
      code: 'WQ24-001-1',
      trial: 'wq24-001',
      latin: ['Kermes vermilio', 'Kermes echinatus'],
      lab: '38.6, 47.5, 16.2',
    });
    expect(board.colours.find(({ what }) => what === 'brazil-alum-silk')?.material).toBe('printed');
  });

  test('two languages, each caption checked for its own', () => {
    expect(board.languages).toEqual(['en', 'de']);
    const german = board.colours.flatMap(({ captions }) => captions).find(({ lang }) => lang === 'de');
    expect(german).toMatchObject({ onlyPartlyChecked: true, grade: '' });
  });

  test('says what was not to be had then, and what the board lacks', () => {
    expect(board.notThen.map(({ why }) => why)).toContain('Contradicted: American cochineal.');
    expect(board.gaps).toBe('No orange and tan or brown that the notes can stand behind.');
  });

  test('a claim that is dated anew makes its captions stale, and says so', async () => {
    const other = await changed('dyestuffs/kermes.md', (text) =>
      text.replace('region: hanse-towns\n    when: 1300–1450', 'region: hanse-towns\n    when: 1310–1450'),
    );
    const view = displayView(other, BOARD);
    expect(view?.staleCaptions).toBe(1);
    expect(view?.colours.find(({ what }) => what === 'kermes-alum-wool')?.captions[0]?.stale).toEqual([
      'Kermes: its date was 1300–1450, now 1310–1450.',
    ]);
    expect(dueListView(other, '2026-04-02T00:00:00Z').filter(({ kind }) => kind === 'reprint')).toMatchObject([
      { overdue: true, note: BOARD },
    ]);
  });

  test('another date of the palette makes every caption stale', async () => {
    const other = await changed('palettes/house-2-hanse-merchant.md', (text) => text.replace('when: c. 1370', 'when: c. 1270'));
    const view = displayView(other, BOARD);
    expect(view?.staleCaptions).toBe(10);
    expect(view?.colours[0]?.captions[0]?.stale.join(' ')).toContain('The palette was of c. 1370 and is of 1245–1295, core 1270 now.');
  });

  test('a recipe that is gone is told and keeps its place in the list', async () => {
    const other = await demoNotebook();
    other.remove('recipes/woad-wool.md');
    const view = displayView(other, BOARD);
    expect(view?.problems.join(' ')).toContain('woad-wool cannot be judged');
    expect(view?.colours).toHaveLength(9);
  });

  test('what is no display has no view', () => {
    expect(displayView(notebook, 'madder')).toBeUndefined();
    expect(displayView(notebook, 'nowhere')).toBeUndefined();
  });
});

describe('captionDraft', () => {
  test('offers a caption for a colour of the board only', () => {
    expect(captionDraft(notebook, BOARD, 'madder-alum-wool')?.text).toMatch(/^Red wool dyed with madder \(Rubia tinctorum\)\./);
    expect(captionDraft(notebook, BOARD, 'logwood-iron-wool')).toBeUndefined();
  });
});

describe('evidenceSheetView', () => {
  const sheet = evidenceSheetView(notebook, BOARD, 'kermes-alum-wool');

  test('leads from the colour to claim, recipe, trial and sample', () => {
    expect(sheet).toMatchObject({
      verdict: 'attested-as-cloth',
      recipe: { id: 'kermes-alum-wool', basedOn: [{ id: 'mairet-1916' }] },
      trial: { id: 'wq24-001', code: 'WQ24-001-1', date: '2024-02-13' },
    });
    expect(sheet?.recipe?.ingredients).toContain('Kermes, 75–100 %, dried insects, ground');
    expect(sheet?.speaksFor[0]).toMatchObject({ says: 'Kermes came only as cloth', source: 'munro-2012' });
  });

  test('cites in full, with the page, and lists each source once', () => {
    const cited = sheet?.speaksFor[0]?.sources[0]?.map(({ text }) => text).join('');
    expect(cited).toMatch(/Munro.*2012/);
    const keys = sheet?.references.map(({ key }) => key) ?? [];
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys).toContain('munro-2012');
    expect(sheet?.missing).toEqual([]);
  });

  test('says what is not known', () => {
    expect(sheet?.unknown.length).toBeGreaterThan(0);
    expect(sheet?.light[0]).toBe('Light fastness: blue wool 1–3.');
  });

  test('a citation without an entry is listed, and stands as its key', async () => {
    const other = await changed('dyestuffs/kermes.md', (text) => text.replace('source: "munro-2012"', 'source: "nobody-1999, p. 3"'));
    const found = evidenceSheetView(other, BOARD, 'kermes-alum-wool');
    expect(found?.missing).toContain('nobody-1999');
  });

  test('only a colour of the board has a sheet', () => {
    expect(evidenceSheetView(notebook, BOARD, 'logwood-iron-wool')).toBeUndefined();
  });
});

describe('dossierView', () => {
  test('has a sheet for every colour and one list of sources, in the order of authors', () => {
    const dossier = dossierView(notebook, BOARD);
    expect(dossier?.sheets).toHaveLength(9);
    expect(dossier?.without).toEqual([]);
    expect(dossier?.missing).toEqual([]);
    const shorts = dossier?.references.map(({ short }) => short.toLowerCase()) ?? [];
    expect(shorts.length).toBeGreaterThan(10);
    expect(shorts).toEqual([...shorts].sort((a, b) => a.localeCompare(b, 'en')));
  });
});
