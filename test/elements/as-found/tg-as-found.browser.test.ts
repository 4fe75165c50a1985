import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import type { TypedQuestion } from '../../../web/notebook/pose-question.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import '../../../web/elements/ask/tg-ask.ts';
import type { TgAsk } from '../../../web/elements/ask/tg-ask.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const dyestuff = (title: string) =>
  `kind: dyestuff\ntitle: ${title}\navailability: [{region: england, when: 1000–1900, status: grown, known-by: text, source: book}]`;
const trial = (recipe: string, lab: string) =>
  `kind: trial\nrecipe: ${recipe}\nfibre: wool\ncolour: {lab: ${lab}, illuminant: D65, observer: 10}`;
const files = [
  ['regions/england.md', 'kind: region\ntitle: England'],
  [
    'fibres/wool.md',
    'kind: fibre\ntitle: Wool\nclass: protein\neveryday: true\nundyed: [{name: white, colour: {lab: [85, 0, 12], illuminant: D65, observer: 10}}]',
  ],
  ['dyestuffs/woad.md', dyestuff('Woad')],
  ['dyestuffs/weld.md', dyestuff('Weld')],
  ['recipes/blue.md', 'kind: recipe\ntitle: Blue\nfibre: wool\ningredients: [{what: woad, role: dye}]'],
  ['recipes/yellow.md', 'kind: recipe\ntitle: Yellow\nfibre: wool\ningredients: [{what: weld, role: dye}]'],
  ['trials/b.md', trial('blue', '[45, -4, -25]')],
  ['trials/y.md', trial('yellow', '[78, -6, 62]')],
].map(([path = '', yaml = '']) => ({ path, bytes: new TextEncoder().encode(`---\n${yaml}\n---\n`) }));

async function anAsk(): Promise<TgAsk> {
  const engine = new LocalEngine();
  await engine.open(files);
  const question: TypedQuestion = { colour: '55,-14,2 D65/10', region: 'england', when: '1400', fibre: 'wool' };
  const ask = Object.assign(document.createElement('tg-ask'), { engine, question });
  ask.addEventListener('tg-question-change', ({ detail }) => (ask.question = detail.question));
  document.body.append(ask);
  await ask.updateComplete;
  return ask;
}

describe('as new or as found', () => {
  test('a word of the sentence turns the question, by keyboard, and strips of possible originals come before the answer', async () => {
    const ask = await anAsk();
    const word = page.getByRole('button', { name: 'as new', exact: true });
    await expect.element(word).toBeVisible();
    (word.element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}{Tab}{Tab}');
    await page.getByRole('button', { name: /^As found/ }).click();
    expect(ask.question.asFound).toBe(true);
    await expect.element(page.getByRole('heading', { name: 'As found, it may have been' })).toBeVisible();
    await expect.element(page.getByText(/If it was blue and yellow, and nothing else/i)).toBeVisible();
    await expect.element(page.getByText(/only the weld has faded/)).toBeVisible();
    const pieces = page.getByRole('link', { name: /two thirds lost/ });
    await expect.poll(() => pieces.elements().length).toBeGreaterThan(2);
    expect(pieces.elements()[0]?.getAttribute('href')).toMatch(/^#\/ask\?colour=.*predicted/);
  });

  test('a dye that the reader names replaces what the colour suggests', async () => {
    const ask = await anAsk();
    ask.question = { ...ask.question, asFound: true };
    await page.getByLabelText('Taken as dyed with').selectOptions('blue');
    await expect.element(page.getByText(/If it was blue, and nothing else/i)).toBeVisible();
    await expect.element(page.getByText(/blue and yellow, and/i)).not.toBeInTheDocument();
    await page.getByRole('combobox', { name: /^and/ }).selectOptions('yellow');
    await expect.element(page.getByText(/If it was blue and yellow/i)).toBeVisible();
  });

  test('on a phone nothing is cut off, and axe is content', async () => {
    await page.viewport(390, 800);
    const ask = await anAsk();
    ask.question = { ...ask.question, asFound: true };
    await expect.element(page.getByText(/If it was blue and yellow/i)).toBeVisible();
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(390);
    expect(await axeFaults(document.body)).toEqual([]);
  });
});
