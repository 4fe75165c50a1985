/**
 * Tries what must hold for whatever is made up with more cases and another chance: `npm run properties [TIMES] [SEED] [vitest
 * arguments]`. A case that fails is printed with what it was made of; the same times and seed repeat it.
 */
import { spawnSync } from 'node:child_process';
import { randomInt } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkNode, installPackages, ROOT } from './setup.mjs';

checkNode();
installPackages();

const [times = '20', seed = String(randomInt(2 ** 31)), ...more] = process.argv.slice(2);
const files = readdirSync(join(ROOT, 'test'), { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.test.ts'))
  .map((file) => `test/${file}`)
  .filter((file) => readFileSync(join(ROOT, file), 'utf8').includes('helpers/property.ts'));
console.log(`${files.length} files, ${times} times as many cases; seed ${seed}`);
const { status } = spawnSync(
  process.execPath,
  [join(ROOT, 'node_modules/vitest/vitest.mjs'), 'run', '--project', 'unit', '--testTimeout', '3600000', ...files, ...more],
  { cwd: ROOT, stdio: 'inherit', env: { ...process.env, PROPERTY_TIMES: times, PROPERTY_SEED: seed } },
);
process.exitCode = status ?? 1;
