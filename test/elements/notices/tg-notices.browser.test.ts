import { afterEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { NoticeBoard } from '../../../web/app/notice-board.ts';
import { TgNotices } from '../../../web/elements/notices/tg-notices.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

function aBoard(): NoticeBoard {
  const notices = new TgNotices();
  document.body.append(notices);
  return new NoticeBoard(notices);
}

describe('tg-notices and its board', () => {
  test('a notice stays until its offer is taken up, which happens once', async () => {
    const board = aBoard();
    const done: string[] = [];
    board.post({
      id: 'update',
      text: 'A newer version lies ready.',
      offer: 'Use it now',
      taken: () => done.push('taken'),
      putAway: () => done.push('away'),
    });
    board.post({ id: 'other', text: 'Another thing.' });
    await expect.element(page.getByText('A newer version lies ready.')).toBeVisible();
    expect(await axeFaults(document.body)).toEqual([]);
    await userEvent.tab();
    await userEvent.keyboard('{Enter}');
    expect(done).toEqual(['taken']);
    await expect.element(page.getByText('A newer version lies ready.')).not.toBeInTheDocument();
    await expect.element(page.getByText('Another thing.')).toBeVisible();
  });

  test('put away, it does only what putting away does', async () => {
    const board = aBoard();
    const done: string[] = [];
    board.post({ id: 'a', text: 'Cut off.', offer: 'Again', taken: () => done.push('taken'), putAway: () => done.push('away') });
    await userEvent.click(page.getByRole('button', { name: 'Put away' }));
    expect(done).toEqual(['away']);
    await expect.element(page.getByText('Cut off.')).not.toBeInTheDocument();
  });

  test('the same notice posted again replaces itself', async () => {
    const board = aBoard();
    board.post({ id: 'a', text: 'First.' });
    board.post({ id: 'a', text: 'Second.' });
    await expect.element(page.getByText('Second.')).toBeVisible();
    await expect.element(page.getByText('First.')).not.toBeInTheDocument();
  });
});
