/** A stretch of a note that both sides agree on, or that only one of them changed. */
export interface AgreedPiece {
  readonly is: 'agreed';
  readonly text: string;
}

/** A stretch of a note that both sides changed, each in its own way. */
export interface ConflictPiece {
  readonly is: 'conflict';
  /** `key`: one key of the front matter. `head`: the front matter as a whole, where it cannot be merged by key. */
  readonly in: 'head' | 'key' | 'body';
  /** The key, in a conflict in one. */
  readonly key?: string;
  /** What both sides began with; absent where that is not known. */
  readonly base?: string;
  readonly mine: string;
  readonly theirs: string;
}

export type MergePiece = AgreedPiece | ConflictPiece;

/** Two texts of one note brought together. Its pieces, one after another, are the whole note. */
export interface NoteMerge {
  readonly pieces: readonly MergePiece[];
  /** The merged note; absent where something is left to decide. */
  readonly text?: string;
}

/** What a reader takes in one conflict. */
export type MergeChoice = 'mine' | 'theirs' | 'both';

/** The conflicts of a merge, in the order of the text. */
export const conflictsOf = ({ pieces }: NoteMerge): readonly ConflictPiece[] => pieces.filter((piece) => piece.is === 'conflict');

/**
 * The note as its reader decides.
 *
 * Both of a paragraph stand one after the other. A key may stand only once: of both, mine stays the key and theirs is kept beneath
 * it as a comment. Of two whole heads, theirs is kept in the body, fenced as it came.
 *
 * @param choose asked for each conflict, numbered from 0.
 */
export function chosenText(merge: NoteMerge, choose: (conflict: ConflictPiece, at: number) => MergeChoice): string {
  let at = 0;
  return merge.pieces.map((piece) => (piece.is === 'agreed' ? piece.text : chosen(piece, choose(piece, at++)))).join('');
}

function chosen(conflict: ConflictPiece, choice: MergeChoice): string {
  const { mine, theirs } = conflict;
  if (choice !== 'both') return choice === 'mine' ? mine : theirs;
  if (mine === '' || theirs === '') return mine + theirs;
  if (conflict.in === 'key') return ended(mine) + theirs.replace(/^(?=[^\r\n])/gm, '# ');
  return parted(mine) + theirs;
}

const eolOf = (text: string): string => /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';

/** With a line end at its end. */
const ended = (text: string): string => (/[\r\n]$/.test(text) ? text : text + eolOf(text));

/** With an empty line at its end, so that what follows is a paragraph of its own. */
const parted = (text: string): string => (/(?:\r\n|\n|\r)[ \t]*(?:\r\n|\n|\r)$/.test(text) ? text : ended(text) + eolOf(text));
