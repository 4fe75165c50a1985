import { describe, expect, test } from 'vitest';
import type { NoteKind } from '../../web/domain/note/note.ts';
import { demoNotebook } from './demo-notebook.ts';

describe('the demonstration', () => {
  const { base } = demoNotebook();
  const count = (...kinds: readonly NoteKind[]) => kinds.reduce((sum, kind) => sum + base.ofKind(kind).length, 0);
  test.each([
    ['dyestuffs', count('dyestuff'), 50],
    ['mordants, assistants and processes', count('mordant', 'assistant', 'process'), 12],
    ['fibres', count('fibre'), 8],
    ['regions', count('region'), 30],
    ['periods', count('period'), 14],
    ['wearers', count('wearer'), 12],
    ['colour-words', count('colour-word'), 15],
    ['recipes', count('recipe'), 30],
    ['textiles', count('textile'), 16],
    ['texts', count('text'), 14],
    ['rules', count('rule'), 8],
    ['reading notes', count('plain'), 25],
    ['palettes', count('palette'), 4],
  ])('holds enough %s', (_name, there, wanted) => expect(there).toBeGreaterThanOrEqual(wanted));

  test('holds 300 claims on dyestuffs, beside those of textiles', () => {
    const claims = base.ofKind('dyestuff').flatMap(({ file }) => base.claimsIn(file));
    expect(claims.length).toBeGreaterThanOrEqual(300);
  });
  test('holds 90 samples with a colour, 24 of them with a measured curve', () => {
    const { colours } = demoNotebook();
    const swatches = base.ofKind('trial').flatMap(({ file, record }) => record.samples.flatMap((sample) => colours.of(sample, file) ?? []));
    expect(swatches.length).toBeGreaterThanOrEqual(90);
    expect(swatches.filter(({ spectrumIs }) => spectrumIs === 'measured').length).toBeGreaterThanOrEqual(24);
  });
  test('gives every claim a source or says that it is practice, and says how it was checked', () => {
    const claims = base.ofKind('dyestuff').flatMap(({ file }) => base.claimsIn(file));
    for (const claim of claims) expect(claim.sources.length > 0 || claim.knownBy === 'practice').toBe(true);
    const published = claims.filter(({ sources }) => sources.some(({ key }) => key !== 'common-practice'));
    expect(published.filter(({ checked }) => checked === undefined).map(({ note, nth }) => `${note} ${nth}`)).toEqual([]);
  });
  test('says of every trial that it is invented', () => {
    expect(base.ofKind('trial').filter(({ invented }) => !invented)).toEqual([]);
  });
});
