import type { DisplayCaption, ReviewComment } from '../note/display-record.ts';
import type { Result } from '../result.ts';
import { failed, ok } from '../result.ts';

/** The comments nobody has settled yet: no decision, or declined without a reason. */
export const openComments = (caption: Pick<DisplayCaption, 'review'>): readonly ReviewComment[] =>
  caption.review.filter(({ decision, reason }) => decision === undefined || (decision === 'declined' && (reason ?? '').trim() === ''));

/** A decision as it is written into the display note. */
export interface DecisionValue {
  readonly decision: 'accepted' | 'declined';
  readonly reason: string;
}

/**
 * A decision about a comment.
 *
 * @error `reason-missing`: every comment is closed with a reason, whichever way it went.
 */
export function decide(decision: 'accepted' | 'declined', reason: string): Result<DecisionValue, 'reason-missing'> {
  const said = reason.trim();
  return said === '' ? failed('reason-missing') : ok({ decision, reason: said });
}

/** The version of a caption whose words changed: one more; what has none yet counts as the first. */
export const nextVersion = ({ version, text }: Pick<DisplayCaption, 'version' | 'text'>, newText: string): number =>
  newText.trim() === text.trim() ? (version ?? 1) : (version ?? 1) + 1;
