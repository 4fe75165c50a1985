import { mkdir, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { publishedFiles } from '../../web/elements/publish/published-files.ts';
import { displayNotes } from '../../web/notebook/shown-colours.ts';
import { publishedView } from '../../web/notebook/views/published-view.ts';
import { type Command, openFolder, readArgs, wrap } from './command.ts';

const OPTIONS = { display: { type: 'string' }, preview: { type: 'boolean' } } as const;

/** `tenterground publish FOLDER OUT --display ID [--preview]`: a display as a folder that opens from disk. */
export const publish: Command = async (args) => {
  const read = readArgs(args, OPTIONS, 2);
  if (!read) return 2;
  const [folder, out] = read.words;
  const preview = read.values['preview'] === true;
  const opened = await openFolder(folder);
  if (!opened) return 2;
  const { notebook } = opened;
  const id = read.values['display'];
  const view = typeof id === 'string' ? publishedView(notebook, id, new Date().toISOString()) : undefined;
  if (!view) {
    const known = displayNotes(notebook).filter((display) => notebook.base.note(display.id)?.private !== true);
    const why = typeof id === 'string' ? `--display "${id}" is not known here, or is private.` : '--display is missing.';
    console.error(`${why} Displays: ${known.map((display) => display.id).join(', ') || 'none'}.`);
    return 2;
  }
  if (out === undefined && !preview) {
    console.error('Name the folder to write: tenterground publish FOLDER OUT --display ID');
    return 2;
  }
  const files = publishedFiles(view);
  const there = preview || out === undefined ? [] : await readdir(out).catch((): string[] => []);
  const others = there.filter((name) => !files.some(({ path }) => path === name));
  if (others.length > 0) {
    console.error(`The folder "${out ?? ''}" holds other files (${others.slice(0, 3).join(', ')}). Name a new or an empty one.`);
    return 2;
  }
  console.log(`${preview ? 'Would go out' : 'Goes out'}:`);
  for (const says of view.goesOut) console.log(wrap(says, '  '));
  console.log('Stays here:');
  for (const says of view.keptBack) console.log(wrap(says, '  '));
  if (preview || out === undefined) return 0;
  await mkdir(out, { recursive: true });
  for (const { path, text } of files) await writeFile(join(out, path), text, 'utf8');
  console.log(`Written to ${out}: ${files.map(({ path }) => path).join(', ')}. Open index.html to read, gallery.html on a screen.`);
  return 0;
};
