/**
 * Tries what must hold for whatever is made up with more cases and another chance: `npm run properties [TIMES] [SEED] [vitest
 * arguments]`. A case that fails is printed with what it was made of; the same times and seed repeat it.
 */
import { randomInt } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkNode, filesBelow, installPackages, ROOT, runTests } from './setup.mjs';

checkNode();
installPackages();

const [times = '20', seed = String(randomInt(2 ** 31)), ...more] = process.argv.slice(2);
const files = filesBelow(join(ROOT, 'test')).filter(
  (file) => file.endsWith('.test.ts') && readFileSync(file, 'utf8').includes('helpers/property.ts'),
);
console.log(`${files.length} files, ${times} times as many cases; seed ${seed}`);
runTests(['--project', 'unit', '--testTimeout', '3600000', ...files, ...more], { PROPERTY_TIMES: times, PROPERTY_SEED: seed });
