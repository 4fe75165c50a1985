import { parseNote } from '../domain/note/parse-note.ts';
import { removeValue, spliceValue } from '../domain/note/splice.ts';
import type { ValuePath } from '../domain/note/locate-value.ts';
import type { NoteText } from './note-text.ts';

/** What belongs to one pot alone: who stirred and the water may be the same again, what happened and came out is not known yet. */
const OF_ONE_POT = ['id', 'date', 'log', 'deviations', 'code', 'colour', 'spectrum', 'photo', 'invented'] as const;
const OF_ONE_SKEIN = ['code', 'colour', 'spectrum', 'photo', 'note'] as const;

/**
 * The text of a new trial that repeats another: what went in, the water, vessel and lots stand as they were; what happened
 * and what came out are left to be written. Its words name the pot it repeats and ask for the one thing that is changed.
 */
export function repeatText({ path, text, title }: Pick<NoteText, 'path' | 'text' | 'title'>): string {
  const { value } = parseNote(path, text);
  const skeins = value.record.kind === 'trial' ? value.record.samples.length : 0;
  const paths: ValuePath[] = [
    ...OF_ONE_POT.map((key) => [key]),
    ...Array.from({ length: skeins }, (_, nth) => OF_ONE_SKEIN.map((key) => ['samples', nth, key])).flat(),
  ];
  const titled = spliceValue(text, ['title'], `${title}, again`);
  const emptied = paths.reduce(
    (source, at) => {
      const removed = removeValue(source, at);
      return removed.ok ? removed.value : source;
    },
    titled.ok ? titled.value : text,
  );
  const { bodyStart } = parseNote(path, emptied).value;
  return `${emptied.slice(0, bodyStart)}\nRepeats [${title.replace(/[[\]]/g, '')}](../${encodeURI(path)}). Changed, and only this: \n`;
}
