import { describe, expect, test } from 'vitest';
import { samePot } from '../../../web/domain/pot/same-pot.ts';

const pot = (recipe: string, body: string) => `---\nkind: trial\n${recipe}log: []\n---\n\n${body}`;
const red = pot('recipe: red\n', 'Planned for 100 g of fibre.\n');

describe('samePot', () => {
  test.each([
    ['the same note', red, true],
    ['one with more logged and written', `${red.replace('log: []', 'log: [10:00 in]')}\nStirred often.\n`, true],
    ['one whose line on the plan was taken out', pot('recipe: red\n', ''), true],
    ['one without a recipe', pot('', 'Planned for 100 g of fibre.\n'), true],
    ['another recipe', pot('recipe: yellow\n', 'Planned for 100 g of fibre.\n'), false],
    ['another mass', pot('recipe: red\n', 'Planned for 250 g of fibre.\n'), false],
    ['another time', pot('recipe: red\n', 'Planned 2026-11-28 08:30 for 100 g of fibre.\n'), false],
    ['no note at all', 'Nothing to see.', true],
  ])('%s', (_, other, same) => {
    expect(samePot(red, other)).toBe(same);
    expect(samePot(other, red)).toBe(same);
  });
});
