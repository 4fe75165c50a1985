import { fold } from '../../domain/text/fold.ts';
import type { DyestuffEntry, GivenCloth } from '../../notebook/views/dyestuff-view.ts';
import type { NamedNoteView } from '../../notebook/views/naming-view.ts';

/** The dyestuffs any of whose names holds what was typed. */
export function matching(entries: readonly DyestuffEntry[], typed: string): readonly DyestuffEntry[] {
  const wanted = fold(typed);
  return wanted === ''
    ? entries
    : entries.filter(({ title, latin, names }) => [title, latin, ...names].some((name) => fold(name).includes(wanted)));
}

/** The cloths of each recipe as one, with how many samples it has; in the order in which they come. */
export function byRecipe(cloths: readonly GivenCloth[]): readonly { readonly first: GivenCloth; readonly count: number }[] {
  const recipes = new Map<string, { readonly first: GivenCloth; count: number }>();
  for (const cloth of cloths) {
    const held = recipes.get(cloth.recipe);
    if (held) held.count += 1;
    else recipes.set(cloth.recipe, { first: cloth, count: 1 });
  }
  return [...recipes.values()];
}

/** Notes by their kind, what was read before what was dyed. */
export function byKind(notes: readonly NamedNoteView[]): readonly { readonly kind: string; readonly notes: readonly NamedNoteView[] }[] {
  const kinds = new Map<string, NamedNoteView[]>();
  for (const note of notes) kinds.set(note.kind, [...(kinds.get(note.kind) ?? []), note]);
  return [...kinds]
    .map(([kind, list]) => ({ kind: KIND_WORDS[kind] ?? kind, notes: list, at: KIND_ORDER.indexOf(kind) }))
    .sort((a, b) => (a.at < 0 ? 99 : a.at) - (b.at < 0 ? 99 : b.at));
}

const KIND_ORDER: readonly string[] = [
  'text',
  'textile',
  'plain',
  'colour-word',
  'rule',
  'dyestuff',
  'mordant',
  'assistant',
  'process',
  'recipe',
  'trial',
  'palette',
];
const KIND_WORDS: Readonly<Record<string, string>> = { plain: 'reading note', 'colour-word': 'colour-word' };

/** Initials of the months, with their names for those who hear the page. */
export const MONTHS: readonly (readonly [short: string, long: string])[] = [
  ['J', 'January'],
  ['F', 'February'],
  ['M', 'March'],
  ['A', 'April'],
  ['M', 'May'],
  ['J', 'June'],
  ['J', 'July'],
  ['A', 'August'],
  ['S', 'September'],
  ['O', 'October'],
  ['N', 'November'],
  ['D', 'December'],
];
