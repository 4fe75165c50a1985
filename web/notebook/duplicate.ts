import { removeValue, spliceValue } from '../domain/note/splice.ts';

/**
 * The text of a second note like the first: another title, and no id of its own, because an id belongs to one note.
 *
 * @param title what the copy shall be called.
 */
export function duplicateText(text: string, title: string): string {
  const titled = spliceValue(text, ['title'], title);
  const named = titled.ok ? titled.value : text;
  const freed = removeValue(named, ['id']);
  return freed.ok ? freed.value : named;
}
