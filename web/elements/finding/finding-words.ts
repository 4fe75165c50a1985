import { NOTE_KINDS, type NoteKind } from '../../domain/note/note.ts';
import type { FindingProblem, StandingChoice } from '../../notebook/pose-finding.ts';
import type { TypedFinding } from '../../notebook/ports-finding.ts';
import { kindWords } from '../../notebook/words/kind-words.ts';

/** The kinds as words of the sentence. */
export const KIND_CHOICES: readonly (readonly [NoteKind, string])[] = [...NOTE_KINDS, 'plain' as const].map((kind) => [
  kind,
  kindWords[kind].many.toLowerCase(),
]);

/** Standings as words of the sentence, behind "that". */
export const STANDING_WORDS = {
  'to-hand': 'was to hand',
  'as-cloth': 'was known in cloth',
  perhaps: 'was perhaps to hand',
  'not-there': 'was not there',
  contested: 'is contested',
  unrecorded: 'nothing is recorded of',
} as const satisfies Record<StandingChoice, string>;

/** Parts of the sentence in an address. */
const KEYS = ['kind', 'region', 'when', 'fibre', 'mordant', 'standing'] as const;

/** What an address looks for; undefined where it looks for nothing. */
export function findingOfSettings(settings: Readonly<Record<string, string>>): TypedFinding {
  const parts = KEYS.flatMap((key) => (settings[key] === undefined || settings[key] === '' ? [] : [[key, settings[key]] as const]));
  return { words: settings['find'] ?? '', ...Object.fromEntries(parts) };
}

/** The address that looks for this. */
export function addressOfFinding({ words, ...parts }: TypedFinding): string {
  const pairs = [['find', words], ...KEYS.map((key) => [key, parts[key] ?? ''])].filter(([key, value]) => value !== '' || key === 'find');
  return `#/notebook?${pairs.map(([key, value]) => `${key ?? ''}=${encodeURIComponent(value ?? '')}`).join('&')}`;
}

/** A part that could not be understood, in a sentence. */
export function findingProblemSentence({ part, typed }: FindingProblem): string {
  switch (part) {
    case 'when':
      return `“${typed}” cannot be read as a date, so no date narrows the list. Write for example c. 1370 or late 9th century.`;
    case 'standing':
      return 'How something stood can be said only of a place and a date: choose both.';
    case 'kind':
      return `There is no kind of note called “${typed}”.`;
    case 'region':
      return `This notebook knows no place “${typed}”.`;
    default:
      return `This notebook knows no ${part} “${typed}”.`;
  }
}
