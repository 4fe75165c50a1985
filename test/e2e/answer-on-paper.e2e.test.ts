import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { printedPages } from '../helpers/printed.ts';
import { type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

/** The answer's verdict, by its question. */
const QUESTIONS: readonly (readonly [verdict: string, hash: string])[] = [
  ['Attested', '#/ask?colour=%23b2423d&region=england&when=1450&fibre=wool'],
  ['Attested as cloth', '#/ask?colour=%23b2423d&region=hanse-towns&when=1370&fibre=wool&wearer=peasant'],
  ['Nothing near', '#/ask?colour=%2300ff00&region=england&when=1370&fibre=wool'],
  ['Attested as cloth', '#/ask?dye=kermes&region=hanse-towns&when=1370&fibre=wool&wearer=merchant'],
  ['Feasible', '#/ask?dye=indigo&region=europe&when=1300-1700&wearer=noble'],
  ['Plausible', '#/ask?colour=scarlet&region=england&when=1463&wearer=servant'],
  ['Disputed', '#/ask?dye=madder&region=zeeland&when=1300'],
  ['Contradicted', '#/ask?dye=american-brazilwood&region=baltic&when=1370'],
  ['Out of period', '#/ask?dye=cudbear&region=scotland&when=1700'],
];

describe('the printed answer', () => {
  test.each(QUESTIONS)('%s is one A4 sheet with both sides, sources and what would change it: %s', async (verdict, hash) => {
    const page = await site.open(hash);
    const heading = page.getByRole('heading', { level: 2, name: verdict, exact: true });
    await heading.waitFor();
    const shownKeys = await page.locator('.sources strong').allInnerTexts();
    const pages = await printedPages(await page.pdf({ preferCSSPageSize: true }));
    expect(pages.map(({ size }) => size)).toEqual(['595×842']);

    const words = pages.map(({ text }) => text).join(' ');
    expect(words).toContain('Would');
    expect(words).toContain(verdict);
    expect(words).toContain('What speaks for it');
    expect(words).toContain('What speaks against it, or is missing');
    expect(words).toContain('Wadholm Quay');
    expect(words).toMatch(/Printed on \d+ \w+ \d{4}/);
    if (verdict !== 'Nothing near') {
      expect(words).toContain('Sources');
      expect(shownKeys.some((key) => words.includes(`${key}:`))).toBe(true);
      if (verdict !== 'Attested') expect(words).toContain('What would change it');
    }
    await page.context().close();
  });
});
