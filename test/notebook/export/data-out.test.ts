import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { dataOut, DATA_FORMS, type DataForm } from '../../../web/notebook/export/data-out.ts';
import { gather } from '../../../web/notebook/import/gather.ts';
import { Notebook } from '../../../web/notebook/notebook.ts';
import { aDyestuff, aNote, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const demo = await demoNotebook();
const out = (form: DataForm, from = demo) => dataOut(from.base, form).text;
const empty = () => new Notebook();
const taken = (notes: readonly { readonly path: string; readonly text: string }[]): Notebook =>
  aNotebook(Object.fromEntries(notes.map(({ path, text }) => [path, text])));
type Node = Readonly<Record<string, unknown>>;
const graphOf = (text: string) => (JSON.parse(text) as { readonly '@graph': readonly Node[] })['@graph'];

describe('the notebook as JSON-LD', () => {
  const graph = graphOf(out('notebook-jsonld'));
  const byId = new Map(graph.map((node) => [node['id'], node]));

  test('every note and every claim is a node of its own, under one id', () => {
    const claims = [...demo.base.notes()].reduce((sum, { file }) => sum + demo.base.claimsIn(file).length, 0);
    expect(graph).toHaveLength([...demo.base.notes()].length + claims);
    expect(byId.size).toBe(graph.length);
  });

  test('a period is an E4 with its four bounds, a region an E53 within another', () => {
    const house = byId.get('wadholm-house-2');
    expect(house).toMatchObject({ '@type': ['E4_Period'], P7_took_place_at: 'hanse-towns' });
    expect(byId.get('york')).toMatchObject({ '@type': ['E53_Place'], P89_falls_within: ['england'] });
  });

  test('a claim assigns a status to a material at a place and time, with its sources', () => {
    const claim = graph.find((node) => node['P140_assigned_attribute_to'] === 'madder' && node['tg:status'] === 'grown');
    expect(claim).toMatchObject({
      '@type': 'E13_Attribute_Assignment',
      'tg:concerns': { 'P4_has_time-span': { '@type': 'E52_Time-Span' } },
    });
    expect(claim?.['source']).toEqual([expect.any(String)]);
  });

  test('a name has its language, years before our era their sign', () => {
    expect(byId.get('madder')?.['altLabel']).toContainEqual({ '@value': 'Krapp', '@language': 'de' });
    expect(byId.get('madder')?.['altLabel']).toContainEqual({ '@value': 'Rubia tinctorum', '@language': 'la' });
    const { base } = aNotebook({ 'periods/old.md': aNote('kind: period\ntitle: Old\nwhen: -0499/0020') });
    expect(graphOf(dataOut(base, 'notebook-jsonld').text)[0]).toMatchObject({
      'P4_has_time-span': { P82a_begin_of_the_begin: '-0499', P82b_end_of_the_end: '0020' },
    });
  });

  test('read back into nothing it is the same notebook, byte for byte; into itself it changes nothing', () => {
    const { notes, messages } = gather(empty().base, 'notebook-jsonld', out('notebook-jsonld'));
    expect(messages).toEqual([]);
    expect(new Map(notes.map(({ path, text }) => [path, text]))).toEqual(
      new Map([...demo.base.notes()].map(({ file, source }) => [file, source])),
    );
    expect(out('notebook-jsonld', taken(notes))).toBe(out('notebook-jsonld'));
    expect(gather(demo.base, 'notebook-jsonld', out('notebook-jsonld')).notes).toEqual([]);
  });

  test('a note of that path that says something else is not overwritten', () => {
    const mine = aNotebook({ 'dyestuffs/madder.md': aNote('kind: dyestuff\ntitle: My madder') });
    const other = aNotebook({ 'dyestuffs/madder.md': aNote('kind: dyestuff\ntitle: Their madder') });
    const gathered = gather(mine.base, 'notebook-jsonld', out('notebook-jsonld', other));
    expect(gathered.notes.map(({ path }) => path)).toEqual(['dyestuffs/madder-2.md']);
    expect(gathered.messages.map(({ code }) => code)).toEqual(['id-taken']);
  });

  test.each([
    ['{"@graph":[]}', 'not-this-kind'],
    ['{"@graph":[{"tg:text":"x","tg:file":"../evil.md"}]}', 'row-broken'],
    ['{"@graph":[{"tg:text":"x","tg:file":"run.js"}]}', 'row-broken'],
    ['{', 'not-json'],
  ])('%s gives a message and no note', (text, code) => {
    const gathered = gather(empty().base, 'notebook-jsonld', text);
    expect(gathered.messages.map((one) => one.code)).toEqual([code]);
    expect(gathered.notes).toEqual([]);
  });
});

describe('claims as CSV', () => {
  const rowsOf = (text: string) => Papa.parse<string[]>(text, { skipEmptyLines: true }).data;

  test('a line for every claim, as many cells as headings', () => {
    const [head = [], ...lines] = rowsOf(out('claims-csv'));
    const claims = [...demo.base.notes()].reduce((sum, { file }) => sum + demo.base.claimsIn(file).length, 0);
    expect(lines).toHaveLength(claims);
    expect(lines.every((line) => line.length === head.length)).toBe(true);
  });

  test('what a spreadsheet would run is text, quotes and line breaks are kept', () => {
    const { base } = aNotebook({
      ...aWorld,
      'dyestuffs/trap.md': aDyestuff(
        'Trap',
        'region: england, when: 1200, status: grown, known-by: text, note: "=HYPERLINK(\\"x\\")", price: "+1", source: "-k"',
      ),
    });
    const text = dataOut(base, 'claims-csv').text;
    for (const cell of rowsOf(text).flat()) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
    expect(rowsOf(text)[1]).toEqual(expect.arrayContaining([`'=HYPERLINK("x")`, "'+1", "'-k"]));
  });

  test('years before our era stay numbers', () => {
    const { base } = aNotebook({
      ...aWorld,
      'dyestuffs/old.md': aDyestuff('Old', 'region: england, when: -0499/-0020, status: grown, known-by: text'),
    });
    expect(rowsOf(dataOut(base, 'claims-csv').text)[1]?.slice(4, 9)).toEqual(["'-0499/-0020", '-499', '-499', '-20', '-20']);
  });

  test('a claim without a readable date is there, with empty bounds', () => {
    const { base } = aNotebook({ ...aWorld, 'dyestuffs/vague.md': aDyestuff('Vague', 'region: england, when: yore, status: grown') });
    expect(rowsOf(dataOut(base, 'claims-csv').text)[1]?.slice(0, 6)).toEqual(['vague', 'Vague', 'grown', 'england', 'yore', '']);
  });
});

describe('textiles', () => {
  test('as CSV are read back as the same textiles', () => {
    const kept = taken(
      [...demo.base.notes()].filter(({ record }) => record.kind !== 'textile').map(({ file, source }) => ({ path: file, text: source })),
    );
    const gathered = gather(kept.base, 'textiles', out('textiles-csv'));
    expect(gathered.messages.filter(({ code }) => code !== 'word-unknown')).toEqual([]);
    for (const { path, text } of gathered.notes) kept.put({ path, bytes: new TextEncoder().encode(text) });
    const ids = (notebook: Notebook) => notebook.base.ofKind('textile').map(({ id }) => id);
    expect(ids(kept)).toEqual(ids(demo));
    expect(out('textiles-csv', kept).replaceAll(/\r\n/g, '\n').split('\n').length).toBe(out('textiles-csv').split('\r\n').length);
    const threads = (notebook: Notebook) =>
      notebook.base
        .ofKind('textile')
        .flatMap(({ id, record }) =>
          record.threads.map(({ where, fibre, dyes, markers, tested }) => [
            id,
            where,
            fibre?.text,
            dyes.map(({ text }) => text),
            markers,
            tested,
          ]),
        );
    expect(threads(kept)).toEqual(threads(demo));
  });

  test('words that a spreadsheet would run are text in the CSV, and the same words when they are read back', () => {
    const words = ['=SUM(A1)', '+1 hood', '-x', '@here', "'=quoted", "'tis", '-5', 'a "b"'];
    const textile = (word: string, at: number) =>
      aNote(
        `kind: textile\nid: t${at}\ntitle: ${JSON.stringify(word)}\ncontext: ${JSON.stringify(word)}\nregion: ${JSON.stringify(word)}\n` +
          `threads: [{where: ${JSON.stringify(word)}, colour-now: ${JSON.stringify(word)}, tested: no}]`,
      );
    const from = aNotebook(Object.fromEntries(words.map((word, at) => [`textiles/t${at}.md`, textile(word, at)])));
    const text = out('textiles-csv', from);
    for (const cell of Papa.parse<string[]>(text).data.flat()) expect(cell).not.toMatch(/^(?!-5$)[=+\-@\t\r]/);
    const back = taken(gather(empty().base, 'textiles', text).notes);
    const told = (notebook: Notebook) =>
      notebook.base
        .ofKind('textile')
        .map(({ id, title, record }) => [
          id,
          title,
          record.context,
          record.region?.text,
          record.threads[0]?.where,
          record.threads[0]?.colourNow,
        ]);
    expect(told(back)).toEqual(told(from));
    expect(told(back).map(([, title]) => title)).toEqual(words);
  });

  test('as GeoJSON stand at their region’s point, longitude first, or at none', () => {
    const { features } = JSON.parse(out('textiles-geojson')) as { readonly features: readonly Node[] };
    expect(features).toHaveLength(demo.base.ofKind('textile').length);
    const york = demo.base.note('york')?.record;
    const point = york?.kind === 'region' ? york.point : undefined;
    expect(features.find(({ id }) => id === 'york-coppergate-madder')).toMatchObject({
      geometry: { type: 'Point', coordinates: [point?.[1], point?.[0]] },
      properties: { dyes: ['madder'], positionOf: 'region' },
      when: { timespans: [{ start: { earliest: '0850' } }] },
    });
    const { base } = aNotebook({ 'textiles/lost.md': aNote('kind: textile\ntitle: Lost\nregion: nowhere') });
    expect(JSON.parse(dataOut(base, 'textiles-geojson').text)).toMatchObject({ features: [{ geometry: null }] });
  });
});

describe('places as Linked Places', () => {
  test('are read back with their title, names, point and parents', () => {
    const text = out('places-geojson');
    const known = taken([...demo.base.notes()].map(({ file, source }) => ({ path: file, text: source })));
    const { notes } = gather(known.base, 'places', text);
    const again = aNotebook(Object.fromEntries(notes.map(({ path, text: written }) => [path.replace(/-\d+\.md$/, '.md'), written])));
    for (const { id, title, names, record } of demo.base.ofKind('region')) {
      const back = again.base.note(id);
      expect(back?.title, id).toBe(title);
      expect(back?.names, id).toEqual(names.filter(({ name }) => name !== title));
      expect(back?.record.kind === 'region' && back.record.point, id).toEqual(record.point?.map((one) => Math.round(one * 1e4) / 1e4));
      expect(again.base.regions.parentsOf(id), id).toEqual(demo.base.regions.parentsOf(id));
    }
  });
});

test('every form of an empty notebook is a whole file', () => {
  for (const form of DATA_FORMS) expect(out(form, empty()).length).toBeGreaterThan(10);
});
