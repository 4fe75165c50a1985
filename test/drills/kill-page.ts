import type { Page } from 'playwright-core';
import type { Asked, Held } from './kill-plan.ts';

/** What the page says while it is at work: so many transactions are saved, or what went wrong. */
export type Said = (saved: number, trouble: string) => void;

/** Wishes of elements, as the page answers them. */
interface Wishing {
  wish: (type: string, detail: object) => Promise<{ readonly is?: string; readonly missing?: readonly string[] }>;
}

/** Gives the page a way to be asked, which waits until somebody in it listens. */
const teachToAsk = (page: Page): Promise<void> =>
  page.evaluate(() => {
    (globalThis as unknown as Wishing).wish = async (type, detail) => {
      for (;;) {
        const wish = new CustomEvent(type, { detail }) as CustomEvent & { respondWith?: (answer: Promise<object>) => void };
        let answer: Promise<object> | undefined;
        wish.respondWith = (given) => {
          answer = given;
        };
        document.querySelector('tg-app')?.dispatchEvent(wish);
        if (answer) return answer;
        await new Promise((frame) => requestAnimationFrame(frame));
      }
    };
  });

/** Begins an empty notebook. */
export async function beginEmpty(page: Page): Promise<void> {
  await teachToAsk(page);
  await page.evaluate(() => (globalThis as unknown as Wishing).wish('tg-begin-request', { with: 'nothing' }));
}

/**
 * Asks the page for one thing after another, as its own forms do, and says each time what the page answered. It returns at
 * once: whoever asked waits for what is said.
 */
export async function askFor(page: Page, asked: readonly Asked[], said: Said): Promise<void> {
  await page.exposeFunction('said', said);
  await teachToAsk(page);
  await page.evaluate((wanted) => {
    const { said: tell, wish: wishFor } = globalThis as unknown as Wishing & { readonly said: Said };
    let saved = 0;
    const readIn = async (from: string, files: readonly (readonly [string, string])[]) => {
      const encoder = new TextEncoder();
      const found = files.map(([path, text]) => {
        const bytes = encoder.encode(text);
        return { path, byteCount: bytes.length, read: () => Promise.resolve({ ok: true, value: bytes }) };
      });
      const { missing = ['everything'] } = await wishFor('tg-read-in-request', {
        found: { from, mayBeWrapped: false, files: found },
        whereDifferent: 'replace',
        onProgress: () => tell((saved += 1), ''),
        isStopped: () => false,
      });
      if (missing.length > 0) tell(saved, `${missing.length} of ${from} are missing`);
    };
    void (async () => {
      for (const one of wanted) {
        if (one.is === 'read-in') await readIn(one.from, one.files);
        else {
          const { is } = await wishFor(`tg-note-${one.is}-request`, one);
          if (is === 'saved') tell((saved += 1), '');
          else tell(saved, `${one.path} was ${is}`);
        }
      }
    })();
  }, asked);
}

/** All that lies in the database, read past the program. */
export const heldIn = (page: Page): Promise<Held> =>
  page.evaluate(async () => {
    interface Stored {
      readonly path: string;
      readonly version: number;
      readonly place: { readonly block: number; readonly offset: number; readonly length: number };
    }
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.addEventListener('success', () => resolve(request.result));
        request.addEventListener('error', () => reject(request.error ?? new Error('no reason')));
      });
    const database = await done(indexedDB.open('tenterground'));
    const reading = database.transaction(['files', 'earlier', 'blocks', 'imports', 'batches']);
    const all = async (name: string) => (await done(reading.objectStore(name).getAll())) as unknown[];
    const keysOf = async (name: string) => (await done(reading.objectStore(name).getAllKeys())) as unknown[];
    const [files, earlier, imports] = [await all('files'), await all('earlier'), await all('imports')];
    const [batchKeys, batches] = [await keysOf('batches'), await all('batches')];
    const [blockKeys, blocks] = [await keysOf('blocks'), await all('blocks')];
    database.close();
    const byKey = new Map(blockKeys.map((key, at) => [key, blocks[at] as Uint8Array<ArrayBuffer>]));
    const hash = async ({ place: { block, offset, length } }: Stored) => {
      const bytes = byKey.get(block)?.subarray(offset, offset + length);
      if (bytes?.length !== length) return 'no block';
      const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
      return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
    };
    const held = { files: {} as Record<string, string>, earlier: {} as Record<string, string[]>, missing: {} as Record<string, string[]> };
    for (const file of files as Stored[]) held.files[file.path] = await hash(file);
    for (const one of (earlier as Stored[]).toSorted((a, b) => a.version - b.version))
      (held.earlier[one.path] ??= []).push(await hash(one));
    for (const { importId, from } of imports as { importId: string; from: string }[])
      held.missing[from] = batches.flatMap((paths, at) => ((batchKeys[at] as unknown[])[0] === importId ? (paths as string[]) : []));
    return held;
  });
