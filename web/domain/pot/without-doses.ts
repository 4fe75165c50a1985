import { type EvidenceBase, MATERIAL_KINDS } from '../claim/evidence-base.ts';
import { nameKeys, namesOf } from '../claim/name-index.ts';
import { perNote } from '../claim/per-note.ts';
import type { Ingredient } from '../note/note.ts';
import { fold } from '../text/fold.ts';
import { type Audience, isStaffOnly, neverDosed, refusalOf } from './never-dosed.ts';

/** What stands where an amount is not shown. */
export const NO_DOSE = '[amount not shown]';

const NUMBER = String.raw`(?:(?<!\d)\d+(?:[.,]\d+)?(?:\s*(?:\d\s*)?[½¼¾⅓⅔⅛]|\s+\d+/\d+|/\d+)?|[½¼¾⅓⅔⅛])`;
const WORD =
  'half(?: an?| of an)?|quarter(?: of an?)?|an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|twenty|thirty|forty|fifty|hundred';
const UNIT = String.raw`%|‰|per ?cent\b|(?:milli|centi|kilo)?gram(?:me)?s?\b|m?g(?:rs?|m)?(?:\s*(?:/|per)\s*(?:l|litre|kg|g|lb)\b)?\b|kg\b|grains?\b|drach?ms?\b|drams?\b|scruples?\b|ounces?\b|oz\b|unze\w*|once\b|lot\b|loth\b|pounds?\b|lbs?\b|pfund\b|livres?\b|libbr[ae]\b|m?l\b|cl\b|dl\b|(?:milli|centi)?lit(?:re|er)s?\b|pints?\b|quarts?\b|gallons?\b|gills?\b|parts?\b|(?:(?:tea|table)\s*)?spoon(?:ful)?s?\b|drops?\b|pinch(?:es)?\b|handfuls?\b|cups?\b|mol\b`;
const DOSE = new RegExp(
  String.raw`(?:${NUMBER}|\b(?:${WORD})\b)(?:\s*(?:-|–|—|to|or|and)\s*(?:a\s+)?(?:${NUMBER}|\b(?:${WORD})\b))?\s*(?:${UNIT})(?:\s*(?:w\.?o\.?f\.?|of the (?:weight of )?fib(?:re|er)))?`,
  'giu',
);
/** Vessels are no doses: a copper kettle, a leaden cistern. */
const VESSELS =
  /\b(?:copper|tin|lead)(?:en|ed)?[ -](?:kettle|vat|pan|pot|cauldron|caldron|boiler|vessel|cistern|bottom|wire|lid|lined|bucket|basin|bowl|mug|jug)\w*/g;
/** To lead skeins through a bath is no metal: a clause that begins with the word and says what is led, and where. */
const LEADING =
  /(?<=^ {0,3}|[.;:,!?] {0,3}|\b(?:and|then|to|or) {1,3})lead (?=(?:the |each |every |all |your )?(?:\w+ )?(?:skeins?|hanks?|yarns?|wool|cloths?|silk|linen|threads?|fleece|pieces?|goods|them|it) (?:\w+ )?(?:through|into|round|out of)\b)/g;
/** "In a tin", with nothing of a salt behind it, is a vessel; "the tin" may be either and counts as the metal. */
const IN_A_TIN =
  /\b(?:in|into|from) an? (?:(?:old|small|large|clean|lidded|empty|flat|shallow) )*tin(?=\s*(?:[.,;:!?)]|$)|\s+(?:with a lid|overnight|on a shelf)\b)/g;
const withoutVessels = (folded: string): string => folded.replace(VESSELS, '').replace(LEADING, '').replace(IN_A_TIN, '');

/** Names of this notebook's own materials that are never dosed, whatever they are called, and of those for staff alone. */
const guardedNames = perNote<string>({
  kinds: MATERIAL_KINDS,
  derive(_base, note) {
    const names = nameKeys(note);
    // A protected lichen may be dosed where it was bought; its name alone settles nothing.
    const reason = refusalOf(note, note.id, undefined);
    const isRefused = reason !== undefined && reason !== 'protected-lichen';
    if (!isRefused && !isStaffOnly(names)) return [];
    return names.map((value) => ({ key: isRefused ? 'refused' : 'staff', value }));
  },
});

/** Where amounts stand in a text, whatever they are of. */
export const dosesIn = (text: string): readonly (readonly [start: number, end: number])[] =>
  [...text.matchAll(DOSE)].map(({ 0: dose, index }) => [index, index + dose.length]);

/** A text without any amount, whatever it is of. */
export const withoutAmounts = (text: string): string => text.replace(DOSE, NO_DOSE);

/**
 * A text without the amounts of what is never dosed: where it names such a thing every amount in it goes, and for tin and copper
 * every amount of the sentence, unless staff read. The names stay: they are history.
 */
export function withoutDoses(base: EvidenceBase, text: string, audience: Audience = 'public'): string {
  if (text.search(DOSE) < 0) return text;
  const plain = withoutVessels(fold(text));
  if (neverDosed([plain]) !== undefined || guardedNames(base, 'refused').some((name) => holds(plain, name))) return withoutAmounts(text);
  if (audience === 'staff') return text;
  const staff = guardedNames(base, 'staff');
  return text
    .split(/(?<=[.;!?])(?=\s)/u)
    .map((sentence) => {
      const said = withoutVessels(fold(sentence));
      return isStaffOnly([said]) || staff.some((name) => holds(said, name)) ? withoutAmounts(sentence) : sentence;
    })
    .join('');
}

const holds = (text: string, name: string): boolean => {
  const at = name === '' ? -1 : text.indexOf(name);
  return at >= 0 && !/[a-z0-9]/.test(text[at - 1] ?? ' ') && !/[a-z0-9]/.test(text[at + name.length] ?? ' ');
};

/** False for a material whose amounts are not shown: what is never dosed, and for others than staff tin and copper. */
export function amountMayShow(base: EvidenceBase, material: string, form?: string, audience: Audience = 'public'): boolean {
  const note = base.note(material);
  if (refusalOf(note, material, form) !== undefined) return false;
  return audience === 'staff' || !isStaffOnly([material, ...(note ? namesOf(note) : []), form ?? '']);
}

/** The amount of an ingredient as it may be shown: '' where none is given, the blank where it may not be. */
export function amountShown(base: EvidenceBase, { what, form, amount }: Ingredient, audience: Audience = 'public'): string {
  if (!amount) return '';
  return amountMayShow(base, what ? base.resolve(what.text, MATERIAL_KINDS) : '', form, audience) ? amount.text : NO_DOSE;
}

/** The form of an ingredient as it may be shown: a solution of so many grams to the litre is a dose too. */
export function formShown(
  base: EvidenceBase,
  { what, form = '' }: Pick<Ingredient, 'what' | 'form'>,
  audience: Audience = 'public',
): string {
  const may = amountMayShow(base, what ? base.resolve(what.text, MATERIAL_KINDS) : '', form, audience);
  return may ? withoutDoses(base, form, audience) : withoutAmounts(form);
}
