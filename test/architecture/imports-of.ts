import ts from 'typescript-js';

/** One import of a file: what it names and the line it stands on, 1-based. */
export interface Import {
  readonly specifier: string;
  readonly line: number;
}

const textOf = (node: ts.Node | undefined): string | undefined => (node && ts.isStringLiteralLike(node) ? node.text : undefined);

/** `new URL('./entry.ts', import.meta.url)` starts a worker: it imports as much as an import does. */
const isMetaUrl = (node: ts.Expression | undefined): boolean => node?.getText() === 'import.meta.url';

function specifierOf(node: ts.Node): string | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return textOf(node.moduleSpecifier);
  if (ts.isImportTypeNode(node)) return ts.isLiteralTypeNode(node.argument) ? textOf(node.argument.literal) : undefined;
  if (ts.isExternalModuleReference(node)) return textOf(node.expression);
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) return textOf(node.arguments[0]);
  if (ts.isNewExpression(node) && node.expression.getText() === 'URL' && isMetaUrl(node.arguments?.[1])) return textOf(node.arguments?.[0]);
  return undefined;
}

/** Parses one file; parents are set, so that a node knows where it stands. */
export const parse = (file: string, text: string): ts.SourceFile => ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);

/** Calls `visit` with every node of a file. */
export function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  ts.forEachChild(node, (child) => walk(child, visit));
}

/** Every import of a file: plain, type-only, re-export, dynamic, in a type, or as a worker's address. */
export function importsOf(file: string, text: string): readonly Import[] {
  const source = parse(file, text);
  const found: Import[] = [];
  walk(source, (node) => {
    const specifier = specifierOf(node);
    if (specifier !== undefined) found.push({ specifier, line: source.getLineAndCharacterOfPosition(node.getStart()).line + 1 });
  });
  return found;
}
