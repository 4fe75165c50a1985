import { type Illuminant, TEXTILE } from '../../domain/colour/conditions.ts';
import { deltaE00, deltaE00Between } from '../../domain/colour/delta-e.ts';
import { asLab2, type ConditionedLab, labToLch } from '../../domain/colour/lab.ts';
import { metamerismIndex } from '../../domain/colour/metamerism.ts';
import { labToScreen } from '../../domain/colour/screen.ts';
import { labToWideScreen } from '../../domain/colour/wide-screen.ts';
import { spectrumToLab } from '../../domain/colour/xyz-lab.ts';
import { clothById, type FoundCloth } from '../cloth-by-id.ts';
import type { Notebook } from '../notebook.ts';
import { originInWords } from '../typed-colour.ts';
import { titleOf } from '../words/claim-line.ts';
import {
  differenceSentence,
  LIGHT_WORDS,
  LOOKED_LIGHTS,
  type LookedLight,
  metamerismSentence,
  UNMEASURED_LIGHT,
} from '../words/looking-words.ts';
import { type AfterLightView, afterLightView, type TypedLightDose } from './after-light-view.ts';
import { weaveOf } from './cloth-view.ts';
import { simulateSpread, USUAL_VARIATION } from '../../domain/colour/spread.ts';
import { groundsByFibre } from '../../domain/verdict/predicted-cloths.ts';
import { steadyChance } from '../steady-chance.ts';
import { chanceWords } from '../words/spread-words.ts';
import { spreadOfPredictions } from './spread-of-predictions.ts';

/** A cloth in one light. */
export interface LitCloth {
  /** `#rrggbb`, the nearest an ordinary screen can show. */
  readonly hex: string;
  readonly inScreenGamut: boolean;
  /** CSS `color()` for wide screens. */
  readonly wide: string;
  readonly inWideGamut: boolean;
  /** "45.1, 44.8, 27.9", for that light and 10°. */
  readonly lab: string;
  readonly lch: string;
}

/** A cloth laid down to be looked at. */
export interface LookedCloth {
  readonly id: string;
  readonly title: string;
  readonly detail: string;
  /** The note it is of. */
  readonly note?: string;
  readonly weave: string;
  readonly predicted: boolean;
  readonly lights: Readonly<Record<LookedLight, LitCloth>>;
  readonly after?: AfterLightView;
}

/** Two of them beside each other: a sentence for each light, and what else is to be said of it. */
export interface LookedPair {
  readonly one: string;
  readonly other: string;
  readonly says: Readonly<Record<LookedLight, readonly string[]>>;
}

export interface LookingView {
  readonly cloths: readonly LookedCloth[];
  readonly pairs: readonly LookedPair[];
  /** What was asked for and is not in the notebook. */
  readonly unknown: readonly string[];
}

const ILLUMINANT: Readonly<Record<LookedLight, Illuminant>> = { daylight: 'D65', lamp: 'A', gallery: 'LED-B3' };
/** More than these nobody can tell apart side by side. Our choice. */
export const MOST_LOOKED_AT = 6;

/** Dyeings worked out by chance for one prediction. Our choice: more change the figure by less than it is rounded. */
const CHANCES = 200;

interface Laid {
  readonly id: string;
  readonly cloth: FoundCloth;
}

/** Cloths side by side under three lights, and every two of them compared. Numbers hold for 10°; the screen's colours for its own 2°. */
export function lookingView(notebook: Notebook, ids: readonly string[], dose?: TypedLightDose): LookingView {
  const { base, colours } = notebook;
  const wanted = [...new Set(ids)].slice(0, MOST_LOOKED_AT);
  const laid = wanted.flatMap((id): Laid[] => {
    const cloth = clothById(base, colours, id);
    return cloth ? [{ id, cloth }] : [];
  });
  return {
    cloths: laid.map((one) => lookedCloth(notebook, one, dose)),
    pairs: laid.flatMap((one, at) => laid.slice(at + 1).map((other) => pairOf(one, other))),
    unknown: wanted.filter((id) => !laid.some((one) => one.id === id)),
  };
}

function lookedCloth(notebook: Notebook, { id, cloth }: Laid, dose: TypedLightDose | undefined): LookedCloth {
  const { base } = notebook;
  return {
    id,
    title: titleFor(notebook, cloth),
    detail: [cloth.fibre === undefined ? '' : titleOf(base, cloth.fibre), fromWords(notebook, cloth)]
      .filter((part) => part !== '')
      .join(' · '),
    ...(cloth.note === undefined ? {} : { note: cloth.note }),
    weave: weaveOf(base, cloth.fibre),
    predicted: cloth.is === 'predicted',
    lights: Object.fromEntries(LOOKED_LIGHTS.map((light) => [light, litCloth(cloth, light)])) as Record<LookedLight, LitCloth>,
    ...(dose && dose.megaluxHours > 0 ? { after: afterLightView(notebook, cloth, dose) } : {}),
  };
}

function titleFor({ base }: Notebook, { is, note, route, sample, undyed }: FoundCloth): string {
  if (is === 'colour' || note === undefined) return 'A bare colour';
  if (is === 'undyed') return `${titleOf(base, note)}, ${undyed ?? 'undyed'}`;
  if (is === 'predicted')
    return (route?.id ?? '')
      .split(' + ')
      .map((recipe) => titleOf(base, recipe))
      .join(' + ');
  return is === 'sample' && route?.recipe !== undefined
    ? `${titleOf(base, route.recipe)}, ${sample?.sample.code ?? note}`
    : titleOf(base, note);
}

function fromWords(notebook: Notebook, cloth: FoundCloth): string {
  const { is, colour, samples } = cloth;
  if (is === 'predicted') return `predicted, ${spreadOfPredictions(notebook)}${byChance(notebook, cloth)}`;
  if (is === 'recipe' && samples.length > 1) return `mean of ${samples.length} samples`;
  return originInWords(colour.origin);
}

/** How far this one prediction may be off, by how pots, measuring and the model vary. */
function byChance({ base, colours }: Notebook, { samples, fibre }: FoundCloth): string {
  const ground = fibre === undefined ? undefined : groundsByFibre(base, colours).get(fibre);
  if (!ground) return '';
  const dyes = samples.map(({ colour }) => ({ dyed: colour.spectrum, ground }));
  const origins = samples.map(({ colour }) => colour.origin);
  return `; ${chanceWords(simulateSpread(ground, dyes, steadyChance(), CHANCES, USUAL_VARIATION, origins))}`;
}

const labUnder = ({ colour }: FoundCloth, light: LookedLight): ConditionedLab =>
  light === 'daylight' ? { lab: colour.lab10, ...TEXTILE } : spectrumToLab(colour.spectrum, ILLUMINANT[light], TEXTILE.observer);

function litCloth(cloth: FoundCloth, light: LookedLight): LitCloth {
  const { colour } = cloth;
  // The eye settles on each light's white, as Lab does: what is drawn is the Lab under that light, for the screen's observer.
  const onScreen = light === 'daylight' ? colour.lab2 : asLab2(spectrumToLab(colour.spectrum, ILLUMINANT[light], 2).lab);
  const screen = labToScreen(onScreen);
  const wide = labToWideScreen(onScreen);
  const { lab } = labUnder(cloth, light);
  const { l, c, h } = labToLch(lab);
  return {
    hex: screen.hex,
    inScreenGamut: screen.inGamut,
    wide: wide.css,
    inWideGamut: wide.inGamut,
    lab: lab.map((value) => value.toFixed(1)).join(', '),
    lch: `L* ${l.toFixed(1)} · C* ${c.toFixed(1)}${h === undefined ? '' : ` · h ${h.toFixed(0)}°`}`,
  };
}

/** Of the samples behind a cloth, the measured one that is nearest to its colour. */
const measuredSample = ({ samples, colour, is }: FoundCloth) =>
  is === 'predicted'
    ? undefined
    : samples
        .filter((one) => one.colour.spectrumIs === 'measured')
        .sort((a, b) => deltaE00(a.colour.lab10, colour.lab10) - deltaE00(b.colour.lab10, colour.lab10))[0];

function pairOf(one: Laid, other: Laid): LookedPair {
  const says = (light: LookedLight): readonly string[] => {
    const [a, b] = [labUnder(one.cloth, light), labUnder(other.cloth, light)];
    const difference = deltaE00Between(a, b);
    const sentence = difference.ok ? [differenceSentence(light, ['this cloth', 'that cloth'], a.lab, b.lab, difference.value)] : [];
    return light === 'daylight' ? sentence : [...sentence, metamerismNote(one.cloth, other.cloth, light)];
  };
  return { one: one.id, other: other.id, says: { daylight: says('daylight'), lamp: says('lamp'), gallery: says('gallery') } };
}

function metamerismNote(one: FoundCloth, other: FoundCloth, light: LookedLight): string {
  const [a, b] = [measuredSample(one), measuredSample(other)];
  if (!a || !b) return UNMEASURED_LIGHT;
  const index = metamerismIndex(a.colour.spectrum, b.colour.spectrum, { illuminant: ILLUMINANT[light], observer: TEXTILE.observer });
  return metamerismSentence(light, index, [a.sample.code ?? a.trial, b.sample.code ?? b.trial]);
}

/** The lights with their exact names, for whoever shows the switch. */
export const lightNames = LOOKED_LIGHTS.map((light) => ({ light, exact: LIGHT_WORDS[light].exact }));
