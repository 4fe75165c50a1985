import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readingCode } from '../../scripts/reading-code-plugin.mjs';

test('the code that reads notes is another whenever a source of the domain, what holds readings, or a package is', () => {
  const root = mkdtempSync(join(tmpdir(), 'reading-code-'));
  const write = (path: string, text: string) => {
    mkdirSync(join(root, path, '..'), { recursive: true });
    writeFileSync(join(root, path), text);
  };
  const read = [
    'web/domain/note/parse-note.ts',
    'web/domain/text/fold.ts',
    'web/notebook/kept-readings.ts',
    'web/notebook/notebook.ts',
    'package-lock.json',
  ];
  for (const path of read) write(path, 'one');
  const codes = [readingCode(root)];
  for (const path of read) {
    write(path, 'two');
    codes.push(readingCode(root));
  }
  expect(new Set(codes).size).toBe(read.length + 1);
  write('web/elements/app/tg-app.ts', 'two');
  expect(readingCode(root)).toBe(codes.at(-1));
  rmSync(root, { recursive: true });
});
