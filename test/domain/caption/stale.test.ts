import { describe, expect, test } from 'vitest';
import { bindingOf } from '../../../web/domain/caption/fingerprint.ts';
import { type CaptionToday, staleness } from '../../../web/domain/caption/stale.ts';
import type { Notebook } from '../../../web/notebook/notebook.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const GROWN = 'region: england, when: 1300–1880, status: grown, known-by: text, source: "cardon-2007, p. 1"';
const FOUND = 'region: york, when: c. 950, status: wild, known-by: remains, sure: likely, source: tomlinson';
const today: CaptionToday = { verdict: 'feasible', region: 'england', when: '1370' };

const base = (...rows: readonly string[]): Record<string, string> => ({
  ...aWorld,
  'periods/boom.md': aNote('kind: period\ntitle: Boom\nwhen: 1350–1400'),
  'dyestuffs/weld.md': aDyestuff('Weld', ...rows),
  'trials/t1.md': aNote('kind: trial\nrecipe: weld-wool\ndate: 2023-05-04\ncolour: {lab: [80, -9, 60]}'),
});

/** A display whose caption is bound to both claims and the trial as they stand in this notebook. */
function bound(notebook: Notebook, addresses = [{ note: 'weld', nth: 0 }, { note: 'weld', nth: 1 }, { note: 't1' }]) {
  const claims = addresses.map((address) => bindingOf(notebook.base, address, 'words'));
  const yaml = `kind: display\npalette: p\ncaptions:\n  - for: weld-wool\n    text: x\n    verdict: feasible\n    region: england\n    when: "1370"\n    claims: ${JSON.stringify(claims)}`;
  const read = aNotebook({ 'd.md': aNote(yaml) }).base.note('d')?.record;
  const caption = read?.kind === 'display' ? read.captions[0] : undefined;
  if (!caption) throw new Error('no caption was read');
  return caption;
}

describe('staleness', () => {
  const before = aNotebook(base(GROWN, FOUND));
  const caption = bound(before);

  test('what was bound reads back, and is fresh', () => {
    expect(caption.claims[0]).toMatchObject({
      claim: 'weld#0',
      status: 'grown',
      region: 'england',
      when: '1300–1880',
      knownBy: 'text',
      sure: 'yes',
      source: 'cardon-2007, p. 1',
    });
    expect(caption.claims[2]).toMatchObject({ claim: 't1', when: '2023', material: 'weld-wool' });
    expect(staleness(before.base, caption, today)).toEqual([]);
  });

  test.each([
    ['a date', GROWN.replace('1300', '1400'), { part: 'when', was: '1300–1880', now: '1400–1880' }],
    ['a source', GROWN.replace('cardon-2007, p. 1', 'ploss-1962'), { part: 'source', was: 'cardon-2007, p. 1', now: 'ploss-1962' }],
    ['a status', GROWN.replace('grown', 'imported'), { part: 'status', was: 'grown', now: 'imported' }],
    ['a doubt', `${GROWN}, sure: doubtful`, { part: 'sure', was: 'yes', now: 'doubtful' }],
    ['a way of knowing', GROWN.replace('known-by: text', 'known-by: inference'), { part: 'knownBy', was: 'text', now: 'inference' }],
    ['a place', GROWN.replace('england', 'scotland'), { part: 'region', was: 'england', now: 'scotland' }],
  ])('%s that changes is told, old and new', (_, row, change) => {
    expect(staleness(aNotebook(base(row, FOUND)).base, caption, today)).toEqual([{ kind: 'claim-changed', claim: 'weld#0', ...change }]);
  });

  test('a claim that is taken out is gone', () => {
    expect(staleness(aNotebook(base(FOUND)).base, caption, today)).toEqual([
      { kind: 'claim-gone', claim: 'weld#0', was: expect.objectContaining({ status: 'grown', when: '1300–1880' }) as unknown },
    ]);
  });

  test('a note that is taken out takes its claims with it', () => {
    const files = base(GROWN, FOUND);
    delete files['dyestuffs/weld.md'];
    expect(staleness(aNotebook(files).base, caption, today).map(({ kind }) => kind)).toEqual(['claim-gone', 'claim-gone']);
  });

  test('a claim that only moved is the same claim', () => {
    const other = 'region: ireland, when: 1200, status: imported, known-by: trade, source: customs';
    expect(staleness(aNotebook(base(other, FOUND, GROWN)).base, caption, today)).toEqual([]);
  });

  test('another way to write the date is no change', () => {
    expect(
      staleness(aNotebook(base(GROWN.replace('1300–1880', '1300/1880'), FOUND.replace('c. 950', '0950~'))).base, caption, today),
    ).toEqual([]);
  });

  test('a caption may say its place and date as people write them', () => {
    const written = { ...caption, region: 'Albion', when: '1370' };
    expect(staleness(before.base, written, today)).toEqual([]);
    expect(staleness(before.base, { ...written, when: 'c. 1370' }, { ...today, when: '1345–1395, core 1370' })).toEqual([]);
  });

  test('a period that means other years is one', () => {
    const row = GROWN.replace('1300–1880', 'boom');
    const old = aNotebook(base(row, FOUND));
    const files = { ...base(row, FOUND), 'periods/boom.md': aNote('kind: period\ntitle: Boom\nwhen: 1340–1400') };
    expect(staleness(aNotebook(files).base, bound(old), today)).toEqual([
      { kind: 'claim-changed', claim: 'weld#0', part: 'when', was: '1350–1400', now: '1340–1400' },
    ]);
  });

  test('a trial dyed in another year is told', () => {
    const files = { ...base(GROWN, FOUND), 'trials/t1.md': aNote('kind: trial\nrecipe: weld-wool\ndate: 2024-01-01') };
    expect(staleness(aNotebook(files).base, caption, today)).toEqual([
      { kind: 'claim-changed', claim: 't1', part: 'when', was: '2023', now: '2024' },
    ]);
  });

  test('a palette asked for another date or place, or another verdict, makes it stale', () => {
    expect(staleness(before.base, caption, { verdict: 'plausible', region: 'ireland', when: '1470' })).toEqual([
      { kind: 'question-changed', part: 'region', was: 'england', now: 'ireland' },
      { kind: 'question-changed', part: 'when', was: '1370', now: '1470' },
      { kind: 'verdict-changed', was: 'feasible', now: 'plausible' },
    ]);
  });

  test('a colour that cannot be judged any more is told', () => {
    expect(staleness(before.base, caption, { region: 'england', when: '1370' })).toEqual([
      { kind: 'verdict-changed', was: 'feasible', now: '' },
    ]);
  });
});

describe('bindingOf', () => {
  test('there is nothing to bind to where nothing stands', () => {
    const { base: evidence } = aNotebook(base(GROWN));
    expect(bindingOf(evidence, { note: 'weld', nth: 7 }, 'x')).toBeUndefined();
    expect(bindingOf(evidence, { note: 'nowhere' }, 'x')).toBeUndefined();
  });
});
