import type { EvidenceBase } from '../claim/evidence-base.ts';
import { trialFacts, type TrialFacts } from './trial-facts.ts';

/** What may differ between two pots. */
export type TrialAspect =
  | 'dye'
  | 'dye-amount'
  | 'dye-form'
  | 'mordant'
  | 'mordant-amount'
  | 'mordant-form'
  | 'assistant'
  | 'bath'
  | 'fibre'
  | 'ground'
  | 'hardness'
  | 'pH'
  | 'temperature'
  | 'time'
  | 'dips'
  | 'lot'
  | 'vessel'
  | 'mass'
  | 'person'
  | 'date'
  | 'deviation';

/**
 * How much each may change the colour when it differs wholly, 0–10. Our judgement: what is dyed with and on comes first, then the
 * bath, the water and the heat; who stirred comes last. Said as a possibility, never as the cause.
 */
export const LIKELY_EFFECT = {
  dye: 10,
  mordant: 9,
  bath: 8,
  fibre: 8,
  ground: 7,
  'dye-amount': 7,
  dips: 7,
  hardness: 6,
  temperature: 6,
  'mordant-amount': 5,
  pH: 5,
  lot: 5,
  vessel: 4,
  assistant: 4,
  'dye-form': 4,
  time: 4,
  'mordant-form': 3,
  deviation: 3,
  mass: 2,
  date: 1,
  person: 1,
} as const satisfies Record<TrialAspect, number>;

/** Where a difference in numbers counts as whole. Our judgement. */
const WHOLE = { percent: 1, ppm: 180, pH: 2, celsius: 20, time: 1, dips: 1, mass: 2 } as const;

/** One thing that differed. */
export interface TrialDifference {
  readonly aspect: TrialAspect;
  /** The material it is about, where it is about one. */
  readonly material?: string;
  /** What each trial says, in the order asked; undefined where it does not say. */
  readonly values: readonly (string | undefined)[];
  /** 0–10, our judgement: the aspect's weight times how far the values lie apart. */
  readonly effect: number;
  /** False where one of the trials does not say: then nothing is known to differ. */
  readonly known: boolean;
}

/** Two or more trials beside each other. */
export interface TrialComparison {
  readonly trials: readonly TrialFacts[];
  /** Largest likely effect first. */
  readonly differences: readonly TrialDifference[];
  /** Aspects that at least one trial does not speak of: what should be written down next time. */
  readonly unsaid: readonly TrialDifference[];
  /** The one thing that differed, where it is one (day and person aside): then the colours may be told apart by it. */
  readonly single?: TrialDifference;
  readonly missing: readonly string[];
}

/**
 * What differed between trials, by its likely effect.
 *
 * @param ids two or more; unknown ones are listed in `missing`.
 * @error undefined where fewer than two are known.
 */
export function compareTrials(base: EvidenceBase, ids: readonly string[]): TrialComparison | undefined {
  const found = [...new Set(ids)].map((id) => ({ id, facts: trialFacts(base, id) }));
  const trials = found.flatMap(({ facts }) => (facts ? [facts] : []));
  if (trials.length < 2) return undefined;
  const all = [...plainDifferences(trials), ...materialDifferences(trials)].sort(
    (a, b) => b.effect - a.effect || a.aspect.localeCompare(b.aspect, 'en') || (a.material ?? '').localeCompare(b.material ?? '', 'en'),
  );
  const differences = all.filter(({ known }) => known);
  const telling = differences.filter(({ aspect }) => aspect !== 'date' && aspect !== 'person' && aspect !== 'deviation');
  const [single] = telling;
  return {
    trials,
    differences,
    unsaid: all.filter(({ known }) => !known),
    ...(single && telling.length === 1 && { single }),
    missing: found.filter(({ facts }) => !facts).map(({ id }) => id),
  };
}

function plainDifferences(trials: readonly TrialFacts[]): readonly TrialDifference[] {
  const lists = (of: (one: TrialFacts) => readonly string[]) =>
    trials.map((one) => (of(one).length === 0 ? undefined : of(one).join('; ')));
  const numbers = (of: (one: TrialFacts) => number | undefined, whole: number, relative = false) => apart(trials.map(of), whole, relative);
  const text = (of: (one: TrialFacts) => number | undefined, unit: string) =>
    trials.map((one) => (of(one) === undefined ? undefined : `${Number((of(one) ?? 0).toPrecision(4))}${unit}`));
  return [
    differ(
      'bath',
      trials.map(({ bath }) => String(bath)),
    ),
    differ(
      'fibre',
      lists(({ fibres }) => fibres),
    ),
    differ(
      'ground',
      lists(({ onto }) => onto),
    ),
    differ(
      'hardness',
      trials.map(({ hardness }) => hardness),
      numbers(({ hardnessPpm }) => hardnessPpm, WHOLE.ppm),
    ),
    differ(
      'pH',
      text(({ pH }) => pH, ''),
      numbers(({ pH }) => pH, WHOLE.pH),
    ),
    differ(
      'temperature',
      text(({ topCelsius }) => topCelsius, ' °C'),
      numbers(({ topCelsius }) => topCelsius, WHOLE.celsius),
    ),
    differ(
      'time',
      text(({ heldMinutes }) => heldMinutes, ' min'),
      numbers(({ heldMinutes }) => heldMinutes, WHOLE.time, true),
    ),
    // Only a vat is dipped: pots without dips lack nothing.
    ...(trials.some(({ dips }) => dips !== undefined)
      ? [
          differ(
            'dips',
            text(({ dips }) => dips, ''),
            numbers(({ dips }) => dips, WHOLE.dips, true),
          ),
        ]
      : []),
    differ(
      'lot',
      lists(({ lots }) => lots),
    ),
    differ(
      'vessel',
      trials.map(({ vessel }) => vessel),
    ),
    differ(
      'mass',
      text(({ fibreGrams }) => fibreGrams, ' g'),
      numbers(({ fibreGrams }) => fibreGrams, WHOLE.mass, true),
    ),
    differ(
      'person',
      trials.map(({ by }) => by),
    ),
    differ(
      'date',
      trials.map(({ date }) => date),
    ),
    differ(
      'deviation',
      trials.map(({ deviations }) => (deviations.length === 0 ? '' : deviations.join('; '))),
    ),
  ].filter((one) => one !== undefined);
}

function materialDifferences(trials: readonly TrialFacts[]): readonly TrialDifference[] {
  const ids = [...new Set(trials.flatMap(({ materials }) => materials.map(({ id }) => id)))];
  return ids
    .flatMap((id) => {
      const used = trials.map(({ materials }) => materials.find((one) => one.id === id));
      const role = used.find((one) => one)?.role;
      const group = role === 'dye' ? 'dye' : role === 'mordant' || role === 'modifier' ? 'mordant' : 'assistant';
      // Materials are written down or were not used: a trial that lists none at all says nothing.
      if (trials.some(({ materials }) => materials.length === 0))
        return [
          differ(
            group,
            trials.map(({ materials }) => (materials.length === 0 ? undefined : id)),
            1,
            id,
          ),
        ];
      if (used.some((one) => !one))
        return [
          differ(
            group,
            used.map((one) => (one ? id : '')),
            1,
            id,
          ),
        ];
      if (group === 'assistant')
        return [
          differ(
            'assistant',
            used.map((one) => one?.amount ?? ''),
            0.5,
            id,
          ),
        ];
      const shares = apart(
        used.map((one) => one?.percent),
        WHOLE.percent,
        true,
      );
      return [
        differ(
          `${group}-amount`,
          used.map((one) => one?.amount),
          shares,
          id,
        ),
        differ(
          `${group}-form`,
          used.map((one) => one?.form),
          1,
          id,
        ),
      ];
    })
    .filter((one) => one !== undefined);
}

/** A difference, if there is one. */
function differ(aspect: TrialAspect, values: readonly (string | undefined)[], share = 1, material?: string): TrialDifference | undefined {
  const said = values.filter((value) => value !== undefined);
  const known = said.length === values.length;
  if (said.length === 0 || (known && new Set(said).size < 2)) return undefined;
  const effect = known ? LIKELY_EFFECT[aspect] * share : 0;
  return { aspect, ...(material === undefined ? {} : { material }), values, effect: Number(effect.toFixed(2)), known };
}

/** How far numbers lie apart, 0.1–1: 1 where they differ by `whole`, or by that share of the smaller one. */
function apart(values: readonly (number | undefined)[], whole: number, relative = false): number {
  const known = values.filter((value) => value !== undefined);
  if (known.length < 2) return 1;
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const gap = relative ? (least > 0 ? (most - least) / least : whole) : most - least;
  return Math.min(1, Math.max(0.1, gap / whole));
}
