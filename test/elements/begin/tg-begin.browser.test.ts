import { page } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import type { Beginning } from '../../../web/elements/begin/begin-events.ts';
import '../../../web/elements/begin/tg-begin.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

function aBeginning(state: 'shown' | 'empty', is: 'begun' | 'failed' = 'begun'): Beginning[] {
  const wishes: Beginning[] = [];
  const box = document.body.appendChild(document.createElement('main'));
  box.addEventListener('tg-begin-request', (event) => {
    wishes.push(event.detail);
    event.respondWith(Promise.resolve({ is }));
  });
  box.append(Object.assign(document.createElement('tg-begin'), { state }));
  return wishes;
}

describe('tg-begin', () => {
  test('beside the demonstration: a shelf, with claims or without, or nothing', async () => {
    const wishes = aBeginning('shown');
    await page.getByRole('button', { name: 'A starter shelf' }).click();
    await page.getByRole('checkbox', { name: 'with claims, each with its source' }).click();
    await page.getByRole('button', { name: 'A starter shelf' }).click();
    await page.getByRole('button', { name: 'An empty notebook' }).click();
    expect(wishes).toEqual([{ with: 'shelf', claims: true }, { with: 'shelf', claims: false }, { with: 'nothing' }]);
  });

  test('an empty notebook teaches by doing: one sentence, a first note, one grey cloth; the demonstration can come back', async () => {
    const wishes = aBeginning('empty');
    await expect.element(page.getByRole('link', { name: 'Write a first note' })).toHaveAttribute('href', '#/notebook?new=note');
    await expect.element(page.getByLabelText('An example cloth, undyed grey')).toBeInTheDocument();
    await page.getByRole('button', { name: /The demonstration/ }).click();
    expect(wishes).toEqual([{ with: 'demonstration' }]);
  });

  test('a beginning that failed is said', async () => {
    aBeginning('shown', 'failed');
    await page.getByRole('button', { name: 'A starter shelf' }).click();
    await expect.element(page.getByRole('status')).toHaveTextContent('It could not be begun. Nothing was changed; try again.');
  });

  test.each(['shown', 'empty'] as const)('%s: no accessibility fault', async (state) => {
    aBeginning(state);
    await document.querySelector('tg-begin')?.updateComplete;
    expect(await axeFaults(document.body)).toEqual([]);
  });
});
