import { describe, expect, test } from 'vitest';
import { coloursOfMeanings, colourWordMeanings } from '../../../web/domain/naming/colour-word-meanings.ts';
import { aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const murrey = (region: string, when: string, lab: string) =>
  aNote(
    `kind: colour-word\ntitle: Murrey\nregion: ${region}\nwhen: ${when}\nmeans: [{shade: mulberry, colours: [{lab: ${lab}}]}]\ndoubt: cloth or colour`,
  );
const { base } = aNotebook({
  ...aWorld,
  'words/murrey.md': murrey('england', '1358–1568', '[27, 27, 4]'),
  'words/murrey-late.md': murrey('ireland', '1600–1650', '[40, 10, 0]'),
  'words/sad.md': aNote('kind: colour-word\ntitle: Sad\nregion: england\nwhen: 1500–1700\nmeans: [{shade: dark}]'),
});
const asked = (region: string, year: number) => ({ region, span: { from: year, to: year } });
const meanings = (text: string, region: string, year: number) => colourWordMeanings(base, text, asked(region, year));

describe('colourWordMeanings', () => {
  test('gives what the word meant here and then, with relations and doubt, and keeps the others behind it', () => {
    expect(
      meanings('MURREY', 'england', 1450).map(({ word, place, time, fits, doubt }) => [word, place, time?.relation, fits, doubt]),
    ).toEqual([
      ['murrey', 'here', 'throughout', true, 'cloth or colour'],
      ['murrey-late', 'neighbour', 'later', false, 'cloth or colour'],
    ]);
  });

  test('finds the word among others, and counts a wider or narrower region', () => {
    expect(meanings('a murrey gown', 'york', 1400)[0]).toMatchObject({ word: 'murrey', place: 'around', fits: true });
    expect(meanings('a murrey gown', 'europe', 1400)[0]).toMatchObject({ place: 'within', fits: true });
    expect(meanings('a red gown', 'york', 1400)).toEqual([]);
  });

  test('gives the colours of the meanings that fit, of all where none fits, and none where none is stated', () => {
    const labs = (text: string, region: string, year: number) => {
      const { swatches, fits } = coloursOfMeanings(meanings(text, region, year));
      return [fits, swatches.map(({ lab10 }) => [...lab10])];
    };
    expect(labs('murrey', 'england', 1450)).toEqual([true, [[27, 27, 4]]]);
    expect(labs('murrey', 'scotland', 1450)).toEqual([
      false,
      [
        [27, 27, 4],
        [40, 10, 0],
      ],
    ]);
    expect(labs('sad', 'england', 1600)).toEqual([false, []]);
  });
});
