import { describe, expect, test } from 'vitest';
import { type Draft, isDirty, openDraft, redone, savedAs, undone, withText } from '../../web/notebook/draft.ts';
import { withoutValue, withValue } from '../../web/notebook/draft-value.ts';

const TEXT = '---\r\nkind: dyestuff # mine\r\ntitle: Madder\r\nodd: kept\r\n---\r\n\r\nWords.\r\n';
const done = (result: ReturnType<typeof withValue>): Draft => {
  if (!result.ok) throw new Error(result.error);
  return result.value;
};

describe('a draft', () => {
  test('is clean when opened, dirty when changed, clean when changed back', () => {
    const draft = openDraft('a.md', TEXT);
    expect(isDirty(draft)).toBe(false);
    const changed = withText(draft, `${TEXT}x`, 'text 1');
    expect(isDirty(changed)).toBe(true);
    expect(isDirty(undone(changed))).toBe(false);
  });

  test('a new one is dirty from the start', () => {
    expect(isDirty(openDraft('a.md', TEXT, true))).toBe(true);
  });

  test('a value set through a form leaves every other character', () => {
    const draft = done(withValue(openDraft('a.md', TEXT), ['title'], 'Wild madder'));
    expect(draft.text).toBe(TEXT.replace('title: Madder', 'title: Wild madder'));
    expect(done(withoutValue(draft, ['title'])).text).toBe(TEXT.replace('title: Madder\r\n', ''));
  });

  test('what cannot be written is said, and nothing changes', () => {
    const draft = openDraft('a.md', '---\nkind: [dyestuff\n---\n');
    expect(withValue(draft, ['title'], 'x')).toEqual({ ok: false, error: 'front-matter-broken' });
  });

  test('steps go back and forward; typing under one label is one step', () => {
    let draft = openDraft('a.md', 'a');
    draft = withText(draft, 'ab', 'text 1');
    draft = withText(draft, 'abc', 'text 1');
    draft = withText(draft, 'abcd', 'text 2');
    expect(undone(draft).text).toBe('abc');
    expect(undone(undone(draft)).text).toBe('a');
    expect(redone(redone(undone(undone(draft)))).text).toBe('abcd');
    expect(undone(undone(undone(draft))).text).toBe('a');
  });

  test('a change after going back forgets what lay ahead', () => {
    const draft = undone(withText(openDraft('a.md', 'a'), 'ab', '1'));
    const other = withText(draft, 'ax', '1');
    expect(redone(other).text).toBe('ax');
    expect(undone(other).text).toBe('a');
  });

  test('a saved text is the new base, and what was typed meanwhile is still to be saved', () => {
    const draft = withText(openDraft('a.md', 'a', true), 'ab', '1');
    expect(isDirty(savedAs(draft, 'ab'))).toBe(false);
    expect(isDirty(savedAs(withText(draft, 'abc', '1'), 'ab'))).toBe(true);
  });

  test('at most 200 steps are kept', () => {
    let draft = openDraft('a.md', '');
    for (let at = 0; at < 300; at += 1) draft = withText(draft, 'x'.repeat(at + 1), String(at));
    expect(draft.past).toHaveLength(200);
  });
});
