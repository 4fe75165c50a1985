import { describe, expect, test } from 'vitest';
import { FUZZ_TARGETS } from './fuzz-targets.ts';
import { mutatedText } from './mutated-text.ts';
import { fc } from '../helpers/property.ts';

/** `npm run fuzz` asks for more, and from another beginning each time. */
const CASES = Number(process.env['FUZZ_CASES'] ?? 2000);
const SEED = Number(process.env['FUZZ_SEED'] ?? 20_261_128);
const PATH = process.env['FUZZ_PATH'];
const IS_SHORT = process.env['FUZZ_CASES'] === undefined;

describe(`readers, whatever the text (seed ${SEED})`, () => {
  test.each(FUZZ_TARGETS)(
    '$name: end, throw nothing, keep what always holds, and read the same twice',
    async ({ samples, words, read }) => {
      await fc.assert(
        fc.asyncProperty(mutatedText(samples, words), async (text) => {
          const first = JSON.stringify(await read(text));
          expect(JSON.stringify(await read(text))).toBe(first);
        }),
        { numRuns: CASES, seed: SEED, ...(PATH !== undefined && { path: PATH }) },
      );
    },
    IS_SHORT ? 600_000 : 14_400_000,
  );
});
