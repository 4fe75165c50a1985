import { describe, expect, test } from 'vitest';
import type { DisplayEdit } from '../../web/notebook/display-edit.ts';
import { displayNote } from '../../web/notebook/display-note.ts';
import { editDisplay } from '../../web/notebook/edit-display.ts';
import type { Notebook } from '../../web/notebook/notebook.ts';
import { captionDeskView } from '../../web/notebook/views/caption-desk-view.ts';
import { displayView } from '../../web/notebook/views/display-view.ts';
import { demoNotebook } from '../helpers/demo-notebook.ts';

const BOARD = 'house-2-board';
const PATH = `displays/${BOARD}.md`;
const encoder = new TextEncoder();

/** Writes an edit into the notebook; gives the lines that went and came. */
function written(notebook: Notebook, edit: DisplayEdit): { readonly gone: readonly string[]; readonly come: readonly string[] } {
  const edited = editDisplay(notebook, BOARD, edit);
  if (edited?.is !== 'note') throw new Error(edited?.says ?? 'no display');
  const was = notebook.base.noteIn(PATH)?.source ?? '';
  expect(edited.note).toMatchObject({ path: PATH, basedOn: was });
  notebook.put({ path: PATH, bytes: encoder.encode(edited.note.text) });
  const [before, after] = [was.split('\n'), edited.note.text.split('\n')];
  return { gone: before.filter((line) => !after.includes(line)), come: after.filter((line) => !before.includes(line)) };
}

const captionOf = (notebook: Notebook, what: string, lang = 'en') => {
  const caption = displayView(notebook, BOARD)
    ?.colours.find((colour) => colour.what === what)
    ?.captions.find((one) => one.lang === lang);
  if (!caption) throw new Error(`no caption: ${what}`);
  return caption;
};

describe('editDisplay', () => {
  test('a cloth moved is written into its own line, and one without a place gets a line', async () => {
    const notebook = await demoNotebook();
    const box = { x: 20.04, y: 40, widthMm: 60, heightMm: 75 };
    const { gone, come } = written(notebook, {
      is: 'places',
      boxes: [
        { what: 'woad-wool', box },
        { what: 'brazil-alum-silk', box: { ...box, x: 120 } },
      ],
    });
    expect(gone).toEqual(['  - { what: woad-wool, trial: wq25-016, code: WQ25-016-1, cloth: real, form: skein }']);
    expect(come).toEqual([
      '  - { what: woad-wool, trial: wq25-016, code: WQ25-016-1, cloth: real, form: skein, x: 20, y: 40, w: 60, h: 75 }',
      '  - { what: brazil-alum-silk, x: 120, y: 40, w: 60, h: 75 }',
    ]);
    const woad = displayView(notebook, BOARD)?.colours.find(({ what }) => what === 'woad-wool');
    expect(woad).toMatchObject({ placed: true, box: { x: 20, y: 40, widthMm: 60, heightMm: 75 } });
  });

  // What the order lays out hangs below what has a place, so the first move writes every place down, and the next its own line.
  test('once every cloth has its place, moving one writes that one alone', async () => {
    const notebook = await demoNotebook();
    const boxes = () => displayView(notebook, BOARD)?.colours.flatMap(({ what, box }) => (box ? [{ what, box }] : [])) ?? [];
    const first = boxes();
    expect(first).toHaveLength(9);
    expect(written(notebook, { is: 'places', boxes: first }).come).toHaveLength(9);
    const moved = boxes().map((one) => (one.what === 'woad-wool' ? { ...one, box: { ...one.box, x: one.box.x + 5 } } : one));
    const { gone, come } = written(notebook, { is: 'places', boxes: moved });
    expect(gone).toHaveLength(1);
    expect(come).toHaveLength(1);
    expect(come[0]).toContain('what: woad-wool');
  });

  test('laid out anew, every place given by hand is given up and nothing else', async () => {
    const notebook = await demoNotebook();
    const box = { x: 20, y: 40, widthMm: 60, heightMm: 75 };
    written(notebook, { is: 'places', boxes: [{ what: 'woad-wool', box }] });
    const { gone, come } = written(notebook, { is: 'laid-anew', order: 'source' });
    expect(come).toEqual(['order: source', '  - { what: woad-wool, trial: wq25-016, code: WQ25-016-1, cloth: real, form: skein }']);
    expect(gone).toHaveLength(2);
    expect(displayView(notebook, BOARD)?.colours.every(({ placed }) => !placed)).toBe(true);
  });

  test('sheet, form, light and version are set where they stand', async () => {
    const notebook = await demoNotebook();
    expect(written(notebook, { is: 'sheet', sheet: { size: 'a1', orientation: 'landscape' } }).come).toEqual([
      'sheet: { size: a1, orientation: landscape }',
    ]);
    expect(written(notebook, { is: 'sheet', sheet: { size: 'free', orientation: 'portrait', widthMm: 500, heightMm: 700 } }).come).toEqual([
      'sheet: { size: free, width: 500, height: 700 }',
    ]);
    expect(written(notebook, { is: 'place', what: 'weld-alum-wool', change: { cloth: 'printed' } }).come).toEqual([
      '  - { what: weld-alum-wool, trial: wq23-007, code: WQ23-007-1, cloth: printed, form: skein }',
    ]);
    expect(written(notebook, { is: 'light', light: { lux: 80 } }).come).toEqual([
      'light: { lux: 80, hours-per-day: 7, days-per-year: 260, uv: removed, window: none, from: 2026-04-01 }',
    ]);
    expect(written(notebook, { is: 'version' }).come).toEqual(['version: 3']);
  });

  test('a caption written anew: its text, its version, the binding that changed; the others stay as they are', async () => {
    const notebook = await demoNotebook();
    const was = captionOf(notebook, 'weld-alum-wool');
    const text = was.text.replace('it is likely that weld grew wild (text, 1301–1700)', 'weld perhaps grew wild (text, 1301–1700)');
    const says = 'In the Hanse towns, c. 1370, weld perhaps grew wild (text, 1301–1700)';
    const claims = was.bound.map((bound) => (bound.claim === 'weld#12' ? { claim: 'weld#12', says } : bound));
    const { gone, come } = written(notebook, {
      is: 'caption',
      what: 'weld-alum-wool',
      nth: was.nth,
      caption: { lang: 'en', headline: was.headline, text, claims: claims.map(({ claim, says: words }) => ({ claim, says: words })) },
    });
    expect(gone).toHaveLength(2);
    expect(come).toHaveLength(3);
    expect(come.join('\n')).toContain(`{ claim: weld#12, says: "${says}", material: weld, status: wild,`);
    const now = captionOf(notebook, 'weld-alum-wool');
    expect(now).toMatchObject({ text, version: 2, stale: [], notices: [] });
    expect(captionOf(notebook, 'kermes-alum-wool').version).toBe(1);
  });

  test('a caption in another language is added with the claims it names and today’s verdict, place and date', async () => {
    const notebook = await demoNotebook();
    const says = 'kam Waid um 1370 als Ware (Handelsquellen, 1300–1600)';
    written(notebook, {
      is: 'caption',
      what: 'woad-wool',
      caption: {
        lang: 'de',
        headline: 'Blau',
        text: `In die Städte der Hanse ${says}.\nHeutige Probe.`,
        claims: [{ claim: 'woad#36', says }],
      },
    });
    const note = notebook.base.note(BOARD)?.record;
    const caption = note?.kind === 'display' ? note.captions.at(-1) : undefined;
    expect(caption).toMatchObject({ lang: 'de', verdict: 'feasible', region: 'hanse-towns', when: 'c. 1370', version: 1 });
    expect(caption?.text).toBe(`In die Städte der Hanse ${says}. Heutige Probe.`);
    expect(caption?.claims).toMatchObject([{ claim: 'woad#36', says, status: 'imported', when: '1300–1600', source: 'hurry-1930' }]);
  });

  test('a colour has one text in each language: a second one is refused, whether new or changed into it', async () => {
    const notebook = await demoNotebook();
    const second = { lang: 'EN', headline: 'Blue', text: 'Blue wool.', claims: [] };
    const refused = /^This colour has a caption in “EN” already/;
    const says = (edited: ReturnType<typeof editDisplay>) => (edited?.is === 'note' ? 'written' : edited?.says);
    expect(says(editDisplay(notebook, BOARD, { is: 'caption', what: 'woad-wool', caption: second }))).toMatch(refused);
    const german = displayView(notebook, BOARD)
      ?.colours.find(({ what }) => what === 'madder-alum-wool')
      ?.captions.find(({ lang }) => lang === 'de');
    if (!german) throw new Error('no German caption');
    const edit = { is: 'caption', what: 'madder-alum-wool', nth: german.nth } as const;
    expect(says(editDisplay(notebook, BOARD, { ...edit, caption: second }))).toMatch(refused);
    expect(says(editDisplay(notebook, BOARD, { ...edit, caption: { ...second, lang: 'de' } }))).toBe('written');
  });

  test('a stale caption read again stands on its claims as they are now; only what changed is written', async () => {
    const notebook = await demoNotebook();
    const kermes = notebook.base.note('kermes');
    const path = kermes?.file ?? '';
    const source = kermes?.source ?? '';
    const dated = source.replace('region: hanse-towns\n    when: 1300–1450', 'region: hanse-towns\n    when: 1310–1450');
    expect(dated).not.toBe(source);
    notebook.put({ path, bytes: encoder.encode(dated) });
    const stale = captionOf(notebook, 'kermes-alum-wool');
    expect(stale.stale).toHaveLength(1);
    const { come } = written(notebook, { is: 'held', nth: stale.nth });
    expect(come).toHaveLength(1);
    expect(come[0]).toContain('1310–1450');
    expect(captionOf(notebook, 'kermes-alum-wool').stale).toEqual([]);
  });

  test('a comment is added, then closed with a reason; without a reason it is not', async () => {
    const notebook = await demoNotebook();
    const { nth } = captionOf(notebook, 'woad-wool');
    written(notebook, { is: 'comment', nth, by: 'a reviewer', date: '2026-11-25', says: 'Which woad?' });
    expect(captionOf(notebook, 'woad-wool').notices.map(({ code }) => code)).toEqual(['comment-open']);
    const decision = { is: 'decision', nth, comment: 0, decision: 'declined' } as const;
    expect(editDisplay(notebook, BOARD, { ...decision, reason: ' ' })).toMatchObject({
      is: 'refused',
      says: expect.stringMatching(/reason/),
    });
    written(notebook, { ...decision, reason: 'the Latin name says it' });
    expect(captionOf(notebook, 'woad-wool').review).toEqual([
      { by: 'a reviewer', date: '2026-11-25', says: 'Which woad?', decision: 'declined', reason: 'the Latin name says it' },
    ]);
    expect(captionOf(notebook, 'woad-wool').notices).toEqual([]);
  });

  test('a caption is found by where it stands, also behind one that could not be read', async () => {
    const notebook = await demoNotebook();
    const source = notebook.base.note(BOARD)?.source ?? '';
    notebook.put({ path: PATH, bytes: encoder.encode(source.replace('captions:\n', 'captions:\n  - { text: "About nothing." }\n')) });
    const { nth } = captionOf(notebook, 'kermes-alum-wool');
    expect(nth).toBe(0);
    const { gone } = written(notebook, { is: 'caption-removed', nth });
    expect(gone.join('\n')).toContain('Scarlet from over the sea');
    expect(gone.join('\n')).not.toContain('About nothing');
  });

  test('what cannot be written says so; what is no display has no edit', async () => {
    const notebook = await demoNotebook();
    const empty = { lang: 'en', headline: '', text: ' ', claims: [] };
    expect(editDisplay(notebook, BOARD, { is: 'caption', what: 'woad-wool', caption: empty })).toMatchObject({ is: 'refused' });
    expect(editDisplay(notebook, BOARD, { is: 'held', nth: 99 })).toMatchObject({ is: 'refused' });
    expect(editDisplay(notebook, 'madder', { is: 'version' })).toBeUndefined();
  });
});

describe('captionDeskView', () => {
  test('names the clause that rests on nothing, and what it can rest on', async () => {
    const notebook = await demoNotebook();
    const { lang, headline, text, bound, nth } = captionOf(notebook, 'weld-alum-wool');
    const desk = captionDeskView(notebook, BOARD, 'weld-alum-wool', nth, {
      lang,
      headline,
      text,
      claims: bound.filter(({ claim }) => claim !== 'weld#12'),
    });
    expect(desk?.unbound).toEqual(['In the Hanse towns, c. 1370, it is likely that weld grew wild (text, 1301–1700)']);
    expect(desk?.backings.map(({ claim }) => claim)).toEqual(expect.arrayContaining(['weld#12', 'wq23-007']));
  });
});

describe('displayNote', () => {
  test('a palette’s board begins as a note that reads without a fault and shows every colour kept', async () => {
    const notebook = await demoNotebook();
    const draft = displayNote(notebook.base, 'house-2-hanse-merchant');
    if (!draft) throw new Error('no draft');
    notebook.put({ path: draft.path, bytes: encoder.encode(draft.text) });
    const note = notebook.base.note(draft.id);
    expect(note && notebook.foundInText(note.file)).toEqual([]);
    const view = displayView(notebook, draft.id);
    expect(view?.colours).toHaveLength(9);
    expect(view?.problems).toEqual([]);
    expect(displayNote(notebook.base, 'madder')).toBeUndefined();
  });
});
