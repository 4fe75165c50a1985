import { describe, expect, test } from 'vitest';
import { bringIn, potFile } from '../../web/app/pot.ts';
import { printSkeinCode } from '../../web/domain/pot/skein-code.ts';
import { aKeptNotebook } from '../helpers/a-kept-notebook.ts';

const codes = [1, 2].map((skein) => printSkeinCode({ year: 26, bath: 1, skein }) ?? '');
const next = [1, 2].map((skein) => printSkeinCode({ year: 26, bath: 2, skein }) ?? '');
const pot = (recipe: string, log: string, plan = 'Planned for 100 g of fibre.') => `---
kind: trial
title: Pot 26-001
recipe: ${recipe}
date: 2026-11-28
log: [${log}]
samples:
  - { code: "${codes[0]}", fibre-mass: 50 g }
  - { code: "${codes[1]}", fibre-mass: 50 g }
---

${plan}
`;
const mine = pot('red', '10:00 in');
const file = (text: string) => ({ name: '26-001.txt', bytes: new TextEncoder().encode(text) });

describe('a log brought in from a machine that was offline too', () => {
  test('another pot of the same number is kept beside, neither note changed, and the next free codes are offered', async () => {
    const { keeper, engine, textOf } = await aKeptNotebook({ 'trials/26-001.md': mine });
    const theirs = pot('yellow', '10:05 in');
    expect(await bringIn(keeper, engine, file(theirs), '2026-11-28')).toEqual({ id: '26-002', is: 'another-pot', free: next });
    expect(await textOf('trials/26-001.md')).toBe(mine);
    expect(await textOf('trials/26-002.md')).toBe(theirs);
    // Brought in once more it is known, and its log grows there, not in the other pot.
    expect(await bringIn(keeper, engine, file(theirs), '2026-11-28')).toEqual({ id: '26-002', is: 'same' });
    expect(await bringIn(keeper, engine, file(pot('yellow', '10:05 in, 11:05 out')), '2026-11-28')).toEqual({ id: '26-002', is: 'merged' });
    expect(await textOf('trials/26-001.md')).toBe(mine);
    expect(await textOf('trials/26-002.md')).toContain('11:05 out');
  });

  test('the same pot becomes one log', async () => {
    const { keeper, engine, textOf } = await aKeptNotebook({ 'trials/26-001.md': mine });
    expect(await bringIn(keeper, engine, file(pot('red', '10:00 in, 11:00 out')), '2026-11-28')).toEqual({ id: '26-001', is: 'merged' });
    expect(await textOf('trials/26-001.md')).toContain('11:00 out');
    expect(await textOf('trials/26-002.md')).toBeUndefined();
  });
});

describe('a log as one file', () => {
  test('is a zip, and plain text too where it has no photo', async () => {
    const { keeper, engine } = await aKeptNotebook({
      'trials/26-001.md': mine,
      'trials/26-002.md': pot('red', '10:00 photo photos/a.jpg'),
    });
    const [bare, photographed] = [await potFile(keeper, engine, '26-001'), await potFile(keeper, engine, '26-002')];
    if (!bare.ok || !photographed.ok) throw new Error('not packed');
    expect([bare.value.name, bare.value.file.type]).toEqual(['26-001.zip', 'application/zip']);
    expect([bare.value.plain?.name, bare.value.plain?.file.type, await bare.value.plain?.file.text()]).toEqual([
      '26-001.txt',
      'text/plain',
      mine,
    ]);
    expect(photographed.value.plain).toBeUndefined();
  });
});
