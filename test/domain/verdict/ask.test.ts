import { describe, expect, test } from 'vitest';
import { askColour, type ColourQuestion } from '../../../web/domain/verdict/ask.ts';
import { readColour } from '../../../web/notebook/pose-question.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const grown = 'region: england, when: 1250–1350, status: grown, known-by: text, source: book';
const files = {
  ...aWorld,
  'dyestuffs/madder.md': aDyestuff('Madder', grown),
  'dyestuffs/kermes.md': aDyestuff('Kermes', grown.replace('grown', 'imported')),
  'dyestuffs/logwood.md': aDyestuff('Logwood', 'region: europe, when: until 1500, status: absent, reason: other-continent, source: book'),
  'recipes/red.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: madder, role: dye}]'),
  'recipes/scarlet.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: kermes, role: dye}]'),
  'recipes/black.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: logwood, role: dye}]'),
  'trials/t1.md': aNote('kind: trial\nrecipe: red\nfibre: wool\ncolour: {lab: [45, 45, 25], illuminant: D65, observer: 10}'),
  'trials/t2.md': aNote('kind: trial\nrecipe: red\nfibre: silk\ncolour: {lab: [48, 45, 25], illuminant: D65, observer: 10}'),
  'trials/t3.md': aNote(
    'kind: trial\nrecipe: scarlet\nsamples:\n  - {fibre: wool, colour: {lab: [42, 50, 20], illuminant: D65, observer: 10}}\n  - {fibre: wool, colour: {lab: [30, 40, 10], illuminant: D65, observer: 10}}',
  ),
  'trials/t4.md': aNote('kind: trial\nrecipe: black\nfibre: wool\ncolour: {lab: [20, 1, -2], illuminant: D65, observer: 10}'),
  'textiles/hood.md': aNote(
    'kind: textile\nregion: york\nwhen: 1300\nthreads: [{fibre: wool, dyes: [kermes], tested: found}]\nsource: dig',
  ),
};
const ask = (colour: string, more: Partial<ColourQuestion> = {}, extra: Record<string, string> = {}) => {
  const { base, colours } = aNotebook({ ...files, ...extra });
  const asked = readColour(colour);
  if (!asked) throw new Error('the test asks a colour that cannot be read');
  return askColour(base, colours, {
    colour: asked,
    region: 'england',
    span: { from: 1300, to: 1300 },
    dyedHere: false,
    tolerance: 6,
    fibre: 'wool',
    ...more,
  });
};
const ids = (answer: ReturnType<typeof ask>) =>
  answer.candidates.map(({ judgement, nearest }) => [judgement.route.id, nearest?.trial, judgement.verdict]);

describe('askColour', () => {
  test('ranks candidates by verdict, then difference', () => {
    expect(ids(ask('45,45,25'))).toEqual([
      ['scarlet', 't3', 'attested'],
      ['red', 't1', 'feasible'],
      ['red', 't2', 'plausible'],
    ]);
    expect(ask('45,45,25').verdict).toBe('attested');
  });
  test('gives the closest colour whatever its verdict, and the nearest attested whatever its distance', () => {
    const answer = ask('20,1,-2');
    expect(answer.verdict).toBe('contradicted');
    expect(answer.closest?.judgement.route.id).toBe('black');
    expect(answer.closest?.deltaE00).toBe(0);
    expect(answer.nearestAttested?.judgement.route.id).toBe('scarlet');
    expect(answer.nearestAttested?.nearest?.nth).toBe(1);
  });
  test('falls back to the nearest feasible', () => {
    const answer = ask('45,45,25', {}, { 'textiles/hood.md': aNote('kind: plain') });
    expect(answer.nearestAttested?.judgement.verdict).toBe('feasible');
  });
  test('says nothing-near when no route comes within the tolerance', () => {
    expect(ask('60,-40,40').verdict).toBe('nothing-near');
    expect(ask('60,-40,40').candidates).toEqual([]);
    expect(ask('60,-40,40').closest).toBeDefined();
    expect(ask('45,45,25', { tolerance: 1 }).candidates).toHaveLength(1);
  });
  test('another fibre of the class is capped, another class never counts', () => {
    expect(ids(ask('48,45,25', { fibre: 'silk' })).find(([, trial]) => trial === 't2')).toEqual(['red', 't2', 'feasible']);
    expect(ids(ask('48,45,25', { fibre: 'silk' })).find(([, trial]) => trial === 't1')).toEqual(['red', 't1', 'plausible']);
    expect(ask('48,45,25', { fibre: 'linen' }).verdict).toBe('nothing-near');
    expect(ask('48,45,25', { fibre: 'linen' }).closest).toBeUndefined();
  });
  test('a trial on a kind of the fibre counts as on it; the fibre itself does not count as its kind', () => {
    const trial = {
      'trials/t5.md': aNote('kind: trial\nrecipe: red\nfibre: fine-wool\ncolour: {lab: [45, 45, 26], illuminant: D65, observer: 10}'),
    };
    const onFine = ask('45,45,26', { fibre: 'fine-wool' }, trial).candidates.map(({ nearest, onAnotherFibre }) => [
      nearest?.trial,
      onAnotherFibre,
    ]);
    expect(onFine).toContainEqual(['t5', false]);
    expect(onFine).toContainEqual(['t3', true]);
    expect(ask('45,45,26', {}, trial).candidates.find(({ nearest }) => nearest?.trial === 't5')?.onAnotherFibre).toBe(false);
  });
  test('undyed cloth answers too', () => {
    const answer = ask('85,0,12');
    expect(answer.candidates[0]?.judgement.route.id).toBe('wool/white');
    expect(answer.candidates[0]?.colourFrom).toBe('undyed');
  });
  test('a Lab without conditions is compared in the trial’s own, a screen colour through the spectrum', () => {
    const screenTrial = {
      'trials/t6.md': aNote('kind: trial\nrecipe: red\nfibre: wool\ncolour: {lab: [45, 10, -35], illuminant: D65, observer: 2}'),
    };
    const bare = ask('45,10,-35', {}, screenTrial).closest;
    expect([bare?.nearest?.trial, bare?.deltaE00]).toEqual(['t6', 0]);
    const tenDegree = { 'trials/t6.md': aNote('kind: trial\nrecipe: red\nfibre: wool\ncolour: {hex: "#4a5f9e"}') };
    expect(ask('#4a5f9e', {}, tenDegree).closest?.deltaE00).toBeCloseTo(0, 3);
  });
});
