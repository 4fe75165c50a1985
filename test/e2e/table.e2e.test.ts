import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import tables from '../reference/table-of-skeins.json' with { type: 'json' };
import { printedPages } from '../helpers/printed.ts';
import { faultsInBothLooks } from '../helpers/both-looks.ts';
import { type WatchedSite, watchedSite } from '../helpers/watched-site.ts';

let site: WatchedSite;
beforeAll(async () => {
  site = await watchedSite();
});
afterAll(() => site.close());

const [hanse] = tables.tables;
const LIST = `name;dyestuffs;mordant;fibre\n${(hanse?.lines ?? []).map(({ name, dyestuffs, mordant, fibre }) => `${name};${dyestuffs.join(' + ')};${mordant};${fibre}`).join('\n')}`;
/** The answers to the verdicts that were worked out by hand. */
const ANSWERS: Readonly<Record<string, string>> = {
  attested: 'stands',
  'attested-as-cloth': 'stands as cloth',
  feasible: 'could',
  plausible: 'could',
  disputed: 'disputed',
  unsupported: 'does not',
  'out-of-period': 'does not',
  contradicted: 'does not',
};

const answers = (page: Page): Promise<readonly string[]> => page.locator('[part=lines] .answer').allInnerTexts();

/** The lines whose answer is not one of those worked out by hand. */
async function wrongLines(page: Page): Promise<readonly string[]> {
  const lines = hanse?.lines ?? [];
  await expect.poll(async () => (await answers(page)).length, { timeout: 30_000 }).toBe(lines.length);
  const given = await answers(page);
  return lines.flatMap((line, at) => {
    const witnessed = (line as { orWhenWitnessed?: string }).orWhenWitnessed;
    const right = [line.verdict, ...(witnessed === undefined ? [] : [witnessed])].map((verdict) => ANSWERS[verdict]);
    return right.includes(given[at]) ? [] : [`${line.name}: ${given[at]}`];
  });
}

async function paste(page: Page, text: string): Promise<void> {
  const list = page.getByLabel('The skeins, one a line');
  await list.fill(text);
  await list.blur();
}

describe('a table of one’s own skeins', () => {
  test('pasted: each line has the answer worked out by hand, and says why; the sheet is printed whole', { timeout: 60_000 }, async () => {
    const page = await site.open('#/ask/table', { width: 390, dark: true, bypassPolicy: true });
    await paste(page, LIST);
    expect(await wrongLines(page)).toEqual([]);
    expect(await faultsInBothLooks(page)).toEqual([]);
    const pages = await printedPages(await page.pdf({ preferCSSPageSize: true }));
    expect(new Set(pages.map(({ size }) => size))).toEqual(new Set(['595×842']));
    const words = pages.map(({ text }) => text).join(' ');
    for (const { name } of hanse?.lines ?? []) expect(words).toContain(name);
    // The reasons that lie folded on the page are open on paper.
    expect(words).toMatch(/independent class(?:es)? of evidence/);
    await page.context().close();
  });

  test('a CSV file dropped, and samples of the notebook added to it', { timeout: 60_000 }, async () => {
    const page = await site.open('#/ask/table');
    await page.getByLabel('The skeins, one a line').waitFor();
    const dropped = await page.evaluateHandle((text) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text.replaceAll(';', ',')], 'skeins.csv', { type: 'text/csv' }));
      return transfer;
    }, LIST);
    await page.locator('[part=list]').dispatchEvent('drop', { dataTransfer: dropped });
    expect(await wrongLines(page)).toEqual([]);
    await page.getByLabel('Add a sample of the notebook').selectOption({ index: 0 });
    await page.getByRole('button', { name: 'Add it to the list' }).click();
    await expect.poll(async () => (await answers(page)).length).toBe((hanse?.lines.length ?? 0) + 1);
    expect(await page.locator('[part=lines] .problem').count()).toBe(0);
    expect(site.complaints).toEqual([]);
    await page.context().close();
  });

  test('with an empty notebook and nothing but the starter shelf', { timeout: 60_000 }, async () => {
    const page = await site.open('#/notebook');
    await page
      .getByRole('button', { name: /starter shelf/i })
      .first()
      .click();
    await page.getByText(/Your notebook in this browser: \d+ notes/).waitFor();
    await page.goto(`${site.origin}/#/ask/table`);
    await paste(page, LIST);
    expect(await wrongLines(page)).toEqual([]);
    await page.context().close();
  });
});
