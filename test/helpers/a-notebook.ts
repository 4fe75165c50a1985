import { Notebook } from '../../web/notebook/notebook.ts';

/** A notebook of files given as text, by path. */
export function aNotebook(files: Readonly<Record<string, string>>): Notebook {
  const notebook = new Notebook();
  const encoder = new TextEncoder();
  notebook.putAll(Object.entries(files).map(([path, text]) => ({ path, bytes: encoder.encode(text) })));
  return notebook;
}

/** A note's file: front matter of the given YAML lines, nothing behind it. */
export const aNote = (yaml: string): string => `---\n${yaml.trim()}\n---\n`;

/**
 * A small world: europe > england > york, with scotland and ireland in europe, and ireland near england.
 * Fibres: wool (everyday), fine-wool is wool, linen; wearers: peasant, noble, lady within noble.
 */
export const aWorld: Readonly<Record<string, string>> = {
  'regions/europe.md': aNote('kind: region\ntitle: Europe'),
  'regions/england.md': aNote('kind: region\ntitle: England\nwithin: europe\nnear: [ireland]\nnames: [Albion]'),
  'regions/york.md': aNote('kind: region\ntitle: York\nwithin: england'),
  'regions/ireland.md': aNote('kind: region\ntitle: Ireland\nwithin: europe'),
  'regions/scotland.md': aNote('kind: region\ntitle: Scotland\nwithin: europe'),
  'fibres/wool.md': aNote(
    'kind: fibre\ntitle: Wool\nclass: protein\neveryday: true\nundyed: [{name: white, colour: {lab: [85, 0, 12], illuminant: D65, observer: 10}}]',
  ),
  'fibres/fine-wool.md': aNote('kind: fibre\ntitle: Fine wool\nis: wool\neveryday: true'),
  'fibres/silk.md': aNote('kind: fibre\ntitle: Silk\nclass: protein\neveryday: true'),
  'fibres/linen.md': aNote('kind: fibre\ntitle: Linen\nclass: cellulose\neveryday: true'),
  'wearers/everyone.md': aNote('kind: wearer\ntitle: Everyone'),
  'wearers/noble.md': aNote('kind: wearer\ntitle: Noble\nwithin: everyone'),
  'wearers/lady.md': aNote('kind: wearer\ntitle: Lady\nwithin: noble'),
  'wearers/peasant.md': aNote('kind: wearer\ntitle: Peasant\nwithin: everyone'),
};

/** A dyestuff note with availability rows in flow style. */
export const aDyestuff = (title: string, ...rows: readonly string[]): string =>
  aNote(`kind: dyestuff\ntitle: ${title}\n${rows.length > 0 ? `availability:\n${rows.map((row) => `  - {${row}}`).join('\n')}` : ''}`);
