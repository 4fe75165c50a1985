import type { Page } from 'playwright-core';
import { describe, expect, onTestFinished, test } from 'vitest';
import { readIn } from '../helpers/read-in.ts';
import { siteAndBrowser } from '../helpers/site-and-browser.ts';
import { heldIn } from './kill-page.ts';
import { hashOf } from './kill-plan.ts';

const open = siteAndBrowser();

const ROLL = '---\nkind: text\ntitle: The roll\n---\n\nSaid of ʿudar.\n';

async function write(page: Page, words: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Text of the note' }).click();
  await page.keyboard.press('ControlOrMeta+End');
  await page.keyboard.type(words);
  await page.getByText('Not saved yet.').waitFor();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Saved.', { exact: true }).waitFor();
}

describe('a clock that is set back', () => {
  test('versions stay in the order of writing, none is written over, and the list says what the clock did', async () => {
    const context = await open.browser.newContext({ locale: 'en-GB', timezoneId: 'UTC' });
    onTestFinished(() => context.close());
    const page = await context.newPage();
    await page.clock.setFixedTime('2026-11-28T11:40:00Z');
    await readIn(page, open.site.address, { 'roll.md': ROLL });
    await page.goto(`${open.site.address}#/notebook/roll?write=text`);
    await write(page, 'One. ');
    await page.clock.setFixedTime('2019-03-02T08:15:00Z');
    await write(page, 'Two. ');
    await write(page, 'Three. ');
    expect(await heldIn(page)).toEqual({
      files: { 'roll.md': hashOf(`${ROLL}One. Two. Three. `) },
      earlier: { 'roll.md': ['', 'One. ', 'One. Two. '].map((words) => hashOf(ROLL + words)) },
      missing: {},
    });
    await page.goto(`${open.site.address}#/notebook/roll?versions=all`);
    const versions = page.getByRole('listitem').filter({ hasText: 'stood until' });
    await versions.nth(2).waitFor();
    expect(await versions.allInnerTexts()).toEqual([
      'Written 2 Mar 2019, 08:15, stood until 2 Mar 2019, 08:15',
      'Written 28 Nov 2026, 11:40, stood until 2 Mar 2019, 08:15 by a clock that had been set back',
      'Written 28 Nov 2026, 11:40, stood until 28 Nov 2026, 11:40',
    ]);
  });
});
