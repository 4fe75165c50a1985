import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { chosenText, conflictsOf } from '../../web/domain/merge/note-merge.ts';
import { Keeper } from '../../web/notebook/keeper.ts';
import { LocalEngine } from '../../web/notebook/local-engine.ts';
import { FolderSync, type SyncRound } from '../../web/notebook/sharing/folder-sync.ts';
import { SeenFiles } from '../../web/notebook/sharing/seen-files.ts';
import { MemoryDisk, MemoryStore } from '../../web/store/memory-store.ts';
import { countingSurroundings } from '../contract/note-store.ts';
import { diskFolder } from '../helpers/disk-folder.ts';

const WELD = `---
kind: dyestuff
title: Weld
latin: Reseda luteola
matter: plant
part: all but the root
tags: [yellow]
---
Yellow.

Sown in spring.

Cut when the seed sets.
`;
const MADDER = '---\nkind: dyestuff\ntitle: Madder\nmatter: plant\n---\nRed.\n';
const WOAD = '---\nkind: dyestuff\ntitle: Woad\nmatter: plant\n---\nBlue.\n';

/** One person's machine: a clone, and a notebook in a browser profile of its own that is linked with it. */
class Person {
  readonly root: string;
  readonly keeper: Keeper;
  readonly #name: string;
  readonly #sync: FolderSync;

  constructor(name: string, root: string) {
    this.#name = name;
    this.root = root;
    this.keeper = new Keeper(new MemoryStore(new MemoryDisk(), countingSurroundings()), new LocalEngine());
    this.#sync = new FolderSync(this.keeper, diskFolder(root), new SeenFiles(this.keeper.store));
  }

  git(...args: readonly string[]): string {
    return git(this.root, this.#name, ...args);
  }

  look(): Promise<SyncRound> {
    return this.#sync.round();
  }

  settle(...args: Parameters<FolderSync['settle']>): ReturnType<FolderSync['settle']> {
    return this.#sync.settle(...args);
  }

  /** Opens the notebook, edits a note, and commits what went out. */
  async edit(path: string, from: string, to: string): Promise<string> {
    await this.look();
    const opened = await this.keeper.read(path);
    const before = new TextDecoder().decode(opened?.bytes);
    const text = before.replace(from, to);
    expect(text).not.toBe(before);
    await this.keeper.write([
      { path, bytes: new TextEncoder().encode(text), ...(opened?.version !== undefined && { basedOn: opened.version }) },
    ]);
    expect((await this.look()).writtenOut).toEqual([path]);
    this.git('add', '-A');
    this.git('commit', '-qm', `${path}: ${to}`);
    return text;
  }

  /** What a note is in the notebook, and in the clone. */
  async has(path: string): Promise<readonly [here: string, there: string]> {
    return [new TextDecoder().decode((await this.keeper.read(path))?.bytes), readFileSync(join(this.root, path), 'utf8')];
  }

  async history(path: string): Promise<readonly string[]> {
    const earlier = await this.keeper.history(path);
    const versions = earlier.ok ? earlier.value : [];
    const found = await Promise.all(versions.map(({ version }) => this.keeper.store.readEarlier(path, version)));
    return found.flatMap((file) => (file.ok ? [new TextDecoder().decode(file.value.bytes)] : []));
  }
}

/** Runs git with no settings but its own, and gives back what it said; a merge that stops is no error. */
function git(cwd: string, name: string, ...args: readonly string[]): string {
  const env = {
    ...process.env,
    GIT_CONFIG_GLOBAL: '/dev/null',
    GIT_CONFIG_SYSTEM: '/dev/null',
    GIT_AUTHOR_NAME: name,
    GIT_AUTHOR_EMAIL: `${name}@example.org`,
    GIT_COMMITTER_NAME: name,
    GIT_COMMITTER_EMAIL: `${name}@example.org`,
  };
  try {
    return execFileSync('git', [...args], { cwd, env, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (error) {
    const { stdout } = error as { readonly stdout?: string };
    if (args[0] === 'pull' && stdout?.includes('CONFLICT')) return stdout;
    throw error;
  }
}

const hasGit = (() => {
  try {
    execFileSync('git', ['--version']);
    return true;
  } catch {
    return false;
  }
})();

/** Two people with a clone each of one repository of three notes. */
function twoPeople(conflictStyle: 'merge' | 'diff3'): readonly [Person, Person] {
  const folder = mkdtempSync(join(tmpdir(), 'tenterground-git-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  git(folder, 'Anna', 'init', '-q', '--bare', '-b', 'main', 'shared.git');
  git(folder, 'Anna', 'clone', '-q', 'shared.git', 'anna');
  mkdirSync(join(folder, 'anna/dyestuffs'));
  for (const [name, text] of Object.entries({ weld: WELD, madder: MADDER, woad: WOAD }))
    writeFileSync(join(folder, `anna/dyestuffs/${name}.md`), text);
  const [anna, bela] = [new Person('Anna', join(folder, 'anna')), new Person('Bela', join(folder, 'bela'))];
  anna.git('add', '-A');
  anna.git('commit', '-qm', 'three notes');
  anna.git('push', '-q', 'origin', 'HEAD:main');
  git(folder, 'Bela', 'clone', '-q', '-b', 'main', 'shared.git', 'bela');
  bela.git('config', 'merge.conflictStyle', conflictStyle);
  return [anna, bela];
}

const pull = (person: Person): string => person.git('pull', '-q', '--no-rebase', '--no-edit', 'origin', 'main');

describe.skipIf(!hasGit)('a notebook shared through git', () => {
  test('different notes: both are in both notebooks', async () => {
    const [anna, bela] = twoPeople('merge');
    const madder = await anna.edit('dyestuffs/madder.md', 'Red.', 'Red, from the root.');
    anna.git('push', '-q', 'origin', 'HEAD:main');
    const woad = await bela.edit('dyestuffs/woad.md', 'Blue.', 'Blue, from the leaf.');
    pull(bela);
    expect(await bela.look()).toMatchObject({ takenIn: ['dyestuffs/madder.md'], meetings: [] });
    expect(await bela.has('dyestuffs/madder.md')).toEqual([madder, madder]);
    expect(await bela.has('dyestuffs/woad.md')).toEqual([woad, woad]);
  });

  test('one note, keys that lie apart: git merges them and the notebook takes them in', async () => {
    const [anna, bela] = twoPeople('merge');
    await anna.edit('dyestuffs/weld.md', 'title: Weld', 'title: Weld, or dyer’s weed');
    anna.git('push', '-q', 'origin', 'HEAD:main');
    await bela.edit('dyestuffs/weld.md', 'tags: [yellow]', 'tags: [yellow, field]');
    pull(bela);
    expect(await bela.look()).toMatchObject({ takenIn: ['dyestuffs/weld.md'], meetings: [] });
    const both = WELD.replace('title: Weld', 'title: Weld, or dyer’s weed').replace('[yellow]', '[yellow, field]');
    expect(await bela.has('dyestuffs/weld.md')).toEqual([both, both]);
  });

  test('one note, keys that touch: git stops, and the notebook merges by key what git marked', async () => {
    const [anna, bela] = twoPeople('diff3');
    const theirs = await anna.edit('dyestuffs/weld.md', 'title: Weld', 'title: Weld, or dyer’s weed');
    anna.git('push', '-q', 'origin', 'HEAD:main');
    const mine = await bela.edit('dyestuffs/weld.md', 'Reseda luteola', 'Reseda luteola L.');
    expect(pull(bela)).toContain('CONFLICT');
    expect(readFileSync(join(bela.root, 'dyestuffs/weld.md'), 'utf8')).toContain('<<<<<<<');
    expect(await bela.look()).toMatchObject({ merged: ['dyestuffs/weld.md'], meetings: [] });
    const both = theirs.replace('Reseda luteola', 'Reseda luteola L.');
    expect(await bela.has('dyestuffs/weld.md')).toEqual([both, both]);
    expect(await bela.history('dyestuffs/weld.md')).toEqual(expect.arrayContaining([mine, theirs]));
    bela.git('commit', '-qam', 'merged');
    bela.git('push', '-q', 'origin', 'HEAD:main');
    pull(anna);
    await anna.look();
    expect(await anna.has('dyestuffs/weld.md')).toEqual([both, both]);
  });

  test.each(['merge', 'diff3'] as const)('one line: offered side by side, and the history of both is kept (%s)', async (style) => {
    const [anna, bela] = twoPeople(style);
    const theirs = await anna.edit('dyestuffs/weld.md', 'Sown in spring.', 'Sown in autumn.');
    anna.git('push', '-q', 'origin', 'HEAD:main');
    const mine = await bela.edit('dyestuffs/weld.md', 'Sown in spring.', 'Sown in March.');
    await bela.edit('dyestuffs/weld.md', 'Cut when', 'Cut just when');
    expect(pull(bela)).toContain('CONFLICT');

    const { meetings } = await bela.look();
    const [meeting] = meetings;
    if (!meeting?.merge) throw new Error('nothing was offered');
    expect(meeting.path).toBe('dyestuffs/weld.md');
    expect(conflictsOf(meeting.merge).map((piece) => [piece.in, piece.mine, piece.theirs])).toEqual([
      ['body', expect.stringContaining('Sown in March.'), expect.stringContaining('Sown in autumn.')],
    ]);
    // Until the reader decides, the notebook has what it had.
    expect((await bela.has('dyestuffs/weld.md'))[0]).toBe(mine.replace('Cut when', 'Cut just when'));

    const text = chosenText(meeting.merge, () => 'both');
    expect(await bela.settle(meeting, { is: 'text', text })).toBe('settled');
    for (const line of ['Sown in March.', 'Sown in autumn.', 'Cut just when the seed sets.']) expect(text).toContain(line);
    expect(await bela.has('dyestuffs/weld.md')).toEqual([text, text]);
    const history = await bela.history('dyestuffs/weld.md');
    expect(history).toContain(mine.replace('Cut when', 'Cut just when'));
    expect(history.some((earlier) => earlier.includes('Sown in autumn.') && !earlier.includes('Sown in March.'))).toBe(true);
    expect(history.some((earlier) => earlier.includes('<<<<<<<'))).toBe(false);

    bela.git('commit', '-qam', 'both');
    bela.git('push', '-q', 'origin', 'HEAD:main');
    pull(anna);
    await anna.look();
    expect(await anna.has('dyestuffs/weld.md')).toEqual([text, text]);
    expect(await anna.history('dyestuffs/weld.md')).toContain(theirs);
    // Git has both commits too.
    expect(anna.git('log', '--format=%s')).toContain('Sown in March.');
  });
});
