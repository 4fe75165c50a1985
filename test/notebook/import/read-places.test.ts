import { describe, expect, test } from 'vitest';
import { parseNote } from '../../../web/domain/note/parse-note.ts';
import { readPlaces } from '../../../web/notebook/import/read-places.ts';
import { aNotebook, aWorld } from '../../helpers/a-notebook.ts';

const { base } = aNotebook(aWorld);
const feature = (properties: unknown, geometry: unknown, more: object = {}) => ({ type: 'Feature', properties, geometry, ...more });
const collection = (...features: readonly unknown[]) => JSON.stringify({ type: 'FeatureCollection', features });
const point = (lon: number, lat: number) => ({ type: 'Point', coordinates: [lon, lat] });
const codes = (text: string) => readPlaces(base, text).messages.map(({ row, code }) => `${row} ${code}`);
const first = (text: string) => {
  const draft = readPlaces(base, text).notes[0];
  if (!draft) throw new Error('no note');
  return parseNote(draft.path, draft.text);
};

describe('readPlaces', () => {
  test('a GeoJSON point becomes a region; latitude comes first in a note, longitude in GeoJSON', () => {
    const { value, diagnostics } = first(collection(feature({ name: 'Lincoln', within: 'England' }, point(-0.54, 53.23))));
    expect(diagnostics).toEqual([]);
    expect(value.record).toMatchObject({ kind: 'region', point: [53.23, -0.54], within: [{ text: 'england' }] });
  });

  test('a Linked Place brings its toponyms, languages, broader place and address', () => {
    const { value } = first(
      collection(
        feature({ title: 'Hull' }, point(-0.33, 53.74), {
          '@id': 'https://example.org/place/7',
          names: [
            { toponym: 'Hull', lang: 'en' },
            { toponym: 'Kyngeston', lang: 'enm' },
          ],
          relations: [{ relationType: 'gvp:broaderPartitive', label: 'England' }],
        }),
      ),
    );
    expect(value.names).toEqual([{ name: 'Kyngeston', lang: 'enm' }]);
    expect(value.record).toMatchObject({ within: [{ text: 'england' }] });
    expect(value.source).toContain('https://example.org/place/7');
  });

  test('a shape gives its middle and says so, over the date line too', () => {
    const ring = (lons: readonly number[]) => ({ type: 'Polygon', coordinates: [lons.map((lon, i) => [lon, i < 2 ? 0 : 10])] });
    const square = collection(feature({ name: 'Square' }, ring([0, 10, 10, 0, 0])));
    expect(first(square).value.record).toMatchObject({ point: [5, 5] });
    expect(codes(square)).toEqual(['1 point-from-shape']);
    expect(first(collection(feature({ name: 'Far' }, ring([170, -170, -170, 170, 170])))).value.record).toMatchObject({ point: [5, 180] });
  });

  test('what has no position, or an impossible one, becomes a region without a point', () => {
    expect(codes(collection(feature({ name: 'Nowhere' }, null)))).toEqual(['1 no-point']);
    expect(codes(collection(feature({ name: 'Swapped' }, point(53, 120))))).toEqual(['1 point-impossible']);
  });

  test('two of one name get two ids, a known one is not overwritten', () => {
    const gathered = readPlaces(base, collection(feature({ name: 'York' }, point(-1, 54)), feature({ name: 'York' }, point(-76, 40))));
    expect(gathered.notes.map(({ id }) => id)).toEqual(['york-2', 'york-3']);
  });

  test.each([
    ['not json', ['0 not-json']],
    ['{"type":"Topology"}', ['0 not-this-kind']],
    [collection(), ['0 nothing-inside']],
    [collection(7, feature({}, point(0, 0))), ['1 row-broken', '2 no-name']],
  ])('%s gives messages', (text, expected) => {
    expect(codes(text)).toEqual(expected);
    expect(readPlaces(base, text).notes).toEqual([]);
  });
});
