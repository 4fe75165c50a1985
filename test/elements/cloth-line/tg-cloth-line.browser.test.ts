import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import type { ClothItem } from '../../../web/elements/cloth-line/cloth-line-view.ts';
import '../../../web/elements/cloth-line/tg-cloth-line.ts';
import type { TgClothLine } from '../../../web/elements/cloth-line/tg-cloth-line.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const cloths: readonly ClothItem[] = [
  { id: 'madder', name: 'Madder', hex: '#a63d2b', fibre: 'wool', verdict: 'attested', verdictWord: 'Attested', classes: 2, group: 'Local' },
  { id: 'woad', name: 'Woad', hex: '#24415f', fibre: 'wool', verdict: 'feasible', verdictWord: 'Feasible', group: 'Local' },
  {
    id: 'kermes',
    name: 'Kermes',
    hex: '#b3202f',
    fibre: 'silk',
    verdict: 'attested-as-cloth',
    verdictWord: 'Attested as cloth',
    group: 'As cloth',
  },
];

async function aLine(items = cloths): Promise<TgClothLine> {
  const line = Object.assign(document.createElement('tg-cloth-line'), { items, label: 'Palette' });
  document.body.append(line);
  await line.updateComplete;
  return line;
}

const picks = (line: TgClothLine): string[] => {
  const seen: string[] = [];
  line.addEventListener('tg-cloth-pick', ({ detail }) => seen.push(detail.id));
  return seen;
};

describe('tg-cloth-line', () => {
  test('every cloth is a button named with its verdict, and a click takes it down', async () => {
    const seen = picks(await aLine());
    await page.getByRole('button', { name: 'Woad, Feasible' }).click();
    expect(seen).toEqual(['woad']);
  });

  test('one tab stop; arrows lead along the line, Enter takes down', async () => {
    const before = document.body.appendChild(document.createElement('button'));
    const line = await aLine();
    const seen = picks(line);
    before.focus();
    await userEvent.tab();
    expect(line.shadowRoot?.activeElement?.getAttribute('aria-label')).toContain('Madder');
    await userEvent.keyboard('{ArrowRight}{ArrowRight}{Enter}');
    expect(seen).toEqual(['kermes']);
    await userEvent.keyboard('{Home}{Enter}');
    expect(seen).toEqual(['kermes', 'madder']);
    await userEvent.keyboard('{End}');
    await userEvent.tab({ shift: true });
    expect(document.activeElement).toBe(before);
  });

  test('new items are shown, and those gone leave the line', async () => {
    const line = await aLine();
    line.items = cloths.slice(1);
    await line.updateComplete;
    await expect.element(page.getByRole('button', { name: /Kermes/ })).toBeVisible();
    await expect.poll(() => line.shadowRoot?.querySelectorAll('[part="cloth"]').length).toBe(2);
  });

  test('on a phone it wraps and the page does not scroll sideways', async () => {
    await page.viewport(360, 740);
    const many = Array.from({ length: 9 }, (_, i) => ({ ...cloths[0], id: `c${i}`, name: `Cloth ${i}` }) as ClothItem);
    const line = await aLine(many);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
    const tops = [...(line.shadowRoot?.querySelectorAll('[part="cloth"]') ?? [])].map((cloth) =>
      Math.round(cloth.getBoundingClientRect().top),
    );
    expect(new Set(tops).size).toBe(3);
  });

  test('it passes axe', async () => {
    await aLine();
    expect(await axeFaults(document.body)).toEqual([]);
  });
});
