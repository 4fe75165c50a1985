import { describe, expect, test } from 'vitest';
import type { RegionId } from '../../../web/domain/place/region-tree.ts';
import { witnessesFor } from '../../../web/domain/verdict/witness.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const DYES = { 'dyestuffs/madder.md': aDyestuff('Common madder'), 'dyestuffs/weld.md': aDyestuff('Weld') };
const hood = (fields: string) => aNote(`kind: textile\nregion: york\nwhen: 1290–1310\nsource: dig\n${fields}`);
const roll = (fields: string) => aNote(`kind: text\nregion: england\nwhen: 1200–1400\nsource: roll\n${fields}`);

/** The witnesses in England of a dyeing, on wool unless told. */
function witnesses(
  files: Readonly<Record<string, string>>,
  { dyes = ['madder'], fibre = 'wool', from = 1300, to = from }: { dyes?: string[]; fibre?: string; from?: number; to?: number } = {},
) {
  const { base } = aNotebook({ ...aWorld, ...DYES, ...files });
  const fibreLine = fibre === '' ? [] : base.fibreLine(fibre);
  return witnessesFor(base, dyes, { region: 'england' as RegionId, span: { from, to }, fibreLine });
}

describe('witnesses: a thread or a text whose dyes are exactly those of the route', () => {
  test('each is told with its thread, and how its place and time lie; textiles before texts', () => {
    expect(
      witnesses({
        'texts/a.md': roll('dyes: madder\nfibre: wool'),
        'textiles/hood.md': hood('threads: [{where: weft, fibre: wool, dyes: [madder], tested: found}]'),
        'textiles/rag.md': hood('threads: [{fibre: wool, dyes: [madder], tested: found}]'),
      }),
    ).toEqual([
      { note: 'hood', kind: 'textile', where: 'weft', place: 'within', time: 'throughout' },
      { note: 'rag', kind: 'textile', place: 'within', time: 'throughout' },
      { note: 'a', kind: 'text', place: 'here', time: 'throughout' },
    ]);
  });
  test('part of the asked years is enough; a year earlier or later is not', () => {
    const files = { 'textiles/hood.md': hood('threads: [{fibre: wool, dyes: [madder], tested: found}]') };
    expect(witnesses(files, { from: 1305, to: 1340 })).toMatchObject([{ time: 'part' }]);
    expect(witnesses(files, { from: 1311, to: 1340 })).toEqual([]);
    expect(witnesses(files, { from: 1280, to: 1289 })).toEqual([]);
  });
  test('the dyes may stand in any order, by their names', () => {
    const files = { 'textiles/hood.md': hood('threads: [{fibre: Wool, dyes: [Weld, Common madder], tested: found}]') };
    expect(witnesses(files, { dyes: ['madder', 'weld'] })).toHaveLength(1);
  });
  test('fewer dyes or more are another dyeing', () => {
    const files = { 'textiles/hood.md': hood('threads: [{fibre: wool, dyes: [madder, weld], tested: found}]') };
    expect(witnesses(files, { dyes: ['madder'] })).toEqual([]);
    expect(witnesses(files, { dyes: ['madder', 'weld', 'woad'] })).toEqual([]);
  });
  test('no dyes have no witness: none detected is not none used, nor does a text that names none tell', () => {
    const files = {
      'textiles/hood.md': hood('threads: [{fibre: wool, dyes: [], tested: found}]'),
      'texts/a.md': roll('fibre: wool'),
    };
    expect(witnesses(files, { dyes: [] })).toEqual([]);
  });
  test.each(['no', 'none-detected'])('a thread is a witness only by what was found in it (tested: %s)', (tested) => {
    expect(witnesses({ 'textiles/hood.md': hood(`threads: [{fibre: wool, dyes: [madder], tested: ${tested}}]`) })).toEqual([]);
  });
  test('a text that speaks of several fibres speaks of each', () => {
    const files = { 'texts/a.md': roll('dyes: madder\nfibre: [linen, wool]') };
    expect(witnesses(files)).toHaveLength(1);
    expect(witnesses(files, { fibre: 'silk' })).toEqual([]);
  });
  test('a witness that names no fibre is one only where no fibre is asked', () => {
    const files = { 'texts/a.md': roll('dyes: madder') };
    expect(witnesses(files)).toEqual([]);
    expect(witnesses(files, { fibre: '' })).toHaveLength(1);
  });
  test('one whose place or date cannot be read is none', () => {
    const thread = 'threads: [{fibre: wool, dyes: [madder], tested: found}]';
    const textile = (fields: string) => aNote(`kind: textile\nsource: dig\n${fields}\n${thread}`);
    expect(witnesses({ 'textiles/a.md': textile('region: york') })).toEqual([]);
    expect(witnesses({ 'textiles/a.md': textile('region: york\nwhen: some day') })).toEqual([]);
    expect(witnesses({ 'textiles/a.md': textile('when: 1300') })).toEqual([]);
    expect(witnesses({ 'textiles/a.md': textile('when: 1300\nregion: nowhere-known') })).toEqual([]);
  });
});
