import { describe, expect, test } from 'vitest';
import { chosenText } from '../../../web/domain/merge/note-merge.ts';
import { localMeetings, settleLocally } from '../../../web/notebook/sharing/local-meetings.ts';
import { aKeptNotebook } from '../../helpers/a-kept-notebook.ts';

const WELD = '---\nkind: dyestuff\ntitle: Weld\n---\nYellow.\n\nSown in spring.\n';
const COPY = 'weld (conflicted copy 2024-05-01).md';
const MARKED = 'Before.\n\n<<<<<<< ours\nRed.\n=======\nCrimson.\n>>>>>>> theirs\n';

async function found(notebook: Awaited<ReturnType<typeof aKeptNotebook>>, left: readonly string[] = []) {
  const meetings = await localMeetings(notebook.keeper.store, new Set(left));
  if (!meetings.ok) throw new Error(meetings.error);
  return meetings.value;
}

describe('localMeetings', () => {
  test('offers second copies and marked notes, and is silent on what its reader left', async () => {
    const notebook = await aKeptNotebook({
      'weld.md': WELD,
      [COPY]: WELD.replace('spring', 'autumn'),
      'madder.md': MARKED,
      'plain.md': 'x',
    });
    expect((await found(notebook)).map(({ from, path, copy }) => [from, path, copy])).toEqual([
      ['marks', 'madder.md', undefined],
      ['copy', 'weld.md', COPY],
    ]);
    expect((await found(notebook, [COPY])).map(({ path }) => path)).toEqual(['madder.md']);
  });

  test('settles a second copy: one note is left, and both texts stay among the earlier ones', async () => {
    const other = WELD.replace('spring', 'autumn');
    const notebook = await aKeptNotebook({ 'weld.md': WELD, [COPY]: other });
    const [meeting] = await found(notebook);
    if (!meeting?.merge) throw new Error('nothing was offered');
    const text = chosenText(meeting.merge, () => 'both');
    expect(await settleLocally(notebook.keeper, meeting, { is: 'text', text })).toBe('settled');
    expect([await notebook.textOf('weld.md'), await notebook.textOf(COPY)]).toEqual([text, undefined]);
    expect(text).toContain('spring');
    expect(text).toContain('autumn');
    expect(await notebook.keeper.store.removedFiles()).toMatchObject({ value: [{ path: COPY }] });
    expect(await found(notebook)).toEqual([]);
    // The same decision again is one on what is no longer there.
    expect(await settleLocally(notebook.keeper, meeting, { is: 'text', text })).toBe('changed-meanwhile');
  });

  test('settles a marked note', async () => {
    const notebook = await aKeptNotebook({ 'madder.md': MARKED });
    const [meeting] = await found(notebook);
    if (!meeting?.merge) throw new Error('nothing was offered');
    const text = chosenText(meeting.merge, () => 'theirs');
    expect(await settleLocally(notebook.keeper, meeting, { is: 'text', text })).toBe('settled');
    expect(await notebook.textOf('madder.md')).toBe('Before.\n\nCrimson.\n');
  });
});
