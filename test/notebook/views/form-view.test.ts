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
    expect(view.common.map(({ key }) => key)).toEqual(['source', 'checked', 'review-by', 'tags', 'invented', 'private', 'id']);
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
});

describe('formView of the demonstration', () => {
  const root = new URL('../../../corpus-demo', import.meta.url).pathname;
  const notes = readdirSync(root, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name }) =>
      readdirSync(join(root, name))
        .filter((file) => file.endsWith('.md'))
        .slice(0, 3)
        .map((file) => `${name}/${file}`),
    );
  const sourceOf = (file: string): string => readFileSync(join(root, file), 'utf8');
  const valueOf = ({ is, value }: FieldView) => fieldValue(is, value, is === 'number' && value.includes(','));
  /** The single values of a form by the keys that lead to them, whichever item of a list they are in. */
  const singleValues = (source: string): ReadonlyMap<string, readonly FieldView[]> => {
    const view = formView(source);
    const found = new Map<string, FieldView[]>();
    for (const field of everyField([...view.own, ...view.common])) {
      if (!field.filled || field.is === 'group' || field.is === 'elsewhere' || field.list || valueOf(field) === undefined) continue;
      const keys = field.path.map((step) => (typeof step === 'number' ? '#' : step)).join('/');
      found.set(keys, [...(found.get(keys) ?? []), field]);
    }
    return found;
  };

  // Of the values in one place of many items the first and the last: each is written, taken out, and the whole file read again.
  test.each(notes)('a value of %s can be set to itself and taken out, and nothing else changes', (file) => {
    const source = sourceOf(file);
    expect(formView(source).broken).toBe(false);
    for (const fields of singleValues(source).values()) {
      for (const field of new Set([...fields.slice(0, 1), ...fields.slice(-1)])) {
        const value = valueOf(field);
        if (value === undefined) continue;
        const set = spliceValue(source, field.path, value);
        expect(set.ok, field.path.join('/')).toBe(true);
        if (set.ok && set.value !== source) expect(fieldByPath(set.value, field.path)?.value).toBe(field.value);
        const gone = removeValue(source, field.path);
        if (gone.ok) expect(fieldByPath(gone.value, field.path)?.filled ?? false, field.path.join('/')).toBe(false);
      }
    }
  });

  test('those are values of every sort, in many places', () => {
    const all = notes.map((file) => singleValues(sourceOf(file)));
    expect(new Set(all.flatMap((values) => [...values.keys()])).size).toBeGreaterThan(90);
    expect(new Set(all.flatMap((values) => [...values.values()].flat().map(({ is }) => is))).size).toBeGreaterThan(4);
  });
});

function fieldByPath(source: string, path: FieldView['path']): FieldView | undefined {
  const view = formView(source);
  return everyField([...view.own, ...view.common]).find((field) => field.path.join('/') === path.join('/'));
}
