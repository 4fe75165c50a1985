import { describe, expect, test } from 'vitest';
import { NOTE_KINDS } from '../../web/domain/note/note.ts';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { spliceValue } from '../../web/domain/note/splice.ts';
import { duplicateText } from '../../web/notebook/duplicate.ts';
import { newPath, starterOf, stemFrom } from '../../web/notebook/starters.ts';
import { formView } from '../../web/notebook/views/form-view.ts';

const kinds = [...NOTE_KINDS, 'plain' as const];

describe('starterOf', () => {
  test.each(kinds)('a %s starts without an error, of its kind, and only wanting what must be filled in', (kind) => {
    const { text } = starterOf(kind);
    const { value, diagnostics } = parseNote('new.md', text);
    expect(value.record.kind).toBe(kind);
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(new Set(diagnostics.map(({ code }) => code))).toSatisfy((codes: Set<string>) =>
      [...codes].every((code) => code === 'key-missing' || code === 'source-missing'),
    );
  });

  test.each(kinds)('a %s states no fact', (kind) => {
    const { value } = parseNote('new.md', starterOf(kind).text);
    expect(value.names).toEqual([]);
    expect(value.sources).toEqual([]);
    expect('availability' in value.record ? value.record.availability : []).toEqual([]);
  });

  test.each(kinds)('every empty field of a %s can be filled in through its form, and its comments stay', (kind) => {
    const { text } = starterOf(kind);
    const comments = (source: string) => source.match(/#[^\n]*/g)?.length ?? 0;
    for (const field of [...formView(text).own, ...formView(text).common]) {
      if (field.is === 'elsewhere') continue;
      const item = field.blank();
      const inner = item.fields.find(({ is, list }) => is !== 'group' && is !== 'elsewhere' && !list);
      const path = field.is === 'group' ? inner?.path : field.list ? item.path : field.path;
      if (!path) continue;
      const set = spliceValue(text, path, 'x');
      expect(set.ok, `${kind} ${path.join('/')}`).toBe(true);
      if (set.ok) expect(comments(set.value), `${kind} ${path.join('/')}`).toBe(comments(text));
    }
  });
});

describe('stemFrom', () => {
  test('keeps letters and digits, folds the rest', () => {
    expect(stemFrom('Färberwaid: “blau”, 1370', 'new')).toBe('farberwaid-blau-1370');
    expect(stemFrom('../../etc/passwd', 'new')).toBe('etc-passwd');
    expect(stemFrom('紅花', 'new-dyestuff')).toBe('new-dyestuff');
    expect(stemFrom('a'.repeat(200), 'new')).toHaveLength(60);
  });
});

describe('newPath', () => {
  test('stands in the folder of its kind; the second of a title is told apart', () => {
    expect(newPath('colour-word', 'Murrey')).toBe('words/murrey.md');
    expect(newPath('recipe', 'Red', 2)).toBe('recipes/red-2.md');
  });
});

describe('duplicateText', () => {
  test('has another title, no id, and everything else as it stands', () => {
    const text = '---\nkind: recipe # mine\nid: red\ntitle: Red\nodd: 1\n---\nWords.\n';
    expect(duplicateText(text, 'Red, again')).toBe('---\nkind: recipe # mine\ntitle: Red, again\nodd: 1\n---\nWords.\n');
  });
});
