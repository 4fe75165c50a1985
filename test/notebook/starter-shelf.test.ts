import { packNotebook } from '../../scripts/demo-plugin.mjs';
import { describe, expect, test } from 'vitest';
import { decodeNote } from '../../web/domain/note/decode-note.ts';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { Notebook } from '../../web/notebook/notebook.ts';
import { starterShelf } from '../../web/notebook/starter-shelf.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const textIn = (files: readonly { path: string; bytes: Uint8Array }[], path: string) =>
  new TextDecoder().decode(files.find((file) => file.path === path)?.bytes);
const demonstration = packNotebook().files.map(({ path, text }) => ({ path, bytes: bytes(text) }));

const MADDER = `---
kind: dyestuff
title: Madder   # as it came
names: [Krapp]
availability:
  - { region: england, when: 1300/, status: grown, known-by: text, source: "a, 1" }
source: "a, 1"
---

The root.
`;

describe('starterShelf', () => {
  test('takes names of things and leaves what somebody did or found', () => {
    const { files } = starterShelf(
      [
        { path: 'd/madder.md', bytes: bytes(MADDER) },
        { path: 'r/red.md', bytes: bytes('---\nkind: recipe\ntitle: Red\n---\n') },
        { path: 'x.md', bytes: bytes('Plain words.') },
        { path: 'photo.jpg', bytes: bytes('x') },
        { path: 'bibliography.json', bytes: bytes('[]') },
      ],
      true,
    );
    expect(files.map(({ path }) => path)).toEqual(['d/madder.md', 'bibliography.json']);
    expect(textIn(files, 'd/madder.md')).toBe(MADDER);
  });

  test('without claims the lines of the claims go, and nothing else', () => {
    const { files, leftOut } = starterShelf([{ path: 'd/madder.md', bytes: bytes(MADDER) }], false);
    expect(textIn(files, 'd/madder.md')).toBe(MADDER.replace(/availability:\n.*\n/, ''));
    expect(leftOut).toEqual([]);
  });

  test('a note whose front matter is broken is left out and named, not handed on with its claims', () => {
    const broken = '---\nkind: dyestuff\ntitle: X\navailability: [{ region: england }\n---\n';
    const { files, leftOut } = starterShelf([{ path: 'd/x.md', bytes: bytes(broken) }], false);
    expect([...files.map(({ path }) => path), ...leftOut].filter((path) => path === 'd/x.md').length).toBeLessThanOrEqual(1);
    for (const file of files) expect(decodeNote(file.bytes).value.text).not.toContain('region: england');
  });

  test.each([true, false])(
    'of the demonstration (claims: %s): every kind is there, nothing is left out, and it opens without an error',
    (withClaims) => {
      const { files, leftOut } = starterShelf(demonstration, withClaims);
      expect(leftOut).toEqual([]);
      const notes = files
        .filter(({ path }) => path.endsWith('.md'))
        .map(({ path, bytes: all }) => parseNote(path, decodeNote(all).value.text).value);
      expect([...new Set(notes.map(({ record }) => record.kind))].sort()).toEqual(
        'assistant,colour-word,dyestuff,fibre,mordant,period,process,region,wearer'.split(','),
      );
      expect(notes.filter(({ record }) => record.kind === 'dyestuff').length).toBeGreaterThanOrEqual(60);
      const claims = notes.reduce((sum, { record }) => sum + ('availability' in record ? record.availability.length : 0), 0);
      if (withClaims) expect(claims).toBeGreaterThan(300);
      else expect(claims).toBe(0);
      const notebook = new Notebook();
      notebook.putAll(files);
      const errors = [...notebook.base.notes()]
        .flatMap((note) => notebook.foundInText(note.file))
        .filter(({ severity }) => severity === 'error');
      expect(errors).toEqual([]);
    },
  );
});
