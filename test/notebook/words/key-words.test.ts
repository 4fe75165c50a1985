import { describe, expect, test } from 'vitest';
import { keysOf } from '../../../web/domain/note/note-keys.ts';
import { NOTE_KINDS } from '../../../web/domain/note/note.ts';
import type { KeyTable } from '../../../web/domain/note/shape.ts';
import { hasKeyWords, keyWords } from '../../../web/notebook/words/key-words.ts';

const allKeys = (table: KeyTable): readonly string[] =>
  Object.entries(table).flatMap(([key, shape]) => [key, ...(shape.keys ? allKeys(shape.keys) : [])]);

describe('keyWords', () => {
  // A display is put together on its board, which has words of its own.
  test.each(NOTE_KINDS.filter((kind) => kind !== 'display'))('every key of a %s, inside its groups too, has words', (kind) => {
    expect(allKeys(keysOf(kind)).filter((key) => !hasKeyWords(key))).toEqual([]);
  });

  test('a key means something narrower where it stands in certain groups', () => {
    expect(keyWords('by', 'trial').label).not.toBe(keyWords('by', 'colour').label);
  });

  test('a key without words is shown as it is written', () => {
    expect(keyWords('swap-sets').label).toBe('Swap sets');
    expect(keyWords('constructor').label).toBe('Constructor');
  });
});
