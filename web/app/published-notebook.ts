import { failed, ok, type Result } from '../domain/result.ts';
import type { FoundFile, FoundFiles, SkipReason } from '../notebook/import/found-files.ts';
import { type ListedFile, readFileList } from '../notebook/import/read-file-list.ts';
import type { ReviewFailure } from '../notebook/words/review-words.ts';

/** The list's name where an address names only a folder. */
const LIST = 'notebook.json';
/** As an import has it. */
const LARGEST_BYTES = 64 * 1024 * 1024;

/**
 * What a published notebook holds: a zip, a list of files, or a folder with such a list in it.
 *
 * @param address as it stands behind `?review=`, relative to the page.
 * @param page the page's own address: a notebook is fetched from the same origin and nowhere else.
 */
export async function publishedNotebook(address: string, page: string): Promise<Result<FoundFiles, ReviewFailure>> {
  const wanted = URL.canParse(address, page) ? new URL(address, page) : undefined;
  if (!wanted || wanted.origin !== new URL(page).origin) return failed('elsewhere');
  const at = wanted.pathname.endsWith('/') ? new URL(LIST, wanted) : wanted;
  const reply = await fetch(at, { cache: 'no-cache' }).catch(() => undefined);
  if (!reply) return failed('unreachable');
  if (!reply.ok) return failed(reply.status === 404 ? 'missing' : 'unreachable');
  if (at.pathname.toLowerCase().endsWith('.zip')) return unpacked(address, new Uint8Array(await reply.arrayBuffer()));
  const listed = readFileList(await reply.text());
  if (!listed) return failed('no-list');
  return ok({ from: address, mayBeWrapped: false, files: listed.map((file) => published(file, at)) });
}

async function unpacked(from: string, zip: Uint8Array): Promise<Result<FoundFiles, ReviewFailure>> {
  const { openZip } = await import('../notebook/import/open-zip.ts');
  const opened = openZip(from, zip);
  return opened.ok ? opened : failed('no-zip');
}

/** A file of the list; without its text it is fetched from beside the list once its path was found to be sound. */
const published = ({ path, text }: ListedFile, list: URL): FoundFile => {
  const bytes = text === undefined ? undefined : new TextEncoder().encode(text);
  return {
    path,
    byteCount: bytes?.length ?? 0,
    read: () => (bytes ? Promise.resolve(ok(bytes)) : fetched(new URL(path.split('/').map(encodeURIComponent).join('/'), list))),
  };
};

async function fetched(address: URL): Promise<Result<Uint8Array, SkipReason>> {
  const reply = await fetch(address, { cache: 'no-cache' }).catch(() => undefined);
  if (!reply?.ok) return failed('unreadable');
  if (Number(reply.headers.get('Content-Length') ?? 0) > LARGEST_BYTES) return failed('too-large');
  const bytes = await reply.arrayBuffer().catch(() => undefined);
  if (!bytes) return failed('unreadable');
  return bytes.byteLength > LARGEST_BYTES ? failed('too-large') : ok(new Uint8Array(bytes));
}
