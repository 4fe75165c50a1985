import type { BrowserContext, Page } from 'playwright-core';

/** What a test can set in the browser's local storage. */
interface Sets {
  /** The permission is taken back. */
  readonly taken: 'yes';
  /** The name of a file that is listed, and then waits to be read until it is let go. */
  readonly held: string;
  /** Where writing a file stops for good: before it is put in place, or just after. */
  readonly stops: 'before' | 'after';
}

/** A picker that gives a folder of the browser's own file system, and a permission that a test can take back. */
const STUB = () => {
  const root = () => navigator.storage.getDirectory().then((own) => own.getDirectoryHandle('notes', { create: true }));
  const page = globalThis as unknown as Record<string, unknown>;
  page['showDirectoryPicker'] = root;
  const handle = FileSystemDirectoryHandle.prototype as unknown as Record<string, unknown>;
  const isTaken = () => localStorage.getItem('taken') === 'yes';
  handle['queryPermission'] = () => Promise.resolve(isTaken() ? 'prompt' : 'granted');
  handle['requestPermission'] = () => {
    localStorage.removeItem('taken');
    return Promise.resolve('granted');
  };
  const file = FileSystemFileHandle.prototype as unknown as { name: string; getFile: () => Promise<File> };
  const getFile = file.getFile;
  let asked = 0;
  file.getFile = async function (this: typeof file) {
    if (localStorage.getItem('held') === this.name) asked += 1;
    while (asked > 1 && localStorage.getItem('held') === this.name) await new Promise((resolve) => setTimeout(resolve, 50));
    return getFile.call(this);
  };
  const values = handle['values'] as () => unknown;
  handle['values'] = function (this: unknown) {
    if (isTaken()) throw new DOMException('taken back', 'NotAllowedError');
    return values.call(this);
  };
  // The page itself says when it has come to the place where it stops.
  const writing = FileSystemWritableFileStream.prototype as unknown as { close: () => Promise<void> };
  const close = writing.close;
  writing.close = async function (this: typeof writing) {
    const stops = localStorage.getItem('stops');
    if (stops !== 'before') await close.call(this);
    if (stops === null) return;
    document.title = `stopped ${stops} it was in place`;
    await new Promise(() => undefined);
  };
};

/** Has every page of a context pick a folder of the browser's own. */
export const pickOwnFolder = (context: BrowserContext): Promise<unknown> => context.addInitScript(STUB);

/** Sets what the folder does. */
export const setFolder = <Name extends keyof Sets>(page: Page, name: Name, value: Sets[Name] | undefined): Promise<void> =>
  page.evaluate(
    ([key, set]) => {
      if (set === undefined) localStorage.removeItem(key);
      else localStorage.setItem(key, set);
    },
    [name, value] as const,
  );

/** The text of a file in the folder; undefined where there is none. */
export const inFolder = (page: Page, path: string): Promise<string | undefined> =>
  page.evaluate(async (name) => {
    const notes = await (await navigator.storage.getDirectory()).getDirectoryHandle('notes', { create: true });
    return notes
      .getFileHandle(name)
      .then((file) => file.getFile())
      .then((file) => file.text())
      .catch(() => undefined);
  }, path);

/** Writes a file of the folder, as another program does. */
export const writeInFolder = (page: Page, path: string, text: string): Promise<void> =>
  page.evaluate(
    async ([name, content]) => {
      const notes = await (await navigator.storage.getDirectory()).getDirectoryHandle('notes', { create: true });
      const writing = await (await notes.getFileHandle(name, { create: true })).createWritable();
      await writing.write(content);
      await writing.close();
    },
    [path, text] as const,
  );

/** Links the folder by hand, and waits until both are alike. */
export async function linkFolder(page: Page, address: string): Promise<void> {
  await page.goto(`${address}#/notebook?share=1`);
  await page.getByRole('button', { name: 'Link a folder' }).click();
  await page.getByText('Linked with “notes”: what you save').waitFor();
}
