import type { NotebookBeside } from '../elements/compare/lay-beside-event.ts';
import type { Engine } from '../notebook/engine.ts';
import type { FoundFiles } from '../notebook/import/found-files.ts';
import { planFiles } from '../notebook/import/plan-files.ts';
import type { NotebookFile } from '../notebook/notebook.ts';
import { isPhotoPath } from '../notebook/photo-path.ts';

/** Reads another notebook and lays it beside the open one; photos, which nothing is compared by, are passed over. */
export async function layBeside(engine: Pick<Engine, 'layBeside'>, found: FoundFiles): Promise<NotebookBeside> {
  const { files, skipped } = planFiles(found);
  const read: NotebookFile[] = [];
  let unread = skipped.length;
  for (const { path, found: file } of files.filter((one) => !isPhotoPath(one.path))) {
    const bytes = await file.read();
    if (bytes.ok) read.push({ path, bytes: bytes.value });
    else unread += 1;
  }
  const { notes } = await engine.layBeside(read);
  return { name: found.from, notes, unread };
}
