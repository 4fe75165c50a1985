import { namesOf } from '../claim/name-index.ts';
import type { Note } from '../note/note.ts';
import { fold } from '../text/fold.ts';

/** Why a material is named as history and never given an amount. */
export type RefusalReason = 'chromium' | 'arsenic' | 'lead' | 'mercury' | 'strong-acid' | 'tin-making' | 'protected-lichen';

/** Who reads: tin and copper amounts are for staff alone; what is never dosed is dosed for nobody. */
export type Audience = 'public' | 'staff';

const REFUSED: readonly (readonly [RefusalReason, RegExp])[] = [
  ['chromium', /\b(?:chrome|chromium|chromic acid|(?:bi|di)chromate|chrom(?:kali)?|chromsaure)\b/],
  ['arsenic', /\b(?:arseni\w*|orpiment|realgar|auripigment\w*|operment|orpin)\b/],
  ['lead', /\b(?:lead|sugar of lead|litharge|white lead|red lead|minium|massicot|cerus\w+|bleizucker|bleiweiss)\b/],
  ['mercury', /\b(?:mercur\w*|quicksilver|quecksilber|cinnabar|vermilion|calomel|corrosive sublimate|sublimate)\b/],
  [
    'strong-acid',
    /\b(?:aqua ?fortis|aqua regia|eau forte|scheidewasser|oil of vitriol|vitriol oil|vitriolol|spirit of (?:salt|nitre)|muriatic acid|hydrochloric acid|sulph?furic acid|sulphuric acid|nitric acid|indigo sulph?f?ate|saxon blue)\b/,
  ],
  ['tin-making', /\b(?:tin composition|scarlet composition)\b/],
  ['protected-lichen', /\b(?:lungwort lichen|tree lungwort|lobaria\w*)\b/],
];
/** Elements that a formula may not hold. */
const REFUSED_ELEMENTS: readonly (readonly [RefusalReason, RegExp])[] = [
  ['chromium', /Cr(?![a-z])/],
  ['arsenic', /As(?![a-z])/],
  ['lead', /Pb(?![a-z])/],
  ['mercury', /Hg(?![a-z])/],
];

/** The reason a material is never dosed here, from its id or any of its names; undefined where it may be. */
export function neverDosed(names: readonly string[]): RefusalReason | undefined {
  for (const [reason, pattern] of REFUSED) if (names.some((name) => pattern.test(fold(name)))) return reason;
  return undefined;
}

/**
 * As `neverDosed`, from everything known of an ingredient: its note's names and formula, and the form the recipe asks for.
 *
 * A lichen whose note says that it is protected is dosed only where the recipe says that it was bought or wind-blown.
 */
export function refusalOf(note: Note | undefined, what: string, form: string | undefined): RefusalReason | undefined {
  const told = form === undefined ? [] : [form];
  const byName = neverDosed([what, ...(note ? namesOf(note) : []), ...told]);
  if (byName) return byName;
  const record = note?.record;
  if (record && 'formula' in record && record.formula !== undefined) {
    const formula = record.formula;
    for (const [reason, element] of REFUSED_ELEMENTS) if (element.test(formula)) return reason;
  }
  if (record?.kind === 'dyestuff' && record.matter === 'lichen') {
    const guarded = [...record.cautions, ...(note?.tags ?? [])].some((text) => /\bprotected\b/i.test(text));
    if (guarded && !/\b(?:bought|windfall|wind-blown|old stock)\b/i.test(form ?? '')) return 'protected-lichen';
  }
  return undefined;
}

/** Tin and copper salts: amounts are for staff who work by a safety data sheet, never for the public or children. */
export const isStaffOnly = (names: readonly string[]): boolean =>
  names.some((name) =>
    /\b(?:tin|tin salt|stannous|stannic|stannum|zinnsalz|etain|copper|cupric|cuprum|kupfervitriol|couperose bleue|(?:blue|roman|cyprus) vitriol|bluestone|verdigris|grunspan)\b/.test(
      fold(name),
    ),
  );
