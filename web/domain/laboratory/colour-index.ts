/** A Colour Index generic name and what it stands for here. From memory throughout; `doubtful` ones want checking before quoting. */
export interface GenericName {
  readonly name: string;
  readonly dyes: readonly string[];
  readonly doubtful?: true;
}

/** @source Colour Index generic names, from memory. */
export const COLOUR_INDEX: readonly GenericName[] = [
  { name: 'C.I. Natural Red 3', dyes: ['kermes', 'polish-cochineal'] },
  { name: 'C.I. Natural Red 4', dyes: ['american-cochineal', 'armenian-cochineal'] },
  { name: 'C.I. Natural Red 6', dyes: ['chay-root'], doubtful: true },
  { name: 'C.I. Natural Red 8', dyes: ['madder', 'wild-madder'] },
  { name: 'C.I. Natural Red 14', dyes: ['ladys-bedstraw', 'relbunium'], doubtful: true },
  { name: 'C.I. Natural Red 16', dyes: ['indian-madder'] },
  { name: 'C.I. Natural Red 20', dyes: ['alkanet', 'gromwell'] },
  { name: 'C.I. Natural Red 24', dyes: ['sappanwood', 'american-brazilwood'] },
  { name: 'C.I. Natural Red 25', dyes: ['lac'] },
  { name: 'C.I. Natural Red 26', dyes: ['safflower'] },
  { name: 'C.I. Natural Red 28', dyes: ['orchil', 'northern-orchil', 'cudbear'] },
  { name: 'C.I. Natural Yellow 2', dyes: ['weld', 'dyers-greenweed'] },
  { name: 'C.I. Natural Yellow 3', dyes: ['turmeric'] },
  { name: 'C.I. Natural Yellow 6', dyes: ['saffron'] },
  { name: 'C.I. Natural Yellow 7', dyes: ['pomegranate'] },
  { name: 'C.I. Natural Yellow 10', dyes: ['quercitron'] },
  { name: 'C.I. Natural Yellow 11', dyes: ['old-fustic'] },
  { name: 'C.I. Natural Yellow 13', dyes: ['persian-berries'] },
  { name: 'C.I. Natural Yellow 18', dyes: ['amur-cork-tree'] },
  { name: 'C.I. Natural Orange 4', dyes: ['annatto'] },
  { name: 'C.I. Natural Orange 6', dyes: ['henna'] },
  { name: 'C.I. Natural Brown 1', dyes: ['young-fustic'] },
  { name: 'C.I. Natural Brown 3', dyes: ['cutch'] },
  { name: 'C.I. Natural Brown 6', dyes: ['sumac'], doubtful: true },
  { name: 'C.I. Natural Brown 7', dyes: ['walnut', 'butternut'] },
  { name: 'C.I. Natural Blue 1', dyes: ['indigo', 'woad', 'dyers-knotweed'] },
  { name: 'C.I. Natural Blue 2', dyes: ['saxon-blue'], doubtful: true },
  { name: 'C.I. Natural Violet 1', dyes: ['shellfish-purple'] },
  { name: 'C.I. Natural Black 1', dyes: ['logwood'] },
  { name: 'C.I. Vat Blue 1', dyes: ['synthetic-indigo'] },
  { name: 'C.I. Acid Blue 74', dyes: ['saxon-blue'] },
  { name: 'C.I. Mordant Red 11', dyes: ['synthetic-alizarin'] },
  { name: 'C.I. Basic Violet 14', dyes: ['magenta'] },
  { name: 'C.I. Pigment Blue 27', dyes: ['prussian-blue'] },
];

const key = (text: string): string =>
  text
    .toLowerCase()
    .replace(/\bc\.?\s?i\.?\s*/, '')
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

/** The generic names of a dyestuff. */
export const genericNamesOf = (dye: string): readonly GenericName[] => COLOUR_INDEX.filter(({ dyes }) => dyes.includes(dye));

/** The generic name a text means, with or without `C.I.`, in any case; undefined when it means none. */
export const genericName = (text: string): GenericName | undefined => COLOUR_INDEX.find(({ name }) => key(name) === key(text));
