import { afterEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { WrittenRemark } from '../../../web/elements/remarks/remark-events.ts';
import '../../../web/elements/remarks/tg-remarks.ts';
import { remarksFile } from '../../../web/notebook/remarks.ts';
import { aKeptNotebook } from '../../helpers/a-kept-notebook.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const REMARKS = new TextDecoder().decode(
  remarksFile([
    { id: 'a', note: 'weld', line: 2, text: '<img src=x onerror=alert(1)>', by: 'Anna', at: '2024-05-01T10:00:00Z' },
    { id: 'b', note: 'woad', text: 'Of another note.', by: 'Anna', at: '2024-05-01T10:00:00Z' },
  ]),
);

describe('tg-remarks', () => {
  test('shows the remarks of its note as text, and asks for one more by keyboard', async () => {
    const { engine } = await aKeptNotebook({ 'remarks.json': REMARKS });
    const element = document.createElement('tg-remarks');
    Object.assign(element, { engine, note: 'weld' });
    const wished: WrittenRemark[] = [];
    element.addEventListener('tg-remark-add-request', (event) => {
      wished.push(event.detail);
      event.respondWith(Promise.resolve('kept'));
    });
    document.body.append(element);
    await expect.element(page.getByText('<img src=x onerror=alert(1)>')).toBeVisible();
    expect(page.getByText('Of another note.').elements()).toEqual([]);

    await userEvent.tab();
    await userEvent.tab();
    await userEvent.keyboard('{Enter}');
    expect(await axeFaults(document.body)).toEqual([]);
    await userEvent.tab();
    await userEvent.keyboard('Read it whole.{Tab}Bela{Tab}{Tab}{Enter}');
    await expect.element(page.getByText('The remark is kept.')).toBeVisible();
    expect(wished).toEqual([{ note: 'weld', text: 'Read it whole.', by: 'Bela' }]);
  });

  test('says why a remark was not kept, and keeps what was written', async () => {
    const { engine } = await aKeptNotebook({});
    const element = document.createElement('tg-remarks');
    Object.assign(element, { engine, note: 'weld' });
    element.addEventListener('tg-remark-add-request', (event) => event.respondWith(Promise.resolve('quota')));
    document.body.append(element);
    await userEvent.click(page.getByText('Make a remark'));
    await userEvent.fill(page.getByLabelText('Remark', { exact: true }), 'Words.');
    await userEvent.fill(page.getByLabelText('Your name'), 'Bela');
    await userEvent.click(page.getByRole('button', { name: 'Keep the remark' }));
    await expect.element(page.getByText(/the browser gives this notebook no more room/)).toBeVisible();
    await expect.element(page.getByLabelText('Remark', { exact: true })).toHaveValue('Words.');
  });
});
