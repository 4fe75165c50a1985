import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { removeValue, spliceValue } from '../../../web/domain/note/splice.ts';
import { fieldValue } from '../../../web/notebook/field-value.ts';
import { type FieldView, formView } from '../../../web/notebook/views/form-view.ts';

const note = (yaml: string) => `---\n${yaml}\n---\nWords.\n`;
const fieldOf = (source: string, key: string): FieldView => {
  const view = formView(source);
  const found = [...view.own, ...view.common].find((field) => field.key === key);
  if (!found) throw new Error(`no field ${key}`);
  return found;
};
const everyField = (fields: readonly FieldView[]): readonly FieldView[] =>
  fields.flatMap((field) => [field, ...everyField(field.items.flatMap((item) => item.fields))]);

describe('formView', () => {
  test('title and names stand first, sources and checks last', () => {
    const view = formView(note('kind: recipe\ntitle: Red'));
    expect(view.own.slice(0, 3).map(({ key }) => key)).toEqual(['title', 'names', 'fibre']);
    expect(view.common.map(({ key }) => key)).toEqual(['source', 'checked', 'review-by', 'tags', 'invented', 'id']);
    expect(view.body).toBe('Words.\n');
  });

  test('values are shown as they stand, years with their zeros', () => {
    const source = note('kind: text\nregion: england\nwhen: 0700\ndyes: [madder, weld]\nsays: "a: b"');
    expect(fieldOf(source, 'when')).toMatchObject({ is: 'date', value: '0700', needed: true });
    expect(fieldOf(source, 'dyes').items.map(({ value }) => value)).toEqual(['madder', 'weld']);
    expect(fieldOf(source, 'says').value).toBe('a: b');
  });

  test('a group of claims is rows with a summary and fields that know their path', () => {
    const source = note('kind: dyestuff\navailability:\n  - {region: england, when: c. 1290, status: imported, on: wool}');
    const [claim] = fieldOf(source, 'availability').items;
    expect(claim?.summary).toBe('england, c. 1290, imported, wool');
    const status = claim?.fields.find(({ key }) => key === 'status');
    expect(status).toMatchObject({ path: ['availability', 0, 'status'], value: 'imported', is: 'word' });
    expect(claim?.fields.find(({ key }) => key === 'on')?.items).toMatchObject([{ path: ['availability', 0, 'on', 0], value: 'wool' }]);
  });

  test('a bare value where a group may stand is shown as itself', () => {
    const field = fieldOf(note('kind: recipe\ningredients: [alum, {what: madder, role: dye}]'), 'ingredients');
    expect(field.items.map(({ isBare, summary }) => [isBare, summary])).toEqual([
      [true, 'alum'],
      [false, 'madder, dye'],
    ]);
    expect(field.short).toBe('what');
  });

  test('numbers stand in one row', () => {
    const source = note('kind: dyestuff\ngather: {months: [7, 8]}\ncolour: x');
    const months = fieldOf(source, 'gather').items[0]?.fields.find(({ key }) => key === 'months');
    expect(months).toMatchObject({ value: '7, 8', list: false });
  });

  test('keys no form has are listed; a value in another shape is left to the text', () => {
    const source = note('kind: dyestuff\nodd: {a: [1, 2]}\npart: [leaf, root]\nmatter: {x: y}');
    expect(formView(source).kept).toEqual([{ key: 'odd', text: 'a 1, 2' }]);
    expect(fieldOf(source, 'part').is).toBe('elsewhere');
    expect(fieldOf(source, 'matter').is).toBe('elsewhere');
  });

  test('broken front matter is said; a file without any is a plain note', () => {
    expect(formView('---\nkind: [dyestuff\n---\n').broken).toBe(true);
    expect(formView('---\nkind: dyestuff\n').broken).toBe(true);
    expect(formView('Only words.')).toMatchObject({ kind: 'plain', broken: false, body: 'Only words.' });
  });

  test('every value shown for the demonstration can be set to itself and taken out, and nothing else changes', () => {
    const root = new URL('../../../corpus-demo', import.meta.url).pathname;
    const folders = readdirSync(root, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    let fields = 0;
    for (const folder of folders) {
      for (const file of readdirSync(join(root, folder.name))
        .filter((name) => name.endsWith('.md'))
        .slice(0, 2)) {
        const source = readFileSync(join(root, folder.name, file), 'utf8');
        const view = formView(source);
        expect(view.broken, file).toBe(false);
        for (const field of everyField([...view.own, ...view.common])) {
          if (!field.filled || field.is === 'group' || field.is === 'elsewhere' || field.list) continue;
          const value = fieldValue(field.is, field.value, field.is === 'number' && field.value.includes(','));
          if (value === undefined) continue;
          const set = spliceValue(source, field.path, value);
          expect(set.ok, `${file} ${field.path.join('/')}`).toBe(true);
          if (set.ok) expect(fieldByPath(set.value, field.path)?.value).toBe(field.value);
          const gone = removeValue(source, field.path);
          if (gone.ok) expect(fieldByPath(gone.value, field.path)?.filled ?? false, `${file} ${field.path.join('/')}`).toBe(false);
          fields += 1;
        }
      }
    }
    expect(fields).toBeGreaterThan(150);
  }, 30_000);
});

function fieldByPath(source: string, path: FieldView['path']): FieldView | undefined {
  const view = formView(source);
  return everyField([...view.own, ...view.common]).find((field) => field.path.join('/') === path.join('/'));
}
