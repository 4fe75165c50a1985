import { isPhotoPath } from '../../web/notebook/photo-path.ts';
import { withoutPrivate } from '../../web/notebook/without-private.ts';
import { readFolder } from '../read-folder.ts';
import { type Command, readArgs } from './command.ts';

/**
 * `tenterground list FOLDER [--whole] [--private]`: the list by which a published notebook is opened for review: its files' paths,
 * or with `--whole` the texts too, so that one file is the notebook. Photos only ever lie beside the list. Private notes, and
 * files that only they name, are left out unless `--private` asks for them.
 */
export const list: Command = async (args) => {
  const read = readArgs(args, { whole: { type: 'boolean' }, private: { type: 'boolean' } }, 1);
  if (!read) return 2;
  const [folder] = read.words;
  const reading = folder === undefined ? undefined : await readFolder(folder);
  if (!reading) {
    console.error('Name a folder of notes that may be read: tenterground list FOLDER > FOLDER/notebook.json');
    return 2;
  }
  const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  const textOf = (bytes: Uint8Array): string | undefined => {
    try {
      return decoder.decode(bytes);
    } catch {
      return undefined;
    }
  };
  const isWhole = read.values['whole'] === true;
  const found = reading.files.filter(({ path }) => path !== 'notebook.json');
  const listed = read.values['private'] === true ? found : withoutPrivate(found);
  const files = listed.map(({ path, bytes }) => {
    const text = isWhole && !isPhotoPath(path) ? textOf(bytes) : undefined;
    return { path, ...(text === undefined ? {} : { text }) };
  });
  for (const { path } of reading.passedOver) console.error(`Passed over: ${path}`);
  const kept = found.length - listed.length;
  if (kept > 0) console.error(`Left out as private: ${kept} ${kept === 1 ? 'file' : 'files'}. --private lists them too.`);
  console.log(JSON.stringify({ files }, undefined, isWhole ? undefined : 2));
  return 0;
};
