import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import type { ChartBand, ChartRow } from '../../../web/elements/availability-chart/chart-row.ts';
import '../../../web/elements/availability-chart/tg-availability-chart.ts';
import type { TgAvailabilityChart } from '../../../web/elements/availability-chart/tg-availability-chart.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const band = (given: Partial<ChartBand>): ChartBand => ({
  outerFrom: 900,
  from: 950,
  to: 1400,
  outerTo: 1450,
  style: 'local',
  label: 'pods in a ditch',
  claimKey: 'woad#1',
  soft: false,
  ...given,
});
const rows: readonly ChartRow[] = [
  { id: 'woad', title: 'Woad', hex: '#24415f', bands: [band({}), band({ style: 'find', claimKey: 'woad#2', label: 'a find' })] },
  { id: 'indigo', title: 'Indigo', hex: '#1d2f55', bands: [band({ style: 'absent', claimKey: 'indigo#1', label: 'not yet known' })] },
];

async function aChart(): Promise<TgAvailabilityChart> {
  const chart = Object.assign(document.createElement('tg-availability-chart'), { rows, year: 1370, label: 'Blues in the Hanse towns' });
  document.body.append(chart);
  await chart.updateComplete;
  // The first drawing waits until the plot's width is seen.
  await expect.poll(() => chart.shadowRoot?.querySelector('[role="slider"]')).not.toBeNull();
  return chart;
}

function heard(chart: TgAvailabilityChart) {
  const years: number[] = [];
  const claims: string[] = [];
  chart.addEventListener('tg-year-change', ({ detail }) => years.push(detail.year));
  chart.addEventListener('tg-band-pick', ({ detail }) => claims.push(detail.claimKey));
  return { years, claims };
}

const slider = () => page.getByRole('slider', { name: 'Asked year' });

describe('tg-availability-chart', () => {
  test('arrow keys move the thread, and say the year', async () => {
    const chart = await aChart();
    const { years } = heard(chart);
    chart.shadowRoot?.querySelector<HTMLElement>('[role="slider"]')?.focus();
    await userEvent.keyboard('{ArrowRight}{ArrowRight}{Shift>}{ArrowLeft}{/Shift}');
    expect(years).toEqual([1371, 1372, 1362]);
    await expect.element(slider()).toHaveAttribute('aria-valuetext', '1362');
  });

  test('the thread drags with the pointer, and says so on the way', async () => {
    const chart = await aChart();
    const { years } = heard(chart);
    const thread = chart.shadowRoot?.querySelector<HTMLElement>('[role="slider"]');
    const box = thread?.getBoundingClientRect() ?? new DOMRect();
    const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
    const send = (type: string, clientX: number) =>
      thread?.dispatchEvent(new PointerEvent(type, { clientX, clientY: y, pointerId: 1, button: 0, bubbles: true, cancelable: true }));
    // A made-up pointer cannot be captured; the browser's own can.
    if (thread) thread.setPointerCapture = () => undefined;
    send('pointerdown', x);
    send('pointermove', x - 20);
    send('pointermove', x - 60);
    send('pointerup', x - 60);
    send('pointermove', x + 90);
    expect(years.length).toBeGreaterThanOrEqual(2);
    expect(years.every((year, i) => year < (years[i - 1] ?? 1370))).toBe(true);
    expect(chart.year).toBe(years.at(-1));
  });

  test('one key turns to a table of the same claims, and a claim is picked there', async () => {
    const chart = await aChart();
    const { claims } = heard(chart);
    chart.shadowRoot?.querySelector<HTMLElement>('[role="slider"]')?.focus();
    await userEvent.keyboard('t');
    await expect.element(page.getByRole('table', { name: 'Blues in the Hanse towns' })).toBeVisible();
    expect(chart.shadowRoot?.querySelectorAll('tbody tr').length).toBe(3);
    await page.getByRole('button', { name: 'not yet known' }).click();
    expect(claims).toEqual(['indigo#1']);
    await userEvent.keyboard('t');
    await expect.element(slider()).toBeVisible();
  });

  test('a band is picked with the pointer', async () => {
    const chart = await aChart();
    const { claims } = heard(chart);
    chart.shadowRoot?.querySelector('.plot title')?.parentElement?.dispatchEvent(new MouseEvent('click', { bubbles: true }));
    expect(claims).toEqual(['woad#1']);
  });

  test('it comes closer and goes back, and the thread stays', async () => {
    const chart = await aChart();
    const ticks = () => chart.shadowRoot?.querySelector('.scale')?.textContent?.replace(/\s+/g, ' ').trim();
    const all = ticks();
    await page.getByRole('button', { name: 'Closer' }).click();
    expect(ticks()).not.toBe(all);
    await expect.element(slider()).toBeVisible();
    await page.getByRole('button', { name: 'Farther' }).click();
    expect(ticks()).toBe(all);
  });

  test('chart and table pass axe', async () => {
    const chart = await aChart();
    expect(await axeFaults(document.body)).toEqual([]);
    chart.asTable = true;
    await chart.updateComplete;
    expect(await axeFaults(document.body)).toEqual([]);
  });
});
