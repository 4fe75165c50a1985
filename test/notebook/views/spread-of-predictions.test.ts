import { describe, expect, test } from 'vitest';
import { noteId } from '../../../web/domain/note/note.ts';
import { answerView } from '../../../web/notebook/views/answer-view.ts';
import { paletteView } from '../../../web/notebook/views/palette-view.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const notebook = await demoNotebook();
const asked = { region: 'england', when: '1660s', fibre: 'wool' };

describe('likely spread', () => {
  test('stands with every predicted cloth of an answer, and with no other', () => {
    const result = answerView(notebook, { ...asked, colour: '38,12,16', tolerance: '9' });
    const answer = 'answer' in result ? result.answer : undefined;
    expect(answer?.predicted.length).toBeGreaterThan(0);
    expect(answer?.predicted.every(({ spread }) => spread?.startsWith('likely spread ΔE00 '))).toBe(true);
    expect(answer?.cloths.every(({ spread }) => spread === undefined)).toBe(true);
  });

  test('the over-dyes of an answer name both orders, and stand no higher than plausible', () => {
    const result = answerView(notebook, { ...asked, colour: '38,12,16', tolerance: '9' });
    const predicted = 'answer' in result ? result.answer.predicted : [];
    for (const { id, orders, verdict } of predicted) {
      const recipes = (id.split('|')[0] ?? '').split(' + ').map((recipe) => notebook.base.note(noteId(recipe))?.title.toLowerCase() ?? '?');
      const [first, second] = [...(/^Dye (.+), then (.+) over it; or \2 first, then \1 over it\./.exec(orders ?? '') ?? [])].slice(1);
      expect([first?.toLowerCase(), second?.toLowerCase()], orders).toEqual(recipes);
      expect(['attested', 'attested-as-cloth', 'feasible']).not.toContain(verdict);
    }
  });

  test('stands over what could be tried, where that was asked for', () => {
    const of = (tryOverDyes: boolean) => {
      const result = paletteView(notebook, { ...asked, tryOverDyes });
      return 'palette' in result ? result.palette.spread : undefined;
    };
    expect(of(true)).toMatch(/ΔE00 \d+\.\d/);
    expect(of(false)).toBeUndefined();
  });
});
