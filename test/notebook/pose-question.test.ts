import { describe, expect, test } from 'vitest';
import { poseCircumstances, poseQuestion, type TypedQuestion } from '../../web/notebook/pose-question.ts';
import { aNote, aNotebook, aWorld } from '../helpers/a-notebook.ts';

const { base, colours } = aNotebook({
  ...aWorld,
  'words/murrey.md': aNote(
    'kind: colour-word\ntitle: Murrey\nregion: england\nwhen: 1358–1568\nmeans: [{colours: [{lab: [27, 27, 4]}, {lab: [30, 25, 2]}]}]',
  ),
  'words/purple.md': aNote(
    'kind: colour-word\ntitle: Purple\nregion: england\nwhen: 1300–1500\nmeans: [{colours: [{lab: [34, 33, -22]}]}]',
  ),
  'words/sad.md': aNote('kind: colour-word\ntitle: Sad\nregion: england\nwhen: 1500–1700\nmeans: [{shade: dark}]'),
  'recipes/madder-alum-wool.md': aNote('kind: recipe\ntitle: Madder red\nfibre: wool'),
  'trials/t1.md': aNote('kind: trial\nrecipe: madder-alum-wool\ncolour: {lab: [45, 45, 25], illuminant: D65, observer: 10}'),
  'trials/t2.md': aNote('kind: trial\nrecipe: madder-alum-wool\ncolour: {lab: [50, 40, 25], illuminant: D65, observer: 10}'),
});
const typed = (more: Partial<TypedQuestion>): TypedQuestion => ({ region: 'england', when: '1450', ...more });
const pose = (colour: string, more: Partial<TypedQuestion> = {}) => poseQuestion(base, typed({ colour, ...more }), colours);
const labs = (colour: string, more: Partial<TypedQuestion> = {}) => {
  const asked = pose(colour, more).question?.colour;
  return asked?.kind === 'swatches' ? asked.swatches.map(({ lab10 }) => lab10.map((value) => Math.round(value))) : asked?.kind;
};

describe('poseQuestion with a colour in words', () => {
  test('asks for every colour of a colour-word, and names the word', () => {
    expect(labs('murrey')).toEqual([
      [27, 27, 4],
      [30, 25, 2],
    ]);
    expect(pose('Murrey').question).toMatchObject({ route: { colourWords: ['murrey'] }, colourNamed: { by: 'colour-word', fits: true } });
  });

  test('says that the word was not in use there and then, and takes its colours all the same', () => {
    const { question } = pose('murrey', { region: 'scotland' });
    expect(question?.colourNamed).toEqual({ by: 'colour-word', ids: ['murrey'], fits: false });
    expect(labs('murrey', { region: 'scotland' })).toHaveLength(2);
  });

  test('takes a recipe with the mean of its samples, a trial, and an undyed fibre', () => {
    expect(labs('madder-alum-wool')).toEqual([[48, 43, 25]]);
    expect(labs('t2')).toEqual([[50, 40, 25]]);
    expect(labs('wool/white')).toEqual([[85, 0, 12]]);
    expect(pose('t2').question?.route.colourWords).toBeUndefined();
  });

  test('takes both where words are a CSS colour and a colour-word in use, and only the CSS colour where it was not', () => {
    expect(labs('purple')).toHaveLength(2);
    expect(labs('purple')).toContainEqual([34, 33, -22]);
    expect(labs('purple', { when: '1800' })).toHaveLength(1);
  });

  test('still takes hex, CSS functions and Lab', () => {
    expect(labs('#8f3b2e')).toHaveLength(1);
    expect(labs('rgb(143 59 46)')).toHaveLength(1);
    expect(labs('45,40,25')).toBe('bare-lab');
  });

  test('tells a word without colours apart from a word nobody knows, and suggests near ones', () => {
    expect(pose('sad').problems).toMatchObject([{ part: 'colour', problem: 'colourless', typed: 'sad' }]);
    const [problem] = pose('murry').problems;
    expect(problem).toMatchObject({ part: 'colour', problem: 'unreadable' });
    expect(problem?.nearest).toContain('murrey');
  });
});

describe('poseQuestion, its other parts', () => {
  const parts = (more: Partial<TypedQuestion>) => poseQuestion(base, typed({ colour: '45,45,25', ...more }), colours);

  test('takes ids, titles and names, and a period for a date', () => {
    expect(parts({ region: 'Albion', fibre: 'Fine wool', wearer: 'LADY', when: 'c. 1450' }).question).toMatchObject({
      route: { region: 'england', span: { from: 1450, to: 1450 }, fibre: 'fine-wool', wearer: 'lady', dyedHere: false },
      when: { earliestStart: 1425, latestEnd: 1475 },
      tolerance: 6,
    });
    expect(parts({ region: 'the world' }).problems).toMatchObject([{ part: 'region' }]);
    expect(parts({ region: 'world' }).question).toMatchObject({ route: { region: 'world' } });
  });

  test('takes an empty fibre or wearer for none asked', () => {
    const { question } = parts({ fibre: ' ', wearer: '' });
    expect(question?.route).not.toHaveProperty('fibre');
    expect(question?.route).not.toHaveProperty('wearer');
  });

  test('tells every part it cannot understand, with what is near, and guesses none', () => {
    const { question, problems } = parts({ region: 'englnd', when: 'soon', fibre: 'woll', wearer: 'pesant', tolerance: '-1' });
    expect(question).toBeUndefined();
    expect(problems.map(({ part, problem, typed: text, nearest }) => [part, problem, text, nearest[0]])).toEqual([
      ['region', 'unknown', 'englnd', 'england'],
      ['when', 'unreadable', 'soon', 'c. 1350'],
      ['fibre', 'unknown', 'woll', 'wool'],
      ['wearer', 'unknown', 'pesant', 'peasant'],
      ['tolerance', 'unreadable', '-1', '6'],
    ]);
  });

  test('says what is missing', () => {
    expect(poseQuestion(base, { region: '', when: ' ' }, colours).problems.map(({ part, problem }) => [part, problem])).toEqual([
      ['region', 'missing'],
      ['when', 'missing'],
      ['colour', 'missing'],
    ]);
  });

  test('a name of two regions is told with both', () => {
    const two = aNotebook({ ...aWorld, 'regions/x.md': aNote('kind: region\ntitle: X\nnames: [Albion]') });
    expect(poseQuestion(two.base, typed({ colour: 'red', region: 'Albion' })).problems).toMatchObject([
      { part: 'region', problem: 'ambiguous', nearest: ['england', 'x'] },
    ]);
  });

  test.each(['0', '101', 'NaN', '', 'six'])('a tolerance of "%s" is none', (tolerance) => {
    expect(parts({ tolerance }).problems).toMatchObject([{ part: 'tolerance', problem: 'unreadable' }]);
  });
});

describe('poseCircumstances', () => {
  test('asks for no colour and no dye, and reads the rest as a whole question does', () => {
    const circumstances = { region: 'Albion', when: 'c. 1450', fibre: 'Fine wool', wearer: 'LADY', dyedHere: true };
    const { question, problems } = poseCircumstances(base, circumstances);
    expect(problems).toEqual([]);
    expect(question).not.toHaveProperty('colour');
    expect(question).not.toHaveProperty('dye');
    const { colour, ...whole } = poseQuestion(base, { ...circumstances, colour: '45,45,25' }).question ?? {};
    expect(colour?.kind).toBe('bare-lab');
    expect(question).toEqual(whole);
  });

  test('says what is missing, and nothing of a colour', () => {
    expect(poseCircumstances(base, { region: '', when: '' }).problems.map(({ part, problem }) => [part, problem])).toEqual([
      ['region', 'missing'],
      ['when', 'missing'],
    ]);
  });
});
