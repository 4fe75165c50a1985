/**
 * Tries every reader with texts made by chance, by the night: `npm run fuzz [CASES] [SEED] [vitest arguments]`.
 * A case that fails is printed, with a `seed` and a `path`: `FUZZ_PATH=path npm run fuzz CASES SEED -- -t 'reader'` repeats it alone.
 */
import { randomInt } from 'node:crypto';
import { checkNode, installPackages, runTests } from './setup.mjs';

checkNode();
installPackages();

const [cases = '100000', seed = String(randomInt(2 ** 31)), ...more] = process.argv.slice(2);
console.log(`${cases} cases a reader; seed ${seed}`);
runTests(['--project', 'unit', 'test/fuzz', ...more], { FUZZ_CASES: cases, FUZZ_SEED: seed });
