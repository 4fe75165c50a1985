import { frontMatterKeys, type NoteParts } from '../note/front-matter-keys.ts';
import { sameTree } from '../note/plain-tree.ts';
import { splitFrontMatter } from '../note/split-front-matter.ts';
import { evenLineEnds } from './even-line-ends.ts';
import { mergeKeys } from './merge-keys.ts';
import { compareTokens, mergeTokens, type TokenPiece } from './merge-tokens.ts';
import type { MergePiece, NoteMerge } from './note-merge.ts';
import { paragraphs } from './paragraphs.ts';

/** Two texts of one note, and the text both grew out of where it is known. */
export interface NoteSides {
  readonly base?: string;
  readonly mine: string;
  readonly theirs: string;
}

/**
 * Brings two texts of a note together: front matter by key, body by paragraph.
 *
 * What only one side changed is taken as it stands there, to the byte; what both changed differently comes back with both sides.
 * Without a common base only what is equal is agreed.
 *
 * @returns pieces in which every line of both sides that the other did not take out is found again.
 */
export function mergeNote({ base, mine, theirs }: NoteSides): NoteMerge {
  if (mine === theirs || theirs === base) return whole(mine);
  if (mine === base) return whole(theirs);
  const sides = evenLineEnds({ mine, theirs, ...(base !== undefined && { base }) });
  const pieces = together([...mergeHeads(sides.base, sides.mine, sides.theirs)]).map(sides.restore);
  return pieces.some(({ is }) => is === 'conflict') ? { pieces } : { pieces, text: joined(pieces) };
}

const whole = (text: string): NoteMerge => ({ pieces: text === '' ? [] : [{ is: 'agreed', text }], text });

function mergeHeads(base: string | undefined, mine: string, theirs: string): readonly MergePiece[] {
  const [was, own, other] = [base === undefined ? undefined : frontMatterKeys(base), frontMatterKeys(mine), frontMatterKeys(theirs)];
  if (own && other && (was || base === undefined)) {
    const head = mergeParts(was, own, other);
    if (head) return [...head, ...mergeBodies(was?.body, own.body, other.body)];
  }
  const [wasAt, ownAt, otherAt] = [base === undefined ? 0 : bodyStart(base), bodyStart(mine), bodyStart(theirs)];
  const heads = { base: base?.slice(0, wasAt), mine: mine.slice(0, ownAt), theirs: theirs.slice(0, otherAt) };
  return [mergeHead(heads), ...mergeBodies(base?.slice(wasAt), mine.slice(ownAt), theirs.slice(otherAt))];
}

const bodyStart = (text: string): number => splitFrontMatter(text, () => undefined).bodyStart;

/** A head as one piece, where it cannot be parted. */
function mergeHead({
  base,
  mine,
  theirs,
}: {
  readonly base?: string | undefined;
  readonly mine: string;
  readonly theirs: string;
}): MergePiece {
  if (mine === theirs || theirs === base) return { is: 'agreed', text: mine };
  if (mine === base) return { is: 'agreed', text: theirs };
  return { is: 'conflict', in: 'head', ...(base !== undefined && { base }), mine, theirs };
}

/** A head by its keys; undefined where the merged keys would not be read as what each side wrote. */
function mergeParts(base: NoteParts | undefined, mine: NoteParts, theirs: NoteParts): readonly MergePiece[] | undefined {
  const [opening, closing] = (['opening', 'closing'] as const).map((part) =>
    mergeHead({ base: base?.[part], mine: mine[part], theirs: theirs[part] }),
  );
  if (opening?.is !== 'agreed' || closing?.is !== 'agreed') return undefined;
  const keys = mergeKeys(base?.keys, mine.keys, theirs.keys);
  const pieces = [opening, ...keys, closing];
  const sound = (side: 'mine' | 'theirs') =>
    saysOnly(pieces.map((piece) => (piece.is === 'agreed' ? piece.text : piece[side])).join(''), mine, theirs);
  return sound('mine') && sound('theirs') ? pieces : undefined;
}

/** Whether a head says, under each key, what one of the sides says there. */
function saysOnly(head: string, mine: NoteParts, theirs: NoteParts): boolean {
  const read = frontMatterKeys(head);
  const sides = [mine, theirs].map(({ keys }) => new Map(keys.map(({ key, says }) => [key, says])));
  return read?.keys.every(({ key, says }) => sides.some((side) => sameAs(side.get(key), says))) ?? false;
}

const sameAs = (a: Parameters<typeof sameTree>[0] | undefined, b: Parameters<typeof sameTree>[0]): boolean =>
  a !== undefined && sameTree(a, b);

function mergeBodies(base: string | undefined, mine: string, theirs: string): readonly MergePiece[] {
  const [own, other] = [paragraphs(mine), paragraphs(theirs)];
  return (base === undefined ? compareTokens(own, other) : mergeTokens(paragraphs(base), own, other)).map(pieceOf);
}

const pieceOf = (piece: TokenPiece): MergePiece =>
  piece.is === 'agreed'
    ? { is: 'agreed', text: piece.tokens.join('') }
    : {
        is: 'conflict',
        in: 'body',
        ...(piece.base && { base: piece.base.join('') }),
        mine: piece.mine.join(''),
        theirs: piece.theirs.join(''),
      };

/** Agreed pieces that touch, as one. */
function together(pieces: readonly MergePiece[]): readonly MergePiece[] {
  const joinedPieces: MergePiece[] = [];
  for (const piece of pieces) {
    const last = joinedPieces.at(-1);
    if (piece.is === 'agreed' && piece.text === '') continue;
    if (piece.is === 'agreed' && last?.is === 'agreed')
      joinedPieces[joinedPieces.length - 1] = { is: 'agreed', text: last.text + piece.text };
    else joinedPieces.push(piece);
  }
  return joinedPieces;
}

const joined = (pieces: readonly MergePiece[]): string => pieces.map((piece) => (piece.is === 'agreed' ? piece.text : '')).join('');
