import type { Name, Note } from '../note/note.ts';
import { inflectName } from './inflect-name.ts';

/** One spelling a dyestuff or other material may be found under. */
export interface DyeName {
  readonly spelling: string;
  /** The name in the note that it goes back to. */
  readonly listed: string;
  readonly lang?: string;
  /** Stands in the note, or how it was made from what stands there. */
  readonly form: 'listed' | 'abbreviated' | 'inflected' | 'respelt';
}

/**
 * Every spelling of a note's names: id, title, names and Latin as listed; Latin with its genus abbreviated; inflections;
 * words run together or apart. Case, accents, hyphens and spaces are folded later, when names are compared.
 */
export function dyeNames(note: Note): readonly DyeName[] {
  const latin = 'latin' in note.record ? note.record.latin : [];
  const names: readonly Name[] = [{ name: note.title }, ...note.names, { name: note.id }, ...latin.map((name) => ({ name, lang: 'la' }))];
  const isWood = 'part' in note.record && /wood/i.test(note.record.part ?? '');
  return names.flatMap(({ name, lang }): readonly DyeName[] => {
    const as =
      (form: DyeName['form']) =>
      (spelling: string): DyeName => ({ spelling, listed: name, ...(lang === undefined ? {} : { lang }), form });
    const inflected = inflectName(name, lang);
    return [
      as('listed')(name),
      ...abbreviations(name).map(as('abbreviated')),
      ...inflected.map(as('inflected')),
      ...[name, ...inflected].flatMap((one) => respelt(one, lang)).map(as('respelt')),
      ...(isWood && lang === undefined && /^\p{L}+$/u.test(name) && !/wood$/i.test(name) ? [as('respelt')(`${name}wood`)] : []),
    ];
  });
}

/** Genus, an optional section in brackets, and an epithet that ends as Latin ones do. */
const BINOMIAL = /^(\p{Lu})\p{Ll}+ (\p{Ll}[\p{Ll}-]*(?:a|um|us|is|ii|i|orum|ensis|ex|ax|ans|ens|n))$/u;
const GENUS = /^(\p{Lu}\p{Ll}+) spp?\.?$/u;

/** "R. tinctorum" for "Rubia tinctorum"; the bare genus for "Roccella spp.", which speaks of all its species. */
function abbreviations(name: string): readonly string[] {
  const genus = GENUS.exec(name)?.[1];
  if (genus !== undefined) return [genus];
  const parts = BINOMIAL.exec(name);
  return parts?.[1] && parts[2] && !ENGLISH_WORDS.test(parts[2]) ? [`${parts[1]}. ${parts[2]}`] : [];
}

/** Last words of English names that end as Latin epithets do. */
const ENGLISH_WORDS = /^(?:bugloss|marguerite|indigo|berries|galls|green|sumach?)$/;

/** Words run together ("oakgalls") and, for woods and herbs, apart ("log wood"); "Saint" for "St". */
function respelt(name: string, lang: string | undefined): readonly string[] {
  const forms: string[] = [];
  const parts = name.split(/[\s-]+/);
  if (parts.length === 2 && parts.every((part) => /^\p{L}{3,}$/u.test(part)) && !BINOMIAL.test(name)) forms.push(parts.join(''));
  const apart = lang === undefined || lang === 'en' ? /^(.*\p{L}{3})(wood|weed|wort)(s?)$/iu.exec(name) : null;
  if (apart?.[1] && apart[2] && !/\s$/.test(apart[1])) forms.push(`${apart[1]} ${apart[2]}${apart[3] ?? ''}`);
  if (/^St\.? /.test(name)) forms.push(name.replace(/^St\.? /, 'Saint '));
  return forms;
}
