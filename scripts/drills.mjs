/** Kills the browser at many moments and looks at what is left: `npm run drills -- [--kills N] [--seed S]`, 50 and the day's number unless told. */
import { parseArgs } from 'node:util';
import { checkNode, ensureBuild, findChromium, giveUp, installPackages, runTests } from './setup.mjs';

checkNode();
const { values } = parseArgs({ options: { kills: { type: 'string', default: '50' }, seed: { type: 'string' } } });
const [kills, seed] = [Number(values.kills), Number(values.seed ?? Math.floor(Date.now() / 86_400_000))];
if (!Number.isInteger(kills) || kills < 1) giveUp(`--kills takes a whole number above 0, not “${values.kills}”.`);
if (!Number.isInteger(seed)) giveUp(`--seed takes a whole number, not “${values.seed}”.`);
installPackages();
await ensureBuild();
console.log(`${kills} kills, seed ${seed}: the same again with --kills ${kills} --seed ${seed}`);
runTests(['--project', 'e2e', '--retry', '0', 'test/drills/kill-points.e2e.test.ts'], {
  CHROMIUM_PATH: findChromium(),
  DRILL_KILLS: String(kills),
  DRILL_SEED: String(seed),
});
