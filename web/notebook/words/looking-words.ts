import { closeness } from '../../domain/colour/delta-e.ts';
import { type Lab, labToLch } from '../../domain/colour/lab.ts';
import type { Metamerism } from '../../domain/colour/metamerism.ts';
import { deltaText } from './because.ts';

/** The lights cloths are looked at under, as they are said. */
export const LOOKED_LIGHTS = ['daylight', 'lamp', 'gallery'] as const;
export type LookedLight = (typeof LOOKED_LIGHTS)[number];

export const LIGHT_WORDS: Readonly<Record<LookedLight, { readonly under: string; readonly exact: string }>> = {
  daylight: { under: 'In daylight', exact: 'CIE D65' },
  lamp: { under: 'By the lamp', exact: 'tungsten, CIE A' },
  gallery: { under: 'In the gallery', exact: 'a blue-pumped LED, CIE LED-B3' },
};

/** Below this a difference of one kind is not worth a word. Our choice: in units of Lab. */
const WORTH_SAYING = 1.5;

/**
 * The difference of two cloths in one light, as a sentence.
 *
 * @param names what the two are called, such as this cloth and that cloth.
 */
export function differenceSentence(
  light: LookedLight,
  [one, other]: readonly [string, string],
  a: Lab,
  b: Lab,
  difference: number,
): string {
  const word = closeness(difference).replace('-', ' ');
  const how = directionWords(a, b);
  const said =
    word === 'match'
      ? 'they match'
      : word === 'near'
        ? 'they are near'
        : word === 'apart'
          ? 'they are apart'
          : 'they are of the same family';
  return `${LIGHT_WORDS[light].under} ${said}, ΔE00 ${deltaText(difference)}${how === '' ? '' : `: ${other} is ${how} than ${one}`}.`;
}

function directionWords(a: Lab, b: Lab): string {
  const dL = b[0] - a[0];
  const dC = (labToLch(b).c ?? 0) - (labToLch(a).c ?? 0);
  const [da, db] = [b[1] - a[1], b[2] - a[2]];
  const words = [
    [Math.abs(dL), dL > 0 ? 'lighter' : 'darker'],
    [Math.abs(dC), dC > 0 ? 'fuller' : 'duller'],
    [Math.abs(da), da > 0 ? 'redder' : 'greener'],
    [Math.abs(db), db > 0 ? 'yellower' : 'bluer'],
  ] as const;
  const telling = words.filter(([size]) => size >= WORTH_SAYING).sort(([x], [y]) => y - x);
  return telling
    .slice(0, 2)
    .map(([, word]) => word)
    .join(' and ');
}

/** Whether two measured samples part in another light although daylight makes them alike. */
export function metamerismSentence(light: LookedLight, { deltaE00 }: Metamerism, samples: readonly [string, string]): string {
  const apart =
    deltaE00 < 1
      ? 'hold together here: the change of light alone adds'
      : 'part here: brought to match in daylight, they would still differ by';
  return `Their measured spectra (${samples.join(' and ')}) ${apart} ΔE00 ${deltaText(deltaE00)} ${LIGHT_WORDS[light].under.toLowerCase()} (metamerism, CIE 15).`;
}

/** What is said where a light was worked out from a curve nobody measured. */
export const UNMEASURED_LIGHT =
  'One of the two has no measured spectrum: other lights are worked out from the smoothest curve of its colour, and whether the two are metameric cannot be said.';
