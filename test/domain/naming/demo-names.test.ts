import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { dyeNames } from '../../../web/domain/naming/dye-names.ts';
import { findNames } from '../../../web/domain/naming/find-names.ts';
import { namesOfKind } from '../../../web/domain/naming/notebook-names.ts';
import { whereNamed } from '../../../web/domain/naming/where-named.ts';
import { noteId } from '../../../web/domain/note/note.ts';
import type { Notebook } from '../../../web/notebook/notebook.ts';
import { aNote } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';
import { signsPassed } from '../../helpers/signs-passed.ts';

interface Passage {
  readonly text: string;
  readonly because: string;
}
const { passages } = JSON.parse(readFileSync(new URL('../../reference/negative-corpus.json', import.meta.url), 'utf8')) as {
  readonly passages: readonly Passage[];
};

let notebook: Notebook;
beforeAll(async () => {
  notebook = await demoNotebook();
});

describe('findNames over the demonstration', () => {
  const unaccented = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '');

  test('finds every dyestuff by each of its names, as written, in capitals, without accents, decomposed, and hyphenated', () => {
    const { dictionary } = namesOfKind(notebook.base, 'dyestuff');
    const missed: string[] = [];
    let tried = 0;
    for (const note of notebook.base.ofKind('dyestuff')) {
      for (const { spelling } of dyeNames(note)) {
        const ways = [
          spelling,
          spelling.toUpperCase(),
          unaccented(spelling),
          spelling.normalize('NFD'),
          spelling.replace(/(\p{L}) (?=\p{L})/gu, '$1-'),
        ];
        for (const way of ways) {
          tried += 1;
          const found = findNames(`Once there was ${way} in the shop (of ${way}).`, dictionary);
          if (found.filter(({ candidates }) => candidates.includes(note.id)).length !== 2) missed.push(`${note.id}: ${way}`);
        }
      }
    }
    expect(missed).toEqual([]);
    expect(tried).toBeGreaterThan(2000);
  });

  test('finds nothing in passages that name no dyestuff', () => {
    const { dictionary } = namesOfKind(notebook.base, 'dyestuff');
    const found = passages.flatMap(({ text }) => findNames(text, dictionary).map((one) => `${one.text} in: ${text}`));
    expect(passages.length).toBeGreaterThan(40);
    expect(found).toEqual([]);
  });

  test('lists a page for each name it holds, and no page that names no dyestuff', () => {
    const base = notebook.base;
    notebook.put({
      path: 'reading/new-page.md',
      bytes: new TextEncoder().encode(aNote('kind: plain\ntitle: A page') + 'Krapp, *G. verum* and guède.'),
    });
    notebook.put({ path: 'reading/no-page.md', bytes: new TextEncoder().encode(passages.map(({ text }) => text).join('\n\n')) });
    for (const id of ['madder', 'ladys-bedstraw', 'woad']) {
      const files = whereNamed(base, noteId(id)).map(({ note }) => note.file);
      expect(files, id).toContain('reading/new-page.md');
    }
    const named = base.ofKind('dyestuff').filter(({ id }) => whereNamed(base, id).some(({ note }) => note.file === 'reading/no-page.md'));
    expect(named.map(({ id }) => id)).toEqual([]);
    notebook.remove('reading/new-page.md');
    notebook.remove('reading/no-page.md');
  });

  test('reads a note a few times over, not once for every name, and keeps what it found', () => {
    const { base } = notebook;
    const { dictionary } = namesOfKind(base, 'dyestuff');
    // Words, gaps and the sentence around a name: a handful of times each sign, however many names the notebook has.
    for (const { file, source } of base.notes())
      expect(signsPassed(() => void findNames(source, dictionary)) / source.length, file).toBeLessThan(12);
    const names = namesOfKind(base, 'dyestuff');
    const [first] = base.notes();
    expect(first && names.mentionsIn(first) === names.mentionsIn(first)).toBe(true);
  });
});
