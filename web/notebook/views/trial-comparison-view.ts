import { closeness, deltaE00 } from '../../domain/colour/delta-e.ts';
import { compareTrials, type TrialDifference } from '../../domain/pot/compare-trials.ts';
import { NO_DOSE, amountMayShow, withoutDoses } from '../../domain/pot/without-doses.ts';
import type { Notebook } from '../notebook.ts';
import { deltaText } from '../words/because.ts';
import { inSentence } from '../words/claim-line.ts';
import { comparisonText, differenceLabel, differenceValues } from '../words/trial-words.ts';
import { weaveOf } from './cloth-view.ts';

/** One of the pots laid beside each other. */
export interface ComparedPot {
  readonly id: string;
  readonly title: string;
  readonly hex?: string;
  readonly inScreenGamut: boolean;
  readonly weave: string;
}

/** What differed, and what each pot says of it, in the order of the pots. */
export interface DifferenceRow {
  readonly label: string;
  readonly values: readonly string[];
}

/** Trials beside each other. */
export interface TrialComparisonView {
  readonly pots: readonly ComparedPot[];
  /** What it comes to; '' below two pots. */
  readonly says: string;
  /** Largest likely effect first: each may have made the difference. */
  readonly differences: readonly DifferenceRow[];
  readonly unsaid: readonly DifferenceRow[];
  /** "wq25-001 and wq25-003: ΔE00 2.4, match." */
  readonly colours: readonly string[];
  readonly missing: readonly string[];
}

/** What differed between pots, and how far their colours lie apart. */
export function trialComparisonView(notebook: Notebook, ids: readonly string[]): TrialComparisonView {
  const { base, colours } = notebook;
  const wanted = [...new Set(ids)];
  const pots = wanted.flatMap((id) => {
    const note = base.note(id);
    if (note?.record.kind !== 'trial') return [];
    const [sample] = note.record.samples;
    const colour = note.record.samples.map((one) => colours.of(one, note.file)).find((one) => one !== undefined);
    const fibre = sample?.fibre && base.resolve(sample.fibre.text, ['fibre']);
    return [{ pot: { id: note.id, title: withoutDoses(base, note.title), weave: weaveOf(base, fibre) }, colour }];
  });
  const compared = compareTrials(base, wanted);
  const row = (difference: TrialDifference): DifferenceRow => ({
    label: differenceLabel(difference, (id) => inSentence(base, id)),
    values: differenceValues(shown(notebook, difference)),
  });
  return {
    pots: pots.map(({ pot, colour }) => ({ ...pot, ...(colour && { hex: colour.hex }), inScreenGamut: colour?.inScreenGamut ?? true })),
    says: compared ? comparisonText(compared) : '',
    differences: compared?.differences.map(row) ?? [],
    unsaid: compared?.unsaid.map(row) ?? [],
    colours: pots.flatMap((one, at) =>
      pots.slice(at + 1).map((other) => {
        const names = `${one.pot.id} and ${other.pot.id}`;
        if (!one.colour || !other.colour) return `${names}: one of them has no colour written down.`;
        const apart = deltaE00(one.colour.lab10, other.colour.lab10);
        return `${names}: ΔE00 ${deltaText(apart)}, ${closeness(apart).replace('-', ' ')}.`;
      }),
    ),
    missing: wanted.filter((id) => !pots.some(({ pot }) => pot.id === id)),
  };
}

/** A difference without amounts that are not shown, and with names for ids. */
function shown({ base }: Notebook, difference: TrialDifference): TrialDifference {
  const { aspect, material, values } = difference;
  const isAmount = /-(?:amount|form)$/.test(aspect) || aspect === 'assistant';
  const withheld = isAmount && material !== undefined && !amountMayShow(base, material);
  const named = aspect === 'dye' || aspect === 'mordant' || aspect === 'fibre';
  return {
    ...difference,
    values: values.map((value) => {
      if (value === undefined || value === '') return value;
      if (withheld) return NO_DOSE;
      return withoutDoses(base, named && base.note(value) ? inSentence(base, value) : value);
    }),
  };
}
