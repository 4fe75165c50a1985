import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import '../../../web/elements/write/tg-note-text.ts';
import type { TgNoteText } from '../../../web/elements/write/tg-note-text.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

const TEXT = '---\r\nkind: recipe\r\nfibre: wool\ntitle: Red\r\n---\r\nOne.\rTwo.\r\n';

async function anEditor(text = TEXT, given: Partial<TgNoteText> = {}): Promise<{ readonly element: TgNoteText; readonly texts: string[] }> {
  const element = Object.assign(document.createElement('tg-note-text'), { text, ...given });
  const texts: string[] = [];
  element.addEventListener('tg-draft-edit', ({ detail }) => {
    if (detail.is !== 'text') return;
    texts.push(detail.text);
    element.text = detail.text;
  });
  document.body.append(element);
  await expect.element(page.getByRole('textbox', { name: 'Text of the note' })).toBeVisible();
  return { element, texts };
}

const content = (element: TgNoteText) => element.renderRoot.querySelector('.cm-content') as HTMLElement;

describe('tg-note-text', () => {
  test('typing changes its line; every other line keeps its own ending', async () => {
    const { texts } = await anEditor(TEXT, { place: { line: 4, column: 11 } });
    await userEvent.keyboard('dish{Enter}names: a');
    expect(texts.at(-1)).toBe(TEXT.replace('title: Red', 'title: Reddish\r\nnames: a'));
  });

  test('it follows a text changed elsewhere, and tells nobody of it', async () => {
    const { element, texts } = await anEditor();
    element.text = TEXT.replace('Red', 'Blue');
    await expect.poll(() => content(element).textContent).toContain('title: Blue');
    expect(texts).toEqual([]);
    await userEvent.click(content(element));
    await userEvent.keyboard('{Control>}{End}{/Control}x');
    expect(texts.at(-1)).toBe(`${TEXT.replace('Red', 'Blue')}x`);
  });

  test('what is wrong is said beside its line in words', async () => {
    const engine = new LocalEngine();
    const text = '---\nkind: trial\ndate: someday\nodd: 1\n---\n';
    const { element } = await anEditor(text, { problems: await engine.checkText('a.md', text) });
    await expect
      .poll(() => [...element.renderRoot.querySelectorAll('.tg-problems .cm-gutterElement')].map((one) => one.textContent))
      .toContain('error');
    expect([...element.renderRoot.querySelectorAll('.tg-problems .cm-gutterElement')].map((one) => one.textContent)).toContain('look');
    expect(element.renderRoot.querySelector('.cm-lintRange-error')?.textContent).toBe('someday');
  });

  test('nothing in it has a hue', async () => {
    const { element } = await anEditor('---\nkind: recipe # x\n---\n# Head\n*a* **b** [c](d.md) `e` https://example.org\n');
    const hues = [...element.renderRoot.querySelectorAll<HTMLElement>('.cm-editor, .cm-editor *')].flatMap((one) => {
      const { color, backgroundColor, borderLeftColor } = getComputedStyle(one);
      return [color, backgroundColor, borderLeftColor].filter((value) => !isGrey(value));
    });
    expect(hues).toEqual([]);
    expect(content(element).getAttribute('spellcheck')).toBe('true');
  });

  test('Tab leaves it; a letter typed is no shortcut of the page; Ctrl Z undoes', async () => {
    const heard: string[] = [];
    const listen = (event: KeyboardEvent) => heard.push(event.key);
    document.addEventListener('keydown', listen);
    const { element, texts } = await anEditor();
    const after = document.body.appendChild(document.createElement('button'));
    content(element).focus();
    await userEvent.keyboard('p');
    expect(heard).toEqual([]);
    await userEvent.keyboard('{Control>}z{/Control}');
    expect(texts.at(-1)).toBe(TEXT);
    await userEvent.tab();
    expect(document.activeElement).toBe(after);
    document.removeEventListener('keydown', listen);
  });

  test('it can be moved in the page and goes on', async () => {
    const { element, texts } = await anEditor();
    const box = document.body.appendChild(document.createElement('div'));
    box.append(element);
    await expect.element(page.getByRole('textbox', { name: 'Text of the note' })).toBeVisible();
    content(element).focus();
    await userEvent.keyboard('x');
    expect(texts).toEqual([`x${TEXT}`]);
  });

  test.each(['light', 'dark'])('it passes axe, %s', async (scheme) => {
    document.documentElement.style.colorScheme = scheme;
    const { element } = await anEditor();
    expect(await axeFaults(element)).toEqual([]);
    document.documentElement.style.colorScheme = '';
  });
});

/** True for a colour without chroma, however the browser writes it. */
function isGrey(value: string): boolean {
  if (value === '' || value === 'transparent') return true;
  const numbers = (value.replace(/^[a-z-]+\(\s*(?:srgb)?/, '').match(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g) ?? []).map(Number);
  if (value.startsWith('oklch')) return (numbers[1] ?? 0) < 0.001;
  if (value.startsWith('oklab') || value.startsWith('lab')) return Math.abs(numbers[1] ?? 0) < 0.001 && Math.abs(numbers[2] ?? 0) < 0.001;
  const [r = 0, g = 0, b = 0] = numbers;
  return Math.max(r, g, b) - Math.min(r, g, b) < 0.01 * Math.max(1, r);
}
