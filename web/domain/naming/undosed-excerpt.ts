import type { EvidenceBase } from '../claim/evidence-base.ts';
import { withoutAmounts, withoutDoses } from '../pot/without-doses.ts';
import { type Excerpt, excerptOf } from './excerpt.ts';

/** How far on either side a name makes an amount unshown: well beyond what the excerpt shows. */
const NEAR = 400;

/** The words around a range, without amounts where something that is never dosed is named nearby. */
export function undosedExcerpt(base: EvidenceBase, text: string, start: number, end: number): Excerpt {
  const excerpt = excerptOf(text, start, end);
  const around = text.slice(Math.max(0, start - NEAR), end + NEAR);
  if (withoutDoses(base, around) === around) return excerpt;
  return { before: withoutAmounts(excerpt.before), found: withoutAmounts(excerpt.found), after: withoutAmounts(excerpt.after) };
}
