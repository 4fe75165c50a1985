import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** A folder of files for a test, and how to be rid of it. */
export interface MadeFolder {
  readonly path: string;
  readonly remove: () => Promise<void>;
}

/** Writes files into a new folder of the system's place for such. */
export async function aFolder(files: Readonly<Record<string, string | Uint8Array>>): Promise<MadeFolder> {
  const path = await mkdtemp(join(tmpdir(), 'tenterground-'));
  for (const [name, content] of Object.entries(files)) {
    await mkdir(dirname(join(path, name)), { recursive: true });
    await writeFile(join(path, name), content);
  }
  return { path, remove: () => rm(path, { recursive: true, force: true }) };
}
