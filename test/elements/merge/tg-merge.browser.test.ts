import { afterEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { mergeNote } from '../../../web/domain/merge/merge-note.ts';
import '../../../web/elements/merge/tg-merge.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const BASE = '---\nkind: text\ntitle: A\n---\nFirst.\n\nSecond.\n';

async function anElement(mine: string, theirs: string, element = document.createElement('tg-merge')): Promise<readonly string[]> {
  element.merge = mergeNote({ base: BASE, mine, theirs });
  const texts: string[] = [];
  element.addEventListener('tg-merge-done', ({ detail }) => texts.push(detail.text));
  document.body.append(element);
  await element.updateComplete;
  return texts;
}

const MINE = BASE.replace('title: A', 'title: B').replace('Second', 'Second here');
const THEIRS = BASE.replace('title: A', 'title: C').replace('Second', 'Second there');

describe('tg-merge', () => {
  test('asks for every place before the note is kept, and takes what was chosen', async () => {
    const texts = await anElement(MINE, THEIRS);
    expect(await axeFaults(document.body)).toEqual([]);
    await userEvent.click(page.getByRole('button', { name: 'Keep the note like this' }));
    await expect.element(page.getByText('2 places still to decide.')).toBeVisible();
    expect(texts).toEqual([]);
    const places = page.getByRole('group');
    await userEvent.click(places.nth(0).getByRole('radio', { name: 'Take that' }));
    await userEvent.click(places.nth(1).getByRole('radio', { name: 'Keep both' }));
    await userEvent.click(page.getByRole('button', { name: 'Keep the note like this' }));
    expect(texts).toEqual(['---\nkind: text\ntitle: C\n---\nFirst.\n\nSecond here.\n\nSecond there.\n']);
  });

  test('what was chosen stays when both sides are looked at again and found as they were, and goes when one has changed', async () => {
    const element = document.createElement('tg-merge');
    await anElement(MINE, THEIRS, element);
    const choice = page.getByRole('group').nth(0).getByRole('radio', { name: 'Take that' });
    await userEvent.click(choice);
    element.merge = mergeNote({ base: BASE, mine: MINE, theirs: THEIRS });
    await element.updateComplete;
    await expect.element(choice).toBeChecked();
    element.merge = mergeNote({ base: BASE, mine: MINE, theirs: THEIRS.replace('there', 'elsewhere') });
    await element.updateComplete;
    await expect.element(choice).not.toBeChecked();
  });

  test('is worked by keyboard alone', async () => {
    const texts = await anElement(BASE.replace('Second', 'Mine'), BASE.replace('Second', 'Theirs'));
    await userEvent.tab();
    await userEvent.keyboard(' {ArrowDown}');
    await expect.element(page.getByRole('radio', { name: 'Take that' })).toBeChecked();
    await userEvent.tab();
    await userEvent.keyboard('{Enter}');
    expect(texts).toEqual([BASE.replace('Second', 'Theirs')]);
  });

  test('one press takes one side everywhere', async () => {
    const texts = await anElement(MINE, THEIRS);
    await userEvent.click(page.getByRole('button', { name: 'Take this everywhere' }));
    await userEvent.click(page.getByRole('button', { name: 'Keep the note like this' }));
    expect(texts).toEqual([MINE]);
  });
});
