import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import '../../../web/elements/looking/tg-looking.ts';
import type { TgLooking } from '../../../web/elements/looking/tg-looking.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const trial = (lab: string) => `kind: trial\nrecipe: red\nfibre: wool\ncolour: {lab: ${lab}, illuminant: D65, observer: 10}`;
const files = [
  ['dyestuffs/madder.md', 'kind: dyestuff\ntitle: Madder\nlightfast: [{grade: 4, scale: blue wool}]'],
  [
    'fibres/wool.md',
    'kind: fibre\ntitle: Wool\nclass: protein\nundyed: [{name: white, colour: {lab: [85, 0, 12], illuminant: D65, observer: 10}}]',
  ],
  ['recipes/red.md', 'kind: recipe\ntitle: Red\nfibre: wool\ningredients: [{what: madder, role: dye}]'],
  ['trials/t1.md', trial('[42, 45, 28]')],
  ['trials/t2.md', trial('[50, 45, 28]')],
  ['trials/wild.md', trial('[50, 85, 60]')],
].map(([path = '', yaml = '']) => ({ path, bytes: new TextEncoder().encode(`---\n${yaml}\n---\n`) }));

async function laid(ids: readonly string[]): Promise<TgLooking> {
  const engine = new LocalEngine();
  await engine.open(files);
  const looking = Object.assign(document.createElement('tg-looking'), { engine, ids });
  document.body.append(looking);
  await expect.element(page.getByRole('heading', { level: 1 })).toBeVisible();
  return looking;
}

describe('tg-looking', () => {
  test('two cloths, three lights: the sentence and the cloths follow the light', async () => {
    await laid(['t1', 't2']);
    await expect.element(page.getByText(/In daylight they are .*lighter than this cloth/)).toBeVisible();
    const before = page.getByRole('img', { name: /Red, t1, daylight/ });
    await expect.element(before).toBeVisible();
    await page.getByRole('button', { name: 'lamp' }).click();
    await expect.element(page.getByText(/By the lamp/)).toBeVisible();
    await expect.element(page.getByRole('img', { name: /Red, t1, lamp/ })).toBeVisible();
    await expect.element(page.getByText(/cannot be said/)).toBeVisible();
  });

  test('laid on mid-grey by keyboard nothing else is seen, and Escape returns to where one was', async () => {
    await laid(['t1', 't2']);
    const lay = page.getByRole('button', { name: 'Lay on mid-grey, alone' });
    (lay.element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    const surround = page.getByRole('dialog', { name: 'On mid-grey' });
    await expect.element(surround).toBeVisible();
    const box = surround.element().getBoundingClientRect();
    expect([box.left, box.top, box.width, box.height]).toEqual([0, 0, innerWidth, innerHeight]);
    // L* 50 is #777777 to the nearest step.
    const probe = document.createElement('canvas').getContext('2d');
    if (!probe) throw new Error('no canvas');
    probe.fillStyle = getComputedStyle(surround.element()).backgroundColor;
    probe.fillRect(0, 0, 1, 1);
    const [r = 0, g = 0, b = 0] = probe.getImageData(0, 0, 1, 1).data;
    expect(r === g && g === b).toBe(true);
    await expect.element(page.getByRole('img', { name: 'Red, t1, daylight' })).toBeVisible();
    // Wherever one points, there is only the grey with what lies on it.
    const under = new Set(
      [0.05, 0.5, 0.95].flatMap((x) => [0.02, 0.3, 0.98].map((y) => document.elementFromPoint(x * innerWidth, y * innerHeight))),
    );
    const inside = [...under].map((one) => (one?.shadowRoot ?? document).elementFromPoint(innerWidth * 0.05, innerHeight * 0.02));
    expect(inside.every((one) => one?.closest('tg-judging') ?? one?.tagName === 'TG-LOOKING')).toBe(true);
    await userEvent.keyboard('{Escape}');
    await expect.element(page.getByRole('button', { name: 'lamp' })).toBeVisible();
    await expect.poll(() => document.activeElement?.shadowRoot?.activeElement?.tagName).toBe('TG-JUDGING');
  });

  test('a colour outside the screen’s is marked, numbers are one tap away', async () => {
    await laid(['wild']);
    await expect.element(page.getByText(/Outside the screen’s colours/)).toBeVisible();
    await page.getByText('Numbers').click();
    await expect.element(page.getByText(/Lab 50.0, 85.0, 60.0/)).toBeVisible();
    await expect.element(page.getByText(/C\* 104/).first()).toBeVisible();
  });

  test('another colour is laid beside it, and taken away again', async () => {
    const looking = await laid(['t1']);
    const seen: (readonly string[])[] = [];
    looking.addEventListener('tg-looking-change', ({ detail }) => seen.push(detail.ids));
    await page.getByLabelText('A colour, or a cloth by its id').fill('#a63d2b');
    await userEvent.keyboard('{Enter}');
    await expect.element(page.getByText(/In daylight/)).toBeVisible();
    await page.getByRole('button', { name: 'Take A bare colour away' }).click();
    expect(seen).toEqual([['t1', '#a63d2b'], ['t1']]);
  });

  test('a dose of light gives a range', async () => {
    await laid(['t1']);
    await page.getByLabelText('After light, Mlx·h').fill('5');
    await userEvent.keyboard('{Enter}');
    await expect.element(page.getByText(/most faded: grey scale/)).toBeVisible();
    await expect.element(page.getByText(/least faded: grey scale/)).toBeVisible();
  });

  test('it passes axe, laid on grey too', async () => {
    await laid(['t1', 't2', 'wild']);
    expect(await axeFaults(document.body)).toEqual([]);
    await page.getByRole('button', { name: 'Lay on mid-grey, alone' }).click();
    expect(await axeFaults(document.body)).toEqual([]);
  });
});
