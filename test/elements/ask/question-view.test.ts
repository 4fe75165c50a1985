import { describe, expect, test } from 'vitest';
import { problemSentence, questionWords, threadYear, YEARS } from '../../../web/elements/ask/question-view.ts';
import { choicesView } from '../../../web/notebook/views/choices-view.ts';
import { aDyestuff, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const choices = choicesView(aNotebook({ ...aWorld, 'dyestuffs/madder.md': aDyestuff('Madder') }));

describe('questionWords', () => {
  test('are the titles of what is asked for', () => {
    expect(
      questionWords({ dye: 'madder', region: 'england', when: 'c. 1370', fibre: 'fine-wool', wearer: 'noble', dyedHere: true }, choices),
    ).toEqual({
      subject: 'madder',
      state: 'as new',
      act: 'dyed',
      fibre: 'fine wool',
      region: 'England',
      when: 'c. 1370',
      wearer: 'a noble',
    });
  });

  test('invite where nothing is asked yet, and keep what is not known', () => {
    expect(questionWords({ region: '', when: '' }, choices)).toEqual({
      subject: 'a colour',
      state: 'as new',
      act: 'worn',
      fibre: 'any fibre',
      region: 'a place',
      when: 'a date',
      wearer: 'anyone',
    });
    expect(questionWords({ colour: '#8f3b2e', region: 'atlantis', when: 'soon' }, undefined)).toMatchObject({
      subject: '#8f3b2e',
      region: 'atlantis',
      when: 'soon',
    });
  });
});

describe('threadYear', () => {
  test.each([
    ['1450', 900, 1450],
    [' -44 ', 900, -44],
    ['late 9th century', 884, 884],
    ['880–960', 920, 920],
    ['soon', undefined, 1370],
    ['5000', undefined, YEARS.to],
    ['1200 BC', -1199, YEARS.from],
  ])('%s, read as %s: %i', (when, read, year) => {
    expect(threadYear(when, read)).toBe(year);
  });
});

describe('problemSentence', () => {
  test.each([
    ['unknown', 'region', 'englnd', ['england']],
    ['ambiguous', 'dye', 'brasil', ['sappanwood', 'brazilwood']],
    ['unreadable', 'when', 'soon', ['c. 1350']],
    ['colourless', 'colour', 'sad', ['#8f3b2e']],
  ] as const)('%s: keeps what was typed and says what is near', (problem, part, typed, nearest) => {
    const sentence = problemSentence({ part, problem, typed, nearest });
    expect(sentence).toContain(typed);
    for (const one of nearest) expect(sentence).toContain(one);
  });

  test('missing: asks for it', () => {
    expect(problemSentence({ part: 'region', problem: 'missing', typed: '', nearest: [] })).toContain('place');
  });
});
