import { describe, expect, test } from 'vitest';
import { publishedFiles } from '../../../web/elements/publish/published-files.ts';
import { publishedView } from '../../../web/notebook/views/published-view.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const NOW = '2026-11-25T10:00:00Z';
const CAPTION = 'Red wool dyed with madder. In England, 1370, madder was imported.';

/** A display among notes, people and places that must not go out: each holds a word of its own that begins with "canary". */
const files: Readonly<Record<string, string>> = {
  ...aWorld,
  'dyestuffs/madder.md': `${aDyestuff(
    'Madder',
    'region: england, when: 1300–1500, status: imported, known-by: trade, source: "cardon-2007, p. 1", note: canary-remark',
    'region: secret-mill, when: 1300–1500, status: grown, known-by: text, source: canary-place-source',
  )}canary-body-of-madder`,
  'dyestuffs/woad.md': aDyestuff(
    'Woad canary-unused',
    'region: england, when: 1300–1500, status: grown, known-by: text, source: canary-unused-source',
  ),
  'regions/secret-mill.md': aNote('kind: region\ntitle: canary-mill\nwithin: england\nprivate: true'),
  'textiles/secret.md': aNote(
    'kind: textile\ntitle: canary-textile\nregion: england\nwhen: 1370\nprivate: true\nthreads: [{fibre: wool, dyes: [madder], tested: found}]\nsource: canary-textile-source',
  ),
  'recipes/red.md': `${aNote('kind: recipe\ntitle: Madder red\nfibre: wool\nsteps: [canary-step]\ningredients: [{what: madder, role: dye, amount: 50 %}]')}canary-recipe-body`,
  'recipes/other.md': aNote('kind: recipe\ntitle: canary-other-recipe\nfibre: wool\ningredients: [{what: woad, role: dye}]'),
  'trials/t1.md': `${aNote(
    'kind: trial\ntitle: canary-title by canary-person\nrecipe: red\ndate: 2023-05-01\nby: canary-person\nvessel: canary-vessel\nwater: {hardness: canary-hardness, note: canary-well}\nlots: [canary-lot]\nlog: [canary-log]\ndeviations: [canary-slip]\ncode: T1-1\nfibre: wool\ncolour: {lab: [42, 44, 28], illuminant: D65, observer: 10}',
  )}canary-trial-body`,
  'trials/t2.md': aNote(
    'kind: trial\nrecipe: other\ncode: canary-code\nfibre: wool\ncolour: {lab: [30, 0, -20], illuminant: D65, observer: 10}',
  ),
  'plain.md': 'canary-plain',
  'palettes/p.md': `${aNote('kind: palette\ntitle: Reds\nregion: england\nwhen: "1370"\nquestion: What reds?\nkeeps: [{what: red, note: canary-keep}]')}canary-palette-body`,
  'displays/board.md': `${aNote(
    `kind: display\ntitle: The board\npalette: p\ncaptions: [{for: red, headline: Red, text: "${CAPTION}", claims: [{claim: "madder#0", says: madder}], review: [{by: canary-reviewer, says: canary-comment}]}]`,
  )}canary-display-body`,
};

const published = (texts: Readonly<Record<string, string>>) => {
  const view = publishedView(aNotebook(texts), 'board', NOW);
  if (!view) throw new Error('not published');
  return {
    view,
    text: publishedFiles(view)
      .map((file) => file.text)
      .join('\n'),
  };
};

describe('publishedView', () => {
  test('no word of an unused or private note, of a person or a place of work goes out', () => {
    const { text } = published(files);
    expect(text.match(/canary[\w-]*/g) ?? []).toEqual([]);
  });

  test('what the display uses goes out: caption, verdict, claim with its source, recipe, day of dyeing', () => {
    const { text, view } = published(files);
    for (const said of [CAPTION, 'Madder was imported', 'cardon-2007, p. 1', 'Madder red', '1 May 2023', 'T1-1', 'What reds?'])
      expect(text).toContain(said);
    expect(view.goesOut.join(' ')).toContain('1 colour: Madder red.');
  });

  test('the preview names the private notes a display rests on, here and only here', () => {
    expect(published(files).view.keptBack[0]).toBe('Private notes, though the display uses them: secret, secret-mill.');
  });

  test('a private recipe keeps its name and what goes in; its caption goes out, for it was written for the public', () => {
    const { text, view } = published({
      ...files,
      'recipes/red.md': files['recipes/red.md']?.replace('fibre: wool', 'fibre: wool\nprivate: true') ?? '',
    });
    expect(text).not.toContain('Madder red');
    expect(text).not.toContain('50 %');
    expect(view.colours[0]).toMatchObject({ title: 'Red', key: 'colour' });
  });

  test('a private display is not published', () => {
    const text = files['displays/board.md']?.replace('title: The board', 'title: The board\nprivate: true') ?? '';
    expect(publishedView(aNotebook({ ...files, 'displays/board.md': text }), 'board', NOW)).toBeUndefined();
    expect(publishedView(aNotebook(files), 'madder', NOW)).toBeUndefined();
  });

  test('text that looks like HTML stays text', () => {
    const text = files['displays/board.md']?.replace('headline: Red', 'headline: "<img src=x onerror=alert(1)>"') ?? '';
    expect(published({ ...files, 'displays/board.md': text }).text).not.toContain('<img');
  });

  test('of the demonstration, neither who dyed nor any sample that does not hang there goes out', async () => {
    const notebook = await demoNotebook();
    const view = publishedView(notebook, 'house-2-board', NOW);
    if (!view) throw new Error('not published');
    const text = publishedFiles(view)
      .map((file) => file.text)
      .join('\n');
    const shown = new Set(view.colours.map(({ code }) => code));
    const trials = notebook.base.ofKind('trial');
    expect(trials.length).toBeGreaterThan(100);
    for (const { record } of trials) {
      if (record.by) expect(text).not.toContain(record.by);
      for (const { code } of record.samples) if (code && !shown.has(code)) expect(text).not.toContain(`>${code}<`);
    }
    expect(text).not.toContain('the curator');
  });
});
