import { describe, expect, test } from 'vitest';
import { parseNote } from '../../web/domain/note/parse-note.ts';
import { repeatText } from '../../web/notebook/repeat-text.ts';
import { noteText } from '../../web/notebook/note-text.ts';
import { aNotebook } from '../helpers/a-notebook.ts';
import { demoNotebook } from '../helpers/demo-notebook.ts';

describe('repeatText', () => {
  test('keeps what went in, leaves what came out, and names the pot it repeats', () => {
    const text = `---
kind: trial
title: First pot
recipe: madder-wool
date: 2025-01-01
water: { hardness: "9 °dH" }
actual:
  - { what: madder, role: dye, amount: 50 %, stands-for: kermes }
log: [went well]
samples:
  - { code: A-1, fibre: wool, fibre-mass: 50 g, colour: { hex: "#aa3322" } }
  - { code: A-2, fibre: silk, fibre-mass: 20 g }
---

Its own words.
`;
    const again = repeatText({ path: 'trials/first pot.md', text, title: 'First pot' });
    const { value, diagnostics } = parseNote('trials/again.md', again);
    expect(diagnostics).toEqual([]);
    expect(value).toMatchObject({
      title: 'First pot, again',
      record: {
        kind: 'trial',
        recipe: { text: 'madder-wool' },
        water: { hardness: '9 °dH' },
        actual: [{ amount: { text: '50 %' }, standsFor: { text: 'kermes' } }],
        log: [],
        samples: [{ fibre: { text: 'wool' }, fibreGrams: 50 }, { fibre: { text: 'silk' } }],
      },
    });
    expect(value.record.kind === 'trial' && value.record.samples.flatMap(({ code, colour }) => code ?? colour ?? [])).toEqual([]);
    expect(again).not.toContain('2025-01-01');
    expect(again).not.toContain('Its own words');
    const { base } = aNotebook({ 'trials/first pot.md': text, 'trials/again.md': again });
    expect(base.note('again')?.source).toContain('(../trials/first%20pot.md)');
  });

  test('every trial of the demonstration can be repeated without a fault of its own', async () => {
    const notebook = await demoNotebook();
    for (const { id } of notebook.base.ofKind('trial')) {
      const held = noteText(notebook, id);
      if (!held) throw new Error(id);
      expect(parseNote('trials/again.md', repeatText(held)).diagnostics, id).toEqual([]);
    }
  });
});
