import { describe, expect, test } from 'vitest';
import { readBibliography } from '../../web/notebook/bibliography.ts';
import { gather } from '../../web/notebook/import/gather.ts';
import { Notebook } from '../../web/notebook/notebook.ts';
import { readRemarks } from '../../web/notebook/remarks.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../helpers/a-notebook.ts';

const KEYS = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', '__defineGetter__'];
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** What every object has, by name and value: a key that reached the common ancestor would show here. */
const common = () =>
  Object.getOwnPropertyNames(Object.prototype).map((key) => [key, Object.getOwnPropertyDescriptor(Object.prototype, key)]);

/** Runs something, and expects that the objects of the language are as they were. */
function unharmed<T>(run: () => T): T {
  const before = common();
  const found = run();
  expect(common()).toEqual(before);
  expect(({} as Record<string, unknown>)['fired']).toBeUndefined();
  return found;
}

describe('keys named like parts of the language', () => {
  test.each(KEYS)('%s as the id, name and key of a note is a note like any other', (key) => {
    const { base } = unharmed(() =>
      aNotebook({
        ...aWorld,
        [`dyestuffs/${key}.md`]: aDyestuff(key, `region: england, when: 1300, status: grown, known-by: text, source: ${key}`),
        'rules/r.md': aNote(`kind: rule\nregion: england\nwhen: 1300\nconcerns: ${key}\n${key}: { fired: true }`),
      }),
    );
    expect(base.find(key, ['dyestuff'])).toEqual({ is: 'one', id: key });
    expect(base.note(key)?.title).toBe(key);
    expect(base.claimsOf(key)).toHaveLength(1);
    expect(base.regions.has(key)).toBe(false);
  });

  test.each(KEYS)('%s as the heading of a column is a column nobody wanted', (key) => {
    const { notes, messages } = unharmed(() =>
      gather(new Notebook().base, 'textiles', `title,${key},${key}\nHood,fired,"{""fired"":true}"\n`),
    );
    expect(messages.map(({ code, about }) => [code, about])).toContainEqual(['column-unmatched', key]);
    expect(notes.map(({ path }) => path)).toEqual(['textiles/hood.md']);
    expect(notes[0]?.text).not.toContain('fired');
  });

  test.each(KEYS)('%s as the key and a field of a CSL-JSON entry', (key) => {
    const text = `[{"id":"${key}","${key}":{"fired":true},"title":"T","author":[{"family":"A","${key}":{"fired":true}}]}]`;
    const read = unharmed(() => readBibliography([{ path: 'bibliography.json', text }]));
    expect(read.get(key)).toMatchObject({ key, title: 'T', author: 'A' });
    expect([...read.keys()]).toEqual([key]);
  });

  test.each(KEYS)('%s in a file of remarks, as key and as note', (key) => {
    const remark = `{"id":"${key}","note":"${key}","line":1,"text":"x","by":"","at":"2024-05-01T10:00:00Z","${key}":{"fired":true}}`;
    const read = unharmed(() =>
      readRemarks(bytes(`{"format":"tenterground-remarks","version":1,"${key}":{"fired":true},"remarks":[${remark}]}`)),
    );
    expect(read.ok && read.value.remarks).toEqual([{ id: key, note: key, line: 1, text: 'x', by: '', at: '2024-05-01T10:00:00Z' }]);
  });

  test.each(KEYS)('%s in JSON-LD of periods, places and notes', (key) => {
    const { base } = new Notebook();
    for (const form of ['periods', 'places', 'notebook-jsonld'] as const)
      for (const text of [
        `{"${key}":{"fired":true}}`,
        `{"periods":{"${key}":{"id":"${key}","label":"${key}","start":{"${key}":1}}},"@graph":[{"${key}":{"fired":true}}]}`,
        `{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"title":"${key}","${key}":{"fired":true}},"geometry":{"${key}":1}}]}`,
      ])
        for (const { path } of unharmed(() => gather(base, form, text)).notes) expect(path).toMatch(/^[a-z]+\/[\w-]+\.md$/);
  });
});

describe('YAML that would grow, or say things twice', () => {
  const diagnosticsOf = (yaml: string) => aNotebook({ 'periods/a.md': aNote(`kind: period\nwhen: 12XX\n${yaml}`) }).base;
  test('a merge key merges nothing: it is a key like any other, and unknown', () => {
    const base = diagnosticsOf('x: &x { title: Merged, region: york }\n<<: *x');
    expect(base.note('a')).toMatchObject({ title: 'a', record: { kind: 'period' } });
    expect(base.note('a')?.record).not.toHaveProperty('region.text');
  });
  test('a merge of merges does not grow', () => {
    const levels = 'bcdefghij'.split('').map((name, at) => `${name}: &${name} { ${Array(9).fill(`<<: *${'abcdefghi'[at]}`).join(', ')} }`);
    expect(diagnosticsOf(`a: &a { k: v }\n${levels.join('\n')}\n<<: *j`).note('a')?.record.kind).toBe('period');
  });
  test('a key of three hundred thousand letters is one unknown key', () => {
    expect(diagnosticsOf(`? ${'k'.repeat(300_000)}\n: v`).note('a')?.record.kind).toBe('period');
  });
  test('a key that is a map or a list is no key of ours', () => {
    expect(diagnosticsOf('? { title: Evil }\n: v\n? [title]\n: Evil').note('a')?.title).toBe('a');
  });
});
