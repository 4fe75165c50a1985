import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import type { CandidateReading } from '../../domain/naming/ambiguous-names.ts';
import type { NamedNote, Naming, NamingReading } from '../../domain/naming/where-named.ts';
import { fold } from '../../domain/text/fold.ts';
import { titleOf } from './claim-line.ts';
import { inList } from './in-list.ts';

/** How sure a naming is, as a heading over a list of notes. */
export const readingWords = {
  certain: 'Named',
  ambiguous: 'Ambiguous: the name is shared',
  doubtful: 'Doubtful: also an ordinary word, and nothing around it speaks of dyeing',
  'ruled-out': 'Ruled out by the note’s own place and date: the name is shared',
} as const satisfies Record<NamingReading, string>;

/** Why a note is listed under another name of a compound. */
export const whyCompound = (compound: string): string => `a laboratory finds ${compound}, another name of it`;

/** Places told for one note; the rest is counted. */
const MOST_TOLD = 3;

/** Why a note is listed under a dyestuff: where it names it, in what words, and what else a shared name could mean. */
export function whyNamed(base: EvidenceBase, { own, namings, reading }: NamedNote): string {
  if (own) return 'the note on it';
  const best = namings.filter((one) => one.reading === reading);
  const told = oneOfEach(best).slice(0, MOST_TOLD).map(namingText);
  const more = namings.length - told.length;
  const shared = best.find(({ candidates }) => candidates.length > 0);
  return [told.join('; ') + (more > 0 ? `; ${more} more` : ''), ...(shared ? [sharedText(base, shared)] : [])].join('. ');
}

/** The first of namings in the same words in the same part of the note. */
function oneOfEach(namings: readonly Naming[]): readonly Naming[] {
  const seen = new Set<string>();
  return namings.filter(({ where, key, text }) => {
    const sort = `${where === 'link' ? 'body' : where} ${key ?? ''} ${fold(text)}`;
    return !seen.has(sort) && seen.add(sort);
  });
}

function namingText({ where, key, text, line, excerpt }: Naming): string {
  if (where === 'link') return `a link in line ${line}`;
  const around = `${excerpt.before}${excerpt.found}${excerpt.after}`;
  if (where === 'body') return `“${text}” in line ${line}: ${around}`;
  return `“${text}” under ${key === '' || key === undefined ? 'front matter' : key} in line ${line}`;
}

function sharedText(base: EvidenceBase, { text, candidates }: Naming): string {
  const names = (ones: readonly CandidateReading[], joint: 'or' | 'and') =>
    inList(
      ones.map(({ id }) => titleOf(base, id)),
      joint,
    );
  const possible = candidates.filter((one) => one.possible);
  const known = candidates.some(({ standing }) => standing !== undefined);
  const says = `“${text}” may mean ${names(candidates, 'or')}`;
  if (!known) return `${says}; the note gives no place or date to tell them apart`;
  if (possible.length === candidates.length) return `${says}; at the note’s place and date each is possible`;
  if (possible.length === 0) return `${says}; at the note’s place and date none is possible as these notes stand`;
  return `${says}; at the note’s place and date only ${names(possible, 'and')} ${possible.length === 1 ? 'is' : 'are'} possible`;
}

/** A word of a query and the word of a note that answers it. */
export interface WordFound {
  readonly typed: string;
  readonly term: string;
  readonly how: 'whole' | 'beginning' | 'near';
  readonly fields: readonly string[];
}

const FIELD_WORDS: Readonly<Record<string, string>> = {
  id: 'id',
  title: 'title',
  names: 'names',
  tags: 'tags',
  sources: 'sources',
  words: 'front matter',
  body: 'text',
};

/** Why a note answers a query in full text. */
export const whyFound = (found: readonly WordFound[]): string =>
  found
    .slice(0, MOST_TOLD * 2)
    .map(wordText)
    .join('; ');

function wordText({ typed, term, how, fields }: WordFound): string {
  const where = inList(
    fields.map((field) => FIELD_WORDS[field] ?? field),
    'and',
  );
  if (how === 'whole') return `“${term}” in ${where}`;
  return how === 'beginning' ? `“${term}” begins with “${typed}”, in ${where}` : `“${term}” is nearly “${typed}”, in ${where}`;
}
