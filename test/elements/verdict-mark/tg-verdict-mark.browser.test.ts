import { page } from 'vitest/browser';
import { afterEach, describe, expect, test } from 'vitest';
import { VERDICTS } from '../../../web/domain/verdict/standing-words.ts';
import '../../../web/elements/verdict-mark/tg-verdict-mark.ts';
import type { TgVerdictMark } from '../../../web/elements/verdict-mark/tg-verdict-mark.ts';
import { verdictWords } from '../../../web/notebook/words/verdict-words.ts';
import { axeFaults } from '../../helpers/axe-faults.ts';

afterEach(() => document.body.replaceChildren());

async function aMark(given: Partial<TgVerdictMark>): Promise<TgVerdictMark> {
  const mark = Object.assign(document.createElement('tg-verdict-mark'), given);
  document.body.append(mark);
  await mark.updateComplete;
  return mark;
}

describe('tg-verdict-mark', () => {
  test('the word stands beside the hem, and follows the verdict', async () => {
    const mark = await aMark({ verdict: 'feasible' });
    await expect.element(page.getByText(verdictWords.feasible.word)).toBeVisible();
    mark.verdict = 'disputed';
    await expect.element(page.getByText(verdictWords.disputed.word)).toBeVisible();
  });

  test('without a verdict there is nothing', async () => {
    const mark = await aMark({});
    expect(mark.shadowRoot?.querySelector('[part]')).toBeNull();
  });

  test('all of them pass axe', async () => {
    for (const verdict of VERDICTS) await aMark({ verdict, classes: 3 });
    expect(await axeFaults(document.body)).toEqual([]);
  });
});
