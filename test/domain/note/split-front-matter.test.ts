import { describe, expect, test } from 'vitest';
import type { Diagnostic } from '../../../web/domain/diagnostic.ts';
import { splitFrontMatter } from '../../../web/domain/note/split-front-matter.ts';

/** YAML, body, and the findings' codes. */
function split(text: string): readonly [yaml: string | undefined, body: string, codes: readonly string[]] {
  const found: Diagnostic[] = [];
  const { yaml, bodyStart } = splitFrontMatter(text, (each) => found.push(each));
  return [yaml && text.slice(...yaml), text.slice(bodyStart), found.map(({ code }) => code)];
}

describe('splitFrontMatter', () => {
  test.each<[string, string, string | undefined, string, readonly string[]]>([
    ['LF', '---\na: 1\n---\nbody', 'a: 1\n', 'body', []],
    ['CRLF', '---\r\na: 1\r\n---\r\nbody', 'a: 1\r\n', 'body', []],
    ['a lone CR', '---\ra: 1\r---\rbody', 'a: 1\r', 'body', []],
    ['a byte order mark', '\uFEFF---\na: 1\n---\nbody', 'a: 1\n', 'body', []],
    ['spaces behind the fences', '--- \na: 1\n---\t\nbody', 'a: 1\n', 'body', []],
    ['a fence at the end of the file', '---\na: 1\n---', 'a: 1\n', '', []],
    ['nothing between the fences', '---\n---\nbody', '', 'body', []],
    ['a rule in the body', '---\na: 1\n---\nx\n---\ny', 'a: 1\n', 'x\n---\ny', []],
    ['four hyphens are no fence', '----\na: 1\n---\n', undefined, '----\na: 1\n---\n', []],
    ['a fence must stand alone', '---\na: 1\n--- x\n---\n', 'a: 1\n--- x\n', '', []],
    ['an indented fence is none', '---\na: 1\n ---\n---\n', 'a: 1\n ---\n', '', []],
    ['no front matter', 'words\n---\n', undefined, 'words\n---\n', []],
    ['an empty file', '', undefined, '', []],
    ['a byte order mark alone', '\uFEFF', undefined, '', []],
    ['an open fence', '---\na: 1\n', undefined, '---\na: 1\n', ['front-matter-open']],
    ['an open fence and nothing else', '---', undefined, '---', ['front-matter-open']],
  ])('%s', (_, text, yaml, body, codes) => {
    expect(split(text)).toEqual([yaml, body, codes]);
  });
});
