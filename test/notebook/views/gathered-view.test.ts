import { describe, expect, test } from 'vitest';
import { recogniseForms } from '../../../web/notebook/import/recognise-forms.ts';
import { DATA_FORMS, dataOut } from '../../../web/notebook/export/data-out.ts';
import { gatheredView } from '../../../web/notebook/views/gathered-view.ts';
import { aDyestuff, aNotebook, aWorld } from '../../helpers/a-notebook.ts';
import { demoNotebook } from '../../helpers/demo-notebook.ts';

const demo = await demoNotebook();
const { base } = aNotebook({
  ...aWorld,
  'dyestuffs/madder.md': aDyestuff('Madder'),
  'textiles/sock.md': '---\nkind: textile\ntitle: A sock\n---\n',
});
const utf8 = (text: string) => new TextEncoder().encode(text);
const look = (name: string, text: string, choice = {}) => gatheredView(base, { name, bytes: utf8(text) }, choice);

describe('a chosen file', () => {
  test('what the notebook gives out is known again for what it is', () => {
    const forms = Object.fromEntries(DATA_FORMS.map((form) => [form, recogniseForms(dataOut(demo.base, form).text)[0]]));
    expect(forms).toMatchObject({
      'notebook-jsonld': 'notebook-jsonld',
      'textiles-csv': 'textiles',
      'textiles-geojson': 'places',
      'places-geojson': 'places',
    });
  });

  test.each([
    ['{"@context":"http://n2t.net/ark:/99152/p0c","periods":{}}', 'periods'],
    ['{"type":"FeatureCollection","features":[]}', 'places'],
    ['Object;Site;Dating\nSock;York;900', 'textiles'],
    ['Recipe;Dyed on;Mordant;Fibre;Weight (g);L*;a*;b*\nMadder;2025;alum;wool;50;40;45;28', 'trials'],
    ['{"a":1}', undefined],
    ['one column\nonly', undefined],
  ])('%s is read as %s', (text, form) => expect(recogniseForms(text)[0]).toBe(form));

  test('new, numbered and passed over are counted, and each row says which', () => {
    const view = look('finds.csv', 'title,place,date\nSock,York,900\n,York,900\nBand,Atlantis,900');
    expect(view.sentences).toEqual([
      '2 notes would be new.',
      '1 note of them would get a number, because the name is taken. Nothing is overwritten.',
      '1 row is passed over, with the reason.',
      '2 rows have something to know.',
    ]);
    expect(view.rows.map(({ row, fate, says }) => [row, fate, says.length])).toEqual([
      [2, 'new, under a number: textiles/sock-2.md', 1],
      [3, 'passed over', 1],
      [4, 'new: textiles/band.md', 1],
    ]);
  });

  test('columns are shown as matched, and can be matched by hand or to none', () => {
    const at = (view: ReturnType<typeof look>, name: string) => view.table?.columns.find((one) => one.name === name)?.at;
    const text = 'title,a,b\nSock,York,900';
    expect(at(look('x.csv', text), 'region')).toBe(-1);
    expect(look('x.csv', text).says).toHaveLength(2);
    const matched = look('x.csv', text, { columns: { region: 1, when: 2 } });
    expect([at(matched, 'region'), matched.says]).toEqual([1, []]);
    expect(matched.notes[0]?.text).toContain('region: york');
    const none = look('x.csv', text, { columns: { title: -1 } });
    expect(none.notes).toEqual([]);
    expect(none.says.join()).toContain('Choose one');
  });

  test('a file longer than anyone looks through shows the rows with messages, and counts the rest', () => {
    const lines = Array.from({ length: 400 }, (_, at) => `Band ${at},${at === 399 ? 'Atlantis' : 'York'},900`);
    const view = look('many.csv', ['title,place,date', ...lines].join('\n'));
    expect([view.notes.length, view.rows.length, view.moreRows]).toEqual([400, 150, 250]);
    expect(view.rows.at(-1)).toMatchObject({ row: 401, says: [expect.stringContaining('Atlantis')] });
  });

  test.each([
    ['latin-1 bytes', 'a.csv', Uint8Array.from([0x74, 0xe9, 0x2c, 0x62]), 'UTF-8'],
    ['a zip', 'a.zip', Uint8Array.from([0x50, 0x4b, 3, 4]), 'This is a zip'],
    ['a spreadsheet', 'a.xlsx', Uint8Array.from([0x50, 0x4b, 3, 4]), 'spreadsheet’s own file'],
    ['a note', 'a.md', utf8('---\nkind: text\n---'), 'a note already'],
    ['half a JSON file', 'a.json', utf8('{"periods":'), 'no JSON file'],
    ['JSON of another kind', 'a.json', utf8('{"a":1}'), 'could not be told'],
    ['nothing', 'a.csv', utf8(''), 'empty'],
    ['prose', 'a.txt', utf8('Madder was grown here.'), 'could not be told'],
  ])('%s gives a sentence and no note', (_, name, bytes, says) => {
    const view = gatheredView(base, { name, bytes });
    expect(view.says.join()).toContain(says);
    expect(view.notes).toEqual([]);
  });

  test('a spreadsheet’s Unicode text, UTF-16 with tabs, is read', () => {
    const text = '\uFEFFtitle\tplace\tdate\nÄrmel\tYork\t900';
    const bytes = new Uint8Array(text.length * 2);
    [...text].forEach((letter, at) => new DataView(bytes.buffer).setUint16(at * 2, letter.charCodeAt(0), true));
    expect(gatheredView(base, { name: 'a.txt', bytes }).notes[0]?.text).toContain('title: Ärmel');
  });
});
