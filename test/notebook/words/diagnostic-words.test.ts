import { describe, expect, test } from 'vitest';
import type { DiagnosticCode } from '../../../web/domain/diagnostic.ts';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { diagnosticWords, wordsFor } from '../../../web/notebook/words/diagnostic-words.ts';

const CODES = Object.keys(diagnosticWords) as DiagnosticCode[];
/** What a finding may come with, from nothing to names that belong to the language. */
const ABOUTS: readonly (readonly string[])[] = [
  [],
  ['x'],
  ['x', 'y', 'z'],
  ['constructor', '__proto__', 'toString'],
  ['', '', ''],
  ['long '.repeat(100), 'y', 'a', 'b', 'c'],
];

describe('wordsFor', () => {
  test.each(CODES)('%s is said in whole sentences, calmly and without holes', (code) => {
    for (const about of ABOUTS) {
      for (const sentence of Object.values(wordsFor({ code, about }))) {
        expect(sentence).toMatch(/^[\p{Lu}“].*\.$/su);
        expect(sentence).not.toMatch(/!|undefined|\[object|native code/);
        expect(sentence.length).toBeLessThan(450);
      }
    }
  });

  test('what a note gives to say is in the sentence', () => {
    const [found] = parseNote('a.md', '---\nkind: dystuff\n---\n').diagnostics;
    const { says, instead } = wordsFor(found ?? { code: 'file-empty', about: [] });
    expect(says).toContain('dystuff');
    expect(instead).toContain('dyestuff');
  });
});
