import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import { answerFinding, SearchingFinder } from '../../../web/app/finding.ts';
import '../../../web/elements/finding/tg-find.ts';
import type { TgFind } from '../../../web/elements/finding/tg-find.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';
import { aSearchWorker } from '../../helpers/a-search-worker.ts';
import { aNote, aWorld } from '../../helpers/a-notebook.ts';

afterEach(() => document.body.replaceChildren());

const files: Readonly<Record<string, string>> = {
  ...aWorld,
  'd/madder.md': aNote('kind: dyestuff\ntitle: Madder\nlatin: Rubia tinctorum\nnames: [Krapp]'),
  'r/red.md': aNote('kind: recipe\ntitle: Madder red\nfibre: wool\ningredients: [{what: madder, role: dye}]'),
  'n/krapp.md': 'Der Krapp ist rot.\n',
};

async function aSearch(settings: Readonly<Record<string, string>> = {}): Promise<TgFind> {
  const engine = new LocalEngine();
  await engine.open(Object.entries(files).map(([path, text]) => ({ path, bytes: new TextEncoder().encode(text) })));
  const box = document.body.appendChild(document.createElement('div'));
  answerFinding(box, new SearchingFinder(engine, aSearchWorker));
  const element = Object.assign(document.createElement('tg-find'), { engine, settings });
  box.append(element);
  await element.updateComplete;
  return element;
}

describe('tg-find', () => {
  test('finds as one types, marks the words, and the address follows', async () => {
    const element = await aSearch();
    await userEvent.type(page.getByRole('searchbox'), 'krapp');
    await expect.element(page.getByRole('link', { name: 'krapp', exact: true })).toBeVisible();
    await expect.poll(() => [...element.renderRoot.querySelectorAll('mark')].map((mark) => mark.textContent)).toContain('Krapp');
    expect(globalThis.location.hash).toBe('#/notebook?find=krapp');
    await expect.element(page.getByRole('link', { name: 'everything on madder' })).toBeVisible();
    await expect.element(page.getByText('Under another name')).toBeVisible();
  });

  test('a mark is told by weight and line, not by a hue', async () => {
    const element = await aSearch({ find: 'krapp' });
    await expect.poll(() => element.renderRoot.querySelector('mark')).not.toBeNull();
    const style = getComputedStyle(element.renderRoot.querySelector('mark') as HTMLElement);
    expect(style.backgroundColor).toBe('rgba(0, 0, 0, 0)');
    expect(style.fontWeight).toBe('700');
    expect(style.textDecorationLine).toBe('underline');
  });

  test('the words of the sentence narrow by keyboard', async () => {
    await aSearch({ find: 'madder' });
    await expect.element(page.getByText('3 notes')).toBeVisible();
    await userEvent.selectOptions(page.getByLabelText('Kind of note'), 'recipe');
    await expect.element(page.getByText('1 note', { exact: true })).toBeVisible();
    expect(globalThis.location.hash).toBe('#/notebook?find=madder&kind=recipe');
  });

  test('what cannot be read is said, and nothing found is said', async () => {
    await aSearch({ find: 'zzzz', when: 'some day' });
    await expect.element(page.getByRole('alert')).toHaveTextContent(/cannot be read as a date/);
    await expect.element(page.getByText(/No note answers/)).toBeVisible();
  });

  test('where nobody answers, it says so', async () => {
    const element = Object.assign(document.createElement('tg-find'), { settings: { find: 'x' } });
    document.body.append(element);
    await expect.element(page.getByRole('alert')).toHaveTextContent('Nothing here finds notes.');
  });

  test.each(['light', 'dark'])('it passes axe, %s, and fits a phone', async (scheme) => {
    await page.viewport(360, 740);
    document.documentElement.style.colorScheme = scheme;
    const element = await aSearch({ find: 'madder' });
    await expect.element(page.getByText('3 notes')).toBeVisible();
    expect(await axeFaults(element)).toEqual([]);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
    document.documentElement.style.colorScheme = '';
  });
});
