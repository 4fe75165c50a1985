import { page, userEvent } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import '../../../web/elements/note/tg-note.ts';
import type { TgNote } from '../../../web/elements/note/tg-note.ts';
import { LocalEngine } from '../../../web/notebook/local-engine.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';
import { aNote, aWorld } from '../../helpers/a-notebook.ts';

afterEach(() => document.body.replaceChildren());

const encoder = new TextEncoder();
/** One grey pixel. */
const PNG = Uint8Array.from(atob('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg=='), (one) =>
  one.charCodeAt(0),
);
const HOSTILE =
  '<img src=x onerror="globalThis.ran=1"><script>globalThis.ran=1</script> [go](javascript:globalThis.ran=1) ![spy](https://evil.example/a.png)';

async function aReader(note: string): Promise<TgNote> {
  const engine = new LocalEngine();
  const texts: Readonly<Record<string, string>> = {
    ...aWorld,
    'dyestuffs/madder.md': `${aNote('kind: dyestuff\ntitle: Madder\nlatin: Rubia tinctorum\nsource: "cardon-2007"\navailability:\n  - {region: england, when: c. 1290, status: imported, known-by: trade}')}The *root*. See [the red](../recipes/red.md) and [the web](https://example.org/).\n\n![a skein](../photos/skein.png)\n`,
    'recipes/red.md': aNote(
      'kind: recipe\ntitle: Red\nfibre: wool\ningredients: [{what: madder, role: dye, amount: 50 %}]\nsteps: [Heat to 70 °C.]\ncautions: [Hot.]',
    ),
    'bad.md': `---\nkind: text\ntitle: "${'<b>Bad</b>'}"\nregion: nowhere\nwhen: someday\n---\n${HOSTILE}\n`,
  };
  await engine.open([
    ...Object.entries(texts).map(([path, text]) => ({ path, bytes: encoder.encode(text) })),
    { path: 'photos/skein.png', bytes: PNG },
  ]);
  const element = Object.assign(document.createElement('tg-note'), { engine, note });
  document.body.append(element);
  await expect.element(page.getByRole('heading', { level: 1 })).toBeVisible();
  return element;
}

describe('tg-note', () => {
  test('the note is read: title, Latin name in italics, claim, source', async () => {
    await aReader('madder');
    await expect.element(page.getByRole('heading', { level: 1, name: 'Madder' })).toBeVisible();
    const latin = page.getByText('Rubia tinctorum').element();
    expect(getComputedStyle(latin).fontStyle).toBe('italic');
    await expect.element(page.getByText(/was imported/)).toBeVisible();
  });

  test('a keyboard reaches the note a link leads to, and links to the web tell nobody where from', async () => {
    await aReader('madder');
    const link = page.getByRole('link', { name: 'the red' }).element() as HTMLAnchorElement;
    for (let at = 0; at < 12 && !link.matches(':focus'); at += 1) await userEvent.tab();
    expect(link.matches(':focus')).toBe(true);
    expect(link.getAttribute('href')).toBe('#/notebook/red');
    expect(
      page
        .getByRole('link', { name: /the web/ })
        .element()
        .getAttribute('rel'),
    ).toContain('noreferrer');
  });

  test('a picture comes from the notebook itself', async () => {
    await aReader('madder');
    const image = page.getByRole('img', { name: 'a skein' });
    await expect.element(image).toBeVisible();
    expect((image.element() as HTMLImageElement).src).toMatch(/^blob:/);
  });

  test('hostile words run nothing and fetch nothing', async () => {
    const element = await aReader('bad');
    await expect.element(page.getByRole('heading', { level: 1, name: '<b>Bad</b>' })).toBeVisible();
    expect((globalThis as { ran?: number }).ran).toBeUndefined();
    const root = element.renderRoot;
    expect(root.querySelectorAll('img, script, iframe')).toHaveLength(0);
    expect([...root.querySelectorAll('a')].map(({ href }) => new URL(href).protocol).filter((one) => one === 'javascript:')).toEqual([]);
  });

  test('a problem leads to its line in the text', async () => {
    await aReader('bad');
    const link = page.getByRole('link', { name: 'line 4' }).first().element();
    expect(link.getAttribute('href')).toBe('#/notebook/bad?write=text&line=4&column=9');
  });

  test('an unknown id is said in words', async () => {
    const element = Object.assign(document.createElement('tg-note'), { engine: new LocalEngine(), note: 'nothing' });
    document.body.append(element);
    await expect.element(page.getByRole('alert')).toBeVisible();
  });

  test.each(['light', 'dark'])('it passes axe, %s', async (scheme) => {
    document.documentElement.style.colorScheme = scheme;
    for (const note of ['madder', 'red', 'bad']) {
      const element = await aReader(note);
      expect(await axeFaults(element), note).toEqual([]);
      element.remove();
    }
    document.documentElement.style.colorScheme = '';
  });
});
