import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask } from '../../scripts/commands/ask.ts';
import type { Command } from '../../scripts/commands/command.ts';
import { find } from '../../scripts/commands/find.ts';
import { list } from '../../scripts/commands/list.ts';
import { palette } from '../../scripts/commands/palette.ts';
import { publish } from '../../scripts/commands/publish.ts';
import { scale } from '../../scripts/commands/scale.ts';
import { NEVER_DOSED_FILES, secretsIn } from '../helpers/never-dosed-notes.ts';
import { aFolder, type MadeFolder } from '../helpers/a-folder.ts';
import { runCommand } from '../helpers/run-command.ts';

let folder: MadeFolder;
beforeAll(async () => {
  folder = await aFolder(NEVER_DOSED_FILES);
});
afterAll(() => folder.remove());

const then = ['--region', 'york', '--when', '950'];

describe('no command prints an amount of what is never dosed, or of tin and copper', () => {
  test.each<[string, Command, readonly string[]]>([
    ['scale', scale, ['olive', '--fibre-mass', '100g']],
    ['scale, tin and copper', scale, ['scarlet', '--fibre-mass', '100g']],
    ['ask by colour', ask, ['--colour', '60,-5,40', '--tolerance', '60', ...then]],
    ['ask by dye', ask, ['--dye', 'weld', ...then]],
    ['palette', palette, then],
    ['find a dye', find, ['--dye', 'weld']],
    ['find tin', find, ['--dye', 'tin-salt']],
    ['find what is refused', find, ['--dye', 'red-salt']],
    ['find words', find, ['salt']],
    ['find an amount', find, ['18.41']],
  ])('%s, as text and as JSON', async (_, command, args) => {
    for (const form of [[], ['--json']]) {
      const { code, out, err } = await runCommand(command, folder.path, ...args, ...form);
      expect([code === 2 && err, secretsIn(out), secretsIn(err)]).toEqual([false, [], []]);
      expect(out).not.toBe('');
    }
  });
  test('list', async () => {
    const { code, out } = await runCommand(list, folder.path);
    expect([code, out === '', secretsIn(out)]).toEqual([0, false, []]);
  });
  test('publish, said beforehand', async () => {
    const { code, out } = await runCommand(publish, folder.path, '--display', 'board', '--preview');
    expect([code, secretsIn(out)]).toEqual([0, []]);
  });
});
