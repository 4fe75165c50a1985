import { markedSides } from '../../domain/merge/marked-sides.ts';
import { mergeNote, type NoteSides } from '../../domain/merge/merge-note.ts';

/**
 * The texts to merge when a folder's file has another text than the notebook's note.
 *
 * Where version control left its marks in the file, its two sides and their common text are read out of it.
 *
 * @param seen what both had when they were last alike.
 */
export function sidesOf(mine: string, theirs: string, seen: string | undefined): NoteSides {
  const marked = markedSides(theirs);
  if (!marked) return { mine, theirs, ...(seen !== undefined && { base: seen }) };
  if (mine === seen || mine === marked.mine) return marked;
  // Written on in the notebook too: what was written comes on top of what version control took as this side.
  const own = seen === undefined ? undefined : mergeNote({ base: seen, mine, theirs: marked.mine }).text;
  return own === undefined ? { mine, theirs: marked.theirs } : { ...marked, mine: own };
}
