import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { makeZip } from '../helpers/make-zip.ts';
import { moving, type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

// What keeps a notebook safe, done by hand in the built page: faults found, copies taken, things caught, deleted, put back.

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

const text = (words: string): Uint8Array => new TextEncoder().encode(words);
const demonstration = (file: string): Buffer => readFileSync(new URL(`../../corpus-demo/${file}`, import.meta.url));
const go = (page: Page, hash: string) => page.evaluate((to) => void (globalThis.location.hash = to), hash);
const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name, exact: true });

/** Presses what gives a file, and reads the file. */
async function downloaded(page: Page, button: string): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).first().click(),
  ]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** The element that has the focus, through every shadow tree. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    let at = document.activeElement;
    while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
    return at?.textContent?.trim() ?? '';
  });

/** Opens the database as a program of years to come would, and gives the version it then has. */
const ofTheFuture = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((done, failed) => {
        const opening = indexedDB.open('tenterground', 9_999);
        opening.addEventListener('success', () => {
          done(opening.result.version);
          opening.result.close();
        });
        opening.addEventListener('error', () => failed(new Error('not opened')));
      }),
  );

describe('keeping a notebook', { timeout: 180_000 }, () => {
  test('a line of the import’s report leads to the very line at fault', async () => {
    const page = await site.open('#/notebook');
    const faulty = '---\nkind: text\ntitle: A ledger\nregion: england\nwhen: {odd: 1}\nsource: seen\n---\nWords.\n';
    const zip = makeZip([{ path: 'n/texts/ledger.md', bytes: text(faulty) }]);
    await page.getByLabel('A zip').setInputFiles({ name: 'notes.zip', mimeType: 'application/zip', buffer: Buffer.from(zip) });
    const line = page.getByRole('region', { name: 'Report' }).getByRole('listitem').filter({ hasText: 'cannot be read there' });
    await line.getByRole('link').click();
    const editor = page.getByRole('textbox', { name: 'Text of the note' });
    await editor.waitFor();
    expect(page.url()).toContain('line=5');
    // Where the caret is, what is typed comes to stand.
    await expect.poll(() => editor.evaluate((one) => one.matches(':focus'))).toBe(true);
    await page.keyboard.type('~');
    await expect.poll(async () => (await editor.locator('.cm-line').allInnerTexts())[4]).toContain('~');
    await page.context().close();
  });

  test('a palette as CSV, SVG, PNG and CSS text: four files that say the same of every cloth', async () => {
    const page = await site.open('#/palette?region=hanse-towns&when=1370');
    await page.getByText(/colours hang here/).waitFor();
    const csv = await downloaded(page, 'CSV, for a spreadsheet');
    expect(csv.name).toMatch(/^palette-.*1370\.csv$/);
    const { data, errors } = Papa.parse<Record<string, string>>(csv.bytes.toString(), { header: true, skipEmptyLines: true });
    expect(errors).toEqual([]);
    const wanted = data.map((row) => row['hex'] ?? '');
    expect(wanted.length).toBe(await page.locator('tg-cloth-line button[part="cloth"]').count());
    expect(wanted.every((hex) => /^#[\da-f]{6}$/.test(hex))).toBe(true);

    const [svg, css, png] = [await downloaded(page, 'SVG'), await downloaded(page, 'CSS text'), await downloaded(page, 'PNG')];
    const reader = await page.context().newPage();
    const drawn = await reader.evaluate((xml) => {
      const read = new DOMParser().parseFromString(xml, 'image/svg+xml');
      return [...read.querySelectorAll('g')].map((row) => ({
        fill: row.querySelector('rect')?.getAttribute('fill'),
        says: row.querySelector('text')?.textContent,
      }));
    }, svg.bytes.toString());
    expect(drawn).toEqual(data.map((row) => ({ fill: row['hex'], says: row['colour'] })));

    const declared = await reader.evaluate((sheet) => {
      const style = new CSSStyleSheet();
      style.replaceSync(sheet);
      const [rule] = style.cssRules;
      return rule instanceof CSSStyleRule ? [...rule.style].map((name) => rule.style.getPropertyValue(name).trim()) : [];
    }, css.bytes.toString());
    expect(declared).toEqual(wanted);

    // The first cloth lies at 32, 84 in a sheet 640 wide; the picture has two points to each unit.
    const pixel = await reader.evaluate(async (base64) => {
      const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
      const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const pen = new OffscreenCanvas(picture.width, picture.height).getContext('2d');
      pen?.drawImage(picture, 0, 0);
      return { width: picture.width, at: [...(pen?.getImageData(2 * 60, 2 * 110, 1, 1).data ?? [])].slice(0, 3) };
    }, png.bytes.toString('base64'));
    expect(pixel).toEqual({ width: 1280, at: [1, 3, 5].map((at) => Number.parseInt(wanted[0]?.slice(at, at + 2) ?? '', 16)) });
    await page.context().close();
  });

  test('one note out as a file, byte for byte', async () => {
    const page = await site.open('#/notebook/kermes');
    await heading(page, 'Kermes').waitFor();
    const { name, bytes } = await downloaded(page, 'Export this file');
    expect(name).toBe('kermes.md');
    expect(bytes.equals(demonstration('dyestuffs/kermes.md'))).toBe(true);
    await page.getByText('kermes.md went to your downloads.').waitFor();
    await page.context().close();
  });

  test('caught on a phone: a photo, words, a source; kept, and seen again after a reload', async () => {
    const page = await site.open('#/notebook?capture=1', { width: 390, height: 844 });
    await page.getByLabel('Take a photo, or choose one').setInputFiles('test/fixtures/one-pixel.png');
    await page.getByText('Another photo').waitFor();
    await page.getByLabel('Words').fill('A red hood behind glass');
    await page.getByLabel('Where it is from').fill('the label in room 4');
    await page.getByRole('button', { name: 'Done' }).click();
    await page.getByText('Kept.').waitFor();
    await page.getByRole('link', { name: 'Read it' }).click();
    await heading(page, 'A red hood behind glass').waitFor();
    await page.reload();
    await heading(page, 'A red hood behind glass').waitFor();
    await page.getByText('Source, as noted on the spot: the label in room 4').waitFor();
    const photo = page.getByRole('img', { name: 'A red hood behind glass' });
    await expect.poll(() => photo.evaluate((one) => (one as HTMLImageElement).naturalWidth)).toBe(1);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await page.context().close();
  });

  test('deleted, and put back as it was; the focus is on the way back, then on the page', async () => {
    const page = await site.open('#/notebook/kermes?write=form');
    await page.getByRole('button', { name: 'Delete this note' }).click();
    await page.getByText('“Kermes” is deleted.').waitFor();
    await expect.poll(() => focused(page)).toBe('Undo');
    await go(page, '#/notebook/kermes');
    await page.getByText(/No note .* has the id/).waitFor();
    await go(page, '#/notebook');
    await heading(page, 'Notebook').waitFor();
    await page.getByRole('button', { name: 'Undo' }).press('Enter');
    await expect.poll(() => page.getByText('“Kermes” is deleted.').count()).toBe(0);
    expect(await focused(page)).toBe('Notebook');
    await go(page, '#/notebook/kermes');
    await heading(page, 'Kermes').waitFor();
    expect((await downloaded(page, 'Export this file')).bytes.equals(demonstration('dyestuffs/kermes.md'))).toBe(true);
    await page.context().close();
  });

  test('an earlier version beside the one that stands, and restored to the byte', async () => {
    const page = await site.open('#/notebook/weld?write=form');
    await page.getByLabel('Title').fill('Weld, mistaken');
    await page.getByLabel('Title').press('Tab');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('Saved.', { exact: true }).waitFor();
    await go(page, '#/notebook/weld?versions=all');
    const changed = page.getByRole('row').filter({ hasText: 'Weld, mistaken' });
    await changed.waitFor();
    expect((await changed.getByRole('cell').allInnerTexts()).map((cell) => cell.trim()).filter((cell) => /[a-z]/.test(cell))).toEqual([
      'gone',
      'title: Weld',
      'new',
      'title: Weld, mistaken',
    ]);
    await page.getByRole('button', { name: 'Let the earlier one stand again' }).click();
    await page.getByText(/It stands again/).waitFor();
    await go(page, '#/notebook/weld');
    await heading(page, 'Weld').waitFor();
    expect((await downloaded(page, 'Export this file')).bytes.equals(demonstration('dyestuffs/weld.md'))).toBe(true);
    await page.context().close();
  });

  test('a notebook of a newer version is left alone, and the page says so', async () => {
    const page = await site.open('#/notebook');
    await heading(page, 'Notebook').waitFor();
    expect(await ofTheFuture(page)).toBe(9_999);
    await page.reload();
    await page.getByText(/last kept by a newer version of the page/).waitFor();
    expect(await ofTheFuture(page)).toBe(9_999);
    await page.context().close();
  });

  test('taken over by a newer version while one writes: nothing is said to be saved, and the words stay', async () => {
    const page = await site.open('#/notebook/weld?write=form');
    const title = page.getByLabel('Title');
    await title.fill('Weld, once');
    await title.press('Tab');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('Saved.', { exact: true }).waitFor();
    expect(await ofTheFuture(page)).toBe(9_999);
    await title.fill('Weld, twice');
    await title.press('Tab');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText(/Not saved: the notebook was made by a newer version/).waitFor();
    expect(await title.inputValue()).toBe('Weld, twice');
    await page.context().close();
  });

  test('the focus returns from the mid-grey surround and from the list of keys', async () => {
    const page = await site.open('#/palette?look=madder-alum-wool%3B%23b2423d');
    const lay = page.getByRole('button', { name: 'Lay on mid-grey, alone' });
    await lay.press('Enter');
    await page.getByRole('dialog', { name: 'On mid-grey' }).waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => focused(page)).toBe('Lay on mid-grey, alone');
    const keys = page.getByRole('button', { name: 'Keys' });
    await keys.press('Enter');
    await page.getByRole('dialog', { name: 'Keys' }).waitFor();
    await page.getByRole('button', { name: 'Close' }).press('Enter');
    await expect.poll(() => focused(page)).toBe('Keys');
    await page.context().close();
  });
});

/** Views with controls of every sort. */
const VIEWS: readonly (readonly [hash: string, words: string | RegExp])[] = [
  ['#/ask?dye=madder&region=hanse-towns&when=1370&fibre=wool', 'Feasible'],
  ['#/palette?region=hanse-towns&when=1370', /colours hang here/],
  ['#/who-had-what?region=hanse-towns&year=1370', 'Kermes'],
  ['#/palette?look=madder-alum-wool%3B%23b2423d', 'This cloth and that cloth'],
  ['#/notebook', 'Read in a folder or a zip'],
  ['#/notebook?find=weld', 'In these words'],
  ['#/notebook?capture=1', 'Where it is from'],
  ['#/notebook/kermes?write=both', 'Other names'],
];

interface SeenControl {
  readonly name: string;
  /** Contrast of its words to what lies under them (WCAG 2.2), 1–21. */
  readonly contrast: number;
}

/** Every control that takes room in the page, through every shadow tree, with how well its words can be seen. */
const controls = (page: Page): Promise<readonly SeenControl[]> =>
  page.evaluate(() => {
    const found: SeenControl[] = [];
    const channels = (colour: string): readonly number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
    const light = (colour: string): number =>
      channels(colour)
        .slice(0, 3)
        .map((value) => value / 255)
        .map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4))
        .reduce((sum, value, at) => sum + value * ([0.2126, 0.7152, 0.0722][at] ?? 0), 0);
    const parentOf = (one: Element): Element | null =>
      one.assignedSlot ?? one.parentElement ?? (one.getRootNode() instanceof ShadowRoot ? (one.getRootNode() as ShadowRoot).host : null);
    const groundOf = (one: Element): string => {
      for (let at: Element | null = one; at; at = parentOf(at)) {
        const { backgroundColor } = getComputedStyle(at);
        if ((channels(backgroundColor)[3] ?? 1) > 0.5) return backgroundColor;
      }
      return getComputedStyle(document.documentElement).backgroundColor;
    };
    const look = (root: Document | ShadowRoot): void => {
      for (const one of root.querySelectorAll('*')) {
        if (one.shadowRoot) look(one.shadowRoot);
        if (!one.matches('a[href], button:enabled, input, select, textarea, summary')) continue;
        const { width, height } = one.getBoundingClientRect();
        if (width < 2 || height < 2 || !one.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
        const [a, b] = [light(getComputedStyle(one).color), light(groundOf(one))];
        const name = `${one.localName} ${one.textContent?.trim().slice(0, 40) ?? ''}`;
        found.push({ name, contrast: (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05) });
      }
    };
    look(document);
    return found;
  });

describe('forced colours and reduced motion', { timeout: 240_000 }, () => {
  test.each(['light', 'dark'] as const)(
    'every control stays, its words stand out from the ground, and nothing moves: %s',
    async (colorScheme) => {
      const page = await site.open();
      const gone: string[] = [];
      for (const [hash, words] of VIEWS) {
        await page.emulateMedia({ colorScheme, forcedColors: 'none', reducedMotion: 'no-preference' });
        await go(page, hash);
        await page.getByRole('main').getByText(words).first().waitFor();
        const before = await controls(page);
        await page.emulateMedia({ colorScheme, forcedColors: 'active', reducedMotion: 'reduce' });
        const after = await controls(page);
        expect(before.length, hash).toBeGreaterThan(5);
        expect(after.length, hash).toBeGreaterThanOrEqual(before.length);
        gone.push(...after.filter(({ contrast }) => contrast < 4.5).map(({ name, contrast }) => `${hash} ${name} ${contrast.toFixed(1)}`));
        expect(await moving(page), hash).toBe(0);
      }
      expect(gone).toEqual([]);
      await page.context().close();
    },
  );
});

describe('what all these pages did', () => {
  test('nothing was asked of another origin, and no console complained', () => {
    expect(site.strays).toEqual([]);
    // A busy machine draws with its fonts later than Chromium expects of a preloaded file; that is no fault of the page.
    expect(site.complaints.filter((one) => !one.includes('was preloaded using link preload'))).toEqual([]);
  });
});
