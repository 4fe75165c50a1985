import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import type { NoteToSave } from '../../../web/notebook/ports-writing.ts';
import '../../../web/elements/laboratory/tg-laboratory.ts';
import type { TgLaboratory } from '../../../web/elements/laboratory/tg-laboratory.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const files = [
  ['dyestuffs/woad.md', 'kind: dyestuff\ntitle: Woad\nlatin: Isatis tinctoria'],
  ['dyestuffs/indigo.md', 'kind: dyestuff\ntitle: Indigo'],
  ['dyestuffs/weld.md', 'kind: dyestuff\ntitle: Weld'],
  ['dyestuffs/dyers-greenweed.md', "kind: dyestuff\ntitle: Dyer's greenweed"],
  ['regions/england.md', 'kind: region\ntitle: England'],
].map(([path = '', yaml = '']) => ({ path, bytes: new TextEncoder().encode(`---\n${yaml}\n---\n`) }));

async function aLaboratory(): Promise<TgLaboratory> {
  const engine = new LocalEngine();
  await engine.open(files);
  const laboratory = Object.assign(document.createElement('tg-laboratory'), { engine });
  document.body.append(laboratory);
  await laboratory.updateComplete;
  return laboratory;
}

async function add(name: string) {
  await page.getByLabelText(/Compound/).fill(name);
  await userEvent.keyboard('{Enter}');
}

describe('tg-laboratory', () => {
  test('compounds typed line by line are answered, by keyboard alone', async () => {
    await aLaboratory();
    await add('indigo blue');
    await add('luteolin');
    await expect.element(page.getByRole('heading', { level: 2 })).toHaveTextContent(/weld|greenweed/i);
    await expect.element(page.getByText(/No compound in these tables tells/).first()).toBeVisible();
    await page.getByRole('group', { name: 'luteolin' }).getByLabelText('not found').click();
    await expect.element(page.getByRole('heading', { level: 2 })).toHaveTextContent(/^(Woad|Indigo)$/);
  });

  test('the report is drafted as a textile without a dye, and asked to be saved', async () => {
    const laboratory = await aLaboratory();
    const saved: NoteToSave[] = [];
    laboratory.addEventListener('tg-note-save-request', (event) => {
      saved.push(event.detail);
      event.respondWith(Promise.resolve({ is: 'saved' }));
    });
    await add('indigotin');
    await page.getByRole('button', { name: 'Draft the note' }).click();
    await page.getByRole('button', { name: 'Save this note' }).click();
    await expect.element(page.getByText(/^Saved as textiles\//)).toBeVisible();
    expect(saved[0]?.text).toContain('markers: [indigotin]');
    expect(saved[0]?.text).not.toContain('dyes:');
  });

  test('every figure stands with its source, and one of the reader’s own turns the answer and is said', async () => {
    const laboratory = await aLaboratory();
    await add('luteolin');
    await page.getByLabelText(/Compound/).fill('genistein');
    await userEvent.keyboard('{Enter}');
    await page.getByRole('group', { name: 'genistein' }).getByLabelText('not found').click();
    await expect.element(page.getByRole('heading', { level: 2 })).toHaveTextContent('Weld');
    const share = () => laboratory.renderRoot.querySelector('.why')?.textContent ?? '';
    const before = share();
    await page.getByText(/figures it was reckoned with/).click();
    const shown = page.getByLabelText('genistein: shown by HPLC with diode array');
    await expect.element(shown).toHaveValue('0.9');
    await expect.element(page.getByText(/graded after CORDIS/).first()).toBeVisible();
    await expect.element(page.getByText(/our judgement/).first()).toBeVisible();
    const changed: Readonly<Record<string, string>>[] = [];
    laboratory.addEventListener('tg-lab-change', (event) => changed.push(event.detail.settings));
    await shown.fill('0.01');
    await userEvent.keyboard('{Tab}');
    await expect.element(page.getByText(/Reckoned with figures of your own: genistein/)).toBeVisible();
    await expect.poll(share).not.toBe(before);
    expect(changed.at(-1)).toMatchObject({ reach: 'genistein|hplc-dad|0.01', found: 'luteolin', absent: 'genistein' });
    await shown.fill('');
    await userEvent.keyboard('{Tab}');
    await expect.poll(share).toBe(before);
  });

  test('a report in the address is the report on the page', async () => {
    const laboratory = await aLaboratory();
    laboratory.settings = { found: 'indigotin', region: 'england', when: '1370', method: 'tlc' };
    await expect.element(page.getByRole('group', { name: 'indigotin' }).getByLabelText('present')).toBeChecked();
    expect(laboratory.report).toMatchObject({ region: 'england', when: '1370', method: 'tlc' });
  });

  test('has no accessibility faults, empty and answered', async () => {
    const laboratory = await aLaboratory();
    expect(await axeFaults(laboratory)).toEqual([]);
    await page.getByRole('button', { name: /Try it/ }).click();
    await expect.element(page.getByRole('heading', { level: 2 })).toBeVisible();
    expect(await axeFaults(laboratory)).toEqual([]);
  });
});
