import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript-js';
import { describe, expect, test } from 'vitest';
import { parse, walk } from './imports-of.ts';
import { ROOT } from './web-files.ts';

/** The members of `DiagnosticCode`, as the type is written. */
function codes(): readonly string[] {
  const file = 'web/domain/diagnostic.ts';
  const found: string[] = [];
  walk(parse(file, readFileSync(join(ROOT, file), 'utf8')), (node) => {
    if (!ts.isTypeAliasDeclaration(node) || node.name.text !== 'DiagnosticCode') return;
    walk(node.type, (member) => {
      if (ts.isStringLiteral(member)) found.push(member.text);
    });
  });
  return found;
}

/** Rows of the table under "Diagnostic codes": code and sentence. */
function rows(): ReadonlyMap<string, string> {
  const papers = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
  const section = /^## Diagnostic codes$([\s\S]*?)(?=^## )/m.exec(papers)?.[1] ?? '';
  return new Map([...section.matchAll(/^\|\s*`([\w-]+)`\s*\|\s*(.*?)\s*\|$/gm)].map(([, code = '', sentence = '']) => [code, sentence]));
}

describe('diagnostic codes', () => {
  test('each has its row in DEVELOPERS.md, and no row is left over', () => {
    expect(codes().length).toBeGreaterThan(20);
    expect([...rows().keys()].sort()).toEqual([...codes()].sort());
  });

  test('each row is a sentence', () => {
    expect([...rows()].filter(([, sentence]) => !/^[A-Z].{15,}\.$/.test(sentence))).toEqual([]);
  });
});
