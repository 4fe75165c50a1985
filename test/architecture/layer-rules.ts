import { posix } from 'node:path';
import ts from 'typescript-js';
import { importsOf, parse, walk } from './imports-of.ts';
import type { ProjectFile } from './web-files.ts';

/** Which folders of web a folder may import from; itself always. An import points left or it is a mistake. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  domain: [],
  notebook: ['domain'],
  store: ['domain'],
  search: ['domain'],
  elements: ['domain', 'notebook'],
  app: ['domain', 'notebook', 'store', 'search', 'elements'],
};

/** Libraries that only one corner may know, so that they can be replaced there. An empty list: tests only. */
const HOME_OF: readonly (readonly [library: RegExp, homes: readonly string[]])[] = [
  [/^culori(\/|$)/, ['web/domain/colour/']],
  [/^(yaml|mdast-util-[\w-]+|micromark[\w-]*|unist-util-[\w-]+)(\/|$)/, ['web/domain/note/']],
  [/^idb(\/|$)/, ['web/store/']],
  [/^minisearch(\/|$)/, ['web/search/']],
  [/^(lit|lit-html|lit-element|@lit\/[\w-]+)(\/|$)/, ['web/elements/', 'web/app/']],
  [/^(edtf|colorjs\.io|fast-check|vitest|axe-core|playwright-core)(\/|$)/, []],
];

const layerOf = (path: string): string | undefined => /^web\/([^/]+)\//.exec(path)?.[1];

function faultOf(path: string, specifier: string): string | undefined {
  const layer = layerOf(path) ?? '';
  if (specifier.startsWith('.') || specifier.startsWith('/')) {
    const target = posix.normalize(specifier.startsWith('/') ? `web${specifier}` : posix.join(posix.dirname(path), specifier));
    if (!target.startsWith('web/')) return 'web imports only web';
    const other = layerOf(target) ?? '';
    if (other === layer || other === 'styles' || MAY_IMPORT[layer]?.includes(other)) return undefined;
    return `${layer} may not import ${other}`;
  }
  if (specifier.startsWith('node:')) return 'web runs in a browser';
  const home = HOME_OF.find(([library]) => library.test(specifier));
  if (home && !home[1].some((folder) => path.startsWith(folder))) return `${specifier} is at home in ${home[1].join(', ') || 'tests'}`;
  if (!home && layer === 'domain' && !specifier.startsWith('micromark')) return `domain does not know ${specifier}`;
  return undefined;
}

/** Imports of one file that point right, out of web, or at a library of another corner. */
export function layerFaults({ path, text }: ProjectFile): readonly string[] {
  return importsOf(path, text).flatMap(({ specifier, line }) => {
    const fault = faultOf(path, specifier);
    return fault === undefined ? [] : [`${path}:${line}: ${fault}`];
  });
}

const OUTSIDE = new Set(
  (
    'document window navigator location history localStorage sessionStorage indexedDB caches fetch XMLHttpRequest WebSocket Worker ' +
    'console process Buffer require setTimeout setInterval queueMicrotask requestAnimationFrame performance crypto HTMLElement Element ' +
    'Node Event CustomEvent DOMParser customElements self postMessage'
  ).split(' '),
);

/** Names that read a clock or a die although the language itself has them. */
function isClockOrDie(node: ts.Node): boolean {
  if (ts.isPropertyAccessExpression(node)) return ['Date.now', 'Math.random'].includes(node.getText());
  return ts.isNewExpression(node) && node.expression.getText() === 'Date' && (node.arguments?.length ?? 0) === 0;
}

/** An identifier used as a value or type of its own, not as a member, a key or a declared name. */
function isFree(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isQualifiedName(parent)) return parent.left === node;
  if (ts.isPropertyAssignment(parent)) return parent.initializer === node;
  return !(
    ts.isPropertySignature(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isMethodSignature(parent) ||
    ts.isMethodDeclaration(parent) ||
    ts.isBindingElement(parent) ||
    ts.isImportSpecifier(parent) ||
    ts.isExportSpecifier(parent) ||
    ts.isNamedTupleMember(parent) ||
    ts.isJSDoc(parent)
  );
}

const isDeclaredName = (node: ts.Identifier): boolean =>
  'name' in node.parent &&
  node.parent.name === node &&
  (ts.isVariableDeclaration(node.parent) ||
    ts.isParameter(node.parent) ||
    ts.isBindingElement(node.parent) ||
    ts.isFunctionDeclaration(node.parent) ||
    ts.isImportSpecifier(node.parent) ||
    ts.isInterfaceDeclaration(node.parent) ||
    ts.isTypeAliasDeclaration(node.parent));

/** Where a domain file reaches for the page, the network, a clock or a die. A name the file itself declares is its own. */
export function purityFaults({ path, text }: ProjectFile): readonly string[] {
  const source = parse(path, text);
  const own = new Set<string>();
  walk(source, (node) => {
    if (ts.isIdentifier(node) && isDeclaredName(node)) own.add(node.text);
  });
  const faults: string[] = [];
  walk(source, (node) => {
    const reaches = isClockOrDie(node) || (ts.isIdentifier(node) && OUTSIDE.has(node.text) && !own.has(node.text) && isFree(node));
    if (reaches) faults.push(`${path}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}: ${node.getText()}`);
  });
  return faults;
}
