import { alignTokens } from './align-tokens.ts';

/** Tokens that both sides have or only one changed, or tokens that both changed differently. */
export type TokenPiece =
  | { readonly is: 'agreed'; readonly tokens: readonly string[] }
  | {
      readonly is: 'conflict';
      readonly base?: readonly string[];
      readonly mine: readonly string[];
      readonly theirs: readonly string[];
    };

/**
 * Merges two lists of tokens that grew out of one.
 *
 * Between tokens that stand in all three, a side that changed nothing gives way to the other; where both changed alike the change
 * is taken once, where they changed differently both come back.
 */
export function mergeTokens(base: readonly string[], mine: readonly string[], theirs: readonly string[]): readonly TokenPiece[] {
  const [toMine, toTheirs] = [alignTokens(base, mine), alignTokens(base, theirs)];
  const pieces: TokenPiece[] = [];
  let [fromBase, fromMine, fromTheirs] = [0, 0, 0];
  const close = (atBase: number, atMine: number, atTheirs: number) => {
    const [was, own, other] = [base.slice(fromBase, atBase), mine.slice(fromMine, atMine), theirs.slice(fromTheirs, atTheirs)];
    if (same(own, was) || same(own, other)) agree(pieces, other);
    else if (same(other, was)) agree(pieces, own);
    else pieces.push({ is: 'conflict', base: was, mine: own, theirs: other });
  };
  for (const [at, token] of base.entries()) {
    const [atMine, atTheirs] = [toMine[at], toTheirs[at]];
    if (atMine === undefined || atTheirs === undefined) continue;
    close(at, atMine, atTheirs);
    agree(pieces, [token]);
    [fromBase, fromMine, fromTheirs] = [at + 1, atMine + 1, atTheirs + 1];
  }
  close(base.length, mine.length, theirs.length);
  return pieces;
}

/** Compares two lists of tokens of which nothing common is known: what they do not share comes back from both. */
export function compareTokens(mine: readonly string[], theirs: readonly string[]): readonly TokenPiece[] {
  const pieces: TokenPiece[] = [];
  let [fromMine, fromTheirs] = [0, 0];
  const close = (atMine: number, atTheirs: number) => {
    const [own, other] = [mine.slice(fromMine, atMine), theirs.slice(fromTheirs, atTheirs)];
    if (own.length + other.length > 0) pieces.push({ is: 'conflict', mine: own, theirs: other });
  };
  for (const [atMine, atTheirs] of alignTokens(mine, theirs).entries()) {
    if (atTheirs === undefined) continue;
    close(atMine, atTheirs);
    agree(pieces, mine.slice(atMine, atMine + 1));
    [fromMine, fromTheirs] = [atMine + 1, atTheirs + 1];
  }
  close(mine.length, theirs.length);
  return pieces;
}

function agree(pieces: TokenPiece[], tokens: readonly string[]): void {
  if (tokens.length === 0) return;
  const last = pieces.at(-1);
  if (last?.is === 'agreed') pieces[pieces.length - 1] = { is: 'agreed', tokens: [...last.tokens, ...tokens] };
  else pieces.push({ is: 'agreed', tokens });
}

const same = (a: readonly string[], b: readonly string[]): boolean => a.length === b.length && a.every((token, at) => token === b[at]);
