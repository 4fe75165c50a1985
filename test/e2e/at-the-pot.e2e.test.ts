import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import readQr from 'jsqr';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { BuiltSite, launchChromium } from '../helpers/built-site.ts';
import { KillableChromium } from '../helpers/killable-chromium.ts';
import { type PrintedPicture, printedPicture } from '../helpers/printed-picture.ts';
import { printedPages } from '../helpers/printed.ts';

const decode = (readQr as unknown as { readonly default?: typeof readQr }).default ?? readQr;
const PLAN = '#/dye-day?recipes=madder-alum-wool;weld-alum-wool&grams=250;100&on=;silk&skeins=2;1';

let folder: string;
let browser: Browser;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tenterground-pot-'));
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});

async function openSite(): Promise<BuiltSite> {
  const site = await new BuiltSite().open();
  onTestFinished(() => site.remove());
  return site;
}

/** Gives codes out and returns the ids of the pots. */
async function giveOut(page: Page): Promise<readonly string[]> {
  await page.getByRole('button', { name: 'Give codes out and print the tags' }).click();
  await page.getByRole('heading', { name: 'Tags' }).waitFor();
  await page
    .getByRole('img', { name: /^QR of/ })
    .first()
    .waitFor();
  const tags = new URLSearchParams(new URL(page.url()).hash.split('?')[1]).get('tags') ?? '';
  return tags.split(';');
}

const goTo = async (page: Page, hash: string): Promise<void> => {
  await page.evaluate((next) => {
    location.hash = next;
  }, hash);
};

/** Logs and waits until the page has said that it is saved. */
async function log(page: Page, lines: number, act: () => Promise<void>): Promise<void> {
  await act();
  await page.waitForFunction(
    (wanted) => {
      const find = (root: Document | ShadowRoot): number => {
        const list = root.querySelector('ol.log');
        if (list) return list.children.length;
        for (const one of root.querySelectorAll('*')) {
          const inside = one.shadowRoot ? find(one.shadowRoot) : -1;
          if (inside >= 0) return inside;
        }
        return -1;
      };
      return find(document) === wanted;
    },
    lines,
    { timeout: 30_000 },
  );
}

/** A window that holds one QR of a tag whole, and the step it is moved by, so that each QR lies whole in one of them; mm. */
const [WINDOW_MM, STEP_MM] = [37, 10];
const A4_WIDTH_MM = 210;
const DARK_SHARE = 0.08;

/** Every code on a printed A4 page, read by a window that is moved over the whole of it: where the tags lie is not told. */
function codesIn({ width, height, pixels }: PrintedPicture): readonly string[] {
  const found = new Set<string>();
  const [side, step] = [WINDOW_MM, STEP_MM].map((mm) => Math.floor((mm * width) / A4_WIDTH_MM)) as [number, number];
  for (let top = 0; top + side <= height; top += step)
    for (let left = 0; left + side <= width; left += step) {
      const part = new Uint8ClampedArray(side * side * 4);
      for (let row = 0; row < side; row += 1) {
        const from = ((top + row) * width + left) * 4;
        part.set(pixels.subarray(from, from + side * 4), row * side * 4);
      }
      // A code that lies whole in the window makes a good part of it dark: blank paper and words need no reader.
      if (part.filter((value) => value < 128).length < DARK_SHARE * side * side * 3) continue;
      const text = decode(part, side, side, { inversionAttempts: 'dontInvert' })?.data;
      if (text !== undefined && text !== '') found.add(text);
    }
  return [...found].sort();
}

describe('from the plan to the swatch', () => {
  test('tags are printed before dyeing, and an independent reader finds each code in the QR of the PDF', async () => {
    const site = await openSite();
    const context = await browser.newContext();
    onTestFinished(() => context.close());
    const page = await context.newPage();
    await page.goto(`${site.address}${PLAN}`);
    const [madder = '', weld = ''] = await giveOut(page);
    const pdf = new Uint8Array(await page.pdf({ preferCSSPageSize: true }));
    const printed = await printedPages(pdf);
    const codes = [...(printed[0]?.text ?? '').matchAll(/\b\d{2}-\d{3}-\d+-[0-9A-Z*]/g)].map(([code]) => code).sort();
    expect(codes).toHaveLength(3);
    expect(codes.filter((code) => code.startsWith(madder))).toHaveLength(2);
    expect(codes.filter((code) => code.startsWith(weld))).toHaveLength(1);
    expect(codesIn(await printedPicture(context, pdf, 3))).toEqual(codes);

    // With an address set, the QR leads there, and the address leads to the skein.
    await page.getByLabel(/^Address before the code/).fill(site.address);
    await page.getByLabel(/^Address before the code/).blur();
    await page.getByRole('img', { name: `QR of ${site.address}#/samples/${encodeURIComponent(codes[0] ?? '')}` }).waitFor();
    const addressed = codesIn(await printedPicture(context, new Uint8Array(await page.pdf({ preferCSSPageSize: true })), 3));
    expect(addressed).toEqual(codes.map((code) => `${site.address}#/samples/${encodeURIComponent(code)}`));
    for (const [nth, address] of addressed.entries()) {
      await page.goto(address);
      await page.getByRole('heading', { name: codes[nth] ?? '' }).waitFor();
    }
    await page.goto(addressed[codes.findIndex((code) => code.startsWith(madder))] ?? '');
    await page
      .getByRole('link', { name: /^Madder red on alumed wool, pot/ })
      .first()
      .waitFor();
  }, 180_000);

  test('two baths are logged with the network cut and the browser killed in between; nothing is lost, and the colour is in palette and ask', async () => {
    const site = await openSite();
    const profile = mkdtempSync(join(folder, 'profile-'));
    const first = await KillableChromium.start(profile);
    onTestFinished(() => first.kill());
    const page = await first.page();
    await page.goto(`${site.address}${PLAN}`);
    await page.getByRole('button', { name: 'Give codes out and print the tags' }).waitFor();
    await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
    const [madder = '', weld = ''] = await giveOut(page);
    // From here on nobody answers any more.
    await site.close();
    await goTo(page, `#/pot/${madder}`);
    await log(page, 1, () => page.getByRole('button', { name: 'In', exact: true }).click());
    await log(page, 2, async () => {
      await page.getByLabel('Temperature, °C').fill('68,5');
      await page.getByRole('button', { name: 'Note the heat' }).click();
    });
    await log(page, 3, async () => {
      await page.getByLabel('Timer, min').fill('60');
      await page.getByLabel('for', { exact: true }).fill('hold');
      await page.getByRole('button', { name: 'Start the timer' }).click();
    });
    await first.kill();

    const next = await KillableChromium.start(profile);
    onTestFinished(() => next.kill());
    const again = await next.page();
    await again.goto(`${site.address}#/pot/${madder}`);
    await again.getByText('68.5 °C').waitFor();
    // The timer goes on as if nothing had happened: it is part of the log.
    expect(await again.getByRole('timer').innerText()).toMatch(/\d+:\d\d\s*hold: 60 min from \d\d:\d\d/);
    await log(again, 4, () => again.getByRole('button', { name: 'Out', exact: true }).click());
    const photo = { name: 'pot.png', mimeType: 'image/png', buffer: readFileSync(new URL('../fixtures/one-pixel.png', import.meta.url)) };
    await log(again, 5, () => again.getByLabel('Photo').setInputFiles(photo));

    await goTo(again, `#/pot/${weld}`);
    await again.getByRole('heading', { name: new RegExp(`pot ${weld}$`) }).waitFor();
    await log(again, 1, () => again.getByRole('button', { name: 'In', exact: true }).click());
    await log(again, 2, async () => {
      await again.getByLabel(/^Deviation/).fill('rain water');
      await again.getByLabel(/^Deviation/).press('Enter');
    });
    const cloths = () =>
      again.evaluate(async () => {
        interface Asked {
          palette(asked: object): Promise<{ palette: { cloths: readonly { id: string; hex: string; samples: number }[] } }>;
        }
        const { engine } = document.querySelector('tg-app') as unknown as { engine: Asked };
        return (await engine.palette({ region: 'hanse-towns', when: '1370', all: true })).palette.cloths.filter(
          ({ id }) => id === 'weld-alum-wool|silk',
        );
      });
    expect(await cloths()).toEqual([]);
    await again.getByText('When it is dry: the colour of each skein').click();
    await log(again, 3, async () => {
      await again.getByLabel(new RegExp(`^${weld}-1-`)).fill('79.2 -3.1 61.7');
      await again.getByRole('button', { name: 'Note the colour' }).click();
    });
    expect(await cloths()).toMatchObject([{ id: 'weld-alum-wool|silk', samples: 1 }]);
    await goTo(again, '#/palette?region=hanse-towns&when=1370&fibre=silk&show=all');
    await again.getByText('Weld yellow on alumed wool').first().waitFor();
    await goTo(again, '#/ask?colour=79.2,-3.1,61.7&region=hanse-towns&when=1370&fibre=silk');
    await again
      .getByText(/Weld yellow on alumed wool/)
      .first()
      .waitFor();
    await goTo(again, `#/notebook/${weld}`);
    await again.getByText('deviation: rain water').waitFor();
  }, 120_000);

  test('a log goes from one profile to another as one file, merges by id, and both versions stay', async () => {
    const site = await openSite();
    const [here, there] = await Promise.all(
      [0, 1].map(async () => {
        const context = await browser.newContext();
        onTestFinished(() => context.close());
        return context.newPage();
      }),
    );
    if (!here || !there) throw new Error('no pages');
    await here.goto(`${site.address}${PLAN}`);
    const [madder = ''] = await giveOut(here);
    const handOn = async (page: Page, name: string) => {
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Hand this log on as one file' }).click(),
      ]);
      expect(download.suggestedFilename()).toBe(`${madder}.zip`);
      const file = join(folder, name);
      await download.saveAs(file);
      return file;
    };
    const bringIn = async (page: Page, file: string) => {
      await goTo(page, '#/pot');
      await page
        .getByLabel('A log’s file')
        .setInputFiles({ name: `${madder}.zip`, mimeType: 'application/zip', buffer: readFileSync(file) });
    };
    await goTo(here, `#/pot/${madder}`);
    const first = await handOn(here, 'a.zip');
    await there.goto(`${site.address}#/pot`);
    await bringIn(there, first);
    await there.getByText('The pot is new here').waitFor();

    for (const [page, what] of [
      [here, 'stirred here'],
      [there, 'stirred there'],
    ] as const) {
      await goTo(page, `#/pot/${madder}`);
      await log(page, 1, async () => {
        await page.getByLabel('Remark').fill(what);
        await page.getByLabel('Remark').press('Enter');
      });
    }
    await bringIn(here, await handOn(there, 'b.zip'));
    await here.getByText('Both logs are one now').waitFor();
    await goTo(here, `#/pot/${madder}`);
    await here.getByText('stirred there').waitFor();
    await here.getByText('stirred here').waitFor();
    await goTo(here, `#/notebook/${madder}?versions=all`);
    await here.getByRole('heading').first().waitFor();
    const texts = await here.evaluate(async (id) => {
      const history = new CustomEvent('tg-note-history-request', {
        bubbles: true,
        composed: true,
        detail: { path: `trials/${id}.md` },
      }) as unknown as {
        respondWith: (answer: Promise<{ versions: readonly { version: number }[] }>) => void;
      };
      let answer: Promise<{ versions: readonly { version: number }[] }> | undefined;
      history.respondWith = (given) => void (answer = given);
      document.querySelector('tg-app')?.dispatchEvent(history as unknown as Event);
      return (await answer)?.versions.length ?? 0;
    }, madder);
    // As it was given out, as it was logged here, as it was logged there: three versions behind the merged one.
    expect(texts).toBe(3);
    await bringIn(here, join(folder, 'b.zip'));
    await here.getByText('Everything in it was here already').waitFor();
  }, 90_000);

  test('the log is shared as the browser allows: zip, else plain text, else a download that says so', async () => {
    const site = await openSite();
    const context = await browser.newContext();
    onTestFinished(() => context.close());
    const page = await context.newPage();
    await page.addInitScript(() => {
      const state = globalThis as unknown as { allowed: readonly string[]; given: string[] };
      state.allowed = [];
      state.given = [];
      const typesOf = (data?: ShareData) => (data?.files ?? []).map(({ type }) => type);
      Object.assign(Navigator.prototype, {
        canShare: (data?: ShareData) => typesOf(data).every((type) => state.allowed.includes(type)),
        share: (data?: ShareData) => Promise.resolve(void state.given.push(...(data?.files ?? []).map(({ name }) => name))),
      });
    });
    await page.goto(`${site.address}${PLAN}`);
    const [madder = ''] = await giveOut(page);
    await goTo(page, `#/pot/${madder}`);
    const handOn = page.getByRole('button', { name: 'Hand this log on as one file' });
    const allow = (...types: readonly string[]) =>
      page.evaluate((allowed) => void Object.assign(globalThis, { allowed }), types as string[]);
    const given = () => page.evaluate(() => (globalThis as unknown as { given: string[] }).given);

    await allow('application/zip', 'text/plain');
    await handOn.click();
    await page.getByText(`Shared as ${madder}.zip.`).waitFor();
    await allow('text/plain');
    await handOn.click();
    await page.getByText(`Shared as ${madder}.txt.`).waitFor();
    expect(await given()).toEqual([`${madder}.zip`, `${madder}.txt`]);
    await allow();
    const [download] = await Promise.all([page.waitForEvent('download'), handOn.click()]);
    expect(download.suggestedFilename()).toBe(`${madder}.zip`);
    await page.getByText(`This browser does not share such a file: ${madder}.zip is among the downloads.`).waitFor();
    expect(await given()).toHaveLength(2);
  }, 60_000);
});
