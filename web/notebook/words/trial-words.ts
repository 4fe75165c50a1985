import type { TrialAspect, TrialComparison, TrialDifference } from '../../domain/pot/compare-trials.ts';
import type { RefusalReason } from '../../domain/pot/never-dosed.ts';
import type { Repeatability, Repeatable } from '../../domain/pot/repeatability.ts';
import type { HardnessBand } from '../../domain/pot/water-hardness.ts';

/** What may differ between trials. */
export const aspectWords = {
  dye: 'dyestuff',
  'dye-amount': 'amount of dyestuff',
  'dye-form': 'form of the dyestuff',
  mordant: 'mordant',
  'mordant-amount': 'amount of mordant',
  'mordant-form': 'form of the mordant',
  assistant: 'what was added',
  bath: 'first or later bath',
  fibre: 'fibre',
  ground: 'what it was dyed onto',
  hardness: 'hardness of the water',
  pH: 'pH of the water',
  temperature: 'highest temperature',
  time: 'time at heat',
  dips: 'number of dips',
  lot: 'lot',
  vessel: 'vessel',
  mass: 'mass of fibre',
  person: 'who dyed',
  date: 'date',
  deviation: 'deviations noted',
} as const satisfies Record<TrialAspect, string>;

/** What a difference is about: "Amount of mordant, alum". `name` gives a material its title. */
export const differenceLabel = ({ aspect, material }: TrialDifference, name: (id: string) => string = (id) => id): string =>
  capital(material === undefined ? aspectWords[aspect] : `${aspectWords[aspect]}, ${name(material)}`);

/** What each of the pots says of it. */
export const differenceValues = ({ values }: TrialDifference): readonly string[] =>
  values.map((value) => (value === undefined ? 'not written down' : value === '' ? 'none' : value));

/** What a comparison comes to. */
export function comparisonText({ differences, single, unsaid }: TrialComparison): string {
  const first = differences[0];
  if (single && unsaid.length === 0)
    return `Only one thing was changed, ${aspectWords[single.aspect]}: the difference in colour may well come from it.`;
  if (single) return `One thing is known to differ, ${aspectWords[single.aspect]}; other things were not written down.`;
  if (!first)
    return unsaid.length === 0
      ? 'Nothing written down differs.'
      : 'Nothing that both wrote down differs; some things were not written down.';
  return `Several things differed, so none can be called the cause. By our judgement the ${aspectWords[first.aspect]} is likely to matter most.`;
}

/** Whether a recipe comes out alike. */
export const repeatableWords = { yes: 'yes', no: 'no', untested: 'untested' } as const satisfies Record<Repeatable, string>;

/** Repeatability in a sentence. */
export function repeatabilityText({ repeatable, mcdm, repeats }: Repeatability): string {
  const most = Math.max(0, ...repeats.map(({ trials }) => trials.length));
  if (repeatable === 'untested' || mcdm === undefined)
    return `Repeatable: untested. ${most < 2 ? 'No way of doing it was repeated' : `One way was done ${most} times`}; three pots with the same amounts, fibre and ground are needed.`;
  return `Repeatable: ${repeatable}. Repeats lie ΔE00 ${mcdm.toFixed(1)} from their mean on average in the most scattered set; up to 3 counts as alike (our choice).`;
}

/** Why something is never dosed. */
export const refusalWords = {
  chromium: 'Chromium salts cause cancer and harm genes and unborn children.',
  arsenic: 'Arsenic is a deadly poison.',
  lead: 'Lead harms nerves and children, and stays in the body.',
  mercury: 'Mercury is poisonous, as salt and as vapour.',
  'strong-acid': 'Strong mineral acids maim; a finished product may be bought where one is sold.',
  'tin-making': 'Making it dissolves tin in strong acids and gives off poisonous fumes.',
  'protected-lichen': 'A protected lichen: only bought or windfall stock is dosed, where the recipe says so.',
} as const satisfies Record<RefusalReason, string>;

/** Water by its hardness; the number stands beside it. */
export const hardnessWords = {
  soft: 'soft',
  moderate: 'moderately hard',
  hard: 'hard',
  'very-hard': 'very hard',
} as const satisfies Record<HardnessBand, string>;

/** The pH keeps its small letter. */
const capital = (text: string): string => (text.startsWith('pH') ? text : text.charAt(0).toUpperCase() + text.slice(1));
