import { describe, expect, test } from 'vitest';
import { poseQuestion, type TypedQuestion } from '../../web/notebook/pose-question.ts';
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
