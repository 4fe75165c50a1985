/** From a new browser process, its files out of the system's memory, to the first verdict (G4). */
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import type { Timing } from './alternate.ts';
import { benchOptions } from './bench-options.ts';
import { coldTimings, pageScript } from './cold-browser.ts';
import { madeNotes } from './made/made-notes.ts';
import { type Figure, report, timedFigure } from './report.ts';

const WAYS = ['kept readings', 'every note read', 'notes'] as const;
const WANTED: Readonly<Record<string, number>> = { '10k': 1 / 100, '100k': 1 / 400 };

const script = await pageScript('first-verdict');
const figures: Figure[] = [];
const { sizes, repetitions } = benchOptions();
for (const [at, count] of sizes) {
  const notes = [...madeNotes(count)];
  const encoder = new TextEncoder();
  const engine = new LocalEngine();
  await engine.open(notes.map(({ path, text }) => ({ path, bytes: encoder.encode(text) })));
  const dye = (await engine.dyestuffs())[0]?.id ?? '';
  const wantedAnswer = JSON.stringify(await engine.answer({ dye, region: 'world', when: '1400' }));
  const [kept, read, getAll] = await coldTimings({
    script,
    page: 'firstVerdict',
    notes,
    ways: WAYS,
    given: [dye],
    right: (way) => (way === 'notes' ? String(count) : wantedAnswer),
    repetitions,
  });
  const add = (what: string, mine: Timing | undefined, theirs: Timing | undefined, wanted?: number) => {
    if (mine && theirs)
      figures.push(timedFigure({ goal: 'G4', what: `first verdict, ${what}`, at, ...(wanted && { wanted }) }, mine, theirs));
  };
  add('kept readings', kept, getAll, WANTED[at]);
  add('every note read', read, getAll);
  add('kept readings', kept, read);
}
report('g4-first-verdict', 'From a new browser process to the first verdict, in Chromium (wall)', figures);
