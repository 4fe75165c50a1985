import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { BuiltSite } from '../helpers/built-site.ts';
import { KillableChromium } from '../helpers/killable-chromium.ts';
import { askFor, beginEmpty, heldIn } from './kill-page.ts';
import { type Asked, KillPlan, stepsIn } from './kill-plan.ts';

/** `npm run drills -- --kills 50 --seed 7` sets both. */
const KILLS = Number(process.env['DRILL_KILLS'] ?? 8);
const SEED = Number(process.env['DRILL_SEED'] ?? 1370);
/** Asked beyond the kill point, so that the kill never falls into idleness. */
const MORE = 12;

let site: BuiltSite;
let folder: string;
beforeAll(async () => {
  site = await new BuiltSite().open();
  folder = mkdtempSync(join(tmpdir(), 'tenterground-kills-'));
});
afterAll(async () => {
  await site.remove();
  rmSync(folder, { recursive: true, force: true });
});

/** The number of notes that the page itself says the notebook has. */
async function notesSaid(page: Page): Promise<number> {
  const words = page.getByText(/^Your notebook in this browser: [\d,]+ notes?/).first();
  await words.waitFor();
  return Number(/([\d,]+) note/.exec(await words.innerText())?.[1]?.replaceAll(',', ''));
}

/** What the page had said when its browser was killed. */
interface Killed {
  readonly asked: readonly Asked[];
  readonly saved: number;
}

/** Starts the browser on the profile, looks at what is there, sets the page to work and kills the browser in the midst of it. */
async function live(profile: string, plan: KillPlan, look: (page: Page) => Promise<void>): Promise<Killed> {
  const browser = await KillableChromium.start(profile);
  onTestFinished(() => browser.kill());
  const page = await browser.page();
  await page.goto(`${site.address}#/notebook`);
  await look(page);
  const { answers, milliseconds } = plan.killPoint();
  const asked = plan.ask(answers + MORE);
  let [saved, wrong] = [0, ''];
  await new Promise<void>((reached) => {
    const hear = (count: number, trouble: string) => {
      saved = count;
      wrong ||= trouble;
      if (count >= answers || wrong !== '') reached();
    };
    void askFor(page, asked, hear).then(() => (answers === 0 ? reached() : undefined));
  });
  if (milliseconds > 0) await pause(milliseconds);
  await browser.kill();
  expect(wrong).toBe('');
  return { asked, saved };
}

describe('a browser killed at any moment', () => {
  test(`${KILLS} times, from seed ${SEED}: what the page said was saved is there byte for byte, and nothing half done`, async () => {
    const plan = new KillPlan(SEED);
    const profile = mkdtempSync(join(folder, 'profile-'));
    const totals = { said: 0, 'more was on disk': 0, 'cut off in an import': 0, 'asked but not begun': 0 };
    const check = async (page: Page, { asked, saved }: Killed) => {
      const held = await heldIn(page);
      const found = plan.matches(asked, saved, held);
      expect(found, `${saved} of ${stepsIn(asked)} were said to be saved`).toBeDefined();
      expect(await notesSaid(page)).toBe(plan.noteCount);
      totals.said += saved;
      totals['more was on disk'] += (found ?? 0) - saved;
      totals['cut off in an import'] = Object.keys(held.missing).length;
      totals['asked but not begun'] += stepsIn(asked) - (found ?? 0);
    };
    let killed: Killed | undefined;
    for (let kill = 0; kill < KILLS; kill++) {
      const before = killed;
      killed = await live(profile, plan, async (page) => {
        if (before) return check(page, before);
        await page
          .getByText(/the demonstration notebook/)
          .first()
          .waitFor();
        return beginEmpty(page);
      });
    }
    const last = await KillableChromium.start(profile);
    onTestFinished(() => last.kill());
    const page = await last.page();
    await page.goto(`${site.address}#/notebook`);
    if (killed) await check(page, killed);
    console.log(`${KILLS} kills from seed ${SEED}:`, totals);
    expect(totals.said).toBeGreaterThan(0);
  }, 1_800_000);
});
