import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';

const SITE = fileURLToPath(new URL('../../dist/site', import.meta.url));
const ASSETS = join(SITE, 'assets');

/** Limits in kB of 1000 bytes, gzipped at level 9: what the first view waits for, and what a later one may fetch at once. */
const FIRST_VIEW = 60;
const LATER = 200;
/** What the engine's thread, beside the first view, needs before it can answer a first question. Our choice. */
const ENGINE = 112;
/** The elements for other pages: one module with elements and engine in it. Our choice: what first view, engine and views come to. */
const ELEMENTS = 405;

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
/** The one script of that name, by whichever hash. */
const named = (name: string): string => {
  const found = scripts.filter((script) => script.startsWith(`${name}-`));
  expect(found).toHaveLength(1);
  return found[0] ?? '';
};
/** Scripts that a script may ask for while it runs, with what those need, as the build noted them in it. */
const asksFor = (name: string): readonly string[] =>
  [...readFileSync(join(ASSETS, name), 'utf8').matchAll(/"assets\/([^"]+\.js)"/g)].map(([, file]) => file ?? '');

const sumOf = (...entryScripts: readonly string[]) => {
  const sizes = [...new Set(entryScripts.flatMap((name) => [...withImports(name)]))].map((name) => [name, kilobytes(name)] as const);
  return {
    sum: sizes.reduce((all, [, size]) => all + size, 0),
    told: sizes.map(([name, size]) => `${name} ${size.toFixed(1)}`).join(', '),
  };
};
/** What is needed until the page without an address shows its answer: the entry, the application, the question. */
const firstView = (): readonly string[] => [entry, named('main'), named('tg-ask')];

describe('what a reader downloads', () => {
  test('the walk over imports finds at least all that the build says is needed', () => {
    expect(scripts).toContain(entry);
    const [, application = '', view = ''] = firstView();
    expect(asksFor(entry)).toContain(application);
    expect([...withImports(entry), ...withImports(application)]).toEqual(expect.arrayContaining([...asksFor(entry)]));
    expect(asksFor(application)).toContain(view);
    expect(scripts.length).toBeGreaterThan(10);
  });

  test('nothing painted first waits for a script', () => {
    const tags = [...page.matchAll(/<script\b[^>]*>/g)].map(([tag]) => tag);
    // A module runs after the page is read, and this one waits for its first frame; any other script would hold it up.
    expect(tags).toHaveLength(1);
    expect(tags[0]).toContain('type="module"');
    expect(page).toContain('<h1>');
  });

  test(`the first view's scripts are at most ${FIRST_VIEW} kB`, () => {
    const { sum, told } = sumOf(...firstView());
    expect(sum, told).toBeLessThanOrEqual(FIRST_VIEW);
  });

  test(`no script is over ${LATER} kB, in whatever thread it runs`, () => {
    const sizes = scripts.map((name) => ({ name, size: kilobytes(name) }));
    expect(sizes.filter(({ size }) => size > LATER)).toEqual([]);
  });

  test(`what the engine needs for a first answer is at most ${ENGINE} kB`, () => {
    const engines = scripts.filter((name) => name.startsWith('engine-worker'));
    expect(engines).toHaveLength(1);
    for (const name of engines) {
      const { sum, told } = sumOf(name);
      expect(sum, told).toBeLessThanOrEqual(ENGINE);
    }
  });

  test('the readers of BibTeX and RIS come only with a notebook that holds such files', () => {
    const loadedAtOnce = new Set([
      ...firstView().flatMap((name) => [...withImports(name)]),
      ...scripts.filter((name) => name.startsWith('engine-worker')).flatMap((name) => [...withImports(name)]),
    ]);
    expect(scripts.filter((name) => name.startsWith('foreign-items'))).toHaveLength(1);
    expect([...loadedAtOnce].filter((name) => name.startsWith('foreign-items'))).toEqual([]);
  });

  test(`the elements for other pages are at most ${ELEMENTS} kB`, () => {
    const module = fileURLToPath(new URL('../../dist/elements/tenterground-elements.js', import.meta.url));
    expect(gzipSync(readFileSync(module), { level: 9 }).length / 1000).toBeLessThanOrEqual(ELEMENTS);
  });
});
