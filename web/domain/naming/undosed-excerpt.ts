import type { EvidenceBase } from '../claim/evidence-base.ts';
import { dosesIn, NO_DOSE, withoutDoses } from '../pot/without-doses.ts';
import { type Excerpt, excerptOf } from './excerpt.ts';

/** How far on either side a name makes an amount unshown: well beyond what the excerpt shows. */
const NEAR = 400;

/**
 * The words around a range, without amounts where something that is never dosed is named nearby. Amounts go before the excerpt is
 * cut, so that none is left where the cut parts a number from its unit.
 */
export function undosedExcerpt(base: EvidenceBase, text: string, start: number, end: number): Excerpt {
  const from = Math.max(0, start - NEAR);
  const around = text.slice(from, end + NEAR);
  if (withoutDoses(base, around) === around) return excerptOf(text, start, end);
  let blanked = '';
  let at = 0;
  let [first, last] = [start - from, end - from];
  for (const [begins, ends] of dosesIn(around)) {
    blanked += around.slice(at, begins);
    if (ends <= start - from) {
      first += NO_DOSE.length - (ends - begins);
      last += NO_DOSE.length - (ends - begins);
    } else if (begins < end - from) [first, last] = [blanked.length, blanked.length + NO_DOSE.length];
    blanked += NO_DOSE;
    at = ends;
  }
  return excerptOf(blanked + around.slice(at), first, last);
}
