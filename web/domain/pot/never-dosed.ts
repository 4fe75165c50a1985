import { fold } from '../text/fold.ts';

/** Why a material is named as history and never given an amount. */
export type RefusalReason = 'chromium' | 'arsenic' | 'lead' | 'mercury' | 'strong-acid' | 'tin-making';

const REFUSED: readonly (readonly [RefusalReason, RegExp])[] = [
  ['chromium', /\b(?:chrome|chromium|(?:bi|di)chromate|potassium dichromate)\b/],
  ['arsenic', /\b(?:arsenic|orpiment|realgar)\b/],
  ['lead', /\b(?:lead|sugar of lead|litharge|white lead|red lead|minium)\b/],
  ['mercury', /\b(?:mercury|quicksilver|cinnabar|vermilion|sublimate)\b/],
  ['strong-acid', /\b(?:aqua fortis|aqua regia|oil of vitriol|sulphuric acid|sulfuric acid|nitric acid|indigo sulphate|saxon blue)\b/],
  ['tin-making', /\btin composition\b/],
];

/** The reason a material is never dosed here, from its id or any of its names; undefined where it may be. */
export function neverDosed(names: readonly string[]): RefusalReason | undefined {
  for (const [reason, pattern] of REFUSED) if (names.some((name) => pattern.test(fold(name)))) return reason;
  return undefined;
}

/** Tin and copper salts: amounts are for staff who work by a safety data sheet, never for the public or children. */
export const isStaffOnly = (names: readonly string[]): boolean =>
  names.some((name) => /\b(?:tin|stannous|stannic|copper|blue vitriol|verdigris)\b/.test(fold(name)));
