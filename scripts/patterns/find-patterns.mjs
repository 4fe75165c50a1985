import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, relative } from 'node:path';
import { tsImport } from 'tsx/esm/api';
import { filesBelow, ROOT } from '../setup.mjs';

// The compiler's JavaScript API, which the newer one does not have.
/** @type {typeof import('typescript-js')} */
const ts = createRequire(import.meta.url)('typescript-js');

/** Files that build patterns while they are loaded: what they build is noted then. */
const BUILDS_ON_LOADING = [
  'web/domain/colour/parse-lab-text.ts',
  'web/domain/note/amount.ts',
  'web/domain/note/markdown.ts',
  'web/domain/pot/step-figures.ts',
  'web/domain/pot/without-doses.ts',
];
/** Files that build them from the project's own sources alone, when the site is built. */
const BUILDS_FROM_OWN_SOURCES = ['scripts/elements-manifest.mjs'];

/**
 * Every pattern written in `web` and `scripts`, as `/source/flags` with where it stands first, and every file that builds
 * patterns without being one of those known to.
 *
 * @returns {Promise<{ patterns: Map<string, string>, unknownBuilders: string[] }>}
 */
export async function findPatterns() {
  /** @type {Map<string, string>} */
  const patterns = new Map();
  /** @type {string[]} */
  const unknownBuilders = [];
  for (const file of ['web', 'scripts'].flatMap((folder) => filesBelow(join(ROOT, folder))).filter((name) => /\.(?:ts|mjs)$/.test(name))) {
    const name = relative(ROOT, file);
    const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
    const look = (/** @type {import('typescript-js').Node} */ node) => {
      if (ts.isRegularExpressionLiteral(node) && !patterns.has(node.text))
        patterns.set(node.text, `${name}:${source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1}`);
      const isBuilt = (ts.isNewExpression(node) || ts.isCallExpression(node)) && node.expression.getText(source) === 'RegExp';
      if (isBuilt && ![...BUILDS_ON_LOADING, ...BUILDS_FROM_OWN_SOURCES].includes(name)) unknownBuilders.push(name);
      ts.forEachChild(node, look);
    };
    look(source);
  }
  for (const [pattern, where] of await builtPatterns()) patterns.set(pattern, where);
  return { patterns, unknownBuilders };
}

/** Loads the files that build patterns, and notes what each builds itself: what libraries build is not ours. */
async function builtPatterns() {
  const Plain = globalThis.RegExp;
  /** @type {Map<string, string>} */
  const built = new Map();
  globalThis.RegExp = new Proxy(Plain, {
    construct(target, given, self) {
      const pattern = Reflect.construct(target, given, self);
      const by = new Error('built').stack?.split('\n')[2] ?? '';
      const file = BUILDS_ON_LOADING.find((name) => by.includes(`/${name}`));
      if (file) built.set(String(pattern), file);
      return pattern;
    },
  });
  try {
    for (const file of BUILDS_ON_LOADING) await tsImport(join(ROOT, file), import.meta.url);
  } finally {
    globalThis.RegExp = Plain;
  }
  const silent = BUILDS_ON_LOADING.filter((file) => ![...built.values()].includes(file));
  if (silent.length > 0) throw new Error(`no pattern was built by ${silent.join(', ')}`);
  return built;
}
