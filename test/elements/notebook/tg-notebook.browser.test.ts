import { page, userEvent } from 'vitest/browser';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import '../../../web/elements/notebook/tg-notebook.ts';
import type { TgNotebook } from '../../../web/elements/notebook/tg-notebook.ts';
import { readAddress } from '../../../web/notebook/address.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';
import { aKeptNotebook, type KeptNotebook } from '../../helpers/a-kept-notebook.ts';
import { aNote, aWorld } from '../../helpers/a-notebook.ts';

const RED = aNote('kind: recipe\ntitle: Red\nfibre: wool\nsteps: [Heat.]');
const files = { ...aWorld, 'recipes/red.md': RED, 'dyestuffs/madder.md': aNote('kind: dyestuff\ntitle: Madder\nlatin: Rubia tinctorum') };

let open: KeptNotebook | undefined;

beforeEach(() => {
  globalThis.history.replaceState(undefined, '', '#/notebook');
});

afterEach(() => {
  open?.stop();
  document.body.replaceChildren();
});

/** The notebook at an address, as its page shows it: the address leads, changes are followed. */
async function atAddress(hash: string, notebook?: KeptNotebook): Promise<{ readonly element: TgNotebook; readonly kept: KeptNotebook }> {
  const kept = notebook ?? (await aKeptNotebook(files, document.body));
  open = kept;
  const element = Object.assign(document.createElement('tg-notebook'), { engine: kept.engine });
  const follow = () => {
    const { id, settings } = readAddress(globalThis.location.hash);
    element.note = id;
    element.settings = settings;
  };
  globalThis.addEventListener('hashchange', follow);
  kept.keeper.subscribe(() => (element.version += 1));
  globalThis.location.hash = hash;
  follow();
  document.body.append(element);
  await element.updateComplete;
  return { element, kept };
}

const button = (name: string | RegExp) => page.getByRole('button', { name });
const link = (name: string | RegExp) => page.getByRole('link', { name });

describe('tg-notebook', () => {
  test('the drawer leads by kind to a card and to a note', async () => {
    await atAddress('#/notebook');
    await link(/^Recipes/).click();
    await link('Red').click();
    await expect.element(page.getByRole('heading', { level: 1, name: 'Red' })).toBeVisible();
    expect(globalThis.location.hash).toBe('#/notebook/red');
    globalThis.history.back();
    await expect.element(page.getByRole('heading', { name: 'Recipes' })).toBeVisible();
  });

  test('by place, with a count for each', async () => {
    await atAddress('#/notebook?by=place');
    await expect.element(link(/York.*1 note/)).toBeVisible();
  });

  test('a note is changed in the form and saved; the text follows, answers follow', async () => {
    const { kept } = await atAddress('#/notebook/red?write=form');
    await userEvent.fill(page.getByLabelText('Title'), 'Redder');
    await userEvent.tab();
    await expect.element(page.getByText('Not saved yet.')).toBeVisible();
    await link('Both').click();
    await expect.element(page.getByRole('textbox', { name: 'Text of the note' })).toHaveTextContent(/title: Redder/);
    await button('Save').click();
    await expect.element(page.getByText('Saved.')).toBeVisible();
    expect(await kept.textOf('recipes/red.md')).toBe(RED.replace('Red', 'Redder'));
    expect((await kept.engine.note('red'))?.title).toBe('Redder');
  });

  test('Ctrl S saves what still has the caret; steps go back and forward', async () => {
    const { kept } = await atAddress('#/notebook/red?write=form');
    await userEvent.fill(page.getByLabelText('Title'), 'Crimson');
    await userEvent.keyboard('{Control>}s{/Control}');
    await expect.poll(() => kept.textOf('recipes/red.md')).toContain('title: Crimson');
    await button('Step back').click();
    await expect.element(page.getByLabelText('Title')).toHaveValue('Red');
    await button('Step forward').click();
    await expect.element(page.getByLabelText('Title')).toHaveValue('Crimson');
  });

  test('what was not saved waits when its writer goes away', async () => {
    await atAddress('#/notebook/red?write=form');
    await userEvent.fill(page.getByLabelText('Title'), 'Half a thought');
    await userEvent.tab();
    await link('Read').click();
    await expect.element(page.getByRole('heading', { level: 1, name: 'Red' })).toBeVisible();
    globalThis.location.hash = '#/notebook/red?write=form';
    await expect.element(page.getByLabelText('Title')).toHaveValue('Half a thought');
    await button('Step back').click();
  });

  test('a change from elsewhere is a conflict; mine is kept, theirs stays among the earlier versions', async () => {
    const { kept } = await atAddress('#/notebook/red?write=form');
    await userEvent.fill(page.getByLabelText('Title'), 'Mine');
    await userEvent.tab();
    const theirs = RED.replace('Red', 'Theirs');
    const stamp = await kept.keeper.read('recipes/red.md');
    await kept.keeper.write([{ path: 'recipes/red.md', bytes: new TextEncoder().encode(theirs), basedOn: stamp?.version }]);
    await button('Save').click();
    await expect.element(page.getByRole('alert')).toHaveTextContent(/changed elsewhere/);
    expect(await kept.textOf('recipes/red.md')).toBe(theirs);
    await button(/Keep my text/).click();
    await expect.poll(() => kept.textOf('recipes/red.md')).toContain('title: Mine');
    const history = await kept.keeper.history('recipes/red.md');
    expect(history.ok && history.value.length).toBe(2);
  });

  test('a new note from a starter is kept under its title; a second of that title beside it', async () => {
    const { kept } = await atAddress('#/notebook?new=note');
    await link('Recipe').click();
    await userEvent.fill(page.getByLabelText('Title'), 'Green of two');
    await userEvent.tab();
    await button('Save').click();
    await expect.poll(() => globalThis.location.hash).toBe('#/notebook/green-of-two?write=form');
    expect(await kept.textOf('recipes/green-of-two.md')).toContain('title: Green of two');
    globalThis.location.hash = '#/notebook?new=recipe';
    await userEvent.fill(page.getByLabelText('Title'), 'Green of two');
    await userEvent.tab();
    await button('Save').click();
    await expect.poll(() => globalThis.location.hash).toBe('#/notebook/green-of-two-2?write=form');
  });

  test('a note is duplicated', async () => {
    const { kept } = await atAddress('#/notebook?new=copy&of=red');
    await expect.element(page.getByLabelText('Title')).toHaveValue('Red, a copy');
    await button('Save').click();
    await expect.poll(() => kept.textOf('recipes/red-a-copy.md')).toBe(RED.replace('Red', 'Red, a copy'));
  });

  test('a deleted note comes back with Undo, byte for byte, by keyboard', async () => {
    const { element, kept } = await atAddress('#/notebook/red?write=form');
    await button('Delete this note').click();
    await expect.element(page.getByText('“Red” is deleted.')).toBeVisible();
    expect(await kept.textOf('recipes/red.md')).toBeUndefined();
    await expect.poll(() => element.shadowRoot?.activeElement?.id).toBe('undo');
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => kept.textOf('recipes/red.md')).toBe(RED);
  });

  test('an earlier version stands beside the one now, and can stand again', async () => {
    const { kept } = await atAddress('#/notebook/red');
    const stamp = await kept.keeper.read('recipes/red.md');
    const later = RED.replace('Red', 'Later');
    await kept.keeper.write([{ path: 'recipes/red.md', bytes: new TextEncoder().encode(later), basedOn: stamp?.version }]);
    globalThis.location.hash = '#/notebook/red?versions=all';
    await expect.element(page.getByText('1 line gone, 1 new.')).toBeVisible();
    await expect.element(page.getByText('title: Red')).toBeVisible();
    await button('Let the earlier one stand again').click();
    await expect.poll(() => kept.textOf('recipes/red.md')).toBe(RED);
    await expect.element(page.getByText(/It stands again/)).toBeVisible();
  });

  test('something is caught with words and a photo', async () => {
    const { element, kept } = await atAddress('#/notebook?capture=1');
    await userEvent.upload(
      page.getByLabelText('Take a photo, or choose one'),
      new File([new Uint8Array([1, 2, 3])], 'x.PNG', { type: 'image/png' }),
    );
    await userEvent.fill(page.getByLabelText('Words'), 'Darker than I thought');
    await userEvent.fill(page.getByLabelText('Where it is from'), 'the label in room 4');
    await button('Done').click();
    await expect.element(page.getByText(/Kept\./)).toBeVisible();
    const day = new Date().toLocaleDateString('sv-SE');
    expect(await kept.textOf(`reading/${day}-darker-than-i-thought.md`)).toContain('the label in room 4');
    expect((await kept.keeper.read(`photos/${day}-darker-than-i-thought.png`))?.bytes).toEqual(new Uint8Array([1, 2, 3]));
    await expect.poll(() => element.shadowRoot?.querySelector('tg-capture')?.shadowRoot?.activeElement?.id).toBe('words');
  });

  test.each([
    '#/notebook',
    '#/notebook?by=date',
    '#/notebook?by=kind&card=recipe',
    '#/notebook/red',
    '#/notebook/red?write=both',
    '#/notebook/red?versions=all',
    '#/notebook?new=note',
    '#/notebook?capture=1',
  ])('%s passes axe, light and dark, and fits a phone', async (hash) => {
    await page.viewport(360, 740);
    const { element } = await atAddress(hash);
    await new Promise((done) => setTimeout(done, 400));
    for (const scheme of ['light', 'dark']) {
      document.documentElement.style.colorScheme = scheme;
      expect(await axeFaults(element), scheme).toEqual([]);
    }
    document.documentElement.style.colorScheme = '';
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(360);
  });
});
