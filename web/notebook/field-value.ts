import { type PlainValue, RawYaml } from '../domain/note/yaml-text.ts';
import type { FieldIs } from './views/form-view.ts';

const NUMBER = /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?$/i;

/**
 * What a field writes into the note for words typed in it.
 *
 * @param isRow true where several numbers stand in one row.
 * @returns undefined where nothing shall stand there.
 */
export function fieldValue(is: FieldIs, typed: string, isRow = false): PlainValue | RawYaml | undefined {
  const text = typed.replace(/\r\n?/g, '\n').trim();
  if (text === '') return undefined;
  if (is === 'yes-no') return text === 'true';
  if (is === 'numbers' || isRow) {
    const parts = text.split(/[\s,;]+/).filter((part) => part !== '');
    return parts.every((part) => NUMBER.test(part)) ? new RawYaml(`[${parts.join(', ')}]`) : text;
  }
  // Years and figures stand unquoted, as people write them; they are read from the text, so nothing is lost by it.
  if ((is === 'number' || is === 'observer' || is === 'date') && NUMBER.test(text)) return new RawYaml(text);
  return text;
}
