import { page } from 'vitest/browser';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { boardSvg } from '../../../web/elements/on-show/board-svg.ts';
import { textLines, widthOf } from '../../../web/elements/on-show/text-lines.ts';
import '../../../web/elements/on-show/tg-board-files.ts';
import { drawnAsPng } from '../../../web/elements/palette/drawn-as-png.ts';
import { displayView, type DisplayView } from '../../../web/notebook/views/display-view.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

afterEach(() => {
  vi.restoreAllMocks();
  document.body.replaceChildren();
});

const TEXT = 'Red wool dyed with madder (Rubia tinctorum). In England, 1370, madder was imported (trade record, 1300–1500) & sold.';

function board(): DisplayView {
  const notebook = aNotebook({
    ...aWorld,
    'dyestuffs/madder.md': aDyestuff('Madder', 'region: england, when: 1300–1500, status: imported, known-by: trade').replace(
      'title: Madder',
      'title: Madder\nlatin: Rubia tinctorum',
    ),
    'recipes/red.md': aNote('kind: recipe\ntitle: Madder red\nfibre: wool\ningredients: [{what: madder, role: dye, amount: 50 %}]'),
    'trials/t1.md': aNote(
      'kind: trial\nrecipe: red\ndate: 2023-05-01\ncode: T1-1\nfibre: wool\ncolour: {lab: [42, 44, 28], illuminant: D65, observer: 10}',
    ),
    'palettes/p.md': aNote('kind: palette\ntitle: Reds\nregion: england\nwhen: "1370"\nkeeps: [red, wool/white]'),
    'displays/board.md': aNote(
      `kind: display\ntitle: Reds <and> whites\npalette: p\nsheet: a4\nplaces: [{what: wool/white, cloth: real, form: skein}]\ncaptions: [{for: red, headline: Red, text: "${TEXT}"}]`,
    ),
  });
  const view = displayView(notebook, 'board');
  if (!view) throw new Error('no board');
  return view;
}

describe('boardSvg', () => {
  const drawing = { language: 'en', windows: true, day: '2026-11-25' };
  const svg = new DOMParser().parseFromString(boardSvg(board(), drawing), 'image/svg+xml');

  test('is well-formed, at its true size, named and told in words', () => {
    expect(svg.querySelector('parsererror')).toBeNull();
    const root = svg.documentElement;
    expect([root.getAttribute('width'), root.getAttribute('height'), root.getAttribute('viewBox')]).toEqual([
      '210mm',
      '297mm',
      '0 0 210 297',
    ]);
    expect(svg.querySelector('title')?.textContent).toBe('Reds <and> whites');
    expect(svg.querySelector('desc')?.textContent).toBe(
      'Reds <and> whites. A board of 2 cloths for England, 1370, row by row: white (Wool), feasible, a skein in a window; Madder red, feasible, printed.',
    );
  });

  test('holds every word of the caption, Latin slanted, a window where the cloth hangs', () => {
    const texts = [...svg.querySelectorAll('text')].map((one) => one.textContent ?? '');
    expect(texts.join(' ')).toContain(TEXT.slice(0, 20));
    for (const word of TEXT.split(' ')) expect(texts.join(' ')).toContain(word);
    expect([...svg.querySelectorAll('tspan')].map((one) => one.textContent).join(' ')).toContain('Rubia');
    expect(texts.join(' ')).toContain('Window for the skein');
    expect(texts).toContain('Version 1, 25 November 2026');
  });

  test('at 300 dpi the cloth has the colour that is shown', async () => {
    const view = board();
    const png = await drawnAsPng(boardSvg(view, { ...drawing, windows: false }), { width: 210, height: 297 }, 300 / 25.4);
    const bitmap = await createImageBitmap(png as Blob);
    expect([bitmap.width, bitmap.height]).toEqual([2480, 3508]);
    const red = view.colours.find(({ what }) => what === 'red');
    const box = red?.box;
    if (!red || !box) throw new Error('no box');
    const perMm = 300 / 25.4;
    const [left, top, wide, high] = [box.x + box.widthMm * 0.2, box.y + box.widthMm * 0.3, box.widthMm * 0.25, box.widthMm * 0.3].map(
      (mm) => Math.round(mm * perMm),
    ) as [number, number, number, number];
    const pen = new OffscreenCanvas(wide, high).getContext('2d') as OffscreenCanvasRenderingContext2D;
    pen.drawImage(bitmap, -left, -top);
    const points = pen.getImageData(0, 0, wide, high).data;
    const mean = [0, 1, 2].map((channel) => {
      let sum = 0;
      for (let at = channel; at < points.length; at += 4) sum += (points[at] ?? 0) ** 2.2;
      return (sum / (points.length / 4)) ** (1 / 2.2);
    });
    const wanted = [1, 3, 5].map((at) => parseInt(red.hex.slice(at, at + 2), 16));
    mean.forEach((value, channel) => expect(Math.abs(value - (wanted[channel] ?? 0))).toBeLessThan(3));
  });
});

describe('textLines', () => {
  // Measured by the browser itself in the faces a picture falls back on.
  test.each(['serif', 'Georgia', 'Literata'])('no line is wider than its box in %s', (face) => {
    const pen = new OffscreenCanvas(1, 1).getContext('2d') as OffscreenCanvasRenderingContext2D;
    pen.font = `100px ${face}`;
    const lines = textLines(`${TEXT} It came ready dyed; where it was dyed is not known. MODERN SAMPLE, DYED 2024.`, 24);
    expect(lines.length).toBeGreaterThan(3);
    for (const line of lines) expect(pen.measureText(line).width / 100, line).toBeLessThanOrEqual(24);
  });

  test('loses nothing, and gives a word that is too long its own line', () => {
    expect(textLines('ab verylongwordindeed c', 4)).toEqual(['ab', 'verylongwordindeed', 'c']);
    expect(widthOf('')).toBe(0);
  });
});

test.each([
  ['SVG', 'board.svg'],
  ['PNG, 300 dpi', 'board.png'],
  ['its colours as CSV', 'board.csv'],
  ['as CSS', 'board.css'],
  ['in words', 'board.txt'],
])('%s goes to the downloads', async (name, file) => {
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(() => undefined);
  document.body.append(Object.assign(document.createElement('tg-board-files'), { display: board() }));
  await page.getByRole('button', { name, exact: true }).click();
  await expect.element(page.getByRole('status')).toHaveTextContent(`${file} went to your downloads.`);
});
