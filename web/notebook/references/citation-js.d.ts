declare module '@citation-js/core/lib/util/grammar.js' {
  export const Grammar: unknown;
}
declare module '@citation-js/core/lib/util/translator.js' {
  export const Translator: unknown;
}
declare module '@citation-js/plugin-bibtex/lib/input/file.js' {
  /** Throws where the text is no BibTeX. */
  export function parse(text: string): unknown[];
}
declare module '@citation-js/plugin-bibtex/lib/input/entries.js' {
  export function parse(entries: unknown[]): unknown[];
}
declare module '@citation-js/plugin-ris/lib/ris.js' {
  export function parse(text: string): unknown[];
  export function parseMixed(entry: unknown): unknown;
}
