import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { FolderPort, FolderStamp } from '../../web/domain/folder-port.ts';
import { failed, ok } from '../../web/domain/result.ts';

/** A real folder, through Node, as the page has one through the browser. */
export function diskFolder(root: string): FolderPort {
  const stampOf = async (path: string): Promise<FolderStamp> => {
    const { size, mtimeMs } = await stat(join(root, path));
    return { path, byteCount: size, modifiedAt: mtimeMs };
  };
  return {
    name: 'notes',
    access: () => Promise.resolve('granted'),
    askAccess: () => Promise.resolve(true),
    list: async () => {
      const entries = await readdir(root, { recursive: true, withFileTypes: true }).catch(() => undefined);
      if (!entries) return failed('gone');
      const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name).slice(root.length + 1));
      const shown = paths.filter((path) => !path.split('/').some((part) => part.startsWith('.')));
      return ok(await Promise.all(shown.toSorted().map(stampOf)));
    },
    read: async (path) => {
      const bytes = await readFile(join(root, path)).catch(() => undefined);
      return bytes ? ok({ ...(await stampOf(path)), bytes: new Uint8Array(bytes) }) : failed('missing');
    },
    write: async (path, bytes) => {
      await mkdir(dirname(join(root, path)), { recursive: true });
      await writeFile(join(root, `${path}.part`), bytes);
      await rename(join(root, `${path}.part`), join(root, path));
      return ok(await stampOf(path));
    },
    remove: async (path) => {
      await rm(join(root, path), { force: true });
      return ok(undefined);
    },
  };
}
