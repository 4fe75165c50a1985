/**
 * What `npm start` and `npm test` need before they can begin, on a fresh clone too: packages, a build, a browser.
 * Node built-ins only, because nothing is installed yet when this file is read.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { accessSync, constants, existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the checkout. */
export const ROOT = fileURLToPath(new URL('..', import.meta.url));

const DEPS_STAMP = join(ROOT, 'node_modules/.deps-stamp');
const BUILD_STAMP = join(ROOT, 'dist/.build-stamp');
const BUILD_INPUTS = ['web', 'corpus-demo', 'scripts', 'vite.config.ts', 'tsconfig.json', 'package.json', 'package-lock.json'];
const BUILD_OUTPUTS = ['dist/site/index.html', 'dist/site/demo.json', 'dist/site/sw.js', 'dist/cli/tenterground.mjs'];

/**
 * Stops with a plain sentence.
 * @param {string} message
 * @returns {never}
 */
export function giveUp(message) {
  console.error(`\n${message}\n`);
  process.exit(1);
}

/** The oldest Node that vite and the tests run on, as package.json's `engines` says. */
export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) giveUp(`Node 20.19 or newer is needed; this is ${process.versions.node}.`);
}

/**
 * Runs npm: the one that started us, else the one on the PATH.
 * @param {string[]} args
 */
function npm(args) {
  const own = process.env['npm_execpath'];
  /** @type {import('node:child_process').SpawnSyncOptions} */
  const options = { cwd: ROOT, stdio: ['ignore', 'inherit', 'inherit'] };
  if (own && /\.[cm]?js$/.test(own)) return spawnSync(process.execPath, [own, ...args], options).status === 0;
  return spawnSync('npm', args, { ...options, shell: process.platform === 'win32' }).status === 0;
}

/** @param {string} file */
const readText = (file) => (existsSync(file) ? readFileSync(file, 'utf8') : '');

/** True when node_modules already holds exactly what the lock asks for, as after `npm ci`. */
function lockIsInstalled() {
  const hidden = readText(join(ROOT, 'node_modules/.package-lock.json'));
  if (!hidden) return false;
  /** @type {Record<string, { version?: string, optional?: boolean }>} */
  const installed = JSON.parse(hidden).packages;
  /** @type {Record<string, { version?: string, optional?: boolean }>} */
  const wanted = JSON.parse(readText(join(ROOT, 'package-lock.json'))).packages;
  const missing = Object.entries(wanted).some(([at, entry]) => {
    if (at === '') return false;
    const found = installed[at];
    return found ? found.version !== entry.version || !existsSync(join(ROOT, at)) : entry.optional !== true;
  });
  return !missing && Object.keys(installed).every((at) => at in wanted);
}

/** Installs the packages of the lock file, unless this lock, platform and Node are already installed. */
export function installPackages() {
  const wanted = createHash('sha256')
    .update(readText(join(ROOT, 'package-lock.json')))
    .update(`${process.platform} ${process.arch} ${process.versions.modules}`)
    .digest('hex');
  if (readText(DEPS_STAMP) === wanted) return;
  if (existsSync(DEPS_STAMP) || !lockIsInstalled()) {
    console.log('Installing packages…');
    if (!npm(['ci', '--include=dev', '--no-audit', '--no-fund'])) giveUp('npm could not install the packages; its own words stand above.');
  }
  writeFileSync(DEPS_STAMP, wanted);
}

/**
 * Runs some of the tests, and takes their exit code for this process.
 * @param {readonly string[]} args what `vitest run` takes
 * @param {NodeJS.ProcessEnv} env what the tests are told
 */
export function runTests(args, env) {
  const { status } = spawnSync(process.execPath, [join(ROOT, 'node_modules/vitest/vitest.mjs'), 'run', ...args], {
    cwd: ROOT,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ...env },
  });
  process.exitCode = status ?? 1;
}

/**
 * Every file below a path, sorted, installed packages left out, so that the same sources give the same hash everywhere.
 * @param {string} path absolute
 * @returns {string[]}
 */
export function filesBelow(path) {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path, { withFileTypes: true })
    .filter(({ name }) => name !== 'node_modules')
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => filesBelow(join(path, entry.name)));
}

/** A hash of everything a build is made from. */
function sourceHash() {
  const hash = createHash('sha256');
  for (const input of BUILD_INPUTS) {
    for (const file of filesBelow(join(ROOT, input)))
      hash.update(file.slice(ROOT.length)).update('\0').update(readFileSync(file)).update('\0');
  }
  return hash.digest('hex');
}

/** Builds the site and the command line when their sources changed since the last build. */
export async function ensureBuild() {
  const wanted = sourceHash();
  if (readText(BUILD_STAMP) === wanted && BUILD_OUTPUTS.every((file) => existsSync(join(ROOT, file)))) return;
  console.log('Building…');
  const { buildAll } = await import('./build.mjs');
  await buildAll();
  mkdirSync(dirname(BUILD_STAMP), { recursive: true });
  writeFileSync(BUILD_STAMP, wanted);
}

/** @param {string} file */
function isRunnable(file) {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}

const ON_PATH = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];
const OFF_PATH = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  join(process.env['PROGRAMFILES'] ?? 'C:\\Program Files', 'Google\\Chrome\\Application\\chrome.exe'),
  join(process.env['PROGRAMFILES(X86)'] ?? 'C:\\Program Files (x86)', 'Google\\Chrome\\Application\\chrome.exe'),
];

/** @returns {string | undefined} */
function searchChromium() {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter(Boolean);
  return [...ON_PATH.flatMap((name) => folders.map((folder) => join(folder, name))), ...OFF_PATH].find(isRunnable);
}

/** Debian's own Chromium, where we may install it. */
function installChromium() {
  const isDebian = /^ID=debian$/m.test(readText('/etc/os-release'));
  if (!isDebian || process.getuid?.() !== 0) return;
  console.log('Installing Chromium…');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', 'chromium']])
    spawnSync('apt-get', args, { env, stdio: ['ignore', 'inherit', 'inherit'] });
}

/**
 * The browser the tests drive: CHROMIUM_PATH, else the usual places, else Debian's package.
 * @returns {string} absolute path
 */
export function findChromium() {
  const told = process.env['CHROMIUM_PATH'];
  if (told) return isRunnable(told) ? told : giveUp(`CHROMIUM_PATH names ${told}, which is not a program that can be run.`);
  const found = searchChromium();
  if (found) return found;
  installChromium();
  return (
    searchChromium() ??
    giveUp('The tests need Chromium or Chrome and none was found. Install one, or set CHROMIUM_PATH to its program file.')
  );
}
