import type { DateToken } from './written-tokens.ts';

/** A share of a century, decade or millennium: the second quarter is 2 of 4. `early` and the like are thirds. */
export interface Share {
  readonly index: number;
  readonly of: 2 | 3 | 4;
  /** "early", "mid", "late", not counted. */
  readonly named: boolean;
}

/** What one side of a written date says by itself, before it borrows from the other. */
export interface WrittenSide {
  /** `bare`: a share or a month that leans on the other side. */
  readonly kind: 'year' | 'decade' | 'ordinal' | 'bare';
  readonly digits?: string;
  readonly n?: number;
  readonly unitYears?: 100 | 1000;
  readonly share?: Share;
  readonly era?: 'bce' | 'ce';
  readonly eraLeads: boolean;
  readonly minus: boolean;
  readonly circa: boolean;
  readonly query: boolean;
  readonly month?: number;
  readonly day?: number;
}

type Draft = { -readonly [K in keyof WrittenSide]: WrittenSide[K] };

class Reader {
  #at = 0;
  readonly #tokens: readonly DateToken[];
  constructor(tokens: readonly DateToken[]) {
    this.#tokens = tokens;
  }
  /** The next token if it is of that kind, and steps over it. */
  take<K extends DateToken['kind']>(kind: K): Extract<DateToken, { readonly kind: K }> | undefined {
    const token = this.#tokens[this.#at];
    if (token?.kind !== kind) return undefined;
    this.#at++;
    return token as Extract<DateToken, { readonly kind: K }>;
  }
  peek(ahead = 0): DateToken | undefined {
    return this.#tokens[this.#at + ahead];
  }
  step(count: number): void {
    this.#at += count;
  }
}

const isThirdWord = (token: DateToken | undefined): boolean => token?.kind === 'ordinal' && token.n === 3 && token.word;
/** "third" is a fraction before something to take a third of, or at the end of a side that leans on the other. */
const isFractionAt = (reader: Reader, ahead: number): 2 | 3 | 4 | undefined => {
  const token = reader.peek(ahead);
  if (token?.kind === 'fraction') return token.of;
  const next = reader.peek(ahead + 1);
  return isThirdWord(token) && (!next || next.kind === 'ordinal' || next.kind === 'decade') ? 3 : undefined;
};

function readShare(reader: Reader): Share | undefined {
  const token = reader.peek();
  const of = isFractionAt(reader, 1);
  if (token?.kind === 'third') {
    // "middle third" counts in thirds too; "middle half" says nothing
    reader.step(of === 3 && reader.peek(2) ? 2 : 1);
    return { index: token.index, of: 3, named: true };
  }
  if (of === undefined || (token?.kind !== 'ordinal' && token?.kind !== 'last')) return undefined;
  const index = token.kind === 'last' ? of : token.n;
  if (index < 1 || index > of) return undefined;
  reader.step(2);
  return { index, of, named: false };
}

function readMarks(reader: Reader, draft: Draft, leading: boolean): void {
  for (;;) {
    const era = draft.era ? undefined : reader.take('era');
    if (era) {
      draft.era = era.era;
      draft.eraLeads = leading;
    } else if (reader.take('query')) draft.query = true;
    else if (leading && reader.take('circa')) draft.circa = true;
    else return;
  }
}

/** "12 October", "October 12", "12th October", "October", "spring"; only the year will count. */
function readMonth(reader: Reader, draft: Draft): void {
  const first = reader.peek();
  const couldBeDay = first?.kind === 'ordinal' || (first?.kind === 'number' && first.digits.length <= 2);
  const dayLeads = couldBeDay && reader.peek(1)?.kind === 'month';
  const dayOf = (token: DateToken | undefined): number | undefined =>
    token?.kind === 'ordinal' ? token.n : token?.kind === 'number' ? Number(token.digits) : undefined;
  if (dayLeads) {
    draft.day = dayOf(first);
    reader.step(1);
  }
  const month = reader.take('month');
  if (!month) {
    reader.take('season');
    return;
  }
  draft.month = month.month;
  const next = reader.peek();
  const dayFollows = !dayLeads && (next?.kind === 'ordinal' || (next?.kind === 'number' && next.digits.length <= 2));
  if (dayFollows && reader.peek(1)?.kind === 'number') {
    draft.day = dayOf(next);
    reader.step(1);
  }
}

function readValue(reader: Reader, draft: Draft): boolean {
  if (reader.take('minus')) draft.minus = true;
  draft.share = readShare(reader);
  if (!draft.share && !draft.minus) readMonth(reader, draft);
  readMarks(reader, draft, true);
  const number = reader.take('number') ?? reader.take('decade');
  if (number) {
    draft.kind = number.kind === 'number' ? 'year' : 'decade';
    draft.digits = number.digits;
    // "1405 October"
    if (number.kind === 'number' && !draft.minus) draft.month ??= reader.take('month')?.month;
    return !(draft.minus && number.kind === 'decade');
  }
  const ordinal = reader.take('ordinal');
  if (!ordinal) return draft.share !== undefined || draft.month !== undefined;
  draft.kind = 'ordinal';
  draft.n = ordinal.n;
  draft.unitYears = reader.take('unit')?.years;
  return !draft.minus && draft.month === undefined;
}

/**
 * Reads one side of a written date, every token of it.
 *
 * @param tokens without a joining sign.
 * @returns undefined when a token is left over or nothing is said.
 * @error none.
 */
export function readWrittenSide(tokens: readonly DateToken[]): WrittenSide | undefined {
  const reader = new Reader(tokens);
  const draft: Draft = { kind: 'bare', eraLeads: false, minus: false, circa: false, query: false };
  readMarks(reader, draft, true);
  if (!readValue(reader, draft)) return undefined;
  readMarks(reader, draft, false);
  // "13th century, second half"
  if (draft.unitYears && !draft.share) draft.share = readShare(reader);
  readMarks(reader, draft, false);
  return reader.peek() ? undefined : draft;
}
