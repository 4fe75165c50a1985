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

/** The evidence of either side of a comparison: the same, unless two notebooks are compared. */
export interface ComparedBases {
  readonly before: EvidenceBase;
  readonly now: EvidenceBase;
}

/** What happened to a colour between two palettes. */
export const paletteChangeWords = {
  came: 'Came',
  went: 'Went',
  origin: 'Changed origin',
  verdict: 'Changed verdict',
} as const satisfies Record<PaletteChange['kind'], string>;

/** A change between two palettes in a sentence. */
export const changeInWords = (bases: ComparedBases, change: PaletteChange): string =>
  `${paletteChangeWords[change.kind]}: ${changeDetail(bases, change)}`;

/** A change between two palettes in a sentence, without the word for its kind: that is a heading's. */
export function changeDetail(bases: ComparedBases, change: PaletteChange): string {
  const { was, is } = sideWords(bases);
  switch (change.kind) {
    case 'came':
      return `${nameOf(bases.now, change.now)}, ${verdictText(change.now)}; ${change.before ? `${was}, ${whyNot(bases.before, change.before)}` : notThere(was)}.`;
    case 'went':
      return `${nameOf(bases.before, change.before)}; ${change.now ? `${is} ${whyNot(bases.now, change.now)}` : notThere(is)}.`;
    case 'origin':
      return `${nameOf(bases.now, change.now)}, ${originText(change.before)} ${was}, ${is} ${originText(change.now)}${whyMoved(bases, change)}.`;
    case 'verdict':
      return `${nameOf(bases.now, change.now)}, ${verdictText(change.before)} ${was}, ${is} ${verdictText(change.now)}${whyVerdict(bases, change)}.`;
  }
}

/** What either side is called: dates follow each other, notebooks lie side by side. */
const sideWords = ({ before, now }: ComparedBases): { readonly was: string; readonly is: string } =>
  before === now ? { was: 'before', is: 'now' } : { was: 'in the other notebook', is: 'in this one' };

/** "Woad blue on wool"; "Woad blue on wool (worsted)" where the sample's fibre is another than the title says. */
function nameOf(base: EvidenceBase, { judgement: { route }, fibre }: PaletteColour): string {
  const title = titleOf(base, route.recipe ?? route.id);
  const cloth = fibre === undefined ? '' : titleOf(base, fibre).toLowerCase();
  return title.toLowerCase().includes(cloth) ? title : `${title} (${cloth})`;
}
const verdictText = ({ judgement }: PaletteColour): string => verdictWords[judgement.verdict].word.toLowerCase();
const originText = ({ origin }: PaletteColour): string => (origin === undefined ? 'of unknown origin' : colourOriginWords[origin]);

/** A colour that one side does not have at all. */
const notThere = (side: string): string => `${side}, no coloured sample of it`;

/** ": now such a cloth is recorded (…)", ": madder not recorded before, now imported". */
function whyVerdict(bases: ComparedBases, { before, now }: { readonly before: PaletteColour; readonly now: PaletteColour }): string {
  const words = sideWords(bases);
  const [was, is] = [before.judgement, now.judgement];
  const [old, found] = [was.witnesses[0], is.witnesses[0]];
  if (!old && found) return `: ${words.is} such a cloth or dyeing is recorded (${titleOf(bases.now, found.note)})`;
  if (old && !found) return `: only ${words.was} is such a cloth or dyeing recorded (${titleOf(bases.before, old.note)})`;
  return whyMoved(bases, { before, now });
}

/** ": woad imported before, now to hand there": the first material that does not stand alike; empty where all do. */
function whyMoved(bases: ComparedBases, { before, now }: { readonly before: PaletteColour; readonly now: PaletteColour }): string {
  const words = sideWords(bases);
  const [was, is] = [before.judgement, now.judgement];
  const moved = is.materials.find(({ material, standing }) =>
    was.materials.some((one) => one.material.id === material.id && one.standing !== standing),
  );
  const earlier = was.materials.find(({ material }) => material.id === moved?.material.id);
  if (!moved || !earlier) return '';
  return `: ${inSentence(bases.now, moved.material.id)} ${standingWords[earlier.standing]} ${words.was}, ${words.is} ${standingWords[moved.standing]}`;
}

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
