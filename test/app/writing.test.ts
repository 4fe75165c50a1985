import { describe, expect, test } from 'vitest';
import { deleteNote, saveNote, saveNotes } from '../../web/app/writing.ts';
import { aKeptNotebook } from '../helpers/a-kept-notebook.ts';
import { aNote } from '../helpers/a-notebook.ts';

const PATH = 'recipes/red.md';
const RED = aNote('kind: recipe\ntitle: Red');
const files = { [PATH]: RED };

describe('saveNote', () => {
  test('writes what was based on what is there, and answers follow at once', async () => {
    const { keeper, engine, textOf } = await aKeptNotebook(files);
    const text = RED.replace('Red', 'Redder');
    expect(await saveNote(keeper, { path: PATH, text, basedOn: RED })).toEqual({ is: 'saved' });
    expect(await textOf(PATH)).toBe(text);
    expect((await engine.note('red'))?.title).toBe('Redder');
  });

  test('keeps every byte: CRLF, a byte order mark, no newline at the end', async () => {
    const { keeper, textOf } = await aKeptNotebook({});
    const text = '\uFEFF---\r\nkind: plain\r\n---\r\nWords';
    await saveNote(keeper, { path: 'a.md', text });
    expect(await textOf('a.md')).toBe(text);
    expect(await saveNote(keeper, { path: 'a.md', text: `${text}.`, basedOn: text })).toEqual({ is: 'saved' });
  });

  test('files go with a note, changed or new; the same photo is kept once, and another under its name is never overwritten', async () => {
    const { keeper } = await aKeptNotebook(files);
    const photo = { path: 'photos/skein-1.jpg', bytes: new Uint8Array([1, 2, 3]) };
    const text = `${RED}photos/skein-1.jpg`;
    expect(await saveNote(keeper, { path: PATH, text, basedOn: RED }, [photo])).toEqual({ is: 'saved' });
    expect((await keeper.read(photo.path))?.bytes).toEqual(photo.bytes);
    expect(await saveNote(keeper, { path: 'b.md', text }, [photo])).toEqual({ is: 'saved' });
    const other = { ...photo, bytes: new Uint8Array([4]) };
    expect(await saveNote(keeper, { path: 'c.md', text }, [other])).toEqual({ is: 'taken' });
    expect((await keeper.read(photo.path))?.bytes).toEqual(photo.bytes);
  });

  test('never overwrites what its writer did not see', async () => {
    const { keeper, textOf } = await aKeptNotebook(files);
    const theirs = RED.replace('Red', 'Theirs');
    await saveNote(keeper, { path: PATH, text: theirs, basedOn: RED });
    expect(await saveNote(keeper, { path: PATH, text: 'mine', basedOn: RED })).toEqual({ is: 'conflict', stored: theirs });
    expect(await textOf(PATH)).toBe(theirs);
  });

  test('of two tabs that save the same note at once one is told', async () => {
    const first = await aKeptNotebook(files);
    const second = await aKeptNotebook({}, undefined, first.disk);
    const outcomes = await Promise.all([
      saveNote(first.keeper, { path: PATH, text: 'one', basedOn: RED }),
      saveNote(second.keeper, { path: PATH, text: 'two', basedOn: RED }),
    ]);
    expect(outcomes.map(({ is }) => is).sort()).toEqual(['conflict', 'saved']);
  });

  test('a new note never takes the place of another, nor its photo of another photo', async () => {
    const { keeper } = await aKeptNotebook(files);
    expect(await saveNote(keeper, { path: PATH, text: 'x' })).toEqual({ is: 'taken' });
    const photo = { path: 'photos/a.jpg', bytes: new Uint8Array([1]) };
    expect(await saveNote(keeper, { path: 'a.md', text: 'x' }, [photo])).toEqual({ is: 'saved' });
    expect(await saveNote(keeper, { path: 'b.md', text: 'x' }, [{ ...photo, bytes: new Uint8Array([2]) }])).toEqual({ is: 'taken' });
  });

  test('a note deleted elsewhere is a conflict with nothing stored', async () => {
    const { keeper } = await aKeptNotebook(files);
    await deleteNote(keeper, PATH, RED);
    expect(await saveNote(keeper, { path: PATH, text: 'x', basedOn: RED })).toEqual({ is: 'conflict' });
  });

  test('where the store has ended that is said, not that the note is gone', async () => {
    const { keeper } = await aKeptNotebook(files);
    keeper.store.close();
    const failed = { is: 'failed', why: 'closed' };
    expect(await saveNote(keeper, { path: PATH, text: 'x', basedOn: RED })).toEqual(failed);
    expect(await deleteNote(keeper, PATH, RED)).toEqual(failed);
  });
});

describe('saveNotes', () => {
  const notes = [
    { path: 'a.md', text: 'one' },
    { path: 'b.md', text: 'two' },
  ];

  test('writes all of them, or none where one is there already', async () => {
    const { keeper, textOf } = await aKeptNotebook(files);
    expect(await saveNotes(keeper, [...notes, { path: PATH, text: 'x' }])).toEqual({ is: 'taken' });
    expect(await textOf('a.md')).toBeUndefined();
    expect(await saveNotes(keeper, notes)).toEqual({ is: 'saved' });
    expect([await textOf('a.md'), await textOf('b.md'), await textOf(PATH)]).toEqual(['one', 'two', RED]);
  });

  test('takes them back as they were written, and none where one was changed since', async () => {
    const { keeper, textOf } = await aKeptNotebook(files);
    await saveNotes(keeper, notes);
    await saveNote(keeper, { path: 'b.md', text: 'mine', basedOn: 'two' });
    expect(await saveNotes(keeper, [], notes)).toEqual({ is: 'conflict' });
    expect([await textOf('a.md'), await textOf('b.md')]).toEqual(['one', 'mine']);
    await saveNote(keeper, { path: 'b.md', text: 'two', basedOn: 'mine' });
    expect(await saveNotes(keeper, [], notes)).toEqual({ is: 'saved' });
    expect([await textOf('a.md'), await textOf('b.md'), await textOf(PATH)]).toEqual([undefined, undefined, RED]);
  });
});

describe('deleteNote', () => {
  test('takes the note out; it can be written again, and its versions are kept', async () => {
    const { keeper, engine, textOf } = await aKeptNotebook(files);
    expect(await deleteNote(keeper, PATH, RED)).toEqual({ is: 'saved' });
    expect(await textOf(PATH)).toBeUndefined();
    expect(await engine.note('red')).toBeUndefined();
    expect(await saveNote(keeper, { path: PATH, text: RED })).toEqual({ is: 'saved' });
    const history = await keeper.history(PATH);
    expect(history.ok && history.value.length).toBe(1);
  });

  test('does not delete what its writer did not see', async () => {
    const { keeper, textOf } = await aKeptNotebook(files);
    expect(await deleteNote(keeper, PATH, 'something else')).toEqual({ is: 'conflict', stored: RED });
    expect(await textOf(PATH)).toBe(RED);
  });

  test('a notebook that is only shown is kept with the first deletion', async () => {
    const { keeper, textOf } = await aKeptNotebook({});
    await keeper.show([
      { path: PATH, bytes: new TextEncoder().encode(RED) },
      { path: 'b.md', bytes: new TextEncoder().encode('b') },
    ]);
    expect(await deleteNote(keeper, PATH, RED)).toEqual({ is: 'saved' });
    expect(keeper.isKept).toBe(true);
    expect(await textOf(PATH)).toBeUndefined();
    expect(await textOf('b.md')).toBe('b');
  });
});
