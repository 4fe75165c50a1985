import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { readRemarks } from '../../web/notebook/remarks.ts';
import { faultsInBothLooks } from '../helpers/both-looks.ts';
import { makeZip } from '../helpers/make-zip.ts';
import { siteAndBrowser } from '../helpers/site-and-browser.ts';

const open = siteAndBrowser();
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tenterground-review-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const WELD = '---\nkind: dyestuff\ntitle: Weld\nmatter: plant\n---\nYellow.\n';
const ZIP = makeZip([{ path: 'n/weld.md', bytes: new TextEncoder().encode(WELD) }]);

async function freshPage(bypassCSP = false): Promise<Page> {
  const context = await open.browser.newContext({ bypassCSP });
  onTestFinished(() => context.close());
  context.setDefaultTimeout(30_000);
  return context.newPage();
}

async function readIn(page: Page): Promise<void> {
  await page.getByLabel('A zip').setInputFiles({ name: 'notes.zip', mimeType: 'application/zip', buffer: Buffer.from(ZIP) });
  await page.getByRole('region', { name: 'Report' }).waitFor();
}

describe('a published notebook', () => {
  test(
    'is opened by its address: a folder with a list, a list with the texts, a zip; remarks stay with it',
    { timeout: 60_000 },
    async () => {
      for (const [path, text] of [
        ['notes/dyestuffs/weld.md', WELD],
        ['notes/a shelf/madder #1.md', WELD.replaceAll('Weld', 'Madder')],
      ] as const)
        open.site.put(path, text);
      const files = [{ path: 'dyestuffs/weld.md' }, { path: 'a shelf/madder #1.md' }, { path: '../index.html' }, { path: 'gone.md' }];
      open.site.put('notes/notebook.json', JSON.stringify({ files }));
      open.site.put('whole.json', JSON.stringify({ files: [{ path: 'weld.md', text: WELD }] }));
      open.site.put('notes.zip', ZIP);

      const page = await freshPage();
      const origins = new Set<string>();
      page.on('request', (request) => void origins.add(new URL(request.url()).origin));
      await page.goto(`${open.site.address}?review=notes/#/notebook/weld`);
      await page.getByText('A notebook to be reviewed: ').waitFor();
      await page.getByRole('heading', { level: 1, name: 'Weld' }).waitFor();
      // A path that climbs is never asked for.
      await page.getByText('could not be read: ../index.html').waitFor();
      expect(await page.getByRole('link', { name: 'A new note' }).count()).toBe(0);
      await page.getByText('Make a remark').click();
      await page.getByLabel('Remark', { exact: true }).fill('Which edition?');
      await page.getByLabel('Your name').fill('A reviewer');
      await page.getByRole('button', { name: 'Keep the remark' }).click();
      await page.getByText('Which edition?').waitFor();

      // The notebook is fetched anew, with what changed since, and the remark is still there.
      open.site.put('notes/dyestuffs/weld.md', WELD.replace('Yellow.', 'Yellow, and fast.'));
      await page.reload();
      await page.getByText('Yellow, and fast.').waitFor();
      await page.getByText('Which edition?').waitFor();

      for (const address of ['whole.json', 'notes.zip']) {
        await page.goto(`${open.site.address}?review=${address}#/notebook/weld`);
        await page.getByText('A notebook to be reviewed: 1 note').waitFor();
        await page.getByRole('heading', { level: 1, name: 'Weld' }).waitFor();
        expect(await page.getByText('Which edition?').count()).toBe(0);
      }
      await page.goto(open.site.address);
      await page.getByText('Wadholm Quay, the demonstration notebook').waitFor();
      expect([...origins]).toEqual([new URL(open.site.address).origin]);
    },
  );

  test('that lies elsewhere is not asked for, and what is no list says what one looks like', async () => {
    open.site.put('no-list.json', '{"notes": []}');
    const page = await freshPage();
    await page.goto(`${open.site.address}?review=https://example.org/notes/`);
    await page.getByText('lies on another site').waitFor();
    await page.goto(`${open.site.address}?review=no-list.json`);
    await page.getByText('is no list of a notebook’s files').waitFor();
    // A zip can still be read in.
    await page.goto(`${open.site.address}?review=no-list.json#/notebook`);
    await readIn(page);
    await page.getByText('A notebook to be reviewed: 1 note').waitFor();
  });
});

describe('a review', () => {
  test('goes there as a zip and comes back as one file, and nothing else is changed', async () => {
    const reviewer = await freshPage();
    await reviewer.goto(`${open.site.address}?review#/notebook`);
    await readIn(reviewer);
    await reviewer.getByText('A notebook to be reviewed: 1 note').waitFor();
    expect(await reviewer.getByRole('link', { name: 'A new note' }).count()).toBe(0);

    // An address for writing only leads to reading.
    await reviewer.goto(`${open.site.address}?review#/notebook/weld?write=form`);
    await reviewer.getByRole('heading', { level: 1, name: 'Weld' }).waitFor();
    expect(await reviewer.getByRole('button', { name: 'Save' }).count()).toBe(0);
    await reviewer.getByText('Make a remark').click();
    await reviewer.getByLabel('Remark', { exact: true }).fill('Which edition? <b>');
    await reviewer.getByLabel('Your name').fill('A reviewer');
    await reviewer.getByLabel('Line, if one').fill('3');
    await reviewer.getByRole('button', { name: 'Keep the remark' }).click();
    await reviewer.getByText('Which edition? <b>').waitFor();

    // Opening the notebook again loses nothing.
    await reviewer.goto(`${open.site.address}?review#/notebook`);
    await readIn(reviewer);
    const [download] = await Promise.all([
      reviewer.waitForEvent('download'),
      reviewer.getByRole('button', { name: 'Export this file' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('remarks.json');
    const file = join(folder, 'remarks.json');
    await download.saveAs(file);
    const read = readRemarks(readFileSync(file));
    expect(read.ok && read.value.remarks).toMatchObject([{ note: 'weld', line: 3, text: 'Which edition? <b>', by: 'A reviewer' }]);
    // The reviewer's own notebook is as it was.
    await reviewer.goto(open.site.address);
    await reviewer.getByText('Wadholm Quay, the demonstration notebook').waitFor();

    const author = await freshPage();
    await author.goto(`${open.site.address}#/notebook`);
    await readIn(author);
    await author.goto(`${open.site.address}#/notebook?share=1`);
    await author.getByLabel('A file of remarks').setInputFiles(file);
    await author.getByText('1 remark came in.').waitFor();
    await author.getByLabel('A file of remarks').setInputFiles(file);
    await author.getByText('Nothing new in it; 1 remark was here already.').waitFor();
    await author.goto(`${open.site.address}#/notebook/weld`);
    await author.getByText('Which edition? <b>').waitFor();
    const remark = author.getByRole('listitem').filter({ hasText: 'Which edition?' });
    expect(await remark.innerText()).toMatch(/A reviewer, .*, line 3/);
    await remark.getByRole('button', { name: 'Done with it' }).click();
    await expect.poll(() => remark.innerText()).toMatch(/line 3 · done/);
  });

  test('its pages are clean to axe on a desk and a phone: a note with a remark, the ways in and out of remarks', async () => {
    const page = await freshPage(true);
    await page.goto(`${open.site.address}?review#/notebook`);
    await readIn(page);
    expect(await faultsInBothLooks(page)).toEqual([]);
    await page.goto(`${open.site.address}?review#/notebook/weld`);
    await page.getByText('Make a remark').click();
    await page.getByLabel('Remark', { exact: true }).fill('Which edition?');
    await page.getByLabel('Your name').fill('A reviewer');
    await page.getByRole('button', { name: 'Keep the remark' }).click();
    await page.getByText('Which edition?').waitFor();
    expect(await faultsInBothLooks(page)).toEqual([]);
    await page.goto(`${open.site.address}#/notebook?share=1`);
    await page.getByLabel('A file of remarks').waitFor();
    expect(await faultsInBothLooks(page)).toEqual([]);
  });

  test('a file that is none of remarks is refused', async () => {
    const page = await freshPage();
    await page.goto(`${open.site.address}#/notebook?share=1`);
    await page
      .getByLabel('A file of remarks')
      .setInputFiles({ name: 'other.json', mimeType: 'application/json', buffer: Buffer.from('{"a":1}') });
    await page.getByText('This is no file of remarks. Nothing was changed.').waitFor();
  });
});
