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

  test('has no accessibility faults, empty and answered', async () => {
    const laboratory = await aLaboratory();
    expect(await axeFaults(laboratory)).toEqual([]);
    await page.getByRole('button', { name: /Try it/ }).click();
    await expect.element(page.getByRole('heading', { level: 2 })).toBeVisible();
    expect(await axeFaults(laboratory)).toEqual([]);
  });
});
