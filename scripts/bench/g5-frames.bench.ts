import { freshBrowser } from './built-page.ts';
import { pageScript, servedPage } from './cold-browser.ts';
import { within } from './over-dye-pairs.ts';
import { printTable, quantile } from './print-table.ts';
import { report, timedFigure } from './report.ts';

const REPETITIONS = 5;
const TARGET = [30, 3, -28] as const;
const LIMIT = 6;
const ASKED = JSON.stringify([TARGET, LIMIT]).slice(1, -1);

interface Seen {
  readonly longestGap: number;
  readonly longTasks: number;
  readonly frames: number;
}

const { address, close } = await servedPage(await pageScript('over-dye-frames'), {});
const browser = await freshBrowser();
const page = await browser.newPage();
await page.goto(address);
await page.waitForFunction('globalThis.overDyeFrames');
const look = <T extends Seen>(work: string): Promise<T> => page.evaluate<T>(`overDyeFrames.${work}`);
const right = within(TARGET, LIMIT).length;
const work = async () => {
  const seen = await look<Seen & { readonly found: number; readonly took: number }>(`working(${ASKED})`);
  if (seen.found !== right) throw new Error(`the worker found ${seen.found} over-dyes, not ${right}`);
  return seen;
};

// The first time the worker makes its dyeings.
await work();
const [working, idle, without]: [Seen[], Seen[], Seen[]] = [[], [], []];
for (let turn = 0; turn < REPETITIONS; turn += 1) {
  const seen = await work();
  working.push(seen);
  idle.push(await look(`idle(${seen.took})`));
  without.push(await look(`inPage(${ASKED})`));
}
await browser.close();
close();

report('over-dye-frames', 'The page while a worker enumerates over-dyes five times, in Chromium, by the wall', [
  timedFigure(
    { goal: 'G5', what: 'longest time between two frames', at: '720,000 pairs' },
    { name: 'while the worker works', times: working.map(({ longestGap }) => longestGap) },
    { name: 'the same page idle', times: idle.map(({ longestGap }) => longestGap) },
  ),
]);
const median = (seen: readonly Seen[], of: (one: Seen) => number): number => quantile(seen.map(of), 0.5);
printTable(
  'Medians of the repetitions',
  ['', 'frames', 'longest gap ms', 'tasks of the page over 50 ms'],
  (
    [
      ['while the worker works', working],
      ['the same page idle', idle],
      ['the same work in the page itself', without],
    ] as const
  ).map(([name, seen]) => [
    name,
    median(seen, ({ frames }) => frames),
    median(seen, ({ longestGap }) => longestGap),
    median(seen, ({ longTasks }) => longTasks),
  ]),
);
