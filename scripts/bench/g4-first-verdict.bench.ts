/** From a new browser process, its files out of the system's memory, to the first verdict (G4). */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { alternate, type Timing } from './alternate.ts';
import { benchOptions } from './bench-options.ts';
import { dropFromMemory, inBrowser, pageScript, servedPage } from './cold-browser.ts';
import { madeNotes } from './made/made-notes.ts';
import { type Figure, report, timedFigure } from './report.ts';

const WAYS = ['kept readings', 'every note read', 'notes'] as const;
/** Notes the page takes at once. */
const AT_ONCE = 500;
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
  const { address, close } = await servedPage(script, {
    '/notes': (query) => JSON.stringify(notes.slice(Number(query.get('from')), Number(query.get('from')) + AT_ONCE)),
  });
  const profile = mkdtempSync(join(tmpdir(), 'first-verdict-'));
  await inBrowser(profile, address, 'firstVerdict', 'firstVerdict.fill()');

  // The page says itself how long each took: the browser's own start is not what is compared.
  let took = 0;
  const contenders = WAYS.map((name) => ({
    name,
    run: async () => {
      dropFromMemory(profile);
      const work = `firstVerdict.take(${JSON.stringify(name)}, ${JSON.stringify(dye)})`;
      const taken = await inBrowser<{ said: string; took: number }>(profile, address, 'firstVerdict', work);
      const right = name === 'notes' ? String(count) : wantedAnswer;
      if (taken.said !== right) throw new Error(`${name}: ${taken.said}, not ${right}`);
      took += taken.took;
    },
  }));
  const [kept, read, getAll] = await alternate(contenders, repetitions, () => took, 0);
  close();
  rmSync(profile, { recursive: true, force: true });
  const add = (what: string, mine: Timing | undefined, theirs: Timing | undefined, wanted?: number) => {
    if (mine && theirs)
      figures.push(timedFigure({ goal: 'G4', what: `first verdict, ${what}`, at, ...(wanted && { wanted }) }, mine, theirs));
  };
  add('kept readings', kept, getAll, WANTED[at]);
  add('every note read', read, getAll);
  add('kept readings', kept, read);
}
report('g4-first-verdict', 'From a new browser process to the first verdict, in Chromium (wall)', figures);
