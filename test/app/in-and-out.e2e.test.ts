import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { openZip } from '../../web/notebook/import/open-zip.ts';
import { makeZip } from '../helpers/make-zip.ts';
import { siteAndBrowser } from '../helpers/site-and-browser.ts';

const open = siteAndBrowser();
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tenterground-in-out-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A page in a profile of its own, with everything its console complains about. */
async function freshProfile(): Promise<{ page: Page; complaints: string[] }> {
  const context = await open.browser.newContext();
  onTestFinished(() => context.close());
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => void (message.type() === 'error' && complaints.push(message.text())));
  page.on('pageerror', (error) => void complaints.push(error.message));
  page.on('dialog', (dialog) => {
    complaints.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  await page.goto(`${open.site.address}#/notebook?read-in=1`);
  await page.getByLabel('A zip').waitFor();
  return { page, complaints };
}

async function readIn(page: Page, zip: Uint8Array): Promise<string> {
  await page.getByLabel('A zip').setInputFiles({ name: 'notes.zip', mimeType: 'application/zip', buffer: Buffer.from(zip) });
  const report = page.getByRole('region', { name: 'Report' });
  await report.waitFor();
  return report.innerText();
}

async function exported(page: Page): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: /Export the whole/ }).click()]);
  const file = join(folder, `${Date.now()}-${download.suggestedFilename()}`);
  await download.saveAs(file);
  return readFileSync(file);
}

const text = (words: string): Uint8Array => new TextEncoder().encode(words);

/** Files whose every byte matters: line ends, a byte order mark, no UTF-8, unfinished front matter, no bytes at all. */
const AWKWARD = [
  { path: 'n/crlf.md', bytes: text('---\r\nkind: text\r\ntitle: A\r\n---\r\nWords  \r\n') },
  { path: 'n/bom.md', bytes: text('\uFEFF---\nkind: text\ntitle: B\n---\n') },
  { path: 'n/latin.md', bytes: Uint8Array.from([0x4b, 0x72, 0x61, 0x70, 0x70, 0xe9]) },
  { path: 'n/broken.md', bytes: text('---\nkind: [text\n') },
  { path: 'n/empty.md', bytes: new Uint8Array() },
  { path: 'n/photos/Färber 紅.jpg', bytes: Uint8Array.from({ length: 5000 }, (_, at) => (at * 31) % 256) },
  { path: 'n/spectra/a.csv', bytes: text('380,0.1\n') },
];

describe('in and out', () => {
  test('what is exported and read in again in a fresh profile is the same to the byte', async () => {
    const first = await freshProfile();
    expect(await readIn(first.page, makeZip(AWKWARD))).toContain('7 files of “notes.zip” are in the notebook.');
    const zip = await exported(first.page);
    const opened = openZip('x', zip);
    if (!opened.ok) throw new Error(opened.error);
    const contents = new Map(await Promise.all(opened.value.files.map(async (file) => [file.path, await file.read()] as const)));
    expect(contents.size).toBe(AWKWARD.length);
    for (const { path, bytes } of AWKWARD) expect(contents.get(path.replace(/^n\//, 'notebook/'))).toEqual({ ok: true, value: bytes });

    const second = await freshProfile();
    await readIn(second.page, zip);
    expect(Buffer.compare(await exported(second.page), zip)).toBe(0);
    expect([...first.complaints, ...second.complaints]).toEqual([]);
  });

  test('the demonstration, only shown, can be exported whole', async () => {
    const { page } = await freshProfile();
    const opened = openZip('x', await exported(page));
    const demo = JSON.parse(readFileSync(new URL('../../dist/site/demo.json', import.meta.url), 'utf8')) as {
      readonly files: readonly { readonly path: string; readonly text: string }[];
    };
    expect(opened.ok && opened.value.files.map(({ path }) => path)).toEqual(demo.files.map(({ path }) => `notebook/${path}`).sort());
  });

  test('hostile names, notes and entries run nothing, write nothing, and are named with their reasons', async () => {
    const { page, complaints } = await freshProfile();
    const script = '<img src=x onerror="alert(1)"><script>alert(2)</script>';
    const report = await readIn(
      page,
      makeZip([
        { path: '../../climbs.md', bytes: text('x') },
        { path: '/absolute.md', bytes: text('x') },
        { path: 'C:/drive.md', bytes: text('x') },
        { path: 'back\\slash.md', bytes: text('x') },
        { path: 'link.md', bytes: text('/etc/passwd'), options: { os: 3, attrs: 0o120777 << 16 } },
        { path: 'bomb.md', bytes: new Uint8Array(8 * 1024 * 1024) },
        {
          path: `${script}.md`.replaceAll('/', '∕'),
          bytes: text(`---\nkind: text\ntitle: '${script}'\nregion: '${script}'\n---\n${script}\n[x](javascript:alert(3))\n`),
        },
        { path: 'good.md', bytes: text('---\nkind: text\ntitle: Good\n---\n') },
      ]),
    );
    expect(report).toContain('2 files of “notes.zip” are in the notebook.');
    for (const line of [
      '../../climbs.md: its name leads out of the folder',
      '/absolute.md: its name begins at the root of a disk',
      'C:/drive.md: its name names a drive',
      'back\\slash.md: its name has a backslash in it',
      'link.md: it is only a link to another file',
      'bomb.md: it unpacks to far more than any note or photo does',
    ])
      expect(report).toContain(line);
    // The hostile note is open now: every view that could show it is looked at.
    for (const view of ['ask', 'dyestuffs', 'palette', 'who-had-what', 'notebook']) {
      await page.goto(`${open.site.address}#/${view}`);
      await page.getByRole('heading', { level: 1 }).first().waitFor();
    }
    const opened = openZip('x', await takeFromNotebook(page));
    expect(opened.ok && opened.value.files.map(({ path }) => path.split('/')[0])).toEqual(['notebook', 'notebook']);
    expect(complaints).toEqual([]);
  });

  test('ten thousand entries and one are refused with the number, and the page goes on', async () => {
    const { page } = await freshProfile();
    const entries = Array.from({ length: 10_001 }, (_, at) => ({
      path: `${at}.md`,
      bytes: new Uint8Array(),
      options: { level: 0 } as const,
    }));
    // By way of a file, as a large upload comes.
    const file = join(folder, 'many.zip');
    writeFileSync(file, makeZip(entries));
    await page.getByLabel('A zip').setInputFiles(file);
    await page.getByText('This zip holds 10,001 files').waitFor();
    expect(await readIn(page, makeZip([{ path: 'a.md', bytes: text('a') }]))).toContain('1 file of “notes.zip” is in the notebook.');
  });

  test('what one tab reads in, another open tab has at once', async () => {
    const { page } = await freshProfile();
    const other = await page.context().newPage();
    await other.goto(open.site.address);
    await other.getByText('Wadholm Quay, the demonstration notebook').waitFor();
    await readIn(page, makeZip([{ path: 'a.md', bytes: text('a') }]));
    await other.getByText('Your notebook in this browser: 1 note.').waitFor();
  });
});

const takeFromNotebook = async (page: Page): Promise<Buffer> => {
  await page.goto(`${open.site.address}#/notebook?read-in=1`);
  return exported(page);
};
