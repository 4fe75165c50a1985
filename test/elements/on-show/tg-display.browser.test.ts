import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import '../../../web/elements/on-show/tg-on-show.ts';
import type { TgOnShow } from '../../../web/elements/on-show/tg-on-show.ts';
import { captionRuns } from '../../../web/elements/on-show/caption-block.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';
import { aDyestuff, aNote, aWorld } from '../../helpers/a-notebook.ts';

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

  test('arrow keys move a cloth, and what would be written is shown', async () => {
    await shown({ displayId: 'board' });
    const cloth = page.getByRole('button', { name: /^Madder red, feasible/ });
    await expect.element(cloth).toBeVisible();
    const [, x = '', y = ''] = /, (\d+) by (\d+) mm/.exec(cloth.element().getAttribute('aria-label') ?? '') ?? [];
    (cloth.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight}');
    await userEvent.keyboard('{Shift>}{ArrowDown}{/Shift}');
    await expect
      .element(page.getByRole('button', { name: new RegExp(`^Madder red, feasible, ${Number(x) + 5} by ${Number(y) + 1} mm`) }))
      .toBeVisible();
    await expect.element(page.getByText(/what: red, x: \d/)).toBeVisible();
    await page.getByRole('button', { name: 'Put everything back' }).click();
    expect(page.getByText(/Moved, and not written down/).elements()).toHaveLength(0);
  });

  test('a draft is offered for a colour without a caption', async () => {
    await shown({ displayId: 'board' });
    await page.getByRole('button', { name: 'Draft a caption' }).click();
    await expect.element(page.getByText(/as it comes, without dye/)).toBeVisible();
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
