import type { MergePiece } from './note-merge.ts';

interface Texts {
  readonly base?: string;
  readonly mine: string;
  readonly theirs: string;
}

/** Texts whose line ends can be compared, and how pieces of them get the line ends back that their note shall have. */
export interface EvenTexts extends Texts {
  readonly restore: (piece: MergePiece) => MergePiece;
}

type LineEnd = '\n' | '\r\n';

/**
 * Makes texts comparable that differ in their line ends throughout, as when a program on one machine writes them all anew.
 * The line end is itself something that one side may have changed; texts that mix them are left as they are.
 */
export function evenLineEnds(texts: Texts): EvenTexts {
  const { base, mine, theirs } = texts;
  const [was, own, other] = [base === undefined ? undefined : lineEndOf(base), lineEndOf(mine), lineEndOf(theirs)];
  const isEven = own !== 'mixed' && other !== 'mixed' && was !== 'mixed' && (own !== other || own !== (was ?? own));
  if (!isEven) return { ...texts, restore: (piece) => piece };
  const isMine = base === undefined || own !== was;
  const wanted = isMine ? (own ?? other) : (other ?? own);
  const plain = (text: string) => text.replaceAll('\r\n', '\n');
  const set = (text: string) => (wanted === '\r\n' ? text.replaceAll('\n', '\r\n') : text);
  return {
    ...(base !== undefined && { base: plain(base) }),
    mine: plain(mine),
    theirs: plain(theirs),
    restore: (piece) =>
      piece.is === 'agreed'
        ? { ...piece, text: set(piece.text) }
        : { ...piece, mine: set(piece.mine), theirs: set(piece.theirs), ...(piece.base !== undefined && { base: set(piece.base) }) },
  };
}

/** The line end a text keeps to. */
function lineEndOf(text: string): LineEnd | 'mixed' | undefined {
  const [crlf, lf, cr] = [/\r\n/g, /(?<!\r)\n/g, /\r(?!\n)/g].map((end) => text.match(end)?.length ?? 0);
  if ((cr ?? 0) > 0 || ((crlf ?? 0) > 0 && (lf ?? 0) > 0)) return 'mixed';
  return (crlf ?? 0) > 0 ? '\r\n' : (lf ?? 0) > 0 ? '\n' : undefined;
}
