import { afterEach, describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import '../../../web/elements/read-in/tg-read-in.ts';
import type { ReadIn, ReadInRequestEvent } from '../../../web/elements/read-in/read-in-events.ts';
import { foundInFolder } from '../../../web/elements/read-in/found-in-folder.ts';
import { foundInUpload } from '../../../web/elements/read-in/found-in-upload.ts';
import type { ImportReport } from '../../../web/notebook/import/import-files.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';
import { makeZip } from '../../helpers/make-zip.ts';

afterEach(() => {
  document.body.replaceChildren();
  vi.unstubAllGlobals();
});

const REPORT: ImportReport = {
  from: 'notes.zip',
  planned: 3,
  added: ['a.md', 'b.md'],
  replaced: [],
  unchanged: [],
  skipped: [{ path: '<img src=x onerror=alert(1)>.md', reason: 'climbs' }],
  hiddenCount: 2,
  problems: [
    {
      file: 'a.md',
      id: 'a b',
      text: '---\nkind: recipie\n---\n',
      diagnostic: { code: 'kind-unknown', severity: 'error', range: [10, 17], about: ['recipie', 'kind', 'recipe'] },
    },
  ],
  missing: [],
};

async function anElement(): Promise<void> {
  const element = document.createElement('tg-read-in');
  document.body.append(element);
  await element.updateComplete;
}

/** Answers the next wish with this report, and gives back what was wished. */
const answering = (report: ImportReport) =>
  new Promise<ReadIn>((wished) => {
    document.body.addEventListener(
      'tg-read-in-request',
      (event: ReadInRequestEvent) => {
        event.respondWith(Promise.resolve(report));
        wished(event.detail);
      },
      { once: true },
    );
  });

const zipFile = (bytes: Uint8Array) => new File([bytes as Uint8Array<ArrayBuffer>], 'notes.zip', { type: 'application/zip' });

describe('tg-read-in', () => {
  test('opens a zip, asks for it to be read in, and reports', async () => {
    await anElement();
    const wish = answering(REPORT);
    await userEvent.upload(page.getByLabelText('A zip'), zipFile(makeZip([{ path: 'a.md', bytes: new Uint8Array([65]) }])));
    const { found, whereDifferent } = await wish;
    expect([found.from, found.files.map(({ path }) => path), whereDifferent]).toEqual(['notes.zip', ['a.md'], 'replace']);
    await expect.element(page.getByText('2 files of “notes.zip” are in the notebook.')).toBeVisible();
    await expect.element(page.getByText('2 hidden files were passed over.')).toBeVisible();
    // A hostile name is text.
    await expect.element(page.getByText('<img src=x onerror=alert(1)>.md')).toBeVisible();
    expect(document.querySelector('tg-read-in')?.shadowRoot?.querySelector('img')).toBeNull();
    const link = page.getByRole('link', { name: 'a.md, line 2' });
    await expect.element(link).toHaveAttribute('href', '#/notebook/a%20b?write=text&line=2&column=7');
    expect(await axeFaults(document.body)).toEqual([]);
  });

  test('keeps mine when asked to, by keyboard', async () => {
    await anElement();
    await userEvent.click(page.getByRole('radio', { name: /take the new one/ }));
    await userEvent.keyboard('{ArrowDown}');
    await expect.element(page.getByRole('radio', { name: 'keep mine', exact: true })).toBeChecked();
    const wish = answering(REPORT);
    await userEvent.upload(page.getByLabelText('A zip'), zipFile(makeZip([])));
    expect((await wish).whereDifferent).toBe('keep-mine');
  });

  test('says in words that a file is no zip, and asks for nothing', async () => {
    await anElement();
    let asked = 0;
    document.body.addEventListener('tg-read-in-request', () => (asked += 1), { once: true });
    await userEvent.upload(page.getByLabelText('A zip'), zipFile(new Uint8Array([1, 2, 3])));
    await expect.element(page.getByText('This file is no zip. Nothing was read.')).toBeVisible();
    expect(asked).toBe(0);
  });

  test('shows what is saved while it goes on, and can be stopped', async () => {
    await anElement();
    let wish: ReadIn | undefined;
    let end: (report: ImportReport) => void = () => undefined;
    document.body.addEventListener(
      'tg-read-in-request',
      (event: ReadInRequestEvent) => {
        wish = event.detail;
        event.respondWith(new Promise((resolve) => (end = resolve)));
      },
      { once: true },
    );
    await userEvent.upload(page.getByLabelText('A zip'), zipFile(makeZip([{ path: 'a.md', bytes: new Uint8Array([65]) }])));
    await expect.poll(() => wish).toBeDefined();
    wish?.onProgress({ planned: 5000, saved: 1200 });
    await expect.element(page.getByText('1,200 of 5,000 saved')).toBeVisible();
    expect(await axeFaults(document.body)).toEqual([]);
    expect(wish?.isStopped()).toBe(false);
    await userEvent.click(page.getByRole('button', { name: 'Stop' }));
    expect(wish?.isStopped()).toBe(true);
    end({ ...REPORT, endedBy: 'stopped', missing: ['z.md'] });
    await expect.element(page.getByText(/1 file is missing. Stopped, as you asked./)).toBeVisible();
    await expect.element(page.getByRole('heading', { name: 'Missing' })).toBeVisible();
  });

  test('without the browser’s folder picker a folder can be uploaded', async () => {
    vi.stubGlobal('showDirectoryPicker', undefined);
    await anElement();
    await expect.element(page.getByLabelText('A folder')).toBeVisible();
    await expect.element(page.getByRole('button', { name: 'Choose a folder' })).not.toBeInTheDocument();
  });

  test('with it, the chosen folder is walked; turned down, nothing happens', async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('chosen', { create: true });
    const picks = [() => Promise.reject(new DOMException('', 'AbortError')), () => Promise.resolve(folder)];
    vi.stubGlobal('showDirectoryPicker', () => picks.shift()?.());
    await anElement();
    const wish = answering(REPORT);
    await userEvent.click(page.getByRole('button', { name: 'Choose a folder' }));
    await userEvent.click(page.getByRole('button', { name: 'Choose a folder' }));
    expect((await wish).found).toMatchObject({ from: 'chosen', mayBeWrapped: false });
    await root.removeEntry('chosen', { recursive: true });
  });
});

describe('foundInFolder', () => {
  test('finds every file below with its path and bytes, and does not enter hidden folders', async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('found', { create: true });
    const write = async (path: string, text: string) => {
      const parts = path.split('/');
      const name = parts.pop() ?? '';
      let at = folder;
      for (const part of parts) at = await at.getDirectoryHandle(part, { create: true });
      const writable = await (await at.getFileHandle(name, { create: true })).createWritable();
      await writable.write(text);
      await writable.close();
    };
    await write('madder.md', 'red');
    await write('recipes/on wool/weld.md', 'yellow');
    await write('.git/objects/1', 'x');
    const { files, from } = await foundInFolder(folder);
    expect(from).toBe('found');
    expect(files.map(({ path }) => path).sort()).toEqual(['.git', 'madder.md', 'recipes/on wool/weld.md']);
    const madder = files.find(({ path }) => path === 'madder.md');
    expect(await madder?.read()).toEqual({ ok: true, value: new TextEncoder().encode('red') });
    expect(madder?.byteCount).toBe(3);
    await root.removeEntry('found', { recursive: true });
  });
});

describe('foundInUpload', () => {
  test('takes the folder’s name from its files, and leaves out what is too large unread', async () => {
    const file = new File(['red'], 'madder.md', { lastModified: 77 });
    Object.defineProperty(file, 'webkitRelativePath', { value: 'notes/dyes/madder.md' });
    const large = new File([], 'scan.tiff');
    Object.defineProperties(large, { webkitRelativePath: { value: 'notes/scan.tiff' }, size: { value: 65 * 1024 * 1024 } });
    const { from, files, mayBeWrapped } = foundInUpload([file, large]);
    expect([from, mayBeWrapped]).toEqual(['notes', true]);
    expect(files.map(({ path, modifiedAt, fault }) => [path, modifiedAt, fault]).slice(0, 1)).toEqual([
      ['notes/dyes/madder.md', 77, undefined],
    ]);
    expect(files[1]?.fault).toBe('too-large');
    expect(await files[0]?.read()).toEqual({ ok: true, value: new TextEncoder().encode('red') });
  });
});
