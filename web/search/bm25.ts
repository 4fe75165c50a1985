import { BM25 } from './search-options.ts';

/** How much a term's being rare counts. */
export const rarity = (held: number, noteCount: number): number => Math.log(1 + (noteCount - held + 0.5) / (held + 0.5));

/** What a field weighs against a term's standing there often, were it of no length. */
export const AT_LEAST = BM25.k * (1 - BM25.b);

/** How much a term's standing in a field so often counts, against the field's length. */
export const often = (times: number, length: number, averageLength: number): number =>
  BM25.d + (times * (BM25.k + 1)) / (times + AT_LEAST + (BM25.k * BM25.b * length) / averageLength);
