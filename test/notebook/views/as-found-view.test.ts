import { describe, expect, test } from 'vitest';
import { questionOf, readAddress, settingsOf } from '../../../web/notebook/address.ts';
import { answerView } from '../../../web/notebook/views/answer-view.ts';
import { asFoundView } from '../../../web/notebook/views/as-found-view.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const notebook = await demoNotebook();
const asked = { region: 'hanse-towns', when: 'c. 1370', fibre: 'wool', asFound: true } as const;

describe('asFoundView', () => {
  const view = asFoundView(notebook, { ...asked, colour: '50,-8,5' });

  test('several hypotheses, each with strips of several losses: never one original', () => {
    expect(view?.hypotheses.length).toBeGreaterThan(1);
    for (const { strips, recipes, says } of view?.hypotheses ?? []) {
      expect(strips).toHaveLength(recipes.length > 1 ? recipes.length + 1 : 1);
      for (const { pieces } of strips) expect(new Set(pieces.map(({ hex }) => hex)).size).toBeGreaterThan(2);
      expect(says).toMatch(/^If it was .*ΔE00 \d/);
    }
  });

  test('each piece says the verdict that its own address answers with', () => {
    const pieces = (view?.hypotheses ?? []).flatMap(({ strips }) => strips.flatMap((strip) => strip.pieces));
    for (const { address, verdict } of pieces.filter((_, at) => at % 7 === 0)) {
      const question = questionOf(readAddress(address));
      expect(question.asFound).toBeUndefined();
      const result = answerView(notebook, question);
      // An address carries two decimals; the verdict may only turn where a cloth lies that near the tolerance.
      expect('answer' in result && result.answer.verdict).toBe(verdict);
    }
  });

  test('a piece that an ordinary screen cannot show has its colour for a wide one', () => {
    const bright = asFoundView(notebook, { ...asked, colour: '60,25,60' });
    const pieces = (bright?.hypotheses ?? []).flatMap(({ strips }) => strips.flatMap((strip) => strip.pieces));
    expect(new Set(pieces.map(({ inScreenGamut }) => inScreenGamut)).size).toBe(2);
    for (const { inScreenGamut, wide } of pieces) expect(wide !== undefined, wide).toBe(!inScreenGamut);
    for (const { wide } of pieces) if (wide !== undefined) expect(wide).toMatch(/^color\(display-p3 /);
  });

  test('what the place and date rule out is left out, and said', () => {
    expect(view?.leftOut.join()).toContain('Logwood');
    const recipes = (view?.hypotheses ?? []).flatMap((one) => one.recipes);
    expect(recipes.some((id) => /logwood|saxon|quercitron/.test(id))).toBe(false);
  });

  test('dyes that the reader names are taken, however badly they fit', () => {
    const named = asFoundView(notebook, { ...asked, colour: '50,-8,5' }, ['madder-alum-wool']);
    expect(named?.hypotheses.map(({ recipes }) => recipes)).toEqual([['madder-alum-wool']]);
    expect(named?.hypotheses[0]?.says).toContain('badly');
    expect(asFoundView(notebook, { ...asked, colour: '50,-8,5' }, ['no-such'])?.hypotheses).toEqual(view?.hypotheses);
  });

  test('nothing comes of a dyestuff, an unread question, or a fibre without trials', () => {
    expect(asFoundView(notebook, { ...asked, dye: 'madder' })).toBeUndefined();
    expect(asFoundView(notebook, { ...asked, colour: '#888', when: 'some time' })).toBeUndefined();
    expect(asFoundView(notebook, { ...asked, colour: '#888', fibre: 'alum-tawed-skin' })).toBeUndefined();
  });
});

describe('as found in an address', () => {
  test('and back; as new is not written', () => {
    expect(settingsOf({ ...asked, colour: '#888' })['seen']).toBe('as-found');
    expect(questionOf(readAddress('#/ask?colour=%23888&seen=as-found')).asFound).toBe(true);
    expect(settingsOf({ ...asked, asFound: false })['seen']).toBeUndefined();
  });
});
