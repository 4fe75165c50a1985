import { beforeAll, describe, expect, test } from 'vitest';
import { isChecked } from '../../web/domain/pot/check-character.ts';
import { samePot } from '../../web/domain/pot/same-pot.ts';
import { trialFacts } from '../../web/domain/pot/trial-facts.ts';
import type { TypedItem } from '../../web/notebook/dye-day-address.ts';
import type { Notebook } from '../../web/notebook/notebook.ts';
import { type PotEntry, withEntry } from '../../web/notebook/pot-entry.ts';
import { potNotes } from '../../web/notebook/pot-notes.ts';
import { codeView, potList, potView, tagViews } from '../../web/notebook/views/pot-view.ts';
import { demoNotebook } from '../helpers/demo-notebook.ts';

const TODAY = '2026-11-28';
const encoder = new TextEncoder();
let demo: Notebook;
beforeAll(async () => {
  demo = await demoNotebook();
});
const begin = (...items: readonly Partial<TypedItem>[]) => {
  const day = { items: items.map((one) => ({ recipe: '', fibreGrams: 100, skeins: 1, ...one })), staff: false, begins: '09:00' };
  const notes = potNotes(demo, day, at('08:30'));
  for (const { path, text } of notes) demo.put({ path, bytes: encoder.encode(text) });
  return notes;
};
const at = (clock: string) => ({ day: TODAY, clock });

test('the same masses by the same recipe under one number, planned on two machines at other times, are two pots', () => {
  const day = { items: [{ recipe: 'weld-alum-wool', fibreGrams: 100, skeins: 1 }], staff: false, begins: '09:00' };
  const [early, late] = ['08:30', '08:31'].map((clock) => potNotes(demo, day, at(clock))[0]);
  expect(early?.id).toBe(late?.id);
  expect(early?.text).toContain('Planned 2026-11-28 08:30 for 100 g of fibre: ');
  expect(samePot(early?.text ?? '', late?.text ?? '')).toBe(false);
  expect(samePot(early?.text ?? '', early?.text ?? '')).toBe(true);
});

describe('a pot from its plan to its colour', () => {
  test('one note for each pot, a checked code for each skein, no code given twice, nothing wrong in the notes', () => {
    const first = begin({ recipe: 'madder-alum-wool', fibreGrams: 250, skeins: 3 }, { recipe: 'weld-alum-wool', skeins: 2 });
    const second = begin({ recipe: 'madder-alum-wool' });
    const codes = [...first, ...second].flatMap((note) => note.codes);
    expect(first.map(({ codes: own }) => own.length)).toEqual([3, 2]);
    expect(new Set(codes).size).toBe(6);
    // ISO/IEC 7064 MOD 37-2 over the characters without hyphens.
    for (const code of codes) expect(isChecked(code.replaceAll('-', ''))).toBe(true);
    for (const { path, text } of first) {
      const note = demo.put({ path, bytes: encoder.encode(text) });
      expect(note && demo.foundInText(note.file)).toEqual([]);
    }
    expect(first[0]?.text).toContain('fibre-mass: 83.33 g');
  });

  test('what shares its last bath is one pot; a rest of a bath is a pot of its own that names the first', () => {
    const notes = begin(
      { recipe: 'madder-alum-wool', fibreGrams: 100 },
      { recipe: 'madder-alum-wool', fibreGrams: 50, fibre: 'fine-wool' },
      { recipe: 'madder-alum-wool', fibreGrams: 50, exhaustOf: 0 },
    );
    expect(notes.map(({ codes }) => codes.length)).toEqual([2, 1]);
    expect(demo.base.note(notes[1]?.id ?? '')?.record).toMatchObject({ kind: 'trial', bath: { nth: 2, after: { text: notes[0]?.id } } });
  });

  test('from skein to pot and back, also typed in small letters without hyphens, also as a scanned address', () => {
    const [pot] = begin({ recipe: 'weld-alum-wool', skeins: 2 });
    const [code = ''] = pot?.codes ?? [];
    for (const typed of [code, code.toLowerCase().replaceAll('-', ''), `https://example.org/#/samples/${encodeURIComponent(code)}`])
      expect(codeView(demo, typed)).toMatchObject({ is: 'one', skein: { code, nth: 0 }, pot: { id: pot?.id, codes: pot?.codes } });
    expect(codeView(demo, `${code.slice(0, -1)}${code.endsWith('A') ? 'B' : 'A'}`).is).toBe('none');
    expect(codeView(demo, '26-998-1-').is).toBe('none');
    expect(tagViews(demo, [pot?.id ?? '']).map((tag) => tag.code)).toEqual(pot?.codes);
    expect(potList(demo)[0]).toMatchObject({ id: pot?.id, state: 'prepared' });
  });

  test('the log becomes the trial: temperatures, hold, weights as per cent, deviations, colour', () => {
    const [pot] = begin({ recipe: 'madder-alum-wool', fibreGrams: 80 });
    if (!pot) throw new Error('no pot');
    let { text } = pot;
    const log = (entry: PotEntry, clock: string, written = clock) => {
      const made = withEntry(pot.path, text, entry, at(clock), at(written));
      if (made.is !== 'text') throw new Error(made.problem);
      text = made.text;
    };
    // 12 g alum on 80 g of wool = 15 %: facts, % WOF back from a notebook.
    log({ is: 'weighed', nth: 0, grams: 12 }, '09:00');
    log({ is: 'in' }, '10:00');
    log({ is: 'temperature', celsius: 68 }, '11:00');
    log({ is: 'pH', pH: 5.5 }, '11:10');
    log({ is: 'heat-off' }, '12:00');
    log({ is: 'deviation', text: 'no chalk: rain water' }, '12:05');
    log({ is: 'photo', path: 'photos/x.jpg' }, '12:06');
    log({ is: 'out' }, '12:10', '13:00');
    log({ is: 'colour', nth: 0, typed: '45.1 44.8 27.9', by: 'instrument' }, '14:00');
    const note = demo.put({ path: pot.path, bytes: encoder.encode(text) });
    expect(note && demo.foundInText(note.file)).toEqual([]);
    expect(trialFacts(demo.base, pot.id)).toMatchObject({
      topCelsius: 68,
      heldMinutes: 60,
      fibreGrams: 80,
      deviations: ['no chalk: rain water'],
    });
    expect(trialFacts(demo.base, pot.id)?.materials.find(({ id }) => id === 'alum')?.percent).toBe(15);
    const view = potView(demo, pot.id);
    expect(view?.log.at(-2)).toMatchObject({ when: '12:10', words: 'out', late: 'written down 13:00' });
    expect(view?.log.find(({ photo }) => photo !== '')?.photo).toBe('photos/x.jpg');
    expect(view?.state).toBe('done');
    expect(text).toContain('![at the pot, 2026-11-28 12:06](../photos/x.jpg)');
    expect(text).toContain('lab: [45.1, 44.8, 27.9]');
  });

  test('dips are counted on as they are logged, and a colour in numbers says whether an eye or an instrument found it', () => {
    const [pot] = begin({ recipe: 'woad-wool' });
    if (!pot) throw new Error('no pot');
    let { text } = pot;
    for (const entry of [{ is: 'dip' }, { is: 'out' }, { is: 'dip' }, { is: 'colour', nth: 0, typed: '40 -5 -20', by: 'eye' }] as const) {
      const made = withEntry(pot.path, text, entry, at('10:00'), at('10:00'));
      if (made.is !== 'text') throw new Error(made.problem);
      text = made.text;
    }
    const note = demo.put({ path: pot.path, bytes: encoder.encode(text) });
    expect(note && demo.foundInText(note.file)).toEqual([]);
    expect(
      potView(demo, pot.id)
        ?.log.map(({ words }) => words)
        .slice(0, 3),
    ).toEqual(['dip 1', 'out', 'dip 2']);
    expect(trialFacts(demo.base, pot.id)?.dips).toBe(2);
    expect(note?.record.kind === 'trial' && note.record.samples[0]?.colour).toMatchObject({ lab: [40, -5, -20], by: 'eye' });
  });

  test.each([
    [{ is: 'temperature', celsius: 500 }, 'impossible'],
    [{ is: 'pH', pH: 15 }, 'impossible'],
    [{ is: 'weighed', nth: 0, grams: 0 }, 'impossible'],
    [{ is: 'weighed', nth: 99, grams: 5 }, 'impossible'],
    [{ is: 'timer', minutes: 0, what: '' }, 'impossible'],
    [{ is: 'remark', text: '  ' }, 'empty'],
    [{ is: 'colour', nth: 0, typed: '200 0 0', by: 'instrument' }, 'impossible'],
    [{ is: 'colour', nth: 0, typed: 'red', by: 'eye' }, 'impossible'],
  ] as const)('%j is refused: %s', (entry, why) => {
    const [pot] = begin({ recipe: 'madder-alum-wool' });
    expect(withEntry(pot?.path ?? '', pot?.text ?? '', entry, at('10:00'), at('10:00'))).toEqual({ is: 'problem', problem: why });
  });

  test('a time that has not come, and a note that is broken, leave the note as it was', () => {
    const [pot] = begin({ recipe: 'madder-alum-wool' });
    expect(withEntry(pot?.path ?? '', pot?.text ?? '', { is: 'in' }, at('10:05'), at('10:00'))).toEqual({
      is: 'problem',
      problem: 'in-future',
    });
    expect(withEntry('a.md', '---\nkind: trial\nlog: [\n---\n', { is: 'in' }, at('10:00'), at('10:00'))).toEqual({
      is: 'problem',
      problem: 'note-broken',
    });
  });
});
