import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { list } from '../../scripts/commands/list.ts';
import { packNotebook } from '../../scripts/demo-plugin.mjs';
import { readFileList } from '../../web/notebook/import/read-file-list.ts';
import { runCommand } from '../helpers/run-command.ts';

const folder = (): string => {
  const root = mkdtempSync(join(tmpdir(), 'tenterground-list-'));
  onTestFinished(() => rmSync(root, { recursive: true, force: true }));
  mkdirSync(join(root, 'dyestuffs'));
  writeFileSync(join(root, 'dyestuffs/weld.md'), 'Färberwau\n');
  writeFileSync(join(root, 'photo.jpg'), Uint8Array.of(255, 216));
  writeFileSync(join(root, 'latin1.md'), Uint8Array.of(70, 228));
  writeFileSync(join(root, 'notebook.json'), '{}');
  writeFileSync(join(root, '.hidden'), '');
  return root;
};

test('lists every file that is not hidden, but not itself; whole, with every text that is one', async () => {
  const root = folder();
  const paths = [{ path: 'dyestuffs/weld.md' }, { path: 'latin1.md' }, { path: 'photo.jpg' }];
  expect(readFileList((await runCommand(list, root)).out)).toEqual(paths);
  const whole = readFileList((await runCommand(list, root, '--whole')).out);
  expect(whole).toEqual([{ path: 'dyestuffs/weld.md', text: 'Färberwau\n' }, ...paths.slice(1)]);
});

// Words that stand nowhere else: wherever one comes out, a private text did.
const CANARY = 'zzyzx';
const HIDDEN: readonly (readonly [path: string, text: string])[] = [
  ['trials/quiet.md', `---\nkind: trial\nprivate: true\n---\n\n${CANARY} ![skein](../photos/${CANARY}.jpg)\n`],
  ['trials/flow.md', `---\n{kind: plain, private: true, title: ${CANARY}}\n---\n`],
  ['trials/broken.md', `---\nkind: [trial\nprivate: true\ntitle: ${CANARY}\n---\n`],
  ['trials/word.md', `---\nkind: plain\nprivate: yes\n---\n\n${CANARY}\n`],
  [`photos/${CANARY}.jpg`, 'x'],
];

test.each([[], ['--whole']])('leaves out what is private, and what only that names: %s', async (...options) => {
  const root = folder();
  for (const part of ['trials', 'photos']) mkdirSync(join(root, part));
  for (const [path, text] of HIDDEN) writeFileSync(join(root, path), text);
  writeFileSync(join(root, 'trials/open.md'), '---\nkind: plain\nprivate: false\n---\n\nOpen, ![](../photo.jpg)\n');
  const said = await runCommand(list, root, ...options);
  expect(said.out).toContain('trials/open.md');
  expect(said.out).toContain('photo.jpg');
  expect(said.out).not.toMatch(/zzyzx|quiet|flow|broken|word/);
  expect(said.err).toContain('Left out as private: 5 files.');
  const asked = await runCommand(list, root, ...options, '--private');
  for (const [path] of HIDDEN) expect(asked.out).toContain(path);
});

test('says what to write where there is no folder', async () => {
  const { code, err } = await runCommand(list, '/nowhere/at/all');
  expect(code).toBe(2);
  expect(err).toContain('tenterground list FOLDER');
});

test('the demonstration travels in the same form', () => {
  expect(readFileList(JSON.stringify(packNotebook()))).toEqual(packNotebook().files);
});

test.each([
  '',
  '[]',
  '{"files": {}}',
  '{"files": [{"text": "x"}]}',
  '{"files": [{"path": 1}]}',
  '{"files": [{"path": "a", "text": 1}]}',
  'null',
])('%s is no list', (text) => {
  expect(readFileList(text)).toBeUndefined();
});
