import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityFaults, type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

const VERDICT = /^(?:Attested|Attested as cloth|Feasible|Plausible|Disputed|Unsupported|Out of period|Contradicted|Nothing near)$/;
const WORDS = ['subject', 'state', 'act', 'fibre', 'region', 'when', 'wearer'] as const;
type Word = (typeof WORDS)[number];
/** A dyestuff has no state: only a colour can be as new or as found. */
const wordsOf = (hash: string): readonly Word[] => WORDS.filter((word) => word !== 'state' || !hash.includes('dye='));

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

const question = (page: Page) => page.getByRole('heading', { level: 1 });
const verdict = (page: Page) => page.getByRole('heading', { level: 2, name: VERDICT });
const verdictText = async (page: Page): Promise<string> => {
  await verdict(page).waitFor();
  return (await verdict(page).innerText()).trim();
};
const word = (page: Page, part: Word) => question(page).locator(`#word-${part}`);
const sentence = async (page: Page): Promise<string> => (await question(page).innerText()).replace(/\s+/g, ' ');

/** Opens a word with the keyboard alone. */
async function openWord(page: Page, part: Word): Promise<void> {
  await word(page, part).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => word(page, part).getAttribute('aria-expanded')).toBe('true');
}

/** Chooses from a list by typing the beginning of a title, as the keyboard does. */
async function choose(page: Page, label: string, beginning: string): Promise<void> {
  await page.getByRole('combobox', { name: label }).focus();
  await page.keyboard.type(beginning);
}

describe('asking on the built page', () => {
  test('opens on the demonstration with a question and its verdict', async () => {
    const page = await site.open();
    expect(await verdictText(page)).toMatch(VERDICT);
    expect(await sentence(page)).toMatch(/^Would .+ as new be worn on wool in Hanse towns about c\. 1370 by a merchant ?\?$/);
    expect(await page.getByRole('contentinfo').innerText()).toContain('Wadholm Quay');
    expect(await page.getByRole('heading', { level: 3, name: 'What speaks for it' }).count()).toBe(1);
    expect(await page.getByRole('heading', { level: 3, name: /What speaks against it/ }).count()).toBe(1);
    await page.context().close();
  });

  test('changes every word with the keyboard, and the address gives the same answer in another tab', async () => {
    const page = await site.open();
    await verdictText(page);

    await openWord(page, 'region');
    await choose(page, 'Place', 'England');
    await expect.poll(() => sentence(page)).toContain('in England about');
    await page.keyboard.press('Escape');
    await expect.poll(() => word(page, 'region').getAttribute('aria-expanded')).toBe('false');
    expect(await word(page, 'region').evaluate((one) => (one.getRootNode() as ShadowRoot).activeElement === one)).toBe(true);

    await openWord(page, 'when');
    await page.getByRole('textbox', { name: /Date/ }).fill('1463');
    await page.keyboard.press('Enter');
    await expect.poll(() => sentence(page)).toContain('about 1463');
    await page.keyboard.press('Escape');

    await openWord(page, 'fibre');
    await choose(page, 'Fibre', 'Silk');
    await expect.poll(() => sentence(page)).toContain('on silk');
    await page.keyboard.press('Escape');

    await openWord(page, 'wearer');
    await choose(page, 'Wearer', 'Peasant');
    await expect.poll(() => sentence(page)).toContain('by a peasant');
    await page.keyboard.press('Escape');

    await openWord(page, 'act');
    await page.getByRole('button', { name: 'Dyed there' }).focus();
    await page.keyboard.press('Space');
    await expect.poll(() => sentence(page)).toContain('be dyed on');
    await page.keyboard.press('Escape');

    await openWord(page, 'subject');
    await page
      .getByRole('textbox', { name: /colour/i })
      .first()
      .fill('#b2344a');
    await page.keyboard.press('Enter');
    await expect.poll(() => sentence(page)).toContain('#b2344a');

    await page.waitForTimeout(300);
    const before = { sentence: await sentence(page), verdict: await verdictText(page), for: await sideText(page, 'What speaks for it') };
    const other = await site.openBeside(page, page.url());
    await verdictText(other);
    expect({
      sentence: await sentence(other),
      verdict: await verdictText(other),
      for: await sideText(other, 'What speaks for it'),
    }).toEqual(before);
    await page.context().close();
  });

  test('draws the year along its thread with the arrow keys, and the verdict changes where the evidence does', async () => {
    const page = await site.open('#/ask?dye=cudbear&region=scotland&when=1756');
    expect(await verdictText(page)).toBe('Out of period');
    const year = page.getByRole('slider', { name: 'Year' });
    await year.focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => sentence(page)).toContain('about 1757');
    expect(await verdictText(page)).toBe('Out of period');
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => verdictText(page)).toBe('Feasible');
    expect(await sentence(page)).toContain('about 1758');
    await page.keyboard.press('ArrowLeft');
    await expect.poll(() => verdictText(page)).toBe('Out of period');
    await page.context().close();
  });

  test('Back undoes a choice, and a whole drag at once', async () => {
    const page = await site.open('#/ask?dye=cudbear&region=scotland&when=1700');
    await verdictText(page);
    await openWord(page, 'fibre');
    await choose(page, 'Fibre', 'Silk');
    await expect.poll(() => sentence(page)).toContain('on silk');
    await page.getByRole('slider', { name: 'Year' }).focus();
    for (let n = 0; n < 5; n++) await page.keyboard.press('ArrowRight');
    await expect.poll(() => sentence(page)).toContain('about 1705');
    await page.goBack();
    await expect.poll(() => sentence(page)).toMatch(/on silk in Scotland about 1700/);
    await page.goBack();
    await expect.poll(() => sentence(page)).toMatch(/on any fibre in Scotland about 1700/);
    await page.goForward();
    await expect.poll(() => sentence(page)).toContain('on silk');
    expect(await page.getByRole('combobox', { name: 'Fibre' }).evaluate((one: HTMLSelectElement) => one.value)).toBe('silk');
    await page.context().close();
  });

  test('asks of a dyestuff instead of a colour', async () => {
    const page = await site.open();
    await verdictText(page);
    await openWord(page, 'subject');
    await choose(page, 'Or a dyestuff', 'Kermes');
    await expect.poll(() => sentence(page)).toMatch(/^Would kermes be worn/);
    await expect.poll(() => page.url()).toContain('dye=kermes');
    expect(await verdictText(page)).toBe('Attested as cloth');
    await page.context().close();
  });

  test('says what is wrong with a date in its place, and keeps what was typed', async () => {
    const page = await site.open();
    await verdictText(page);
    await openWord(page, 'when');
    const date = page.getByRole('textbox', { name: /Date/ });
    await date.fill('when the oaks were young');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByRole('alert').innerText()).toContain('when the oaks were young');
    expect(await date.inputValue()).toBe('when the oaks were young');
    expect(await sentence(page)).toContain('when the oaks were young');
    await date.fill('late 9th century');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByRole('alert').count()).toBe(0);
    expect(await verdictText(page)).toMatch(VERDICT);
    await page.context().close();
  });
});

const sideText = (page: Page, title: string): Promise<string> => page.getByRole('region', { name: title }).innerText();

/** Questions whose answers differ in kind: attested, disputed or thick with claims, nothing near, of a dyestuff, with rules. */
const QUESTIONS = {
  attested: '#/ask?colour=%23b2423d&region=england&when=1450&fibre=wool',
  'attested as cloth': '#/ask?colour=%23b2423d&region=hanse-towns&when=1370&fibre=wool&wearer=peasant',
  'nothing near': '#/ask?colour=%2300ff00&region=england&when=1370&fibre=wool',
  'a dyestuff': '#/ask?dye=kermes&region=hanse-towns&when=1370&wearer=merchant',
  'many claims': '#/ask?dye=indigo&region=europe&when=1300-1700&wearer=noble',
  'a colour-word with rules': '#/ask?colour=scarlet&region=england&when=1463&wearer=servant',
  'out of period': '#/ask?colour=cochineal-tin-wool&region=hanse-towns&when=1370&fibre=wool&dyed=here',
} as const;

describe('the answer on a phone', () => {
  test.each(Object.entries(QUESTIONS))('%s: nothing runs out of the page at 360 px', async (_, hash) => {
    const page = await site.open(hash, { width: 360, height: 740 });
    await verdictText(page);
    for (const part of wordsOf(hash)) {
      await openWord(page, part);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    }
    await page.context().close();
  });

  test.each(Object.entries(QUESTIONS))('%s: the verdict is seen without scrolling', async (_, hash) => {
    const page = await site.open(hash, { width: 390, height: 844 });
    await verdictText(page);
    const box = await verdict(page).boundingBox();
    expect((box?.y ?? Infinity) + (box?.height ?? 0)).toBeLessThan(844);
    await page.context().close();
  });
});

describe('the page for everyone', () => {
  test.each([
    ['light', 1280],
    ['dark', 1280],
    ['light', 390],
    ['dark', 390],
  ] as const)(
    'axe finds nothing at WCAG 2.2 AA: %s, %i px, closed and with each word open',
    { timeout: 120_000 },
    async (scheme, width) => {
      const page = await site.open('', { width, dark: scheme === 'dark', bypassPolicy: true });
      await verdictText(page);
      expect(await accessibilityFaults(page)).toEqual([]);
      for (const part of WORDS) {
        await openWord(page, part);
        expect(await accessibilityFaults(page)).toEqual([]);
      }
      await page.context().close();
    },
  );

  test('axe finds nothing in a problem, in a drawer opened, and in an answer about a dyestuff', { timeout: 60_000 }, async () => {
    const page = await site.open('#/ask?dye=indigo&region=europe&when=1300-1700', { bypassPolicy: true });
    await verdictText(page);
    for (const summary of await page.locator('summary').all()) await summary.click();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.goto(`${site.origin}/#/ask?dye=indigo&region=europe&when=soon`);
    await page.getByRole('alert').waitFor();
    expect(await accessibilityFaults(page)).toEqual([]);
    await page.context().close();
  });
});

describe('what all these pages did', () => {
  test('nothing was asked of another origin, and no console complained', () => {
    expect(site.strays).toEqual([]);
    expect(site.complaints).toEqual([]);
  });
});
