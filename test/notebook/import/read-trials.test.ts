import { describe, expect, test } from 'vitest';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { trialFacts } from '../../../web/domain/pot/trial-facts.ts';
import { gather } from '../../../web/notebook/import/gather.ts';
import { readTrials } from '../../../web/notebook/import/read-trials.ts';
import { gatheredSentence } from '../../../web/notebook/words/gathered-words.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { fc } from '../../helpers/property.ts';

const WORLD = {
  ...aWorld,
  'dyestuffs/madder.md': aDyestuff('Madder'),
  'dyestuffs/kermes.md': aDyestuff('Kermes'),
  'dyestuffs/cochineal.md': aDyestuff('Cochineal'),
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum'),
  'assistants/tartar.md': aNote('kind: assistant\ntitle: Tartar'),
  'recipes/madder-wool.md': aNote(
    'kind: recipe\ntitle: Madder on wool\nfibre: wool\ningredients: [{what: madder, role: dye, amount: 50 %}]',
  ),
};
const { base } = aNotebook(WORLD);
const read = (text: string, chosen = {}) => readTrials(base, text, chosen);
const note = (text: string, nth = 0) => {
  const draft = read(text).notes[nth];
  if (!draft) throw new Error('no note');
  return parseNote(draft.path, draft.text);
};
const codes = (text: string, chosen = {}) => read(text, chosen).messages.map(({ row, code }) => `${row} ${code}`);

describe('readTrials', () => {
  const TABLE = `Trial;Recipe;Dyed on;Dyer;Water hardness (°dH);pH;Dyestuff;% WOF;Mordant;Temp (°C);Time (min);Lot;Skein;Fiber;Weight (g);L*;a*;b*;Illuminant;Observer;Remarks
P1;Madder on wool;2025-03-02;R. A.;9;7,4;Madder;50 %;alum 15 %;70;60;madder: lot M-3, grown here, 2023;P1-1;Wool;50;40.1;45.2;28;D65;10;even
P1;;;;;;;;;;;;P1-2;Wool;25;41;44;27;D65;10;
P2;Madder on wool;2025-03-09;R. A.;9;7.4;Madder;50 %;alum 15 %;70;60;;P2-1;Wool;50;;;;;;`;

  test('lines of one pot are its skeins; numbers take the unit of their heading', () => {
    const gathered = read(TABLE);
    expect(gathered.messages).toEqual([]);
    expect(gathered.notes.map(({ path }) => path)).toEqual(['trials/p1.md', 'trials/p2.md']);
    const { value, diagnostics } = note(TABLE);
    expect(diagnostics).toEqual([]);
    expect(value.title).toBe('Madder, alum 15 % on Wool, 2025-03-02');
    expect(value.record).toMatchObject({
      kind: 'trial',
      recipe: { text: 'madder-wool' },
      date: { span: { latestStart: 2025 } },
      by: 'R. A.',
      water: { hardness: '9 °dH', pH: 7.4 },
      lots: ['madder: lot M-3, grown here, 2023'],
      actual: [
        { what: { text: 'alum' }, role: 'mordant', amount: { value: 15, unit: '%' } },
        { what: { text: 'madder' }, role: 'dye', amount: { value: 50, unit: '%' } },
      ],
      samples: [
        { code: 'P1-1', fibre: { text: 'wool' }, fibreGrams: 50, colour: { lab: [40.1, 45.2, 28], illuminant: 'D65', observer: 10 } },
        { code: 'P1-2', fibreGrams: 25 },
      ],
    });
    expect(value.source).toContain('even');
    expect(gathered.rows.map(({ row, path }) => [row, path])).toEqual([
      [2, 'trials/p1.md'],
      [3, 'trials/p1.md'],
      [4, 'trials/p2.md'],
    ]);
  });

  test('what comes out is a trial that can be compared', () => {
    const written = Object.fromEntries(read(TABLE).notes.map(({ path, text }) => [path, text]));
    const notebook = aNotebook({ ...WORLD, ...written });
    expect(trialFacts(notebook.base, 'p1')).toMatchObject({
      recipe: 'madder-wool',
      fibreGrams: 75,
      topCelsius: 70,
      heldMinutes: 60,
      pH: 7.4,
      materials: [
        { id: 'alum', percent: 15 },
        { id: 'madder', percent: 50 },
      ],
    });
  });

  test('a stand-in is declared, and kept beside what was used', () => {
    const { value } = note('recipe,dye,amount (%),stands for\nMadder on wool,Cochineal,8,Kermes');
    expect(value.record).toMatchObject({
      actual: [{ what: { text: 'cochineal' }, amount: { text: '8 %' }, standsFor: { text: 'kermes' } }],
    });
  });

  test('a column matched by hand goes before its heading', () => {
    const text = 'x,y,z\nMadder on wool,2025-01-01,W-1';
    expect(codes(text)).toEqual(['0 column-missing']);
    expect(codes(text, { recipe: 0, date: 1, code: 2 })).toEqual([]);
  });

  test('bare a and b are a colour beside an L, and nothing by themselves', () => {
    expect(note('recipe,L,a,b,illuminant,observer\nMadder on wool,40,45,28,D65,10').value.record).toMatchObject({
      samples: [{ colour: { lab: [40, 45, 28] } }],
    });
    expect(codes('recipe,date,a\nMadder on wool,2025-01-01,x')).toEqual(['1 column-unmatched']);
  });

  test('a hex colour is taken with or without its #', () => {
    expect(note('recipe,colour\nMadder on wool,a03c2e').value.record).toMatchObject({ samples: [{ colour: { hex: '#a03c2e' } }] });
  });

  test.each([
    ['', ['0 nothing-inside']],
    ['recipe,date', ['0 nothing-inside']],
    ['a1,a2\n1,2', ['0 column-missing']],
    ['recipe,date,dye\n,2025-01-01,\nMadder on wool,2025-01-02,madder', ['2 no-name']],
    ['recipe,date,odd\nMadder on wool,2025-01-01,x', ['1 column-unmatched']],
    ['dye,date\nMadder,2025-01-01', ['2 no-recipe']],
    ['recipe,date\nMadder on silk,2025-01-01', ['2 word-unknown']],
    ['recipe,date\nMadder on wool,yore', ['2 date-unreadable']],
    ['recipe,date\nMadder on wool,', ['2 no-date']],
  ])('%j is told by row', (text, expected) => expect(codes(text)).toEqual(expected));

  test.each([
    ['mass', '50', '2 unit-missing'],
    ['mass', '-50 g', '2 number-impossible'],
    ['mass', '0 g', '2 number-impossible'],
    ['mass', 'some', '2 amount-unreadable'],
    ['mass (g)', '250000', '2 number-impossible'],
    ['mordant', 'alum 500 %', '2 amount-absurd'],
    ['mordant', 'alum 0 %', '2 number-impossible'],
    ['mordant', 'alum 15', '2 unit-missing'],
    ['hardness', '12', '2 unit-missing'],
    ['hardness (°dH)', '-3', '2 amount-unreadable'],
    ['ph', '15', '2 number-impossible'],
    ['ph', 'low', '2 number-impossible'],
    ['bath', '0', '2 number-impossible'],
    ['temp', '70', '2 unit-missing'],
    ['colour', 'reddish', '2 colour-unreadable'],
    ['colour', '"120, 0, 0"', '2 colour-unreadable'],
    ['colour', '"40, 45, 28"', '2 conditions-missing'],
  ])('%s “%s” is told and kept', (heading, cell, expected) => {
    const text = `recipe,date,${heading}\nMadder on wool,2025-01-01,${cell}`;
    const gathered = read(text);
    expect(gathered.messages.map(({ row, code }) => `${row} ${code}`)).toContain(expected);
    for (const message of gathered.messages) expect(gatheredSentence(message)).toContain(message.about);
    const kept = cell.replaceAll('"', '');
    for (const part of kept.split(/,\s*/)) expect(gathered.notes[0]?.text).toContain(part.replace('alum ', ''));
  });

  test('nothing is overwritten: a taken id gets a number, the same note is passed over, a taken code is told', () => {
    const [first] = read(TABLE).notes;
    const held = aNotebook({ ...WORLD, [first?.path ?? '']: first?.text ?? '' }).base;
    expect(readTrials(held, TABLE).messages.map(({ row, code }) => `${row} ${code}`)).toEqual([
      '2 code-taken',
      '3 code-taken',
      '2 same-already',
    ]);
    const other = readTrials(held, 'pot,recipe,date\nP1,Madder on wool,2026-01-01');
    expect(other.notes.map(({ path }) => path)).toEqual(['trials/p1-2.md']);
    expect(other.messages.map(({ code }) => code)).toEqual(['id-taken']);
  });

  test('is one of the forms that can be gathered', () => {
    expect(gather(base, 'trials', TABLE)).toEqual(read(TABLE));
  });

  test('whatever the text, it is read without a throw and every note parses', () => {
    const cell = fc.oneof(fc.string(), fc.constantFrom('madder 50 %', '-1', '12 g', '#fff', '3rd', 'alum; tartar 5 %', '70 °C'));
    const headings = 'pot,recipe,date,dye,amount,mordant,mass,temp,colour,ph,bath,remark';
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 1, maxLength: 12 }), { maxLength: 6 }), (cells) => {
        const text = [headings, ...cells.map((row) => row.map((one) => `"${one.replaceAll('"', '""')}"`).join(','))].join('\n');
        for (const { path, text: written } of read(text).notes) {
          const { value, diagnostics } = parseNote(path, written);
          expect(value.record.kind).toBe('trial');
          expect(diagnostics.filter(({ code }) => code.startsWith('yaml') || code.startsWith('front-matter'))).toEqual([]);
        }
      }),
    );
  });
});
