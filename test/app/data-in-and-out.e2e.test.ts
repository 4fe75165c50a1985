import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityFaults, type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

const at = '#/notebook/data';

/** A page with an empty notebook of its own: what is read in there is all there is. */
async function anEmptyNotebook(): Promise<Page> {
  const page = await site.open('#/notebook');
  await page.getByRole('button', { name: 'An empty notebook' }).click();
  await page.getByText(/Your notebook in this browser: 0 notes/).waitFor();
  await page.goto(`${site.origin}/${at}`);
  return page;
}

const choose = (page: Page, name: string, text: string | Buffer) =>
  page.getByLabel(/Choose a file/).setInputFiles({ name, mimeType: '', buffer: Buffer.from(text) });

async function write(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^Write/ }).click();
  await page.getByText(/notes? of “.*” (?:is|are) in the notebook/).waitFor();
}

async function taken(page: Page, name: RegExp): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name }).click()]);
  return readFileSync(await download.path(), 'utf8');
}

/** The text of a note as it stands now. */
async function noteText(page: Page, id: string): Promise<string> {
  await page.goto(`${site.origin}/#/notebook/${id}`);
  await page.locator('tg-note h1').waitFor();
  return page.locator('tg-note article').innerText();
}

/** @source the PeriodO data model; the period itself is invented. */
const PERIODS = JSON.stringify({
  '@context': 'http://n2t.net/ark:/99152/p0c',
  authorities: {
    p0test: {
      id: 'p0test',
      source: { title: 'Ages of a quay', yearPublished: '1999', creators: [{ name: 'A. Writer' }] },
      periods: {
        p0testa: {
          id: 'p0testa',
          label: 'Early quay',
          spatialCoverageDescription: 'Hanse towns',
          start: { label: '880', in: { year: '0880' } },
          stop: { label: '960', in: { year: '0960' } },
        },
        p0testb: { id: 'p0testb', label: 'Undated quay', start: { label: 'long ago' }, stop: { label: 'later' } },
      },
    },
  },
});

/** @source RFC 7946 and the Linked Places format; the places are invented. */
const PLACES = JSON.stringify({
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      '@id': 'https://example.org/places/1',
      properties: { title: 'Ferry Steps' },
      names: [{ toponym: 'Färgetrappan', lang: 'sv' }],
      geometry: { type: 'Point', coordinates: [10.7, 53.9] },
      relations: [{ relationType: 'gvp:broaderPartitive', label: 'Hanse towns' }],
    },
    { type: 'Feature', properties: {}, geometry: null },
  ],
});

describe('data in', () => {
  test('periods: seen first, written, then a date that can be asked for', async () => {
    const page = await site.open(at);
    await choose(page, 'periods.json', PERIODS);
    await page.getByText('2 notes would be new.').waitFor();
    expect(await page.getByLabel('read as').inputValue()).toBe('periods');
    await page.getByText(/has no date in years/).waitFor();
    await write(page);
    expect(await noteText(page, 'early-quay')).toMatch(/Ages of a quay/);
    await page.goto(`${site.origin}/#/ask?dye=madder&region=hanse-towns&when=Early%20quay`);
    await page.getByText(/880/).first().waitFor();
    // The demonstration stays beside what came in.
    await page.goto(`${site.origin}/#/dyestuffs/madder`);
    await page.getByRole('heading', { name: 'Madder', level: 1 }).waitFor();
  });

  test('places: with their names and parents, and a row without a name passed over', async () => {
    const page = await site.open(at);
    await choose(page, 'places.geojson', PLACES);
    await page.getByText('1 note would be new.').waitFor();
    await page.getByText('1 row is passed over, with the reason.').waitFor();
    await write(page);
    const text = await noteText(page, 'ferry-steps');
    expect(text).toContain('Färgetrappan');
    expect(text).toContain('Hanse towns');
  });

  test('textiles: a column matched by hand, the find on the dyestuff’s page and in its verdict, then taken back', async () => {
    const page = await site.open(at);
    await choose(
      page,
      'finds.csv',
      'Object;Where dug;Dating;Identification;Reference\nQuay band;Hanse towns;c. 1340;madder;cardon-2007, p. 1\n',
    );
    await page.getByText(/column “Where dug” was not understood/).waitFor();
    await page.getByLabel('region', { exact: true }).selectOption('Where dug');
    await page.getByText('not understood').waitFor({ state: 'detached' });
    await write(page);
    await page.goto(`${site.origin}/#/dyestuffs/madder`);
    await page.getByRole('link', { name: 'Quay band' }).first().waitFor();
    await page.goto(`${site.origin}/#/ask?dye=madder&region=hanse-towns&when=1340`);
    await page
      .getByText(/quay-band/)
      .first()
      .waitFor();
    await page.goto(`${site.origin}/${at}`);
    await choose(page, 'finds.csv', 'Object;Place;Dating\nQuay band;Hanse towns;c. 1340\n');
    await page.getByText(/would get a number/).waitFor();
    await write(page);
    await page.getByRole('button', { name: 'Take them back' }).click();
    await page.getByText(/1 note is taken back/).waitFor();
    await page.goto(`${site.origin}/#/notebook/quay-band-2`);
    await page.getByText(/No note of this notebook/).waitFor();
  });

  test('trials: a heading matched by hand, a row’s fault named, notes made, and the trial among the trials', async () => {
    const page = await site.open(at);
    await choose(
      page,
      'trials.csv',
      'Pot;Recipe;Dyed;Dye;Fibre;Weight;Remembered as\n1;madder-alum-wool;2026-03-04;madder;wool;50 g;Quay trial red\n2;madder-alum-wool;2026-03-05;madder;wool;50;Quay trial orange\n',
    );
    await page.getByText(/column “Remembered as” was not understood/).waitFor();
    await page.getByLabel('title', { exact: true }).selectOption('Remembered as');
    await page.getByText(/column “Remembered as” was not understood/).waitFor({ state: 'detached' });
    await page.getByText('2 notes would be new.').waitFor();
    // The fault stands with the row that has it, and with no other.
    const faulty = page.locator('.rows > li', { hasText: '50 has no unit' });
    await faulty.first().waitFor();
    expect(await faulty.count()).toBe(1);
    expect(await faulty.innerText()).toContain('Quay trial orange');
    await write(page);
    await page.goto(`${site.origin}/#/trials?of=madder-alum-wool`);
    await page.getByText('Quay trial red').first().waitFor();
    await page.getByText('Quay trial orange').first().waitFor();
  });

  test('a file dropped on the page is read like a chosen one', async () => {
    const page = await site.open(at);
    await page.getByLabel(/Choose a file/).waitFor();
    await page.evaluate((text) => {
      const find = (root: Document | ShadowRoot): Element | undefined => {
        for (const one of root.querySelectorAll('*')) {
          if (one.matches('.drop')) return one;
          const inside = one.shadowRoot && find(one.shadowRoot);
          if (inside) return inside;
        }
        return undefined;
      };
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([text], 'dropped.geojson'));
      find(document)?.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    }, PLACES);
    await page.getByText('dropped.geojson').waitFor();
    await page.getByText('1 note would be new.').waitFor();
  });

  test('the same file twice brings nothing the second time', async () => {
    const page = await site.open(at);
    await choose(page, 'places.geojson', PLACES);
    await write(page);
    await choose(page, 'again.geojson', PLACES);
    await page.getByText('Nothing new would come in.').waitFor();
    await page.getByText(/in the notebook already, word for word/).waitFor();
    expect(await page.getByRole('button', { name: /^Write/ }).count()).toBe(0);
  });

  test.each([
    ['broken.json', '{"periods":', /no JSON file/],
    ['other.json', '{"a":1}', /could not be told/],
    ['latin.csv', Buffer.from([0x74, 0xe9, 0x2c, 0x62, 0x0a]), /not written in UTF-8/],
    ['book.xlsx', Buffer.from([0x50, 0x4b, 3, 4]), /spreadsheet’s own file/],
    ['headless.csv', 'place,date\nYork,900\n', /Choose one/],
    ['empty.csv', '', /empty/],
  ])('%s says what is wrong, and nothing is written', async (name, text, says) => {
    const page = await site.open(at);
    await choose(page, name, text);
    await page.getByText(says).first().waitFor();
    expect(await page.getByRole('button', { name: /^Write/ }).count()).toBe(0);
    await page.getByText(/the demonstration notebook/).waitFor();
  });
});

describe('data out', () => {
  test('the demonstration as JSON-LD, read into an empty notebook, goes out again byte for byte', async () => {
    const first = await site.open(at);
    const whole = await taken(first, /whole notebook, JSON-LD/);
    const second = await anEmptyNotebook();
    await choose(second, 'notebook.jsonld', whole);
    await second.getByText(/notes would be new/).waitFor();
    await write(second);
    expect(await taken(second, /whole notebook, JSON-LD/)).toBe(whole);
  }, 90_000);

  test('textiles and places go out and come back as they were', async () => {
    const page = await site.open(at);
    const [textiles, places] = [await taken(page, /textiles, CSV/), await taken(page, /places, GeoJSON/)];
    const second = await anEmptyNotebook();
    await choose(second, 'places.geojson', places);
    await write(second);
    await choose(second, 'textiles.csv', textiles);
    await write(second);
    expect(JSON.parse(await taken(second, /places, GeoJSON/))).toMatchObject({ type: 'FeatureCollection' });
    expect(Papa.parse(await taken(second, /textiles, CSV/)).data).toHaveLength(Papa.parse(textiles).data.length);
  }, 90_000);

  test('claims are a table, textiles on a map GeoJSON', async () => {
    const page = await site.open(at);
    const { data, errors } = Papa.parse<Record<string, string>>(await taken(page, /claims, CSV/), { header: true, skipEmptyLines: true });
    expect(errors).toEqual([]);
    expect(data.find(({ material, status }) => material === 'madder' && status === 'grown')).toBeDefined();
    const { features } = JSON.parse(await taken(page, /textiles on a map/)) as { readonly features: readonly { readonly type: string }[] };
    expect(features.length).toBeGreaterThan(10);
    expect(features.every(({ type }) => type === 'Feature')).toBe(true);
  });
});

test('the page is reached from the notebook, and has no accessibility faults, empty and with a file', async () => {
  for (const opening of [{ width: 390 }, { dark: true }]) {
    const page = await site.open('#/notebook', { ...opening, bypassPolicy: true });
    await page.getByRole('link', { name: /Data in and out/ }).click();
    await page.getByRole('heading', { name: 'Data in and out' }).waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await choose(page, 'finds.csv', 'Object,Place,Dating,Odd\nBand,Atlantis,yore,x\n');
    await page.getByText('1 note would be new.').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= globalThis.innerWidth)).toBe(true);
  }
});
