import { packNotebook } from '../demo-plugin.mjs';
import { paletteOf } from '../../web/domain/palette/palette.ts';
import { Notebook } from '../../web/notebook/notebook.ts';
import { freshBrowser, servedSite } from './built-page.ts';
import { printTable, quantile } from './print-table.ts';

/** One frame of a screen at 60 Hz, in milliseconds. */
const FRAME = 1000 / 60;

const notebook = new Notebook();
const encoder = new TextEncoder();
notebook.putAll(packNotebook().files.map(({ path, text }) => ({ path, bytes: encoder.encode(text) })));
const { base, colours } = notebook;

const times: number[] = [];
let colourCount = 0;
for (let year = 1370; year <= 1670; year += 2) {
  const start = performance.now();
  colourCount = paletteOf(base, colours, { region: 'england', span: { from: year, to: year }, dyedHere: false }).length;
  times.push(performance.now() - start);
}
const claims = [...base.notes()].reduce((sum, note) => sum + base.claimsIn(note.file).length, 0);
printTable(
  `Palette of one year, judged in Node: ${base.ofKind('recipe').length} recipes, ${colourCount} colours, ${claims} claims`,
  ['', 'median ms', 'p95 ms', 'p95 ÷ frame'],
  [['151 years, England', quantile(times, 0.5), quantile(times, 0.95), quantile(times, 0.95) / FRAME]],
);

const { address, close } = await servedSite();
const browser = await freshBrowser();
const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
await page.goto(`${address}#/palette?region=england&when=1370&since=1370`);
await page.getByRole('slider').waitFor();
await page.waitForTimeout(1500);
// As text, because what runs in the page must not be changed on the way there.
const frames = (await page.evaluate(`(async () => {
  const palette = document.querySelector('tg-app')?.shadowRoot?.querySelector('tg-palette')?.shadowRoot;
  const slider = palette?.querySelector('input[type=range]');
  if (!slider) throw new Error('no year to drag');
  const next = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const gaps = [], still = [];
  let last = await next();
  for (let at = 0; at < 60; at++) { const now = await next(); still.push(now - last); last = now; }
  for (let year = 1370; year <= 1670; year += 2) {
    slider.value = String(year);
    slider.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    const now = await next(); gaps.push(now - last); last = now;
  }
  return { gaps, still };
})()`)) as { readonly gaps: readonly number[]; readonly still: readonly number[] };
printTable(
  'Dragging the year in Chromium: time from one frame to the next',
  ['', 'median ms', 'p95 ms', 'longest ms', 'frames over 2 × frame'],
  [
    [
      'page at rest',
      quantile(frames.still, 0.5),
      quantile(frames.still, 0.95),
      Math.max(...frames.still),
      frames.still.filter((gap) => gap > 2 * FRAME).length,
    ],
    [
      '151 years dragged',
      quantile(frames.gaps, 0.5),
      quantile(frames.gaps, 0.95),
      Math.max(...frames.gaps),
      frames.gaps.filter((gap) => gap > 2 * FRAME).length,
    ],
  ],
);
await browser.close();
await close();
