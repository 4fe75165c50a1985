import type { PlaceRelation } from '../../domain/place/region-tree.ts';
import type { KnownBy, Status } from '../../domain/note/note.ts';
import type { EvidenceClass } from '../../domain/claim/evidence-class.ts';
import type { Origin, Standing, Verdict } from '../../domain/verdict/standing-words.ts';

/** A verdict as it is written large, and what it says in one sentence. */
export const verdictWords = {
  attested: { word: 'Attested', means: 'Everything was to hand, and your notes record such a cloth or such a dyeing there and then.' },
  'attested-as-cloth': { word: 'Attested as cloth', means: 'It came ready dyed, as cloth or yarn; nothing says that it was dyed there.' },
  feasible: { word: 'Feasible', means: 'Everything was to hand; your notes record no such cloth.' },
  plausible: { word: 'Plausible', means: 'The evidence comes near, in time, in place or in certainty, and does not quite reach.' },
  disputed: { word: 'Disputed', means: 'Your notes hold evidence for it and evidence against it. Both are shown.' },
  unsupported: { word: 'Unsupported', means: 'Your notes say nothing that reaches this place and time. Silence is not absence.' },
  'out-of-period': { word: 'Out of period', means: 'A needed material was not known yet, or no longer, by a known date.' },
  contradicted: { word: 'Contradicted', means: 'Your notes hold that a needed material was not available there and then.' },
  'nothing-near': { word: 'Nothing near', means: 'No sample or undyed cloth in your notes comes within the tolerance.' },
} as const satisfies Record<Verdict | 'nothing-near', { word: string; means: string }>;

/** How a material stands, after "stands". */
export const standingWords = {
  local: 'to hand there',
  imported: 'imported',
  'cloth-only': 'known there only in finished cloth',
  'on-cloth': 'found on cloth there',
  perhaps: 'perhaps to hand',
  nearby: 'recorded nearby',
  contested: 'contested',
  unrecorded: 'not recorded',
  'no-longer': 'no longer used',
  'not-yet': 'not yet known',
  absent: 'known to be absent',
} as const satisfies Record<Standing, string>;

/** Where it came from. */
export const originWords = {
  local: 'local',
  imported: 'imported',
  'cloth-only': 'as cloth only',
  'on-cloth': 'on a find',
} as const satisfies Record<Origin, string>;

/** What a claim says. */
export const statusWords = {
  wild: 'grew wild',
  grown: 'was grown',
  made: 'was made',
  imported: 'was imported',
  'cloth-only': 'came only as cloth',
  absent: 'was absent',
  'on-cloth': 'is on a find',
} as const satisfies Record<Status, string>;

/** How it is known. */
export const knownByWords = {
  analysis: 'dye analysis',
  remains: 'remains',
  text: 'text',
  trade: 'trade record',
  law: 'law',
  image: 'picture',
  trial: 'trial',
  practice: 'later practice',
  inference: 'inference',
} as const satisfies Record<KnownBy, string>;

/** The class of evidence. */
export const classWords = {
  physical: 'physical',
  documentary: 'documentary',
  pictorial: 'pictorial',
  experimental: 'experimental',
  inference: 'inference',
} as const satisfies Record<EvidenceClass, string>;

/** How a claim's place lies to the asked one. */
export const placeWords = {
  here: 'the place itself',
  within: 'inside it',
  around: 'the wider region',
  neighbour: 'a neighbouring region',
  elsewhere: 'elsewhere',
} as const satisfies Record<PlaceRelation, string>;
