import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ask } from '../../scripts/commands/ask.ts';
import { check } from '../../scripts/commands/check.ts';
import { date } from '../../scripts/commands/date.ts';
import { palette } from '../../scripts/commands/palette.ts';
import { aDyestuff, aNote, aWorld } from '../helpers/a-notebook.ts';
import { aFolder, type MadeFolder } from '../helpers/a-folder.ts';
import { type Ran, runCommand } from '../helpers/run-command.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const NOTES: Readonly<Record<string, string>> = {
  ...aWorld,
  'mordants/alum.md': aNote('kind: mordant\ntitle: Alum\neveryday: true'),
  'dyestuffs/madder.md': aDyestuff(
    'Madder',
    'region: england, when: 1200–1500, status: imported, known-by: trade, source: "customs-1303, m. 2", checked: excerpt',
    'region: england, when: 1450–1500, status: grown, known-by: text, source: herbal-1500',
    'region: scotland, when: 1600–1700, status: grown, known-by: text, source: herbal-1700',
  ),
  'dyestuffs/kermes.md': aDyestuff('Kermes', 'region: england, when: 1200–1500, status: cloth-only, known-by: trade, source: munro-2007'),
  'dyestuffs/lac.md': aDyestuff('Lac', 'region: york, when: 1300–1400, status: imported, known-by: trade, source: customs-1303'),
  'recipes/madder-wool.md': aNote(
    'kind: recipe\ntitle: Madder red\nfibre: wool\ningredients: [{what: alum, role: mordant}, {what: madder, role: dye}]\nsource: herbal-1500',
  ),
  'recipes/kermes-wool.md': aNote(
    'kind: recipe\ntitle: Kermes scarlet\nfibre: wool\ningredients: [{what: alum, role: mordant}, {what: kermes, role: dye}]\nsource: herbal-1500',
  ),
  'trials/t1.md': aNote(
    'kind: trial\nrecipe: madder-wool\ncode: T1-1\nfibre: wool\ncolour: {lab: [45, 45, 25], illuminant: D65, observer: 10, by: instrument}',
  ),
  'trials/t2.md': aNote(
    'kind: trial\nrecipe: kermes-wool\nfibre: wool\ncolour: {lab: [42, 48, 20], illuminant: D65, observer: 10, by: instrument}',
  ),
  'textiles/york-find.md': aNote(
    'kind: textile\ntitle: York find\nregion: york\nwhen: 1300–1400\nthreads: [{where: weft, fibre: wool, dyes: [madder], tested: found}]\nsource: walton-1989',
  ),
  'rules/act.md': aNote(
    'kind: rule\ntitle: Act\nregion: england\nwhen: 1300–1500\nact: wear\nconcerns: [kermes]\nforbids: [peasant]\nsource: act-1363',
  ),
  'periods/plague.md': aNote('kind: period\ntitle: Plague years\nregion: england\nwhen: 1348–1350'),
};

let folder: MadeFolder;
beforeAll(async () => {
  folder = await aFolder(NOTES);
});
afterAll(() => folder.remove());

/** The command line itself, as a process. */
const spawned = (...args: readonly string[]): Promise<Ran> =>
  new Promise((resolve) => {
    execFile(process.execPath, ['--import', 'tsx', join(ROOT, 'scripts/cli.ts'), ...args], { cwd: ROOT }, (fault, out, err) =>
      resolve({ code: fault === null ? 0 : Number(fault.code), out, err }),
    );
  });

const HERE = ['--region', 'england', '--when', '1350'] as const;
const asked = (...args: readonly string[]) => runCommand(ask, folder.path, ...args);
const json = async (...args: readonly string[]) => {
  const { out, code } = await asked(...args, '--json');
  expect(code).toBe(0);
  return JSON.parse(out) as Answer;
};

interface Candidate {
  readonly recipe?: string;
  readonly undyed?: string;
  readonly trial: string | null;
  readonly verdict: string;
  readonly standing: string;
  readonly deltaE00: number;
  readonly materials: readonly { readonly id: string; readonly claims: readonly object[] }[];
}
interface Answer {
  readonly verdict: string;
  readonly because: readonly string[];
  readonly question: Readonly<Record<string, unknown>>;
  readonly candidates: readonly Candidate[];
  readonly closest: Candidate | null;
  readonly nearestAttested: Candidate | null;
  readonly rules: readonly object[];
  readonly dye?: { readonly standing: string; readonly origins: readonly string[]; readonly claims: readonly object[] };
}

const longest = (text: string): number => Math.max(...text.split('\n').map((line) => [...line].length));

describe('ask --json', () => {
  test('has every field the interface promises', async () => {
    const answer = await json('--colour', '45,45,25', ...HERE, '--fibre', 'wool', '--wearer', 'peasant');
    expect(Object.keys(answer)).toEqual(
      expect.arrayContaining(['verdict', 'because', 'candidates', 'closest', 'nearestAttested', 'rules', 'question']),
    );
    expect(answer.question).toMatchObject({ region: 'england', from: 1350, to: 1350, fibre: 'wool', wearer: 'peasant', dyedHere: false });
    const [best] = answer.candidates;
    expect(Object.keys(best ?? {})).toEqual(
      expect.arrayContaining([
        'recipe',
        'trial',
        'colourFrom',
        'lab',
        'hex',
        'deltaE00',
        'closeness',
        'verdict',
        'standing',
        'witnesses',
        'classes',
        'materials',
      ]),
    );
    expect(best).toMatchObject({
      recipe: 'madder-wool',
      trial: 't1',
      colourFrom: 'measured',
      lab: [45, 45, 25],
      deltaE00: 0,
      closeness: 'match',
    });
    expect(best?.materials.map(({ id }) => id)).toEqual(['alum', 'madder', 'wool']);
    expect(best?.materials[1]).toMatchObject({ standing: 'imported', origins: ['imported', 'on-cloth'] });
    expect(best?.materials[1]?.claims[0]).toMatchObject({
      note: 'madder',
      status: 'imported',
      place: 'here',
      time: 'throughout',
      knownBy: 'trade',
      sure: 'yes',
      source: 'customs-1303, m. 2',
    });
  });

  test('judges: the find makes madder attested, the trade makes kermes cloth', async () => {
    const answer = await json('--colour', '45,45,25', ...HERE, '--tolerance', '8');
    expect(answer.candidates.map(({ recipe, verdict }) => [recipe, verdict])).toEqual([
      ['madder-wool', 'attested'],
      ['kermes-wool', 'attested-as-cloth'],
    ]);
    expect(answer.verdict).toBe('attested');
    expect(answer.nearestAttested).toMatchObject({ recipe: 'madder-wool' });
  });

  test('of a dyestuff gives its standing', async () => {
    const answer = await json('--dye', 'Kermes', ...HERE, '--wearer', 'peasant');
    expect(answer).toMatchObject({ verdict: 'attested-as-cloth', candidates: [], question: { dye: 'kermes' } });
    expect(answer.dye).toMatchObject({
      standing: 'cloth-only',
      origins: ['cloth-only'],
      claims: [{ status: 'cloth-only', place: 'here' }],
    });
    expect(answer.rules).toMatchObject([{ note: 'act', touches: 'forbidden' }]);
  });

  test('--dyed-here leaves the cloth out', async () => {
    expect(await json('--dye', 'kermes', ...HERE, '--dyed-here')).toMatchObject({
      verdict: 'contradicted',
      dye: { standing: 'absent' },
      question: { dyedHere: true },
    });
  });

  test('--tolerance decides what comes near, and is named among the settings', async () => {
    const narrow = await json('--colour', '46,45,25', ...HERE, '--fibre', 'wool', '--tolerance', '0.5');
    expect(narrow).toMatchObject({ verdict: 'nothing-near', candidates: [], closest: { recipe: 'madder-wool' } });
    const wide = await json('--colour', '46,45,25', ...HERE, '--fibre', 'wool');
    expect(wide.candidates.length).toBeGreaterThan(0);
    expect(wide).toMatchObject({ settings: [] });
    expect(narrow).toMatchObject({ settings: [expect.stringContaining('0.5')] });
  });

  test('an undyed cloth has `undyed` in the place of a recipe and no trial', async () => {
    const answer = await json('--colour', '85,0,12', ...HERE);
    expect(answer.candidates[0]).toMatchObject({ undyed: 'wool/white', trial: null, colourFrom: 'undyed' });
    expect(answer.candidates[0]).not.toHaveProperty('recipe');
  });

  test('names the period it was asked about by its years', async () => {
    expect((await json('--dye', 'madder', '--region', 'Albion', '--when', 'plague years')).question).toMatchObject({
      region: 'england',
      from: 1348,
      to: 1350,
    });
  });
});

describe('ask, colours', () => {
  test.each([
    ['a hex colour', '#a8423f', 'D65/10'],
    ['a short hex colour', '#a43', 'D65/10'],
    ['a CSS name', 'firebrick', 'D65/10'],
    ['a CSS function', 'rgb(168 66 63)', 'D65/10'],
    ['Lab', '45,45,25', "the trials' own"],
    ['Lab with spaces and a negative part', '45, -3.5, 25', "the trials' own"],
    ['a recipe', 'madder-wool', 'D65/10'],
    ['a trial', 't1', 'D65/10'],
  ])('reads %s', async (_, colour, conditions) => {
    expect((await json('--colour', colour, ...HERE)).question).toMatchObject({ conditions });
  });

  test('takes a colour that begins with a minus for a value, not for an option', async () => {
    const { code, err } = await asked('--colour', '-3,2,1', ...HERE);
    expect(code).toBe(2);
    expect(err).toContain('--colour "-3,2,1"');
    expect(err).not.toMatch(/unknown option/i);
    expect(await json('--dye', 'madder', '--region', 'england', '--when', '-44')).toMatchObject({ question: { from: -44 } });
  });
});

describe('ask, what is not understood', () => {
  test.each([
    ['--region', 'englnd', ['england']],
    ['--dye', 'maddr', ['madder']],
    ['--fibre', 'woll', ['wool']],
    ['--wearer', 'pesant', ['peasant']],
    ['--when', 'plage years', ['plague']],
    ['--when', 'soon', ['c. 1350']],
    ['--tolerance', 'much', ['6']],
    ['--colour', 'reddish', ['#8f3b2e']],
  ])('%s %s ends with 2, names the option and the nearest known', async (option, value, near) => {
    const usual = new Map<string, string>([
      ['--colour', '45,45,25'],
      ['--region', 'england'],
      ['--when', '1350'],
    ]);
    if (option === '--dye') usual.delete('--colour');
    usual.set(option, value);
    const { code, out, err } = await asked(...[...usual].flat());
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(`${option} "${value}"`);
    for (const one of near) expect(err).toContain(one);
  });

  test('names every part at once', async () => {
    const { code, err } = await asked(
      '--colour',
      'reddish',
      '--region',
      'englnd',
      '--when',
      'soon',
      '--fibre',
      'woll',
      '--wearer',
      'pesant',
    );
    expect(code).toBe(2);
    expect(err.split('\n').map((line) => line.split(' ')[0])).toEqual(['--region', '--when', '--fibre', '--wearer', '--colour']);
  });

  test('a missing option, both kinds of question, a stray word, a missing folder: 2, and nothing on stdout', async () => {
    const bare = await asked('--colour', 'red');
    expect(bare).toMatchObject({ code: 2, out: '' });
    expect(bare.err).toContain('--region');
    expect(bare.err).toContain('--when');
    expect((await asked(...HERE)).err).toContain('--colour');
    expect(await asked('--colour', 'red', '--dye', 'madder', ...HERE)).toMatchObject({ code: 2, out: '' });
    expect(await asked('--dye', 'madder', '--region', 'england', '--when', 'c.', '1350')).toMatchObject({
      code: 2,
      err: expect.stringContaining('"1350"'),
    });
    expect(await runCommand(ask, join(folder.path, 'nowhere'), '--dye', 'madder', ...HERE)).toMatchObject({ code: 2, out: '' });
    expect(await runCommand(ask)).toMatchObject({ code: 2, out: '' });
  });

  test('an unknown option ends with 2 and lists the known ones', async () => {
    const { code, err } = await asked('--color', 'red', ...HERE);
    expect(code).toBe(2);
    expect(err).toContain('--color');
    expect(err).toContain('--colour');
  });
});

describe('ask, as text', () => {
  test('keeps within 80 columns and tells verdict, claims, witness and trial', async () => {
    const { code, out } = await asked('--colour', '43,46,22', ...HERE, '--fibre', 'wool', '--wearer', 'peasant', '--tolerance', '8');
    expect(code).toBe(0);
    expect(longest(out)).toBeLessThanOrEqual(80);
    expect(out).toContain('ATTESTED');
    expect(out).toContain('customs-1303, m. 2');
    expect(out).toContain('York find');
    expect(out).toContain('T1-1');
  });

  test('tells the rules for the wearer and what would change the verdict', async () => {
    const { out } = await asked('--dye', 'kermes', ...HERE, '--wearer', 'peasant');
    expect(out).toContain('ATTESTED AS CLOTH');
    expect(out).toMatch(/Act forbids wearing Kermes/);
    expect(out).toContain('What would change it');
  });

  test('lists the claims that matter and counts the others', async () => {
    const { out } = await asked('--dye', 'madder', ...HERE);
    expect(out).toContain('customs-1303');
    expect(out).not.toContain('herbal-1700');
    expect(out).toContain('2 more claims');
  });
});

describe('check', () => {
  test('of notes without a fault ends with 0', async () => {
    expect(await runCommand(check, folder.path)).toMatchObject({ code: 0, err: '' });
    expect(await runCommand(check, folder.path, '--json')).toMatchObject({ code: 0, out: '[]' });
  });

  test('--json names file, line, column, severity, code and message; an error ends with 1, a warning with 0', async () => {
    const warned = await aFolder({ 'recipes/one.md': aNote('kind: recipe\nfibre: wool\ningredients:\n  - {what: moonwort, role: dye}') });
    const broken = await aFolder({ 'a.md': aNote('kind: dyestuff\navailability:\n\t- {region: x}') });
    const rows = (ran: Ran) => JSON.parse(ran.out) as readonly Readonly<Record<string, unknown>>[];
    const warning = await runCommand(check, warned.path, '--json');
    expect(warning.code).toBe(0);
    expect(rows(warning)).toContainEqual({
      file: 'recipes/one.md',
      line: 5,
      column: 12,
      severity: 'warning',
      code: 'material-unrecorded',
      message: expect.stringContaining('moonwort') as string,
    });
    const fault = await runCommand(check, broken.path, '--json');
    expect(fault.code).toBe(1);
    expect(rows(fault)).toContainEqual(expect.objectContaining({ file: 'a.md', line: 4, severity: 'error', code: 'yaml-tab' }));
    const text = await runCommand(check, broken.path);
    expect(text).toMatchObject({ code: 1, out: expect.stringContaining('a.md:4:') as string });
    expect(longest(text.out)).toBeLessThanOrEqual(80);
    await warned.remove();
    await broken.remove();
  });

  test('names the recipes that hang on a material nobody recorded', async () => {
    const made = await aFolder({
      'fibres/wool.md': aWorld['fibres/wool.md'] ?? '',
      'recipes/one.md': aNote('kind: recipe\nfibre: wool\ningredients: [{what: moonwort, role: dye}]\nsource: x'),
    });
    const { out } = await runCommand(check, made.path);
    expect(out).toContain('these recipes hang on it: one');
    await made.remove();
  });

  test('of a missing folder, or of none, ends with 2', async () => {
    expect(await runCommand(check, join(folder.path, 'nowhere'))).toMatchObject({ code: 2, out: '' });
    expect(await runCommand(check, join(folder.path, 'rules/act.md'))).toMatchObject({ code: 2, out: '' });
    expect(await runCommand(check)).toMatchObject({ code: 2, out: '' });
    expect(await runCommand(check, folder.path, '--fast')).toMatchObject({ code: 2, out: '' });
  });
});

describe('date', () => {
  test('--json gives the four bounds and EDTF', async () => {
    const { code, out } = await runCommand(date, 'c. 1350', '--json');
    expect(code).toBe(0);
    expect(JSON.parse(out)).toEqual({ earliestStart: 1325, latestStart: 1350, earliestEnd: 1350, latestEnd: 1375, edtf: '1350~' });
  });

  test('an open side is null, a year before Christ is negative', async () => {
    expect(JSON.parse((await runCommand(date, 'before 1000', '--json')).out)).toMatchObject({ earliestStart: null, latestEnd: 999 });
    expect(JSON.parse((await runCommand(date, '-1200', '--json')).out)).toMatchObject({ latestStart: -1200, edtf: '-1200' });
  });

  test('as text says how it is read', async () => {
    expect(await runCommand(date, 'late 9th century')).toMatchObject({ code: 0, out: expect.stringContaining('868–900') as string });
  });

  test('what cannot be read ends with 2 and two suggestions', async () => {
    const { code, out, err } = await runCommand(date, '1200s');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('1200s');
    expect(err).toMatch(/ or /);
    expect(await runCommand(date)).toMatchObject({ code: 2, out: '' });
  });
});

describe('palette', () => {
  test('--json lists the colours that can be stood behind', async () => {
    const { code, out } = await runCommand(palette, folder.path, ...HERE, '--json');
    expect(code).toBe(0);
    const { question, colours } = JSON.parse(out) as {
      question: object;
      colours: readonly { recipe?: string; undyed?: string; verdict: string }[];
    };
    expect(question).toMatchObject({ region: 'england', from: 1350, to: 1350 });
    expect(colours.map(({ recipe, undyed, verdict }) => [recipe ?? undyed, verdict])).toEqual(
      expect.arrayContaining([
        ['madder-wool', 'attested'],
        ['kermes-wool', 'attested-as-cloth'],
        ['wool/white', 'feasible'],
      ]),
    );
  });

  test('an unknown region ends with 2', async () => {
    expect(await runCommand(palette, folder.path, '--region', 'englnd', '--when', '1350')).toMatchObject({
      code: 2,
      out: '',
      err: expect.stringContaining('--region "englnd"') as string,
    });
  });
});

describe('the command line as a process', () => {
  test('help tells every command and keeps within 80 columns', async () => {
    const { code, out, err } = await spawned('--help');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const name of ['check', 'ask', 'palette', 'find', 'date']) expect(out).toContain(`tenterground ${name}`);
    expect(longest(out)).toBeLessThanOrEqual(80);
  });

  test('no command, and one that is not there, end with 2', async () => {
    expect(await spawned()).toMatchObject({ code: 2, out: '' });
    expect(await spawned('constructor')).toMatchObject({ code: 2, out: '', err: expect.stringContaining('constructor') as string });
  });

  test('an answer goes to stdout with 0, a question not understood to stderr with 2, errors found are 1', async () => {
    const [answer, question, fault] = await Promise.all([
      spawned('ask', folder.path, '--dye', 'madder', ...HERE, '--json'),
      spawned('ask', folder.path, '--dye', 'maddr', ...HERE),
      aFolder({ 'a.md': '---\nkind: dyestuff\n' }).then(async ({ path, remove }) => {
        const ran = await spawned('check', path);
        await remove();
        return ran;
      }),
    ]);
    expect(answer).toMatchObject({ code: 0, err: '' });
    expect(JSON.parse(answer.out)).toMatchObject({ verdict: expect.any(String) as string });
    expect(question).toMatchObject({ code: 2, out: '' });
    expect(fault.code).toBe(1);
  }, 20_000);
});
