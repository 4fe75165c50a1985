import { isPhotoPath } from '../../web/notebook/photo-path.ts';
import { readFolder } from '../read-folder.ts';
import { type Command, readArgs } from './command.ts';

/**
 * `tenterground list FOLDER [--whole]`: the list by which a published notebook is opened for review: its files' paths, or with
 * `--whole` the texts too, so that one file is the notebook. Photos only ever lie beside the list.
 */
export const list: Command = async (args) => {
  const read = readArgs(args, { whole: { type: 'boolean' } }, 1);
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
  const files = reading.files
    .filter(({ path }) => path !== 'notebook.json')
    .map(({ path, bytes }) => {
      const text = isWhole && !isPhotoPath(path) ? textOf(bytes) : undefined;
      return { path, ...(text === undefined ? {} : { text }) };
    });
  for (const { path } of reading.passedOver) console.error(`Passed over: ${path}`);
  console.log(JSON.stringify({ files }, undefined, isWhole ? undefined : 2));
  return 0;
};
