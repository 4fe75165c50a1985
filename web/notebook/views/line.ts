/** A run of words in a line: plain, or leading to a note of the notebook. */
export interface Piece {
  readonly text: string;
  /** The note it names. */
  readonly note?: string;
  readonly latin?: boolean;
  /** Quieter than the rest: a reading, a remark. */
  readonly quiet?: boolean;
  /** The language of the words, BCP 47. */
  readonly lang?: string;
}

/** Words on one line. */
export type Line = readonly Piece[];

/** Plain words as a line. */
export const plain = (text: string): Line => [{ text }];

/** Words that stand back. */
export const quiet = (text: string): Piece => ({ text, quiet: true });

/** Lines on one line, parted by a text. */
export const joinLines = (lines: readonly Line[], between: string): Line =>
  lines.filter((line) => line.length > 0).flatMap((line, at) => (at === 0 ? line : [{ text: between }, ...line]));
