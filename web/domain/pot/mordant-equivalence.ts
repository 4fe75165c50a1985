import type { Conversion } from './conversion.ts';
import { twelveDigits } from './conversion.ts';
import { molarMass, readFormula } from './molar-mass.ts';

/** The metal a mordant works by. */
export type MordantMetal = 'Al' | 'Fe' | 'Cu' | 'Sn';

/** A salt as it is sold. */
export interface MordantSalt {
  readonly id: string;
  readonly name: string;
  readonly formula: string;
  readonly metal: MordantMetal;
  /** Registry number on the label, where known. */
  readonly cas?: string;
}

/** Salts by the names on the jar. What is sold as "alum" may be any of the first three: the label says. */
export const MORDANT_SALTS: readonly MordantSalt[] = [
  { id: 'potassium-alum', name: 'potassium alum', formula: 'KAl(SO4)2·12H2O', metal: 'Al', cas: '7784-24-9' },
  { id: 'ammonium-alum', name: 'ammonium alum', formula: 'NH4Al(SO4)2·12H2O', metal: 'Al', cas: '7784-26-1' },
  { id: 'aluminium-sulphate-18', name: 'aluminium sulphate, 18 water', formula: 'Al2(SO4)3·18H2O', metal: 'Al' },
  { id: 'aluminium-sulphate-16', name: 'aluminium sulphate, 16 water', formula: 'Al2(SO4)3·16H2O', metal: 'Al' },
  { id: 'aluminium-sulphate-14', name: 'aluminium sulphate, 14 water', formula: 'Al2(SO4)3·14H2O', metal: 'Al' },
  { id: 'aluminium-sulphate', name: 'aluminium sulphate, water-free', formula: 'Al2(SO4)3', metal: 'Al', cas: '10043-01-3' },
  { id: 'aluminium-triacetate', name: 'aluminium triacetate', formula: 'Al(CH3COO)3', metal: 'Al' },
  { id: 'aluminium-diacetate', name: 'basic aluminium diacetate', formula: 'Al(OH)(CH3COO)2', metal: 'Al' },
  { id: 'aluminium-monoacetate', name: 'basic aluminium monoacetate', formula: 'Al(OH)2(CH3COO)', metal: 'Al' },
  { id: 'copperas', name: 'iron(II) sulphate, 7 water (copperas)', formula: 'FeSO4·7H2O', metal: 'Fe', cas: '7782-63-0' },
  { id: 'dried-copperas', name: 'iron(II) sulphate, 1 water', formula: 'FeSO4·H2O', metal: 'Fe' },
  { id: 'copper-sulphate', name: 'copper(II) sulphate, 5 water', formula: 'CuSO4·5H2O', metal: 'Cu', cas: '7758-99-8' },
  { id: 'tin-chloride-2', name: 'tin(II) chloride, 2 water', formula: 'SnCl2·2H2O', metal: 'Sn', cas: '10025-69-1' },
  { id: 'tin-chloride', name: 'tin(II) chloride, water-free', formula: 'SnCl2', metal: 'Sn' },
];

/** The share of a metal in a formula, 0–1; undefined where the formula cannot be read or lacks the metal. */
export function metalShare(formula: string, metal: MordantMetal): number | undefined {
  const atoms = readFormula(formula)?.get(metal);
  const whole = molarMass(formula);
  const one = molarMass(metal);
  return atoms === undefined || whole === undefined || one === undefined ? undefined : (atoms * one) / whole;
}

/** A salt beside another that holds as much of the same metal. */
export interface Equivalent {
  readonly salt: MordantSalt;
  readonly conversion: Conversion;
}

/**
 * Masses of other salts that hold as much metal as a mass of one. Information, not a rule for substitution: acidity, what else
 * is in the salt, and the fibre differ, and recipes in print do not keep to equal metal.
 *
 * @param audience tin and copper are told to staff only.
 * @returns empty for an unknown salt.
 * @source m₂ = m₁ × (M₂/n₂) ÷ (M₁/n₁), M from the IUPAC atomic weights, n the metal's atoms in the formula.
 */
export function mordantEquivalents(saltId: string, grams: number, audience: 'public' | 'staff' = 'public'): readonly Equivalent[] {
  const from = MORDANT_SALTS.find(({ id }) => id === saltId);
  const held = from && metalShare(from.formula, from.metal);
  if (!from || held === undefined) return [];
  if (audience !== 'staff' && (from.metal === 'Sn' || from.metal === 'Cu')) return [];
  return MORDANT_SALTS.filter(({ id, metal }) => metal === from.metal && id !== from.id).flatMap((salt) => {
    const share = metalShare(salt.formula, salt.metal);
    if (share === undefined) return [];
    const factor = held / share;
    return [
      {
        salt,
        conversion: {
          value: twelveDigits(grams * factor),
          unit: 'g',
          factor,
          source: 'equal metal, molar masses from the IUPAC atomic weights',
          caution: 'Equal metal is not equal dyeing: shown for information, not to substitute by.',
        },
      },
    ];
  });
}

/** The salt a form or name on a label means; undefined where it could be several, as plain "alum" could. */
export function saltOf(label: string): MordantSalt | undefined {
  const text = label.toLowerCase();
  const cas = MORDANT_SALTS.find((salt) => salt.cas !== undefined && text.includes(salt.cas));
  if (cas) return cas;
  const named = (id: string) => MORDANT_SALTS.find((salt) => salt.id === id);
  if (/potash alum|potassium alum/.test(text)) return named('potassium-alum');
  if (/ammoni(?:um|a) alum/.test(text)) return named('ammonium-alum');
  if (/diacetate/.test(text)) return named('aluminium-diacetate');
  if (/triacetate/.test(text)) return named('aluminium-triacetate');
  if (/dried copperas|monohydrate/.test(text) && /copperas|ferrous|iron/.test(text)) return named('dried-copperas');
  if (/copperas|ferrous sulph|ferrous sulf|green vitriol|iron\(ii\) sulph/.test(text)) return named('copperas');
  return undefined;
}
