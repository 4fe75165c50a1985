import { describe, expect, test } from 'vitest';
import { layerFaults, purityFaults } from './layer-rules.ts';
import { filesBelow } from './web-files.ts';

const files = filesBelow('web', /\.ts$/);

describe('layers', () => {
  test('there are files to look at', () => {
    expect(files.filter(({ path }) => path.startsWith('web/domain/')).length).toBeGreaterThan(3);
  });

  test('an import points only left, and a library stays in its corner', () => {
    expect(files.flatMap(layerFaults)).toEqual([]);
  });

  test('the domain knows no page, network, clock or die', () => {
    expect(files.filter(({ path }) => path.startsWith('web/domain/')).flatMap(purityFaults)).toEqual([]);
  });
});

describe('layerFaults', () => {
  test.each([
    ['web/domain/note/a.ts', `import type { B } from '../../notebook/b.ts';`],
    ['web/domain/a.ts', `export { b } from '../store/b.ts';`],
    ['web/domain/a.ts', `export * from '../app/b.ts';`],
    ['web/notebook/a.ts', `const b = await import('../search/b.ts');`],
    ['web/notebook/a.ts', `type B = import('../elements/b.ts').B;`],
    ['web/store/a.ts', `import { b } from '../notebook/b.ts';`],
    ['web/elements/x/a.ts', `import { b } from '../../store/b.ts';`],
    ['web/elements/x/a.ts', `new Worker(new URL('../../search/worker.ts', import.meta.url));`],
    ['web/app/a.ts', `import { b } from '../../scripts/b.mjs';`],
    ['web/app/a.ts', `import { b } from 'node:fs';`],
    ['web/domain/date/a.ts', `import { lab } from 'culori';`],
    ['web/notebook/a.ts', `import { parse } from 'yaml';`],
    ['web/domain/date/a.ts', `import edtf from 'edtf';`],
    ['web/app/a.ts', `import { openDB } from 'idb';`],
    ['web/notebook/a.ts', `import MiniSearch from 'minisearch';`],
    ['web/domain/a.ts', `import { html } from 'lit';`],
    ['web/domain/a.ts', `import { zipSync } from 'fflate';`],
  ])('%s: %s is a fault', (path, text) => {
    expect(layerFaults({ path, text })).toHaveLength(1);
  });

  test.each([
    ['web/app/a.ts', `import '../elements/b.ts'; import { c } from '../store/c.ts';`],
    ['web/elements/x/a.ts', `import { css } from 'lit'; import type { B } from '../../domain/b.ts';`],
    ['web/domain/colour/a.ts', `import { oklch } from 'culori/fn'; import { b } from '../date/b.ts';`],
    ['web/domain/note/a.ts', `import { parse } from 'yaml'; import { fromMarkdown } from 'mdast-util-from-markdown';`],
  ])('%s: %s is none', (path, text) => {
    expect(layerFaults({ path, text })).toEqual([]);
  });
});

describe('purityFaults', () => {
  test.each([
    'document.title',
    'const a = Date.now();',
    'const a = new Date();',
    'Math.random()',
    'console.log(1)',
    'fetch("x")',
    'f({ a: window })',
  ])('%s is a fault', (text) => {
    expect(purityFaults({ path: 'web/domain/a.ts', text })).toHaveLength(1);
  });

  test.each([
    'const process = 1; f(process);',
    'a.document',
    'const a = { process: 1 };',
    'new Date(now)',
    'type A = { readonly self: string };',
  ])('%s is none', (text) => {
    expect(purityFaults({ path: 'web/domain/a.ts', text })).toEqual([]);
  });
});
