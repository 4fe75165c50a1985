import { type OnScreen, onScreen } from '../../domain/colour/swatch-colour.ts';
import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { labToLch } from '../../domain/colour/lab.ts';
import type { Candidate } from '../../domain/verdict/ask.ts';
import type { Verdict } from '../../domain/verdict/standing-words.ts';
import { lookedSample } from '../looking-address.ts';
import { deltaText } from '../words/because.ts';
import { titleOf } from '../words/claim-line.ts';
import { bothOrders } from '../words/palette-words.ts';
import { verdictWords } from '../words/verdict-words.ts';

/** A piece of cloth as it is shown: plain values, ready for a page or a printed sheet. */
export interface ClothView extends OnScreen {
  readonly id: string;
  /** What is laid down to look at it closely. */
  readonly look: string;
  readonly title: string;
  readonly recipe?: string;
  readonly trial?: string;
  readonly code?: string;
  /** The fibre whose weave is drawn. */
  readonly weave: string;
  readonly fibre: string;
  readonly verdict: Verdict;
  readonly verdictWord: string;
  readonly classes: number;
  readonly predicted: boolean;
  /** "45.1, 44.8, 27.9". */
  readonly lab: string;
  /** "L* 45 · C* 53 · h 32°". */
  readonly lch: string;
  readonly deltaE: string;
  readonly closeness: string;
  readonly onAnotherFibre: boolean;
  /** "American cochineal for kermes". */
  readonly standIns: readonly string[];
  /** "mean of 4 samples", or "1 sample". */
  readonly samples: string;
  /** Of a predicted colour: both orders it can be dyed in. */
  readonly orders?: string;
  /** Of a predicted colour: how far off it is likely to be, and how that is known. */
  readonly spread?: string;
}

/** A candidate as a piece of cloth. */
export function clothView(base: EvidenceBase, one: Candidate): ClothView {
  const { judgement, nearest, colour } = one;
  const { route } = judgement;
  const fibre = nearest?.fibre ?? route.fibre;
  const { l, c, h } = labToLch(colour.lab10);
  return {
    id: `${route.id}|${fibre ?? ''}`,
    look: nearest ? lookedSample(nearest) : fibre === undefined ? route.id : `${route.id}|${fibre}`,
    title: titleOf(base, route.recipe ?? route.id),
    ...(route.recipe === undefined ? {} : { recipe: route.recipe }),
    ...(nearest && { trial: nearest.trial }),
    ...(nearest?.sample.code === undefined ? {} : { code: nearest.sample.code }),
    ...onScreen(colour),
    weave: weaveOf(base, fibre),
    fibre: fibre === undefined ? '' : titleOf(base, fibre),
    verdict: judgement.verdict,
    verdictWord: verdictWords[judgement.verdict].word,
    classes: judgement.classes.length,
    predicted: one.colourFrom === 'predicted',
    lab: colour.lab10.map((value) => value.toFixed(1)).join(', '),
    lch: `L* ${l.toFixed(0)} · C* ${c.toFixed(0)}${h === undefined ? '' : ` · h ${h.toFixed(0)}°`}`,
    deltaE: deltaText(one.deltaE00),
    closeness: one.closeness.replace('-', ' '),
    onAnotherFibre: one.onAnotherFibre,
    ...(one.overDye && { orders: bothOrders(base, one.overDye) }),
    standIns: standInsOf(base, one),
    samples: one.overDye
      ? 'predicted, either bath first'
      : one.samples.length === 0
        ? 'undyed'
        : one.samples.length === 1
          ? '1 sample'
          : `nearest of ${one.samples.length} samples`,
  };
}

/** The fibre at the root of a kind: the one whose weave is drawn. */
export const weaveOf = (base: EvidenceBase, fibre: string | undefined): string =>
  fibre === undefined ? 'wool' : (base.fibreLine(fibre).at(-1) ?? fibre);

function standInsOf(base: EvidenceBase, { judgement, nearest }: Candidate): readonly string[] {
  const declared = judgement.route.materials.flatMap(({ id, usedInstead }) =>
    usedInstead === undefined ? [] : [[usedInstead, id] as const],
  );
  const tried = (nearest?.standIns ?? []).flatMap(({ what, standsFor }) =>
    what && standsFor ? [[what.text, standsFor.text] as const] : [],
  );
  return [...new Set([...declared, ...tried].map(([used, meant]) => `${titleOf(base, used)} for ${titleOf(base, meant).toLowerCase()}`))];
}
