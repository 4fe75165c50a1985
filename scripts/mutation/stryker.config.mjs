/** The rules of standing and verdict, place and time. `npm run mutation -- --mutate 'web/domain/…'` takes other files. */
const RULES = [
  'web/domain/verdict/{standing,judge-claim,weigh-claims,judge-route,route,witness,rules-for,sub-spans}.ts',
  'web/domain/place/region-tree.ts',
  'web/domain/date/time-relation.ts',
];

/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  mutate: RULES,
  plugins: ['@stryker-mutator/vitest-runner'],
  testRunner: 'vitest',
  vitest: { configFile: 'scripts/mutation/vitest.config.ts' },
  coverageAnalysis: 'perTest',
  concurrency: 1,
  // The sources' own words are spared: a changed sentence is no changed rule.
  mutator: { excludedMutations: ['StringLiteral'] },
  reporters: ['clear-text', 'json'],
  jsonReporter: { fileName: 'dist/mutation.json' },
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  ignorePatterns: ['dist', 'corpus-demo/photos'],
  allowEmpty: false,
  disableTypeChecks: false,
  // Its rewriting of tsconfig.json asks for the compiler's JavaScript API, which TypeScript 7 no longer has.
  tsconfigFile: 'none',
};
