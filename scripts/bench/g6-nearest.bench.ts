import { differenceCiede2000, nearest as culoriNearest } from 'culori/fn';
import { ciede2000Of } from '../../web/domain/colour/ciede2000.ts';
import type { Lab } from '../../web/domain/colour/lab.ts';
import { type NearLab, NearestLabs } from '../../web/domain/colour/nearest-labs.ts';
import { alternate } from './alternate.ts';
import { madeLabs } from './made/made-labs.ts';
import { report, timedFigure } from './report.ts';

const COUNT = 100_000;
const MOST = 50;
/** culori is asked for one colour a turn, the others for all of them. */
const QUERIES = 16;

const labs = madeLabs(COUNT);
const made = madeLabs(QUERIES, 9);
const queries = Array.from({ length: QUERIES }, (_, nth): Lab => [made[3 * nth] ?? 0, made[3 * nth + 1] ?? 0, made[3 * nth + 2] ?? 0]);
const near = new NearestLabs(labs);

/** The yardstick: every difference, then the least of them. */
function oneByOne([l, a, b]: Lab): readonly NearLab[] {
  const differences = new Float64Array(COUNT);
  for (let at = 0; at < COUNT; at += 1)
    differences[at] = ciede2000Of(l, a, b, labs[3 * at] ?? 0, labs[3 * at + 1] ?? 0, labs[3 * at + 2] ?? 0);
  const limit = differences.slice().sort()[MOST - 1] ?? Infinity;
  const found: NearLab[] = [];
  differences.forEach((deltaE00, at) => deltaE00 <= limit && found.push({ at, deltaE00 }));
  return found.sort((one, other) => one.deltaE00 - other.deltaE00 || one.at - other.at).slice(0, MOST);
}

const asObject = ([l, a, b]: Lab) => ({ mode: 'lab65', l, a, b }) as const;
const objects = Array.from({ length: COUNT }, (_, at) => asObject([labs[3 * at] ?? 0, labs[3 * at + 1] ?? 0, labs[3 * at + 2] ?? 0]));
const theirs = culoriNearest(objects, differenceCiede2000());

for (const query of queries) {
  const [ours, plain] = [near.nearest(query, MOST), oneByOne(query)];
  if (!ours.every(({ at, deltaE00 }, nth) => at === plain[nth]?.at && deltaE00 === plain[nth].deltaE00))
    throw new Error('others are nearer');
}
/** One query a turn, another every turn. */
const inTurn = (work: (query: Lab) => unknown) => {
  let turn = 0;
  return () => work(queries[turn++ % QUERIES] ?? [50, 0, 0]);
};
const TIMES = 50;
const [ours, plain, culoris] = await alternate(
  [
    {
      name: 'partition and bound',
      run: inTurn((query) => {
        for (let time = 0; time < TIMES; time += 1) near.nearest(query, MOST);
      }),
    },
    { name: 'typed loop', run: inTurn(oneByOne) },
    { name: 'culori nearest', run: inTurn((query) => theirs(asObject(query), MOST)) },
  ],
  7,
);
if (!ours || !plain || !culoris) throw new Error('three were measured');
const once = { ...ours, times: ours.times.map((time) => time / TIMES) };
const about = { goal: 'G6', what: `${MOST} nearest`, at: '100k swatches' };
report('nearest', 'Nearest swatches by ΔE00, in Node', [
  timedFigure({ ...about, wanted: 1 / 60 }, once, plain),
  timedFigure({ ...about, wanted: 1 / 400 }, once, culoris),
]);
