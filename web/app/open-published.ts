import type { Keeper } from '../notebook/keeper.ts';
import { unreadWords, reviewFailureWords } from '../notebook/words/review-words.ts';
import { publishedNotebook } from './published-notebook.ts';
import { openForReview } from './remarking.ts';

/**
 * Fetches a published notebook anew and opens it for review; remarks made on it before stay.
 *
 * @returns what its reader should know, in a sentence; empty where all of it came. What was there before stays where nothing came.
 */
export async function openPublished(keeper: Keeper, address: string, page: string): Promise<string> {
  const found = await publishedNotebook(address, page);
  if (!found.ok) return reviewFailureWords(address)[found.error];
  const { skipped, endedBy } = await openForReview(keeper, found.value, {});
  return unreadWords(skipped, endedBy !== undefined);
}
