import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aNote } from '../helpers/a-notebook.ts';

interface Row {
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  readonly why: string;
  readonly group: string;
}
const ROOT = fileURLToPath(new URL('../..', import.meta.url));
let folder: string;

const run = (...args: readonly string[]) =>
  new Promise<{ readonly code: number; readonly out: string; readonly err: string }>((resolve) => {
    execFile(process.execPath, ['--import', 'tsx', join(ROOT, 'scripts/cli.ts'), 'find', ...args], { cwd: ROOT }, (fault, out, err) =>
      resolve({ code: typeof fault?.code === 'number' ? fault.code : 0, out, err }),
    );
  });
const rows = async (...args: readonly string[]) => JSON.parse((await run(folder, ...args, '--json')).out) as readonly Row[];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tenterground-find-'));
  const files = {
    'madder.md': aNote('kind: dyestuff\ntitle: Madder\nnames: [{name: Krapp, lang: de}, garance]'),
    'sappanwood.md': aNote('kind: dyestuff\ntitle: Sappanwood\nnames: [brasil]'),
    'american-brazilwood.md': aNote('kind: dyestuff\ntitle: American brazilwood\nnames: [brasil]'),
    'page.md': 'The garance of Picardy.',
    'slip.md': 'Waid and Krap-p, a slip: garanec.',
    'shared.md': 'A gown dyed with brasil.',
    'none.md': 'He was madder than a hatter; the hook was welded.',
  };
  await Promise.all(Object.entries(files).map(([name, text]) => writeFile(join(folder, name), text)));
});
afterAll(() => rm(folder, { recursive: true }));

describe('tenterground find', { timeout: 60_000 }, () => {
  test('--dye lists every note that names it, with why, and no other', async () => {
    const list = await rows('--dye', 'krapp');
    expect(list.map(({ id }) => id)).toEqual(['madder', 'page', 'slip']);
    expect(list[1]).toMatchObject({ kind: 'plain', title: 'page', group: 'certain' });
    expect(list[1]?.why).toContain('garance');
  });

  test('--dye marks a shared name', async () => {
    const list = await rows('--dye', 'sappanwood');
    expect(list.find(({ id }) => id === 'shared')).toMatchObject({ group: 'ambiguous' });
  });

  test('words: exact, under another name, near spelling, in this order', async () => {
    const list = await rows('garance');
    expect(list.map(({ id, group }) => [id, group])).toEqual([
      ['madder', 'words'],
      ['page', 'words'],
      ['slip', 'other-name'],
    ]);
    expect((await rows('garanse')).map(({ group }) => group)).toEqual(['near', 'near']);
  });

  test('text output groups with headings', async () => {
    const { code, out } = await run(folder, 'brasil');
    expect(code).toBe(0);
    expect(out).toMatch(/“brasil” may mean .*Sappanwood/);
    expect(out).toMatch(/Ambiguous.*\n {2}shared {2}\[plain shared\]/);
  });

  test('an unknown dye ends with 2 and the nearest names', async () => {
    const { code, err } = await run(folder, '--dye', 'maddar');
    expect(code).toBe(2);
    expect(err).toMatch(/--dye "maddar".*madder/);
  });

  test('nothing asked ends with 2, nothing found with 0', async () => {
    expect((await run(folder)).code).toBe(2);
    expect(await run(folder, 'zzzz')).toMatchObject({ code: 0 });
  });
});
