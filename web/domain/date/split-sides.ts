import type { DateToken } from './written-tokens.ts';

/** What joins two sides. A slash binds closer than a dash or "to". */
export type JoinSign = 'dash' | 'slash' | 'and';

/** The sides of a written date, and the sign after each but the last. */
export interface SplitDate {
  readonly sides: readonly (readonly DateToken[])[];
  readonly signs: readonly JoinSign[];
}

/** "mid-14th", "13th-century", "second-quarter": one side, with a hyphen in it. */
function holdsTogether(before: DateToken | undefined, after: DateToken | undefined): boolean {
  if (before?.kind === 'third') return after?.kind === 'ordinal' || after?.kind === 'decade' || after?.kind === 'number';
  return (before?.kind === 'ordinal' || before?.kind === 'last') && (after?.kind === 'unit' || after?.kind === 'fraction');
}

/**
 * Cuts a written date at the signs that join its sides.
 *
 * @returns at least one side; a side may be empty, which the caller answers for. A hyphen before a number that opens a
 * side becomes a minus.
 * @error none.
 */
export function splitSides(tokens: readonly DateToken[]): SplitDate {
  const sides: DateToken[][] = [];
  const signs: JoinSign[] = [];
  let side: DateToken[] = [];
  const close = (sign: JoinSign): void => {
    sides.push(side);
    signs.push(sign);
    side = [];
  };
  tokens.forEach((token, at) => {
    const next = tokens[at + 1];
    if (token.kind === 'bound' && token.bound === 'until' && side.length > 0) close('dash');
    else if (token.kind !== 'join') side.push(token);
    else if (token.sign !== '-') close(token.sign === '–' ? 'dash' : token.sign === '/' ? 'slash' : 'and');
    else if (side.every(({ kind }) => kind === 'circa') && next?.kind === 'number') side.push({ kind: 'minus' });
    // the hyphens of "mid-to-late"
    else if ((next?.kind === 'join' && next.sign !== '-') || (side.length === 0 && sides.length > 0)) return;
    else if (!holdsTogether(side.at(-1), next)) close('dash');
  });
  return { sides: [...sides, side], signs };
}
