/** A piece of a text and where it stands: half-open, UTF-16 code units. */
export interface TextPiece {
  readonly text: string;
  readonly range: readonly [start: number, end: number];
}

/** The words of a text: what holds a letter or a figure, between blanks; "1301–1500" and "well-made" are one each. */
export const wordsOf = (text: string): readonly string[] =>
  text
    .split(/[\s/]+|(?<=\p{L}{2})[—–](?=\p{L}{2})/u)
    .map((word) => word.replace(/^[^\p{L}\p{N}]+|(?<![^\p{L}\p{N}])[^\p{L}\p{N}]+$/gu, ''))
    .filter((word) => word !== '');

/** Ends of sentence after which none begins: abbreviations of captions and single capitals. */
const NO_END = /(?:^|[\s([“"])(?:c|ca|cf|e\.g|i\.e|fl|vol|no|nos|p|pp|St|Dr|Mr|Mrs|cent|spp?|[A-Z])\.$/;

/** The sentences of a text, line ends among them; a full stop ends one only before a blank and a capital, a figure or a quotation. */
export function sentencesOf(text: string): readonly TextPiece[] {
  const pieces: TextPiece[] = [];
  let start = 0;
  const close = (end: number) => {
    const raw = text.slice(start, end);
    const trimmed = raw.trim();
    const from = start + (raw.length - raw.trimStart().length);
    if (trimmed !== '') pieces.push({ text: trimmed, range: [from, from + trimmed.length] });
    start = end;
  };
  for (const found of text.matchAll(/(?<![.!?…])[.!?…]+["”’)]*(?=\s+["“‘(]?[\p{Lu}\p{N}])|\n+/gu)) {
    const end = found.index + found[0].length;
    if (found[0] === '.' && NO_END.test(text.slice(start, end))) continue;
    close(end);
  }
  close(text.length);
  return pieces;
}

/** The clauses of a text: sentences parted at semicolons, colons, dashes between blanks, and commas before and, but, while, which, where, so. */
export const clausesOf = (text: string): readonly TextPiece[] =>
  sentencesOf(text).flatMap(({ text: sentence, range: [start] }) => {
    const clauses: TextPiece[] = [];
    let from = 0;
    const close = (end: number) => {
      const raw = sentence.slice(from, end);
      const trimmed = raw.trim();
      const at = start + from + (raw.length - raw.trimStart().length);
      if (trimmed !== '') clauses.push({ text: trimmed, range: [at, at + trimmed.length] });
      from = end;
    };
    for (const found of sentence.matchAll(/[;:](?=\s)|\s[–—](?=\s)|,(?=\s(?:and|but|while|which|where|so|und|aber|et|mais)\s)/gu))
      close(found.index + found[0].length);
    close(sentence.length);
    return clauses;
  });
