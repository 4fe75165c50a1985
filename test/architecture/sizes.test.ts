import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';

const SITE = fileURLToPath(new URL('../../dist/site', import.meta.url));
const ASSETS = join(SITE, 'assets');

/** Limits in kB of 1000 bytes, gzipped at level 9: what the first view waits for, and what a later one may fetch at once. */
const FIRST_VIEW = 60;
const LATER = 200;
/** The engine, in a thread of its own, beside the first view: it holds the readers of YAML, Markdown and references. Our choice. */
const ENGINE = 260;

const scripts = readdirSync(ASSETS).filter((name) => name.endsWith('.js'));
const kilobytes = (name: string): number => gzipSync(readFileSync(join(ASSETS, name)), { level: 9 }).length / 1000;
/** Scripts that a script needs before it runs. */
const importsOf = (name: string): readonly string[] =>
  [
    ...readFileSync(join(ASSETS, name), 'utf8').matchAll(/(?:^|[;}\s])(?:import|export)\s*(?:[^'"()]*?from\s*)?["']\.\/([^"']+\.js)["']/g),
  ].map(([, file]) => file ?? '');

function withImports(entry: string, found = new Set<string>()): ReadonlySet<string> {
  if (found.has(entry)) return found;
  found.add(entry);
  for (const name of importsOf(entry)) withImports(name, found);
  return found;
}

const page = readFileSync(join(SITE, 'index.html'), 'utf8');
const [, entry = ''] = /<script type="module"[^>]* src="\/assets\/([^"]+)"/.exec(page) ?? [];
const preloaded = [...page.matchAll(/<link rel="modulepreload"[^>]* href="\/assets\/([^"]+)"/g)].map(([, name]) => basename(name ?? ''));
const isEngine = (name: string): boolean => name.startsWith('engine-worker');

describe('what a reader downloads', () => {
  test('the walk over imports finds at least all that the page says it preloads', () => {
    expect(scripts).toContain(entry);
    expect([...withImports(entry)]).toEqual(expect.arrayContaining(preloaded));
    expect(scripts.length).toBeGreaterThan(10);
  });

  test(`the first view's scripts are at most ${FIRST_VIEW} kB`, () => {
    const sizes = [...withImports(entry)].map((name) => [name, kilobytes(name)] as const);
    const sum = sizes.reduce((all, [, size]) => all + size, 0);
    expect(sum, sizes.map(([name, size]) => `${name} ${size.toFixed(1)}`).join(', ')).toBeLessThanOrEqual(FIRST_VIEW);
  });

  test(`no later script is over ${LATER} kB`, () => {
    const later = scripts.filter((name) => !isEngine(name)).map((name) => ({ name, size: kilobytes(name) }));
    expect(later.filter(({ size }) => size > LATER)).toEqual([]);
  });

  test(`the engine's thread is at most ${ENGINE} kB`, () => {
    const engines = scripts.filter(isEngine);
    expect(engines).toHaveLength(1);
    for (const name of engines) expect(kilobytes(name)).toBeLessThanOrEqual(ENGINE);
  });
});
