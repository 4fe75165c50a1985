import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import '../../../web/elements/reach-map/tg-reach-map.ts';
import type { TgReachMap } from '../../../web/elements/reach-map/tg-reach-map.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const files = [
  ['regions/york.md', 'kind: region\ntitle: York\npoint: [53.96, -1.08]'],
  ['regions/far.md', 'kind: region\ntitle: Far'],
  [
    'dyestuffs/madder.md',
    'kind: dyestuff\ntitle: Madder\navailability:\n  - {region: york, when: 900–1000, status: grown, known-by: remains, source: a}\n  - {region: far, when: 900–1000, status: cloth-only, known-by: text, source: a}',
  ],
].map(([path = '', yaml = '']) => ({ path, bytes: new TextEncoder().encode(`---\n${yaml}\n---\n`) }));

async function aMap(): Promise<TgReachMap> {
  const engine = new LocalEngine();
  await engine.open(files);
  const map = Object.assign(document.createElement('tg-reach-map'), { engine, reach: { dye: 'madder', when: '950' } });
  document.body.append(map);
  await expect.element(page.getByRole('img')).toBeVisible();
  return map;
}

describe('tg-reach-map', () => {
  test('draws what has a point and tells the rest in the table', async () => {
    await aMap();
    await expect.element(page.getByRole('row', { name: /Far.*no point.*arrived only as cloth/ })).toBeVisible();
    await expect.element(page.getByRole('row', { name: /York.*was grown/ })).toBeVisible();
  });

  test('another date, typed, is asked for and drawn', async () => {
    const map = await aMap();
    const asked: string[] = [];
    map.addEventListener('tg-reach-change', ({ detail }) => asked.push(detail.reach.when));
    await page.getByLabelText('Date').fill('1500');
    await userEvent.keyboard('{Tab}');
    await expect.element(page.getByText(/say nothing of madder/)).toBeVisible();
    expect(asked).toEqual(['1500']);
  });

  test('is grey throughout and has no accessibility faults', async () => {
    const map = await aMap();
    expect(await axeFaults(map)).toEqual([]);
    for (const shape of map.shadowRoot?.querySelectorAll('svg *') ?? []) {
      const { fill, stroke } = getComputedStyle(shape);
      for (const ink of [fill, stroke]) {
        const chroma = /^oklch\([\d.]+ ([\d.]+)/.exec(ink)?.[1];
        if (chroma !== undefined) expect(Number(chroma), ink).toBe(0);
      }
    }
  });
});
