import { describe, expect, test } from 'vitest';
import { openDraft, undone, withText } from '../../web/notebook/draft.ts';
import { type DraftDrawer, DraftShelf } from '../../web/notebook/draft-shelf.ts';

const aDrawer = (text = ''): DraftDrawer => {
  let held = text;
  return { read: () => held, write: (next) => void (held = next) };
};

describe('a shelf of drafts', () => {
  test('keeps what is to be saved, and nothing once it is', () => {
    const shelf = new DraftShelf();
    const draft = withText(openDraft('a.md', 'one'), 'two', 'typing');
    shelf.keep('a', draft);
    expect(shelf.at('a')).toBe(draft);
    expect(shelf.holdsUnsaved).toBe(true);
    shelf.keep('a', undone(draft));
    expect(shelf.holdsUnsaved).toBe(false);
  });

  test('a new note that nobody has written in holds nothing', () => {
    const shelf = new DraftShelf();
    const started = openDraft('n.md', 'start', true);
    shelf.keep('new', started);
    expect(shelf.holdsUnsaved).toBe(false);
    shelf.keep('new', withText(started, 'start and more', 'typing'));
    expect(shelf.holdsUnsaved).toBe(true);
  });

  test('the next page finds the drafts of the one before, one step from where they began', () => {
    const drawer = aDrawer();
    const shelf = new DraftShelf(drawer);
    const twice = withText(withText(openDraft('a.md', 'one'), 'two', 'typing 1'), 'three “ʿ”', 'typing 2');
    shelf.keep('a', twice);
    shelf.keep('new', withText(openDraft('n.md', 'start', true), 'started', 'typing'));
    const next = new DraftShelf(drawer);
    expect(next.at('a')).toMatchObject({ path: 'a.md', base: 'one', isNew: false, text: 'three “ʿ”', future: [] });
    expect(undone(next.at('a') ?? twice).text).toBe('one');
    expect(next.at('new')).toMatchObject({ isNew: true, base: '', text: 'started' });
    expect(undone(next.at('new') ?? twice).text).toBe('start');
    const saved = { ...twice, base: 'two' };
    shelf.keep('saved once', saved);
    expect(undone(new DraftShelf(drawer).at('saved once') ?? saved).text).toBe('two');
    next.drop('a');
    expect(new DraftShelf(drawer).at('a')).toBeUndefined();
    expect(new DraftShelf(drawer).at('new')?.text).toBe('started');
  });

  test.each(['', 'no list', '{"a": 1}', '[1]'])('what it cannot read, “%s”, is nothing', (text) => {
    expect(new DraftShelf(aDrawer(text)).holdsUnsaved).toBe(false);
  });
});
