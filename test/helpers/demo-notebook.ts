import { fileURLToPath } from 'node:url';
import { readFolder } from '../../scripts/read-folder.ts';
import { Notebook } from '../../web/notebook/notebook.ts';

/** The folder of the demonstration notebook. */
export const DEMO_FOLDER = fileURLToPath(new URL('../../corpus-demo', import.meta.url));

/** The demonstration notebook, read from its folder. */
export async function demoNotebook(): Promise<Notebook> {
  const reading = await readFolder(DEMO_FOLDER);
  if (!reading) throw new Error('corpus-demo is missing');
  const notebook = new Notebook();
  notebook.putAll(reading.files);
  return notebook;
}
