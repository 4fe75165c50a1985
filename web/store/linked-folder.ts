import type { FolderFailure, FolderFile, FolderPort, FolderStamp } from '../domain/folder-port.ts';
import { failed, ok, type Result } from '../domain/result.ts';

/** Permission on a handle, which the types of this compiler do not know yet. Handles that need none have no such methods. */
interface Permitting {
  queryPermission?(wanted: { readonly mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission?(wanted: { readonly mode: 'readwrite' }): Promise<PermissionState>;
}

const MODE = { mode: 'readwrite' } as const;

/**
 * A folder of the reader's machine, through the handle the browser gave for it.
 *
 * @param isHidden which files and folders are passed over; a hidden folder is not entered.
 */
export function linkedFolder(handle: FileSystemDirectoryHandle, isHidden: (path: string) => boolean): FolderPort {
  const permitting = handle as FileSystemDirectoryHandle & Permitting;
  return {
    name: handle.name,
    access: async () => {
      const state = await permitting.queryPermission?.(MODE).catch(() => 'denied' as const);
      return state === 'prompt' ? 'ask' : (state ?? 'granted');
    },
    askAccess: async () => {
      const state = await permitting.requestPermission?.(MODE).catch(() => 'denied' as const);
      return (state ?? 'granted') === 'granted';
    },
    list: () =>
      attempt(async () => {
        const stamps: FolderStamp[] = [];
        await walk(handle, '', isHidden, stamps);
        return stamps.toSorted((a, b) => (a.path < b.path ? -1 : 1));
      }),
    read: (path) => read(handle, path),
    write: (path, bytes) => attempt(() => write(handle, path, bytes)),
    remove: async (path) => {
      const removed = await attempt(async () => (await folderOf(handle, path, false)).removeEntry(nameOf(path)));
      return !removed.ok && removed.error === 'gone' && (await isThere(handle)) ? ok(undefined) : removed;
    },
  };
}

async function walk(
  folder: FileSystemDirectoryHandle,
  above: string,
  isHidden: (path: string) => boolean,
  stamps: FolderStamp[],
): Promise<void> {
  for await (const entry of entriesOf(folder)) {
    const path = above + entry.name;
    if (isHidden(path)) continue;
    if (entry instanceof FileSystemDirectoryHandle) await walk(entry, `${path}/`, isHidden, stamps);
    else if (entry instanceof FileSystemFileHandle) {
      // A file may go between being named and being looked at.
      const file = await entry.getFile().catch((error: unknown) => {
        if (failureOf(error) === 'gone') return undefined;
        throw error;
      });
      if (file) stamps.push(stampOf(path, file));
    }
  }
}

async function read(handle: FileSystemDirectoryHandle, path: string): Promise<Result<FolderFile, FolderFailure | 'missing'>> {
  const found = await attempt(async () => {
    const file = await (await (await folderOf(handle, path, false)).getFileHandle(nameOf(path))).getFile();
    return { ...stampOf(path, file), bytes: new Uint8Array(await file.arrayBuffer()) };
  });
  return !found.ok && found.error === 'gone' && (await isThere(handle)) ? failed('missing') : found;
}

async function write(handle: FileSystemDirectoryHandle, path: string, bytes: Uint8Array): Promise<FolderStamp> {
  const file = await (await folderOf(handle, path, true)).getFileHandle(nameOf(path), { create: true });
  // The browser writes beside the file and puts it in place on closing, so a half-written one is never seen.
  const writing = await file.createWritable();
  try {
    await writing.write(bytes as Uint8Array<ArrayBuffer>);
    await writing.close();
  } catch (error) {
    await writing.abort().catch(() => undefined);
    throw error;
  }
  return stampOf(path, await file.getFile());
}

async function folderOf(handle: FileSystemDirectoryHandle, path: string, create: boolean): Promise<FileSystemDirectoryHandle> {
  let folder = handle;
  for (const part of path.split('/').slice(0, -1)) folder = await folder.getDirectoryHandle(part, { create });
  return folder;
}

/** Whether the folder itself can still be opened. */
async function isThere(handle: FileSystemDirectoryHandle): Promise<boolean> {
  const looked = await attempt(async () => {
    for await (const entry of entriesOf(handle)) return entry.name;
    return '';
  });
  return looked.ok;
}

async function attempt<T>(work: () => Promise<T>): Promise<Result<T, FolderFailure>> {
  try {
    return ok(await work());
  } catch (error) {
    return failed(failureOf(error));
  }
}

function failureOf(error: unknown): FolderFailure {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'no-permission';
  return name === 'NotFoundError' ? 'gone' : 'unreadable';
}

const nameOf = (path: string): string => path.slice(path.lastIndexOf('/') + 1);

const stampOf = (path: string, file: File): FolderStamp => ({ path, byteCount: file.size, modifiedAt: file.lastModified });

const entriesOf = (folder: FileSystemDirectoryHandle): AsyncIterable<FileSystemHandle> =>
  (folder as unknown as { values(): AsyncIterable<FileSystemHandle> }).values();
