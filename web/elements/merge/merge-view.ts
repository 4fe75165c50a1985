import { alignTokens } from '../../domain/merge/align-tokens.ts';
import type { ConflictPiece, MergeChoice, NoteMerge } from '../../domain/merge/note-merge.ts';

/** Words that stand in one version only, or in both. */
export interface Run {
  readonly text: string;
  readonly differs: boolean;
}

/** A stretch of the note as it is shown. */
export type MergeRow =
  | {
      readonly is: 'alike';
      readonly beginning: string;
      /** Lines left out between beginning and end; 0 where all are in the beginning. */
      readonly hidden: number;
      readonly end: string;
    }
  | {
      readonly is: 'differs';
      /** Its number among the places to decide, from 0. */
      readonly at: number;
      /** What it is about: the key, the front matter, a paragraph. */
      readonly about: string;
      /** Empty where that version has nothing there. */
      readonly mine: readonly Run[];
      readonly theirs: readonly Run[];
    };

/** Lines alike that are shown before and after a place to decide (our choice: enough to know where one is). */
const SHOWN = 3;

/** A merge as its reader sees it: what is alike, shortened, and each place that is theirs to decide, its differing words marked. */
export function mergeView({ pieces }: NoteMerge): readonly MergeRow[] {
  let at = 0;
  return pieces.map((piece) => (piece.is === 'agreed' ? alike(piece.text) : { ...differing(piece), at: at++ }));
}

/** The choices that are offered, in their words. */
export const CHOICES: readonly (readonly [MergeChoice, string])[] = [
  ['mine', 'Take this'],
  ['theirs', 'Take that'],
  ['both', 'Keep both'],
];

function alike(text: string): MergeRow {
  const lines = text.replace(/(?:\r\n|\n|\r)$/, '').split(/\r\n|\n|\r/);
  const hidden = lines.length - 2 * SHOWN;
  if (hidden <= 1) return { is: 'alike', beginning: lines.join('\n'), hidden: 0, end: '' };
  return { is: 'alike', beginning: lines.slice(0, SHOWN).join('\n'), hidden, end: lines.slice(-SHOWN).join('\n') };
}

function differing(piece: ConflictPiece): Omit<Extract<MergeRow, { is: 'differs' }>, 'at'> {
  const [mine, theirs] = [wordsOf(piece.mine), wordsOf(piece.theirs)];
  const pairs = alignTokens(mine, theirs);
  const paired = new Set(pairs);
  return {
    is: 'differs',
    about: piece.in === 'key' ? `“${piece.key ?? ''}”` : piece.in === 'head' ? 'the front matter' : 'the text',
    mine: runs(mine, (index) => pairs[index] === undefined),
    theirs: runs(theirs, (index) => !paired.has(index)),
  };
}

const wordsOf = (text: string): readonly string[] => text.trimEnd().match(/\s+|[^\s]+/g) ?? [];

/** Neighbouring words of one sort, as one run; space between two differing words differs with them. */
function runs(words: readonly string[], differs: (index: number) => boolean): readonly Run[] {
  const found: Run[] = [];
  for (const [index, text] of words.entries()) {
    const last = found.at(-1);
    if (last?.differs === differs(index)) found[found.length - 1] = { ...last, text: last.text + text };
    else found.push({ text, differs: differs(index) });
  }
  return found;
}
