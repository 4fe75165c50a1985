/**
 * `npm test [vitest arguments]`: types, form, lint, templates, a build, then every test.
 * With arguments only types, build and the tests asked for.
 * The last line is `N passed, N failed`: tests, and one failure more for each check above that failed.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checkNode, ensureBuild, filesBelow, findChromium, installPackages, ROOT } from './setup.mjs';

const bin = (/** @type {string} */ name) => join(ROOT, 'node_modules', name);
const TSC = bin('typescript/bin/tsc');

/**
 * Runs a program of node_modules under this Node; true when it ends well.
 * @param {string} file
 * @param {string[]} args
 */
function run(file, args) {
  return spawnSync(process.execPath, [file, ...args], { cwd: ROOT, stdio: ['ignore', 'inherit', 'inherit'] }).status === 0;
}

/** Each folder of web with a tsconfig of its own compiles with fewer globals than the whole. */
function typeChecks() {
  const folders = filesBelow(join(ROOT, 'web')).filter((file) => /[\\/]tsconfig\.json$/.test(file));
  return ['.', ...folders].map((project) => ({
    name: `types of ${project === '.' ? 'everything' : project.slice(ROOT.length)}`,
    passes: () => run(TSC, ['--noEmit', '-p', project]),
  }));
}

const formChecks = () => [
  { name: 'form (prettier)', passes: () => run(bin('prettier/bin/prettier.cjs'), ['--check', '--log-level', 'warn', '.']) },
  { name: 'lint (oxlint)', passes: () => run(bin('oxlint/bin/oxlint'), ['--deny-warnings', 'web', 'test', 'scripts', 'vite.config.ts']) },
  {
    name: 'templates (lit-analyzer)',
    passes: () => run(join(ROOT, 'scripts/lit-analyzer.cjs'), ['--rules.no-invalid-css', 'off', 'web/**/*.ts']),
  },
];

const build = { name: 'build', passes: () => ensureBuild().then(() => true) };

/**
 * Runs the checks one after another and gives the names of those that failed.
 * @param {{ name: string, passes: () => boolean | Promise<boolean> }[]} checks
 */
async function failing(checks) {
  const failed = [];
  for (const { name, passes } of checks) {
    const began = Date.now();
    let good = false;
    try {
      good = await passes();
    } catch (error) {
      console.error(error);
    }
    console.log(`${good ? 'ok    ' : 'FAILED'} ${name} (${((Date.now() - began) / 1000).toFixed(1)} s)`);
    if (!good) failed.push(name);
  }
  return failed;
}

/**
 * @typedef {{ status: string, fullName: string, failureMessages: string[] }} TestOutcome
 * @typedef {{ numPassedTests: number, numFailedTests: number, testResults: { status: string, assertionResults: TestOutcome[] }[] }} Report
 */

/**
 * What vitest counted. A file that could not be loaded is one failure; so is a run that ended badly without saying why.
 * @param {string[]} args
 */
function runTests(args) {
  const folder = mkdtempSync(join(tmpdir(), 'tenterground-test-'));
  const report = join(folder, 'report.json');
  const ended = run(bin('vitest/vitest.mjs'), ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`, ...args]);
  /** @type {Report} */
  const counted = existsSync(report) ? JSON.parse(readFileSync(report, 'utf8')) : { numPassedTests: 0, numFailedTests: 0, testResults: [] };
  rmSync(folder, { recursive: true, force: true });
  const unloaded = counted.testResults.filter(
    (file) => file.status === 'failed' && !file.assertionResults.some((one) => one.status === 'failed'),
  ).length;
  const failed = counted.numFailedTests + unloaded;
  return { passed: counted.numPassedTests, failed: ended ? failed : Math.max(failed, 1), secondGoes: secondGoes(counted) };
}

/**
 * The tests that failed first and passed when they ran again, each with what was wrong the first time.
 * @param {Report} report
 */
function secondGoes({ testResults }) {
  return testResults
    .flatMap(({ assertionResults }) => assertionResults)
    .filter(({ status, failureMessages }) => status === 'passed' && failureMessages.length > 0)
    .map(({ fullName, failureMessages }) => `${fullName}: ${failureMessages[0]?.split('\n')[0]}`);
}

checkNode();
installPackages();
process.env['CHROMIUM_PATH'] = findChromium();

const args = process.argv.slice(2);
const failed = await failing([...typeChecks(), ...(args.length > 0 ? [] : formChecks()), build]);
const tests = runTests(args);

if (failed.length > 0) console.log(`\nFailed before the tests: ${failed.join(', ')}`);
if (tests.secondGoes.length > 0) console.log(`\nPassed only when run a second time:\n${tests.secondGoes.join('\n')}`);
console.log(`\n${tests.passed} passed, ${tests.failed + failed.length} failed`);
process.exit(tests.failed + failed.length > 0 ? 1 : 0);
