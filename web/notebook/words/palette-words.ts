import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { PaletteChange } from '../../domain/palette/compare-palettes.ts';
import type { HueFamily } from '../../domain/palette/hue-family.ts';
import type { ColourOriginWord, PaletteColour } from '../../domain/palette/palette.ts';
import { inSentence, titleOf } from './claim-line.ts';
import { standingWords, verdictWords } from './verdict-words.ts';
import { inList } from './in-list.ts';

/** Where a colour came from, as a word on its own. */
export const colourOriginWords = {
  local: 'local dyestuff',
  imported: 'imported dyestuff',
  'cloth-only': 'came as cloth',
  'on-cloth': 'found on cloth',
  undyed: 'undyed',
} as const satisfies Record<ColourOriginWord, string>;

/** A change between two palettes in a sentence. */
export function changeInWords(base: EvidenceBase, change: PaletteChange): string {
  switch (change.kind) {
    case 'came':
      return `Came: ${nameOf(base, change.now)}, ${verdictText(change.now)}${change.before ? `; before, ${whyNot(base, change.before)}` : ''}.`;
    case 'went':
      return `Went: ${nameOf(base, change.before)}${change.now ? `; now ${whyNot(base, change.now)}` : ''}.`;
    case 'origin':
      return `Changed origin: ${nameOf(base, change.now)}, ${originText(change.before)} before, now ${originText(change.now)}.`;
    case 'verdict':
      return `Changed verdict: ${nameOf(base, change.now)}, ${verdictText(change.before)} before, now ${verdictText(change.now)}.`;
  }
}

const nameOf = (base: EvidenceBase, { judgement: { route } }: PaletteColour): string => titleOf(base, route.recipe ?? route.id);
const verdictText = ({ judgement }: PaletteColour): string => verdictWords[judgement.verdict].word.toLowerCase();
const originText = ({ origin }: PaletteColour): string => (origin === undefined ? 'of unknown origin' : colourOriginWords[origin]);

/** "tin not yet known", "madder and alum not recorded". */
function whyNot(base: EvidenceBase, { judgement }: PaletteColour): string {
  const names = judgement.weakest.map((id) => inSentence(base, id));
  return `${inList(names)} ${standingWords[judgement.standing]}`;
}

/** The families no cloth reaches, in a sentence; empty when there is none. */
export function gapSentence(gaps: readonly HueFamily[]): string {
  if (gaps.length === 0) return '';
  return `No ${inList(gaps, 'or')} that the notes can stand behind.`;
}

/** Both orders in which two recipes can be dyed one over the other. */
export function bothOrders(base: EvidenceBase, [one, other]: readonly [string, string]): string {
  const [first, second] = [inSentence(base, one), inSentence(base, other)];
  return `Dye ${first}, then ${second} over it; or ${second} first, then ${first} over it. The model makes no difference between the two, the pot may.`;
}
