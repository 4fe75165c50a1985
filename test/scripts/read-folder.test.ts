import { chmod, mkdir, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask } from '../../scripts/commands/ask.ts';
import { check } from '../../scripts/commands/check.ts';
import { readFolder } from '../../scripts/read-folder.ts';
import { aDyestuff, aNote, aWorld } from '../helpers/a-notebook.ts';
import { aFolder, type MadeFolder } from '../helpers/a-folder.ts';
import { runCommand } from '../helpers/run-command.ts';

const MADDER = aDyestuff('Madder', 'region: england, when: 1200–1500, status: imported, known-by: trade, source: customs-1303');
const latin1 = Uint8Array.from([...aNote('kind: text\ntitle: Färberbuch')].map((letter) => letter.charCodeAt(0)));
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** `a: &a [..]`, each list twice the one before: nine lines that stand for millions of words. */
const ALIAS_BOMB = `a0: &a0 [x, x]\n${Array.from({ length: 24 }, (_, n) => `a${n + 1}: &a${n + 1} [*a${n}, *a${n}]`).join('\n')}`;

/** Everything wrong at once, beside notes that are not. */
const FOLDER: Readonly<Record<string, string | Uint8Array>> = {
  ...aWorld,
  'dyestuffs/madder.md': MADDER,
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum\neveryday: true'),
  'recipes/red.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: alum, role: mordant}, {what: madder, role: dye}]\nsource: x'),
  'trials/t1.md': aNote('kind: trial\nrecipe: red\nfibre: wool\ncolour: {lab: [45, 45, 25], illuminant: D65, observer: 10}'),

  'bad/latin-1.md': latin1,
  'bad/empty.md': '',
  'bad/blank.md': ' \n\t\n',
  'bad/null.md': bytes('---\nkind: text\ntitle: \u0000\n---\n'),
  'bad/tab.md': '---\nkind: dyestuff\navailability:\n\t- {region: england}\n---\n',
  'bad/broken.md': '---\nkind: dyestuff\ntitle: "no end\n---\nBody\n',
  'bad/open.md': '---\nkind: dyestuff\ntitle: No fence\n',
  'bad/no-map.md': '---\n- one\n- two\n---\n',
  'bad/crlf.md': aDyestuff('With carriage returns', 'region: nowhere, when: 1300, status: grown, known-by: text, source: x').replaceAll(
    '\n',
    '\r\n',
  ),
  'bad/bom.md': `\uFEFF${aDyestuff('With a mark', 'region: england, when: 1300, status: grown, known-by: text, source: x')}`,
  'twins/one.md': aNote('kind: dyestuff\nid: twin\ntitle: First twin'),
  'twins/two.md': aNote('kind: dyestuff\nid: twin\ntitle: Second twin'),
  'bad/island.md': aNote('kind: region\ntitle: Island\nwithin: island'),
  'bad/hither.md': aNote('kind: region\ntitle: Hither\nwithin: yon'),
  'bad/yon.md': aNote('kind: region\ntitle: Yon\nwithin: hither'),
  'bad/lost.md': aDyestuff('Lost', 'region: atlantis, when: 1300, status: grown, known-by: text, source: x'),
  'bad/reversed.md': aDyestuff('Reversed', 'region: england, when: 1400–1300, status: grown, known-by: text, source: x'),
  'bad/impossible.md': aDyestuff('Impossible', 'region: england, when: 1405-02-30, status: grown, known-by: text, source: x'),
  'bad/ambiguous.md': aDyestuff('Ambiguous', 'region: england, when: 1200s, status: grown, known-by: text, source: x'),
  'bad/undated.md': aDyestuff('Undated', 'region: england, when: once, status: grown, known-by: text, source: x'),
  'bad/types.md': aNote('kind: dyestuff\ntitle: [a, list]\nlatin: {a: map}\navailability: yes'),
  'bad/deep.md': `---\nkind: dyestuff\nx: ${'['.repeat(400)}${']'.repeat(400)}\n---\n`,
  'bad/bomb.md': aNote(`kind: dyestuff\n${ALIAS_BOMB}`),
  'bad/large.md': `${aNote('kind: text\ntitle: Large')}${'Words of five million letters, dyed and dyed again. '.repeat(100_000)}`,
  'bad/large-front.md': `---\nkind: text\nsays: "${'x'.repeat(5_000_000)}"\n---\n`,
  'bad/link.md': `${aNote('kind: text\ntitle: Link')}See [madder](../dyestuffs/madder.md) and\n[weld](../dyestuffs/weld.md).\n`,
  'bad/overdue.md': aNote('kind: text\ntitle: Overdue\nreview-by: 2001-05-01'),
  'bad/recipe.md': aNote('kind: recipe\nfibre: wool\ningredients:\n  - {what: moonwort, role: dye}\nsource: x'),
  '.hidden/secret.md': MADDER,
  '.hidden.md': MADDER,
};

interface Row {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly severity: string;
  readonly code: string;
  readonly message: string;
}

let folder: MadeFolder;
let outside: MadeFolder;
let rows: readonly Row[];
let code: number;

beforeAll(async () => {
  outside = await aFolder({ 'elsewhere.md': MADDER });
  folder = await aFolder(FOLDER);
  const at = (...parts: readonly string[]) => join(folder.path, ...parts);
  await mkdir(at('links/deep'), { recursive: true });
  await symlink(folder.path, at('links/deep/up'));
  await symlink('a', at('links/b'));
  await symlink('b', at('links/a'));
  await symlink('nobody.md', at('links/dangling.md'));
  await symlink(join(outside.path, 'elsewhere.md'), at('links/out.md'));
  await symlink(at('dyestuffs/madder.md'), at('links/madder-again.md'));
  await writeFile(Buffer.concat([Buffer.from(`${at('bad')}/f`), Buffer.from([0xe4]), Buffer.from('rber.md')]), MADDER);
  const ran = await runCommand(check, folder.path, '--json');
  code = ran.code;
  rows = JSON.parse(ran.out) as readonly Row[];
}, 60_000);
afterAll(async () => {
  await folder.remove();
  await outside.remove();
});

describe('check of a folder with everything wrong at once', () => {
  test('ends with 1 and gives each finding a file, a place, a code and words', () => {
    expect(code).toBe(1);
    for (const row of rows) {
      expect(row.line).toBeGreaterThan(0);
      expect(row.column).toBeGreaterThan(0);
      expect(row.message.length).toBeGreaterThan(20);
    }
  });

  test.each([
    ['bad/latin-1.md', 'file-not-utf8', 3, 'save it as UTF-8'],
    ['bad/empty.md', 'file-empty', 1, 'delete it'],
    ['bad/blank.md', 'file-empty', 1, 'delete it'],
    ['bad/tab.md', 'yaml-tab', 4, 'Indent with spaces'],
    ['bad/broken.md', 'yaml-broken', undefined, 'Add the missing character'],
    ['bad/open.md', 'front-matter-open', 1, 'three hyphens'],
    ['bad/no-map.md', 'front-matter-not-map', 2, 'kind: dyestuff'],
    ['bad/crlf.md', 'region-unknown', 5, 'Write “'],
    ['twins/two.md', 'id-clash', 1, 'Rename one of the files'],
    ['bad/island.md', 'region-loop', 4, 'within'],
    ['bad/hither.md', 'region-loop', 4, 'within'],
    ['bad/yon.md', 'region-loop', 4, 'within'],
    ['bad/lost.md', 'region-unknown', 5, 'Write'],
    ['bad/lost.md', 'claim-takes-no-part', 5, 'Give a region'],
    ['bad/reversed.md', 'date-reversed', 5, '1300'],
    ['bad/impossible.md', 'date-impossible', 5, '1405'],
    ['bad/ambiguous.md', 'date-ambiguous', 5, '1200–1209'],
    ['bad/undated.md', 'date-unreadable', 5, 'Write'],
    ['bad/types.md', 'type-wrong', 3, 'Write'],
    ['bad/types.md', 'type-wrong', 4, 'Write'],
    ['bad/types.md', 'type-wrong', 5, 'Write'],
    ['bad/deep.md', 'yaml-too-deep', 3, 'fewer'],
    ['bad/bomb.md', 'yaml-alias-bomb', undefined, 'Write the values out'],
    ['bad/large-front.md', 'file-too-large', undefined, 'part the note'],
    ['bad/link.md', 'link-broken', 6, 'add the file'],
    ['bad/overdue.md', 'review-overdue', 4, 'review-by'],
    ['bad/recipe.md', 'material-unrecorded', 5, 'availability'],
    ['links/deep/up', 'folder-loop', 1, 'folder itself'],
    ['links/a', 'folder-loop', 1, 'folder itself'],
    ['links/dangling.md', 'file-link-broken', 1, 'Correct the link'],
    ['links/out.md', 'file-outside', 1, 'copy'],
  ])('%s: %s in line %s, and what to write instead', (file, found, line, remedy) => {
    const own = rows.filter((row) => row.file === file && row.code === found && (line === undefined || row.line === line));
    expect(own.length).toBeGreaterThan(0);
    expect(own.map(({ message }) => message).join(' ')).toContain(remedy);
  });

  test('a link inside the folder is read under its own name, as a file of its own', () => {
    expect(rows.filter((row) => row.file === 'links/madder-again.md').map((row) => row.code)).toEqual([]);
  });

  test('a file name that is not UTF-8 is named and passed over', () => {
    const [row] = rows.filter((one) => one.code === 'file-name-not-utf8');
    expect(row?.file).toMatch(/^bad\/f.rber\.md$/u);
    expect(row?.message).toContain('another name');
  });

  test('finds nothing wrong in the good notes, nor in a mark, carriage returns or five million letters', () => {
    const good = new Set([
      ...Object.keys(aWorld),
      'dyestuffs/madder.md',
      'recipes/red.md',
      'trials/t1.md',
      'bad/bom.md',
      'bad/large.md',
      'twins/one.md',
    ]);
    expect(rows.filter(({ file, severity }) => good.has(file) && severity === 'error')).toEqual([]);
    expect(rows.filter(({ file }) => file.includes('hidden'))).toEqual([]);
  });

  test('the text names each file and line too', async () => {
    const { out } = await runCommand(check, folder.path);
    for (const { file, line, column } of rows) expect(out).toContain(`${file}:${line}:${column}`);
  });

  test('the rest still answers', async () => {
    const { code: ended, out } = await runCommand(
      ask,
      folder.path,
      '--colour',
      '45,45,25',
      '--region',
      'england',
      '--when',
      '1350',
      '--fibre',
      'wool',
      '--json',
    );
    expect(ended).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ verdict: 'feasible', candidates: [{ recipe: 'red', standing: 'imported' }] });
  });
});

describe('readFolder', () => {
  test('reads what is there, in order of path, and says what it passed over', async () => {
    const made = await aFolder({ 'b.md': 'b', 'a/c.md': 'c', '.git/config': 'x', 'node_modules/x.md': 'x' });
    const reading = await readFolder(made.path);
    expect(reading?.files.map(({ path }) => path)).toEqual(['a/c.md', 'b.md']);
    expect(reading?.passedOver).toEqual([]);
    await made.remove();
  });

  test('an empty folder is a notebook without notes', async () => {
    const made = await aFolder({});
    expect(await readFolder(made.path)).toEqual({ files: [], passedOver: [] });
    await made.remove();
  });

  test('is undefined for a folder that is missing, a file, and a link in a circle', async () => {
    const made = await aFolder({ 'file.md': 'x' });
    await symlink('me', join(made.path, 'me'));
    expect(await readFolder(join(made.path, 'nowhere'))).toBeUndefined();
    expect(await readFolder(join(made.path, 'file.md'))).toBeUndefined();
    expect(await readFolder(join(made.path, 'me'))).toBeUndefined();
    await made.remove();
  });

  test('follows a link inside the folder, once', async () => {
    const made = await aFolder({ 'real/note.md': 'x' });
    await symlink('real', join(made.path, 'again'));
    const reading = await readFolder(made.path);
    expect(reading?.files.map(({ path }) => path)).toEqual(['again/note.md', 'real/note.md']);
    await made.remove();
  });

  test.skipIf(process.platform === 'win32')('passes over what may not be read', async () => {
    const made = await aFolder({ 'shut/note.md': 'x', 'locked.md': 'x', 'open.md': 'x' });
    await chmod(made.path, 0o755);
    await chmod(join(made.path, 'shut'), 0);
    await chmod(join(made.path, 'locked.md'), 0);
    const reading = await asOrdinaryUser(() => readFolder(made.path));
    expect(reading?.files.map(({ path }) => path)).toEqual(['open.md']);
    expect(reading?.passedOver).toEqual([
      { path: 'shut', why: 'unreadable' },
      { path: 'locked.md', why: 'unreadable' },
    ]);
    await chmod(made.path, 0);
    expect(await asOrdinaryUser(() => readFolder(made.path))).toBeUndefined();
    await chmod(made.path, 0o755);
    await chmod(join(made.path, 'shut'), 0o755);
    await made.remove();
  });
});

/** Permissions do not bind the administrator, so for the length of some work he puts his office down. */
async function asOrdinaryUser<T>(work: () => Promise<T>): Promise<T> {
  if (process.geteuid?.() !== 0) return work();
  process.seteuid?.(NOBODY);
  try {
    return await work();
  } finally {
    process.seteuid?.(0);
  }
}

/** A user id that owns nothing on the usual systems. */
const NOBODY = 65534;
