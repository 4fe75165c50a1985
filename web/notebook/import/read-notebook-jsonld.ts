import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { type Gathered, isObject, type PreviewRow, readJson, nothingGathered, type RowMessage } from './gathered.ts';
import type { DraftNote } from '../lab-note.ts';
import { pathFault } from './path-fault.ts';

/**
 * The notes of a notebook's own JSON-LD file, each with its text as it was. A file whose path is free is written there;
 * one that is there already word for word is passed over; another of that name gets a number.
 */
export function readNotebookJsonLd(base: EvidenceBase, text: string): Gathered {
  const json = readJson(text);
  if ('gathered' in json) return json.gathered;
  const graph = isObject(json.value) && Array.isArray(json.value['@graph']) ? json.value['@graph'] : undefined;
  const nodes = (graph ?? []).filter((one) => isObject(one) && typeof one['tg:text'] === 'string');
  if (nodes.length === 0) return nothingGathered('not-this-kind');
  const rows: PreviewRow[] = [];
  const messages: RowMessage[] = [];
  const notes: DraftNote[] = [];
  const taken = new Map([...base.notes()].map(({ file, source }) => [file.toLowerCase(), source]));
  nodes.forEach((node, at) => {
    const row = at + 1;
    const [file, source, title] = isObject(node) ? [node['tg:file'], node['tg:text'], node['prefLabel']] : [];
    const name = typeof title === 'string' ? title : '';
    if (typeof file !== 'string' || typeof source !== 'string' || !/\.(md|markdown)$/i.test(file) || pathFault(file) !== undefined) {
      messages.push({ row, code: 'row-broken', about: String(file), instead: [] });
      rows.push({ row, title: name, cells: [] });
      return;
    }
    if (taken.get(file.toLowerCase()) === source) {
      messages.push({ row, code: 'same-already', about: name, instead: [file] });
      rows.push({ row, title: name, cells: [] });
      return;
    }
    let path = file;
    for (let nth = 2; taken.has(path.toLowerCase()); nth += 1) path = file.replace(/(\.\w+)$/, `-${nth}$1`);
    if (path !== file) messages.push({ row, code: 'id-taken', about: file, instead: [path] });
    taken.set(path.toLowerCase(), source);
    notes.push({ id: path.replace(/^.*\//, '').replace(/\.\w+$/, ''), path, text: source });
    rows.push({ row, title: name, cells: [], path });
  });
  return { rows, messages, notes };
}
