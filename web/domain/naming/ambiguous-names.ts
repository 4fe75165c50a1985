import type { EvidenceBase } from '../claim/evidence-base.ts';
import { timeRelation } from '../date/time-relation.ts';
import type { NoteId } from '../note/note.ts';
import { standingOf } from '../verdict/standing.ts';
import { type Standing, STANDINGS } from '../verdict/standing-words.ts';
import type { NameHolding } from './name-dictionary.ts';
import { askedPairs, type NoteTimePlace } from './note-time-place.ts';

/** What one dyestuff that shares a name could be, at the note's own place and date. */
export interface CandidateReading {
  readonly id: NoteId;
  readonly possible: boolean;
  /** Its best standing there and then; absent where the note gives neither place nor date. */
  readonly standing?: Standing;
  /** The colour-word through which it shares the name. */
  readonly colourWord?: NoteId;
}

/** Standings that rule a reading out. Silence does not: it is not absence. */
const RULED_OUT: ReadonlySet<Standing> = new Set(['absent', 'not-yet', 'no-longer']);

/**
 * The readings of a shared name. A candidate is possible unless at every place and date of the note it is known absent,
 * not yet or no longer there. One that shares the name only through a colour-word needs that word to have been in use there and then.
 *
 * @param holders who answers to the name.
 * @param at the note's place and date; where both are unknown everything is possible.
 */
export function readingsOf(base: EvidenceBase, holders: ReadonlyMap<NoteId, NameHolding>, at: NoteTimePlace): readonly CandidateReading[] {
  const known = at.regions.length > 0 || at.spans.length > 0;
  return [...holders].map(([id, { colourWord }]): CandidateReading => {
    const through = colourWord === undefined ? {} : { colourWord };
    if (!known) return { id, possible: true, ...through };
    const standing = bestStanding(base, id, at);
    const inUse = colourWord === undefined || wordInUse(base, colourWord, at);
    return { id, possible: inUse && !RULED_OUT.has(standing), standing, ...through };
  });
}

function bestStanding(base: EvidenceBase, id: NoteId, at: NoteTimePlace): Standing {
  const claims = base.claimsOf(id);
  const context = { regions: base.regions, everyday: base.isEveryday(id) };
  const ranks = askedPairs(at).map((asked) => STANDINGS.indexOf(standingOf(claims, { ...asked, fibreLine: [] }, context).standing));
  return STANDINGS[Math.min(...ranks)] ?? 'unrecorded';
}

function wordInUse(base: EvidenceBase, colourWord: NoteId, at: NoteTimePlace): boolean {
  const record = base.note(colourWord)?.record;
  if (record?.kind !== 'colour-word') return false;
  const region = record.region && base.regionId(record.region.text);
  const span = base.spanOf(record.when);
  return askedPairs(at).some((asked) => {
    const place = region === undefined ? 'here' : base.regions.relation(region, asked.region);
    const time = span ? timeRelation(span, asked.span).relation : 'part';
    return place !== 'elsewhere' && place !== 'neighbour' && time !== 'later' && time !== 'earlier';
  });
}
