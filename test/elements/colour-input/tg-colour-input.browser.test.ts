import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import type { PickedColour } from '../../../web/elements/colour-input/colour-pick-event.ts';
import '../../../web/elements/colour-input/tg-colour-input.ts';
import type { TgColourInput } from '../../../web/elements/colour-input/tg-colour-input.ts';
import { readCarriedColour } from '../../../web/notebook/typed-colour.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const cloths = [{ id: 'madder-alum-wool', title: 'Madder red', depth: 0, hex: '#a63d2b', weave: 'wool', lab: '40,45,28' }];

async function anInput(): Promise<{ input: TgColourInput; picked: PickedColour[] }> {
  const input = Object.assign(document.createElement('tg-colour-input'), { cloths });
  const picked: PickedColour[] = [];
  input.addEventListener('tg-colour-pick', ({ detail }) => picked.push(detail));
  document.body.append(input);
  await input.updateComplete;
  return { input, picked };
}

/** A photo made of three fields: cloth in linear light 0.2, 0.06, 0.04, a white card of 90 %, and a blown-out corner; dimmer in blue. */
async function aPhoto(): Promise<File> {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [300, 100];
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas');
  const encode = (v: number) => Math.round(255 * (1.055 * v ** (1 / 2.4) - 0.055));
  const fields: readonly (readonly [number, number, number])[] = [
    [0.2, 0.06, 0.04 * 0.6],
    [0.9, 0.9, 0.9 * 0.6],
    [1, 1, 1],
  ];
  fields.forEach(([r, g, b], i) => {
    context.fillStyle = `rgb(${encode(r)} ${encode(g)} ${encode(b)})`;
    context.fillRect(i * 100, 0, 100, 100);
  });
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (!blob) throw new Error('no picture');
  return new File([blob], 'skein.png', { type: 'image/png' });
}

const inPhoto = (input: TgColourInput) => input.shadowRoot?.querySelector('tg-photo-colour')?.shadowRoot;

/** Drags over a part of the photo, in shares of it. */
async function drag(input: TgColourInput, from: readonly [number, number], to: readonly [number, number]): Promise<void> {
  const canvas = inPhoto(input)?.querySelector('canvas');
  if (!canvas) throw new Error('no photo is shown');
  const box = canvas.getBoundingClientRect();
  const send = (type: string, [x, y]: readonly [number, number]) =>
    canvas.dispatchEvent(
      new PointerEvent(type, {
        bubbles: true,
        composed: true,
        pointerId: 1,
        button: 0,
        clientX: box.left + x * box.width,
        clientY: box.top + y * box.height,
      }),
    );
  send('pointerdown', from);
  send('pointermove', to);
  send('pointerup', to);
}

async function withPhoto() {
  const made = await anInput();
  await page.getByRole('button', { name: 'From a photo' }).click();
  await userEvent.upload(page.getByLabelText(/A photo of the cloth/), await aPhoto());
  await expect.element(page.getByRole('img', { name: 'The photo' })).toBeVisible();
  return made;
}

describe('tg-colour-input', () => {
  test('a written colour and a cloth of the notebook go out as they are', async () => {
    const { picked } = await anInput();
    await page.getByLabelText('A colour', { exact: true }).fill('lch(45 50 30)');
    await userEvent.keyboard('{Enter}');
    await page.getByRole('button', { name: 'Madder red' }).click();
    expect(picked).toEqual([{ text: 'lch(45 50 30)' }, { text: 'madder-alum-wool' }]);
  });

  test('hue and depth by eye, by keyboard alone, are marked as such', async () => {
    const { picked } = await anInput();
    await page.getByRole('button', { name: 'By eye' }).click();
    const hue = page.getByRole('slider', { name: /Hue/ });
    const before = (hue.element() as HTMLInputElement).value;
    (hue.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight}{ArrowRight}{Tab}{ArrowLeft}{Tab}{Enter}');
    expect((hue.element() as HTMLInputElement).value).toBe(String(Number(before) + 2));
    expect(picked.map(({ by }) => by)).toEqual(['eye']);
    expect(readCarriedColour(picked[0]?.text ?? '')).toMatchObject({ observer: 2, by: 'eye' });
  });

  test('a sample of a spectral file is chosen, and a file that is none gets a message', async () => {
    const { picked } = await anInput();
    await page.getByRole('button', { name: 'From a spectrum' }).click();
    const nms = Array.from({ length: 31 }, (_, i) => 400 + i * 10);
    const row = (id: string, value: number) => [id, ...nms.map(() => value)].join(',');
    const field = page.getByLabelText(/A file of measurements/);
    await userEvent.upload(field, new File(['<html>'], 'page.csv', { type: 'text/csv' }));
    await expect.element(page.getByRole('alert')).toHaveTextContent(/No table of measurements/);
    const text = `sample,${nms.join(',')}\n${row('A1', 0.2)}\n${row('A2', 0.5)}\n`;
    await userEvent.upload(field, new File([text], 'skeins.csv', { type: 'text/csv' }));
    await page.getByLabelText('Sample').selectOptions('A2');
    await page.getByRole('button', { name: 'Take this colour' }).click();
    expect(picked[0]?.by).toBe('spectrum');
    expect(readCarriedColour(picked[0]?.text ?? '')?.lab[0]).toBeCloseTo(76.07, 1);
  });

  test('a cloth in a photo is corrected by the white card beside it, and the photo goes with the value', async () => {
    const { input, picked } = await withPhoto();
    await drag(input, [0.05, 0.2], [0.28, 0.8]);
    await drag(input, [0.4, 0.2], [0.6, 0.8]);
    await page.getByRole('button', { name: 'Take this colour' }).click();
    expect(picked[0]?.by).toBe('photo');
    expect(picked[0]?.photo?.name).toBe('skein.png');
    // Linear 0.2, 0.06, 0.04 in sRGB is XYZ 11.0, 8.8, 4.9: L* 35.7, a* 31.9, b* 23.0 (D65, 2°), worked out by hand from IEC 61966-2-1.
    const lab = readCarriedColour(picked[0]?.text ?? '')?.lab;
    const Y = 0.2126 * 0.2 + 0.7152 * 0.06 + 0.0722 * 0.04;
    expect(lab?.[0]).toBeCloseTo(116 * Math.cbrt(Y) - 16, 0);
    const X = (0.4124 * 0.2 + 0.3576 * 0.06 + 0.1805 * 0.04) / 0.9505;
    expect(Math.abs((lab?.[1] ?? 0) - 500 * (Math.cbrt(X) - Math.cbrt(Y)))).toBeLessThan(0.8);
  });

  test('a blown-out card is refused with a message', async () => {
    const { input } = await withPhoto();
    await drag(input, [0.05, 0.2], [0.28, 0.8]);
    await drag(input, [0.75, 0.2], [0.95, 0.8]);
    await expect.element(page.getByText(/The white card: too bright/)).toBeVisible();
    expect(page.getByRole('button', { name: 'Take this colour' }).query()).toBeNull();
  });

  test('areas of a photo can be set and moved by keyboard', async () => {
    const { input } = await withPhoto();
    (page.getByRole('button', { name: 'the cloth', exact: true }).element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    const area = page.getByRole('button', { name: /the cloth: arrows move it/ });
    await expect.element(area).toBeVisible();
    const before = area.element().getBoundingClientRect().left;
    (area.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowLeft}{ArrowLeft}{ArrowLeft}');
    await expect.poll(() => area.element().getBoundingClientRect().left).toBeLessThan(before - 2);
    expect(inPhoto(input)?.activeElement?.className).toContain('area');
  });

  test('it passes axe in every way', async () => {
    const { input } = await withPhoto();
    await drag(input, [0.05, 0.2], [0.28, 0.8]);
    expect(await axeFaults(document.body)).toEqual([]);
    for (const name of ['By eye', 'From a spectrum', 'Write it, or take a cloth']) {
      await page.getByRole('button', { name }).click();
      expect(await axeFaults(document.body), name).toEqual([]);
    }
  });
});
