import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import '../../../web/elements/trial/tg-trials.ts';
import type { TgTrials } from '../../../web/elements/trial/tg-trials.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const trial = (code: string, lab: string, hardness: string, more = '') =>
  `kind: trial\ntitle: Pot ${code}\nrecipe: red\nfibre: wool\ncode: ${code}\nwater: {hardness: ${hardness}}\nlots: ["madder: lot 3, own garden, 2023"]\nactual: [{what: madder, role: dye, amount: 50 %}]\ncolour: {lab: ${lab}, illuminant: D65, observer: 10}${more}`;
const files = [
  ['dyestuffs/madder.md', 'kind: dyestuff\ntitle: Madder'],
  ['fibres/wool.md', 'kind: fibre\ntitle: Wool\nclass: protein'],
  ['recipes/red.md', 'kind: recipe\ntitle: Red\nfibre: wool\ningredients: [{what: madder, role: dye, amount: 50 %}]'],
  ['trials/t1.md', trial('A-1', '[42, 45, 28]', '2 °dH', '\nlog: ["wash fastness: 4 (grey scale for change; ISO 105-C06)"]')],
  ['trials/t2.md', trial('A-2', '[44, 44, 27]', '18 °dH')],
  [
    'exposures/window.md',
    'kind: exposure\ntitle: South window\nsample: A-1\nreadings: [{date: 2025-03-01, dose: 0 Mlx·h, colour: {lab: [42, 45, 28], illuminant: D65, observer: 10}}, {date: 2025-05-01, dose: 1 Mlx·h, colour: {lab: [50, 35, 20], illuminant: D65, observer: 10}}]\nreference: BW2 reached grey-scale 4',
  ],
].map(([path = '', yaml = '']) => ({ path, bytes: new TextEncoder().encode(`---\n${yaml}\n---\n`) }));

async function opened(props: Partial<TgTrials> = {}): Promise<TgTrials> {
  const engine = new LocalEngine();
  await engine.open(files);
  const trials = Object.assign(document.createElement('tg-trials'), { engine, ...props });
  document.body.append(trials);
  await expect.element(page.getByRole('heading', { level: 1 })).toBeVisible();
  return trials;
}

describe('tg-trials', () => {
  test('two ticked by keyboard lead to their comparison; a lot leads to both', async () => {
    const trials = await opened();
    (page.getByRole('checkbox', { name: 'Compare Pot A-1' }).element() as HTMLElement).focus();
    await userEvent.keyboard(' ');
    await expect.element(page.getByText('Tick another.')).toBeVisible();
    await page.getByRole('checkbox', { name: 'Compare Pot A-2' }).click();
    await expect
      .element(page.getByRole('link', { name: 'What differed between them' }))
      .toHaveAttribute('href', expect.stringMatching(/^#\/trials\?beside=t1(?:,|%2C)t2$/));
    await expect.element(page.getByText(/lot 3, own garden, 2023/)).toBeVisible();
    expect(await axeFaults(trials)).toEqual([]);
  });

  test('the one thing that differed is said as a possibility, with what each pot says', async () => {
    const trials = await opened({ settings: { beside: 't1,t2,nowhere' } });
    await expect.element(page.getByText(/Only one thing was changed.*may well/)).toBeVisible();
    await expect.element(page.getByRole('row', { name: 'Hardness of the water 2 °dH 18 °dH' })).toBeVisible();
    await expect.element(page.getByText(/t1 and t2: ΔE00 [\d.]+, match/)).toBeVisible();
    await expect.element(page.getByRole('alert')).toHaveTextContent('nowhere');
    expect(await axeFaults(trials)).toEqual([]);
  });

  test('one pot: its skein, its tests with their curve, and the way to repeat it', async () => {
    const trials = await opened({ trial: 't1' });
    await expect.element(page.getByText('washing: 4')).toBeVisible();
    await expect.element(page.getByText(/grey scale for change; on wool/)).toBeVisible();
    await expect.element(page.getByRole('img', { name: /Change in colour under light: South window/ })).toBeVisible();
    await expect.element(page.getByText(/Blue wool 2 had reached grey-scale 4/)).toBeVisible();
    await expect.element(page.getByText(/Repeatable: untested/)).toBeVisible();
    await expect
      .element(page.getByRole('link', { name: 'Repeat it with one thing changed' }))
      .toHaveAttribute('href', '#/notebook?new=repeat&of=t1');
    expect(await axeFaults(trials)).toEqual([]);
  });

  test('an id nobody has is told', async () => {
    const engine = new LocalEngine();
    await engine.open(files);
    document.body.append(Object.assign(document.createElement('tg-trials'), { engine, trial: 'nowhere' }));
    await expect.element(page.getByRole('alert')).toHaveTextContent('nowhere');
  });
});
