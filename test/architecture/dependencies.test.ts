import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

interface LockedPackage {
  readonly version?: string;
  readonly license?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly hasInstallScript?: boolean;
  readonly dev?: boolean;
}
const readJson = <T>(name: string): T => JSON.parse(readFileSync(`${ROOT}${name}`, 'utf8')) as T;
const { packages } = readJson<{ packages: Readonly<Record<string, LockedPackage>> }>('package-lock.json');
const own = readJson<{
  dependencies: Readonly<Record<string, string>>;
  devDependencies: Readonly<Record<string, string>>;
  allowScripts: Readonly<Record<string, boolean>>;
}>('package.json');
const installed = Object.entries(packages).filter(([path]) => path !== '');
const shipped = installed.filter(([, { dev }]) => dev !== true);
const named = (which: readonly (readonly [string, LockedPackage])[]) => which.map(([path]) => path.replace(/^.*node_modules\//, ''));

/** SPDX names of licences under which a permissive product may hand code on. */
const PERMISSIVE = new Set(['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'OFL-1.1', '(MIT OR Apache-2.0)']);
/** Tools that only build and test may also come under these; the last asks to be named wherever its table of browsers is handed on, and it is not. */
const FOR_TOOLS = new Set([...PERMISSIVE, 'MPL-2.0', 'BlueOak-1.0.0', 'CC0-1.0', 'CC-BY-4.0']);

describe('packages', () => {
  test('what is handed on is under a permissive licence, and so are the tools or they stay at home', () => {
    expect(shipped.length).toBeGreaterThan(30);
    expect(named(shipped.filter(([, { license }]) => !PERMISSIVE.has(license ?? 'none')))).toEqual([]);
    expect(named(installed.filter(([, { license }]) => !FOR_TOOLS.has(license ?? 'none')))).toEqual([]);
  });
  test('none runs a script when it is installed, but for the one that is allowed to and only builds', () => {
    const scripted = installed.filter(([, { hasInstallScript }]) => hasInstallScript === true);
    expect(named(scripted)).toEqual(Object.keys(own.allowScripts));
    expect(named(shipped)).not.toContain('esbuild');
  });
  test('every one is locked by the hash of what is in it, and asked for by exact version', () => {
    expect(named(installed.filter(([, { integrity }]) => integrity?.startsWith('sha512-') !== true))).toEqual([]);
    const asked = Object.entries({ ...own.dependencies, ...own.devDependencies });
    expect(asked.filter(([, version]) => !/^(?:npm:[\w@/-]+@)?\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version))).toEqual([]);
    expect(asked.filter(([name, version]) => packages[`node_modules/${name}`]?.version !== version.replace(/^npm:.*@/, ''))).toEqual([]);
  });
  test('npm run sbom lists all that is handed on, as CycloneDX', () => {
    // As from a shell: what an outer npm leaves in the environment would change what the inner one lists.
    const env = Object.fromEntries(Object.entries(process.env).filter(([key]) => !/^(?:npm_|NODE_ENV$|INIT_CWD$)/i.test(key)));
    const bill = JSON.parse(
      execFileSync('npm', ['run', '--silent', 'sbom'], { cwd: ROOT, env, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 }),
    ) as { bomFormat: string; components: readonly { name: string; version: string; licenses?: readonly unknown[] }[] };
    expect(bill.bomFormat).toBe('CycloneDX');
    const listed = new Map(bill.components.map((one) => [`${one.name}@${one.version}`, one]));
    for (const [at, [, { version }]] of shipped.entries()) {
      const component = listed.get(`${named(shipped)[at]}@${version}`);
      expect(component?.licenses?.length, named(shipped)[at]).toBeGreaterThan(0);
    }
  });
});
