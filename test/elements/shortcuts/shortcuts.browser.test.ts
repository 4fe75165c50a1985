import { page, userEvent } from 'vitest/browser';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { changeGround, keepSingleKeys, layKeptGround, singleKeysWork } from '../../../web/elements/shortcuts/page-choices.ts';
import { SHORTCUTS, shortcutOf, takesLetters } from '../../../web/elements/shortcuts/shortcuts.ts';
import '../../../web/elements/shortcuts/tg-shortcuts.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

beforeEach(() => localStorage.clear());
afterEach(() => {
  localStorage.clear();
  delete document.documentElement.dataset['view'];
  document.body.replaceChildren();
});

describe('shortcutOf', () => {
  const plain = { ctrlKey: false, metaKey: false, altKey: false };
  test('small and capital letters do the same, and nothing with another key held', () => {
    expect(shortcutOf({ ...plain, key: 'p' })).toBe('print');
    expect(shortcutOf({ ...plain, key: 'P' })).toBe('print');
    expect(shortcutOf({ ...plain, key: '/' })).toBe('find');
    expect(shortcutOf({ ...plain, key: 'e' })).toBe('view');
    expect(shortcutOf({ ...plain, key: '?' })).toBe('list');
    expect(shortcutOf({ ...plain, key: 'x' })).toBeUndefined();
    for (const held of ['ctrlKey', 'metaKey', 'altKey']) expect(shortcutOf({ ...plain, [held]: true, key: 'p' })).toBeUndefined();
  });

  test('letters belong to fields, not to a slider or a box to tick', () => {
    const input = (type: string) => Object.assign(document.createElement('input'), { type });
    expect([input('text'), input('search'), document.createElement('select')].map(takesLetters)).toEqual([true, true, true]);
    expect([input('range'), input('checkbox'), document.createElement('a')].map(takesLetters)).toEqual([false, false, false]);
  });
});

describe('tg-shortcuts', () => {
  test('lists every key, closes with Escape, and the focus returns', async () => {
    const before = document.body.appendChild(document.createElement('button'));
    before.textContent = 'Before';
    const list = document.body.appendChild(document.createElement('tg-shortcuts'));
    await list.updateComplete;
    before.focus();
    list.show();
    for (const { words } of SHORTCUTS) await expect.element(page.getByText(words, { exact: true })).toBeVisible();
    expect(await axeFaults(document.body)).toEqual([]);
    await userEvent.keyboard('{Escape}');
    await expect.element(page.getByRole('dialog')).not.toBeInTheDocument();
    expect(document.activeElement).toBe(before);
  });

  test('single keys can be turned off, and stay off', async () => {
    const list = document.body.appendChild(document.createElement('tg-shortcuts'));
    await list.updateComplete;
    list.show();
    expect(singleKeysWork()).toBe(true);
    await page.getByRole('checkbox', { name: /Single keys/ }).click();
    expect(singleKeysWork()).toBe(false);
    keepSingleKeys(true);
    expect(singleKeysWork()).toBe(true);
  });
});

describe('the ground', () => {
  test('changes to and fro, and is there again at the next visit', () => {
    const root = document.documentElement;
    const first = changeGround(root);
    expect(root.dataset['view']).toBe(first);
    delete root.dataset['view'];
    layKeptGround(root);
    expect(root.dataset['view']).toBe(first);
    expect(changeGround(root)).not.toBe(first);
  });

  test('nothing chosen leaves it to the machine', () => {
    layKeptGround(document.documentElement);
    expect(document.documentElement.dataset['view']).toBeUndefined();
  });
});
