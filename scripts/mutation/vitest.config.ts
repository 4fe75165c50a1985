import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** The rules' own tests alone, in Node: those that judge the whole demonstration would be run again for every mutant. */
const tests = ['verdict/{standing,judge-route,route,rules-for,sub-spans,witness,weigh-claims,ask}', 'place/*', 'date/time-relation'];

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: { environment: 'node', include: tests.map((name) => `test/domain/${name}.test.ts`), testTimeout: 60_000 },
});
