import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import '../../../web/elements/write/tg-note-form.ts';
import type { TgNoteForm } from '../../../web/elements/write/tg-note-form.ts';
import { filesOf, openDraft, withFile, withText, type Draft } from '../../../web/notebook/draft.ts';
import { withoutValue, withValue } from '../../../web/notebook/draft-value.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { starterOf } from '../../../web/notebook/starters.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';
import { aNote, aWorld } from '../../helpers/a-notebook.ts';

afterEach(() => document.body.replaceChildren());

const MADDER = `---\r
kind: dyestuff   # the root\r
title: Madder\r
matter: plant\r
mine: {kept: yes}\r
availability:\r
  - region: england\r
    when: c. 1290\r
    status: imported\r
    source: "cardon-2007, p. 1"\r
---\r
\r
The root.\r
`;

interface Open {
  readonly form: TgNoteForm;
  readonly draft: () => Draft;
}

/** A form on a text, wired as its page wires it. */
async function aForm(text: string): Promise<Open> {
  const engine = new LocalEngine();
  await engine.open(Object.entries(aWorld).map(([path, words]) => ({ path, bytes: new TextEncoder().encode(words) })));
  let draft = openDraft('a.md', text);
  const form = Object.assign(document.createElement('tg-note-form'), { engine, text, choices: await engine.writingChoices() });
  form.addEventListener('tg-draft-edit', ({ detail }) => {
    if (detail.is === 'file') {
      draft = withFile(draft, detail.file);
      return;
    }
    const result =
      detail.is === 'text'
        ? { ok: true as const, value: withText(draft, detail.text, detail.label) }
        : detail.is === 'set'
          ? withValue(draft, detail.path, detail.value)
          : withoutValue(draft, detail.path);
    if (!result.ok) return;
    draft = result.value;
    form.text = draft.text;
    void engine.checkText('a.md', draft.text).then((problems) => (form.problems = problems));
  });
  document.body.append(form);
  await form.updateComplete;
  return { form, draft: () => draft };
}

describe('tg-note-form', () => {
  test('a title typed changes that value, and every other byte stays', async () => {
    const { draft } = await aForm(MADDER);
    await userEvent.fill(page.getByLabelText('Title'), 'Wild madder');
    await userEvent.tab();
    expect(draft().text).toBe(MADDER.replace('title: Madder', 'title: Wild madder'));
  });

  test('a claim is a row: its date says how it reads while it is typed', async () => {
    const { draft } = await aForm(MADDER);
    await page.getByText('England, c. 1290, was imported').click();
    const when = page.getByLabelText('When');
    await userEvent.fill(when, 'late 13th century');
    await expect.element(page.getByText('Read as 1268–1300.')).toBeVisible();
    await userEvent.tab();
    expect(draft().text).toBe(MADDER.replace('c. 1290', 'late 13th century'));
  });

  test('a colour is taken by eye into a sample, and a word that is none is told in its place', async () => {
    const { draft } = await aForm('---\nkind: trial\nsamples:\n  - code: A\n    colour: {hex: "#a63d2b"}\n---\n');
    await page.getByText('A, #a63d2b').click();
    await page.getByText('#a63d2b', { exact: true }).first().click();
    await page.getByText(/^From a photo, a spectrum/).click();
    await page.getByRole('button', { name: 'By eye' }).click();
    await page.getByRole('button', { name: 'Take this colour' }).click();
    await expect.poll(() => draft().text).toMatch(/by: eye/);
    expect(draft().text).not.toContain('hex');
    expect(await axeFaults(document.body)).toEqual([]);
    await page.getByRole('button', { name: 'Write it, or take a cloth' }).click();
    await userEvent.fill(page.getByLabelText('The colour', { exact: true }), 'murrey');
    await userEvent.tab();
    await expect.element(page.getByText(/No numbers can be made of “murrey”/)).toBeVisible();
  });

  test('a file of measurements picked for a sample goes with the note', async () => {
    const { draft } = await aForm('---\nkind: trial\ncolour: {hex: "#a63d2b"}\n---\n');
    await page.getByText('#a63d2b', { exact: true }).first().click();
    await page.getByText(/^From a photo, a spectrum/).click();
    await page.getByRole('button', { name: 'From a spectrum' }).click();
    const nms = Array.from({ length: 31 }, (_, i) => 400 + i * 10);
    const text = `sample,${nms.join(',')}\nA1,${nms.map(() => 0.2).join(',')}\n`;
    await userEvent.upload(page.getByLabelText(/A file of measurements/), new File([text], 'Skeins.csv', { type: 'text/csv' }));
    await page.getByRole('button', { name: 'Take this colour' }).click();
    await expect.poll(() => draft().text).toMatch(/spectrum: *\{? *\n? *file: spectra\/skeins-[\da-f]{8}\.csv/);
    const [file] = filesOf(draft(), draft().text);
    expect(new TextDecoder().decode(file?.bytes)).toBe(text);
  });

  test('a date that cannot be read is told in its place', async () => {
    await aForm(MADDER);
    await page.getByText('England, c. 1290, was imported').click();
    await userEvent.fill(page.getByLabelText('When'), 'some day');
    await userEvent.tab();
    await expect.element(page.getByText(/“some day” is no date/)).toBeVisible();
  });

  test('claims are added, duplicated and removed with the keyboard alone', async () => {
    const { form, draft } = await aForm(MADDER);
    (page.getByRole('button', { name: 'One more claim' }).element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => form.shadowRoot?.activeElement?.id).toBe('f-availability-1-region');
    await userEvent.keyboard('york');
    await userEvent.tab();
    expect(draft().text).toContain('  - region: york\r\n');
    await userEvent.keyboard('850–950');
    await userEvent.tab();
    expect(draft().text).toContain('  - region: york\r\n    when: 850–950\r\n');
    await page.getByRole('button', { name: 'Duplicate York, 850–950' }).click();
    await expect.poll(() => draft().text.match(/york/g)?.length).toBe(2);
    await page.getByRole('button', { name: 'Remove York, 850–950' }).first().click();
    await expect.poll(() => draft().text.match(/york/g)?.length).toBe(1);
    expect(draft().text).toContain('mine: {kept: yes}\r\n');
    expect(draft().text).toContain('kind: dyestuff   # the root\r\n');
  });

  test('keys no form knows are listed and kept', async () => {
    await aForm(MADDER);
    await expect.element(page.getByText('mine', { exact: true })).toBeVisible();
    await expect.element(page.getByText('kept yes')).toBeVisible();
  });

  test('the note’s own words keep their line endings', async () => {
    const { draft } = await aForm(MADDER);
    await userEvent.fill(page.getByLabelText('In words'), 'The root.\nDried.\n');
    await userEvent.tab();
    expect(draft().text).toBe(MADDER.replace('The root.\r\n', 'The root.\r\nDried.\r\n'));
  });

  test('an emptied value goes from the note', async () => {
    const { draft } = await aForm(MADDER);
    await userEvent.selectOptions(page.getByLabelText('What it is'), '');
    await expect.poll(() => draft().text).toBe(MADDER.replace('matter: plant\r\n', ''));
  });

  test('references complete from the notebook', async () => {
    const { form } = await aForm(MADDER);
    await page.getByText('England, c. 1290, was imported').click();
    const input = page.getByLabelText('Place', { exact: true }).element() as HTMLInputElement;
    const list = form.renderRoot.querySelector(`#${input.getAttribute('list')}`);
    expect([...(list?.querySelectorAll('option') ?? [])].map((option) => `${option.value} ${option.textContent}`)).toContain('york York');
  });

  test('a colour is a cloth', async () => {
    await aForm(aNote('kind: trial\ntitle: One\ncolour: {lab: [41, 38, 24], illuminant: D65, observer: 10}'));
    await page.getByText('41, 38, 24').click();
    await expect.element(page.getByRole('img', { name: /on the screen #[0-9a-f]{6}/ })).toBeVisible();
  });

  test('broken front matter is said, and no form pretends', async () => {
    const { form } = await aForm('---\nkind: [x\n---\n');
    await expect.element(page.getByRole('alert')).toBeVisible();
    expect(form.renderRoot.querySelector('input')).toBeNull();
  });

  test.each(['dyestuff', 'recipe', 'trial', 'textile', 'colour-word', 'plain'] as const)(
    'the form of a new %s passes axe',
    async (kind) => {
      const { form } = await aForm(starterOf(kind).text);
      expect(await axeFaults(form)).toEqual([]);
    },
  );

  test('a form with open rows passes axe in the evening view', async () => {
    document.documentElement.style.colorScheme = 'dark';
    const { form } = await aForm(MADDER);
    await page.getByText('England, c. 1290, was imported').click();
    expect(await axeFaults(form)).toEqual([]);
    document.documentElement.style.colorScheme = '';
  });

  test('on a phone nothing is wider than the page', async () => {
    await page.viewport(360, 740);
    await aForm(MADDER);
    await page.getByText('England, c. 1290, was imported').click();
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
  });
});
