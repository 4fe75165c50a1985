import { page, userEvent } from 'vitest/browser';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import '../../../web/elements/on-show/tg-on-show.ts';
import type { TgOnShow } from '../../../web/elements/on-show/tg-on-show.ts';
import { captionRuns } from '../../../web/elements/on-show/caption-runs.ts';
import type { NoteToSave } from '../../../web/notebook/ports-writing.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';
import { aDyestuff, aNote, aWorld } from '../../helpers/a-notebook.ts';

beforeEach(() => page.viewport(1024, 768));
afterEach(() => document.body.replaceChildren());

const encoder = new TextEncoder();
const CAPTION =
  'Red wool dyed with madder (Rubia tinctorum). In England, 1370, madder was imported (trade record, 1300–1500). No such cloth is recorded. Modern sample, dyed 2023.';

const files = (when = '1300–1500'): Readonly<Record<string, string>> => ({
  ...aWorld,
  'dyestuffs/madder.md': aDyestuff(
    'Madder',
    `region: england, when: ${when}, status: imported, known-by: trade, source: cardon-2007`,
  ).replace(
    'title: Madder',
    'title: Madder\nlatin: Rubia tinctorum\nlightfast: [{on: wool, grade: "3-4", scale: blue wool class, source: cci}]',
  ),
  'recipes/red.md': aNote('kind: recipe\ntitle: Madder red\nfibre: wool\ningredients: [{what: madder, role: dye, amount: 50 %}]'),
  'trials/t1.md': aNote(
    'kind: trial\ntitle: First pot\nrecipe: red\ndate: 2023-05-01\ncode: T1-1\nfibre: wool\ncolour: {lab: [42, 44, 28], illuminant: D65, observer: 10}',
  ),
  'palettes/p.md': aNote('kind: palette\ntitle: Reds\nregion: england\nwhen: "1370"\nquestion: What reds?\nkeeps: [red, wool/white]'),
  'displays/board.md': aNote(`kind: display
title: The board
palette: p
sheet: a4
places: [{what: red, code: T1-1, cloth: real, form: skein}]
light: {lux: 50, hours-per-day: 8, days-per-year: 300, from: 2026-04-01}
captions:
  - for: red
    headline: Red
    text: "${CAPTION}"
    verdict: feasible
    region: england
    when: "1370"
    claims:
      - {claim: t1, says: "dyed with madder (Rubia tinctorum)", when: "2023"}
      - {claim: "madder#0", says: "In England, 1370, madder was imported (trade record, 1300–1500)", status: imported, when: "1300–1500", source: cardon-2007}
      - {claim: t1, says: "dyed 2023", when: "2023"}`),
});

async function shown(more: Partial<TgOnShow>, texts = files()): Promise<TgOnShow> {
  const engine = new LocalEngine();
  await engine.open(Object.entries(texts).map(([path, text]) => ({ path, bytes: encoder.encode(text) })));
  const element = Object.assign(document.createElement('tg-on-show'), { engine, now: '2026-11-25T10:00:00Z', ...more });
  document.body.append(element);
  return element;
}

/** The element over an engine that keeps what is saved, as the page does. */
async function kept(more: Partial<TgOnShow>, texts = files()) {
  const element = await shown(more, texts);
  const saved: NoteToSave[] = [];
  element.addEventListener('tg-note-save-request', (event) => {
    saved.push(event.detail);
    const { path, text } = event.detail;
    const put = element.engine?.put([{ path, bytes: encoder.encode(text) }]) ?? Promise.resolve([]);
    event.respondWith(put.then(() => ({ is: 'saved' })));
  });
  return { element, saved };
}

describe('tg-on-show', () => {
  test('lists the displays and what is due', async () => {
    await shown({});
    await expect.element(page.getByRole('link', { name: 'The board' }).first()).toHaveAttribute('href', '#/on-show/board');
    await expect.element(page.getByText(/overdue/)).toBeVisible();
  });

  test('a board shows its captions, what they rest on, and no fault where there is none', async () => {
    await shown({ displayId: 'board' });
    await expect.element(page.getByRole('heading', { level: 1, name: 'The board' })).toBeVisible();
    await expect.element(page.getByText('Every caption still stands on its claims.')).toBeVisible();
    const latin = page.getByText('Rubia tinctorum', { exact: true }).elements();
    expect(latin.length).toBeGreaterThanOrEqual(2);
    expect(latin.every((one) => getComputedStyle(one).fontStyle === 'italic')).toBe(true);
  });

  test('a claim dated anew makes the caption stale, and says what it was and is', async () => {
    await shown({ displayId: 'board' }, files('1310–1500'));
    await expect.element(page.getByText('1 caption is stale.')).toBeVisible();
    await expect.element(page.getByText('Madder: its date was 1300–1500, now 1310–1500.')).toBeVisible();
  });

  test('arrow keys move a cloth; where it lies is written into the note, or put back', async () => {
    const { element, saved } = await kept({ displayId: 'board' });
    const heading = page.getByText('red', { exact: true });
    await expect.element(heading).toBeVisible();
    const cloth = page.getByRole('button', { name: /^Madder red, feasible/ });
    await expect.element(cloth).toBeVisible();
    const [, x = '', y = ''] = /, (\d+) by (\d+) mm/.exec(cloth.element().getAttribute('aria-label') ?? '') ?? [];
    const move = async () => {
      (cloth.element() as HTMLElement).focus();
      await userEvent.keyboard('{ArrowRight}');
      await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}');
    };
    const moved = page.getByRole('button', { name: new RegExp(`^Madder red, feasible, ${Number(x) + 5} by ${Number(y) + 1} mm`) });
    await move();
    await expect.element(moved).toBeVisible();
    await page.getByRole('button', { name: 'Put everything back' }).click();
    await expect.element(page.getByText(/not written down yet/)).not.toBeInTheDocument();
    await move();
    await page.getByRole('button', { name: 'Keep the board as it lies' }).click();
    await expect.poll(() => saved.length).toBe(1);
    expect(saved[0]?.text).toMatch(new RegExp(`\\{what: red, code: T1-1, cloth: real, form: skein, x: ${Number(x) + 5}, y: \\d`));
    element.version += 1;
    await expect.element(moved).toBeVisible();
    await expect.element(page.getByText(/not written down yet/)).not.toBeInTheDocument();
    await expect.element(heading).toBeVisible();
  });

  test('a draft is offered for a colour without a caption, and saved as it was edited', async () => {
    const { element, saved } = await kept({ displayId: 'board' });
    await page.getByRole('button', { name: 'Draft a caption' }).click();
    const text = page.getByRole('textbox', { name: 'Caption, 20 to 60 words' });
    await expect.poll(() => (text.query() as HTMLTextAreaElement | null)?.value).toContain('as it comes, without dye');
    await page.getByRole('textbox', { name: 'Headline' }).fill('White wool, undyed');
    await page.getByRole('button', { name: 'Save the caption' }).click();
    await expect.poll(() => saved.length).toBe(1);
    expect(saved[0]?.text).toContain('headline: White wool, undyed');
    element.version += 1;
    await expect.element(text).not.toBeInTheDocument();
    await expect.element(page.getByRole('heading', { level: 3, name: 'White wool, undyed' }).first()).toBeVisible();
  });

  test('a stale caption is edited, its clause bound anew, and stands again', async () => {
    const { element, saved } = await kept({ displayId: 'board' }, files('1310–1500'));
    await page.getByRole('button', { name: 'Edit this caption' }).click();
    const text = page.getByRole('textbox', { name: 'Caption, 20 to 60 words' });
    await text.fill(CAPTION.replace('1300–1500', '1310–1500'));
    await expect.element(page.getByText(/no longer in the text/)).toBeVisible();
    const clause = page.getByRole('combobox', { name: /In England, 1370, madder was imported .* rests on nothing yet/ });
    await clause.selectOptions('madder#0');
    await expect.element(page.getByText(/no longer in the text/)).not.toBeInTheDocument();
    await page.getByRole('button', { name: 'Save the caption' }).click();
    await expect.poll(() => saved.length).toBe(1);
    element.version += 1;
    await expect.element(page.getByText('Every caption still stands on its claims.')).toBeVisible();
    await expect.element(page.getByText(/version 2 · en/)).toBeVisible();
  });

  test('a comment is added and declined with a reason', async () => {
    const { element, saved } = await kept({ displayId: 'board' });
    await page.getByText('Comment on it').click();
    await page.getByRole('textbox', { name: 'Who says it' }).fill('the curator');
    await page.getByRole('textbox', { name: 'Comment', exact: true }).fill('Which madder?');
    await page.getByRole('button', { name: 'Add the comment' }).click();
    await expect.poll(() => saved.length).toBe(1);
    element.version += 1;
    await page.getByRole('textbox', { name: 'Decided, because' }).fill('the Latin name says it');
    await page.getByRole('button', { name: 'Decline' }).click();
    await expect.poll(() => saved.length).toBe(2);
    expect(saved[1]?.text).toContain('decision: declined');
    element.version += 1;
    await expect.element(page.getByText('Declined: the Latin name says it.')).toBeVisible();
  });

  test('what cannot be saved says so and stays as it was typed', async () => {
    await shown({ displayId: 'board' });
    await page.getByRole('button', { name: 'Edit this caption' }).click();
    await page.getByRole('textbox', { name: 'Headline' }).fill('Redder');
    await page.getByRole('button', { name: 'Save the caption' }).click();
    await expect.element(page.getByText('Nothing here keeps notes, so this cannot be saved.')).toBeVisible();
    await expect.element(page.getByRole('textbox', { name: 'Headline' })).toHaveValue('Redder');
  });

  test('another sheet, and what hangs in a place, are written into the note', async () => {
    const { saved } = await kept({ displayId: 'board' });
    await page.getByRole('combobox', { name: 'Sheet' }).selectOptions('a3');
    await expect.poll(() => saved.at(-1)?.text).toContain('size: a3');
    await page.getByText('What hangs in each place').click();
    await page.getByRole('combobox', { name: 'In the print' }).first().selectOptions('printed');
    await expect.poll(() => saved.at(-1)?.text).toContain('cloth: printed');
  });

  test('publishing shows what goes out and what stays, and keeps the address that labels lead to', async () => {
    const { element, saved } = await kept({ displayId: 'board', settings: { publish: '1' } });
    await expect.element(page.getByText(/^2 colours: .*Madder red/)).toBeVisible();
    await expect.element(page.getByText(/Who dyed, reviewed or wrote/)).toBeVisible();
    await page.getByText('Every caption and claim of it').click();
    await expect.element(page.getByText(CAPTION)).toBeVisible();
    await page.getByRole('textbox', { name: 'Web address of the folder' }).fill('https://museum.example/board/');
    await page.getByRole('button', { name: 'Keep the address in the note' }).click();
    await expect.element(page.getByText('The address is in the note.')).toBeVisible();
    expect(saved.at(-1)?.text).toContain('published-at: https://museum.example/board/');
    element.settings = { print: 'labels' };
    await expect.element(page.getByRole('img', { name: 'Leads to https://museum.example/board/#red' })).toBeVisible();
  });

  test('a palette gets a board', async () => {
    const { saved } = await kept({});
    await page.getByRole('button', { name: 'Begin its board' }).click();
    await expect.poll(() => saved.at(-1)).toMatchObject({ path: 'displays/reds-the-board.md' });
    expect(globalThis.location.hash).toBe('#/on-show/reds-the-board');
    globalThis.location.hash = '';
  });

  test.each([390, 430])('on a phone %i px wide the parts lie folded under their headings, and one press opens one', async (width) => {
    await page.viewport(width, 800);
    await shown({ displayId: 'board' });
    await expect.element(page.getByRole('heading', { level: 2, name: 'Light' })).toBeVisible();
    const table = page.getByRole('columnheader', { name: 'Take down' });
    await expect.element(table).not.toBeInTheDocument();
    await page.getByRole('heading', { level: 2, name: 'Light' }).click();
    await expect.element(table).toBeVisible();
    await expect.element(page.getByRole('button', { name: 'Edit this caption' })).not.toBeInTheDocument();
  });

  test('days in the light plan are written as their reader writes them', async () => {
    await shown(
      { displayId: 'board' },
      { ...files(), 'displays/board.md': files()['displays/board.md']?.replace('lux: 50', 'lux: 500') ?? '' },
    );
    const table = page.getByRole('group', { name: 'Light by colour' });
    // 500 lx × 8 h leaves three whole open days of the 15 000 lx·h of high responsivity (CIE 157:2004, from memory): three days on.
    const day = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium' }).format(new Date(2026, 3, 4));
    await expect.element(table.getByText(day)).toBeVisible();
    expect(table.element().textContent).not.toMatch(/20\d\d-\d\d-\d\d/);
  });

  test('trying another light changes the days', async () => {
    await shown({ displayId: 'board' });
    await expect.element(page.getByText('25 to 83 years')).toBeVisible();
    const lux = page.getByRole('spinbutton', { name: 'Lux at the cloth' });
    await lux.fill('100');
    await userEvent.tab();
    await expect.element(page.getByText('13 to 42 years')).toBeVisible();
  });

  test('the evidence sheet leads to recipe, trial and source', async () => {
    await shown({ displayId: 'board', settings: { sheet: 'red' } });
    await expect.element(page.getByRole('heading', { level: 1, name: 'Madder red' })).toBeVisible();
    await expect.element(page.getByRole('link', { name: 'Trial t1' })).toHaveAttribute('href', '#/notebook/t1');
    await expect.element(page.getByText(/in no bibliography of this notebook: cardon-2007/)).toBeVisible();
  });

  test('labels hold the captions', async () => {
    await shown({ displayId: 'board', settings: { print: 'labels' } });
    await expect.element(page.getByText('T1-1 · Feasible · v1')).toBeVisible();
  });

  test.each([
    ['the list', {}],
    ['the board', { displayId: 'board' }],
    ['the sheet', { displayId: 'board', settings: { sheet: 'red' } }],
    ['the dossier', { displayId: 'board', settings: { print: 'dossier' } }],
    ['the labels', { displayId: 'board', settings: { print: 'labels' } }],
    ['publishing', { displayId: 'board', settings: { publish: '1' } }],
  ])('%s has no fault axe knows', async (_, more) => {
    await shown(more);
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(await axeFaults(document.body)).toEqual([]);
  });
});

describe('captionRuns', () => {
  test('cuts the text where marks begin and end, and loses nothing', () => {
    const runs = captionRuns({
      text: 'abcdef',
      bound: [{ claim: 'x', says: 'bcd', range: [1, 4] }],
      notices: [{ code: 'c', says: 's', range: [3, 6] }],
    });
    expect(runs).toEqual([
      { text: 'a', bound: false, faulty: false, latin: false },
      { text: 'bc', bound: true, faulty: false, latin: false },
      { text: 'd', bound: true, faulty: true, latin: false },
      { text: 'ef', bound: false, faulty: true, latin: false },
    ]);
  });
});
