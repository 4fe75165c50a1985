import type { EvidenceBase } from '../../domain/claim/evidence-base.ts';
import { asText, NewNotes } from './new-notes.ts';
import { type Gathered, isObject, listOf, MOST_ROWS, nothingGathered, readJson, textOf } from './gathered.ts';

type Plain = Readonly<Record<string, unknown>>;
type Point = readonly [latitude: number, longitude: number];

/**
 * Places of a GeoJSON file, Linked Places (LPF) included, as `region` notes.
 *
 * @source RFC 7946 (positions are longitude, latitude); Linked Places format: `names[].toponym`, `relations` with `gvp:broaderPartitive`.
 */
export function readPlaces(base: EvidenceBase, text: string): Gathered {
  const json = readJson(text);
  if ('gathered' in json) return json.gathered;
  const features = featuresOf(json.value);
  if (!features) return nothingGathered('not-this-kind');
  if (features.length === 0) return nothingGathered('nothing-inside');
  const notes = new NewNotes(base, 'regions');
  features.slice(0, MOST_ROWS).forEach((feature, at) => readPlace(notes, at + 1, feature));
  if (features.length > MOST_ROWS) notes.tell(0, 'rows-left-out', String(features.length - MOST_ROWS));
  return notes;
}

function featuresOf(value: unknown): readonly unknown[] | undefined {
  if (!isObject(value)) return undefined;
  if (value['type'] === 'FeatureCollection' && Array.isArray(value['features'])) return value['features'];
  return value['type'] === 'Feature' ? [value] : undefined;
}

function readPlace(notes: NewNotes, row: number, feature: unknown): void {
  if (!isObject(feature)) {
    notes.tell(row, 'row-broken', '');
    notes.pass(row, '');
    return;
  }
  const properties = isObject(feature['properties']) ? feature['properties'] : {};
  const toponyms = toponymsOf(feature);
  const title =
    ['title', 'name', 'label', 'NAME'].map((key) => textOf(properties[key])).find((one) => one !== '') ?? toponyms[0]?.name ?? '';
  const key = textOf(feature['@id'] ?? feature['id'] ?? properties['id']);
  if (title === '') {
    notes.tell(row, 'no-name', key);
    notes.pass(row, key);
    return;
  }
  const point = pointOf(notes, row, title, feature['geometry']);
  const parents = [...listOf(properties['within']).map(textOf), ...broaderOf(feature)].filter((one) => one !== '');
  const within = [...new Set(parents)].flatMap((one) => notes.region(row, one) ?? []);
  const names = toponyms.filter(({ name }) => name !== title);
  const front = {
    kind: 'region',
    title,
    ...(names.length > 0 ? { names } : {}),
    ...(within.length > 0 ? { within } : {}),
    ...(point ? { point } : {}),
  };
  const described = listOf(feature['descriptions']).flatMap((one) => (isObject(one) ? textOf(one['value']) || [] : []));
  const body = [...described.map(asText), /:/.test(key) ? `From ${asText(key)}.` : ''].filter((part) => part !== '').join('\n\n');
  const cells = [
    { label: 'within', text: within.join(', ') },
    { label: 'point', text: point ? point.join(', ') : '' },
    { label: 'other names', text: names.map(({ name }) => name).join(', ') },
  ];
  // An address is no id; a plain word is one, as in the notebook's own file.
  notes.add(row, title, front, body, cells, /^[a-z\d][a-z\d-]*$/.test(key) && /[a-z]/.test(key) ? key : '');
}

function toponymsOf(feature: Plain): readonly { readonly name: string; readonly lang?: string }[] {
  const seen = new Set<string>();
  return listOf(feature['names']).flatMap((one) => {
    const name = textOf(isObject(one) ? one['toponym'] : one);
    if (name === '' || seen.has(name)) return [];
    seen.add(name);
    const lang = isObject(one) ? textOf(one['lang']) : '';
    return [{ name, ...(lang === '' ? {} : { lang }) }];
  });
}

const broaderOf = (feature: Plain): readonly string[] =>
  listOf(feature['relations']).flatMap((one) =>
    isObject(one) && /broaderPartitive|partOf/i.test(textOf(one['relationType'])) ? textOf(one['label']) || textOf(one['relationTo']) : [],
  );

function pointOf(notes: NewNotes, row: number, title: string, geometry: unknown): Point | undefined {
  const positions = positionsIn(geometry, 0);
  if (positions.length === 0) {
    notes.tell(row, 'no-point', title);
    return undefined;
  }
  if (positions.some(([lon, lat]) => !(Math.abs(lon) <= 180 && Math.abs(lat) <= 90))) {
    notes.tell(row, 'point-impossible', positions[0]?.join(', ') ?? '');
    return undefined;
  }
  const isPoint = isObject(geometry) && geometry['type'] === 'Point';
  const [lon, lat] = isPoint ? (positions[0] ?? [0, 0]) : middleOf(positions);
  if (!isPoint) notes.tell(row, 'point-from-shape', title, [`${rounded(lat)}, ${rounded(lon)}`]);
  return [rounded(lat), rounded(lon)];
}

/** Every position of a geometry, of whatever kind. */
function positionsIn(value: unknown, depth: number): readonly (readonly [number, number])[] {
  if (depth > 8) return [];
  if (isObject(value)) {
    return [...positionsIn(value['coordinates'], depth + 1), ...listOf(value['geometries']).flatMap((one) => positionsIn(one, depth + 1))];
  }
  if (!Array.isArray(value)) return [];
  const [lon, lat] = value as readonly unknown[];
  if (typeof lon === 'number' && typeof lat === 'number' && Number.isFinite(lon) && Number.isFinite(lat)) return [[lon, lat]];
  return value.flatMap((one) => positionsIn(one, depth + 1));
}

/** The middle of the box around a shape; a shape over the date line is taken the short way round. */
function middleOf(positions: readonly (readonly [number, number])[]): readonly [number, number] {
  const lats = positions.map(([, lat]) => lat);
  const lons = positions.map(([lon]) => lon);
  const wide = most(lons) - least(lons) > 180 ? lons.map((lon) => (lon < 0 ? lon + 360 : lon)) : lons;
  const lon = (least(wide) + most(wide)) / 2;
  return [lon > 180 ? lon - 360 : lon, (least(lats) + most(lats)) / 2];
}

const least = (list: readonly number[]): number => list.reduce((a, b) => Math.min(a, b), Infinity);
const most = (list: readonly number[]): number => list.reduce((a, b) => Math.max(a, b), -Infinity);

/** Four decimals: eleven metres, finer than any place name. */
const rounded = (degrees: number): number => Math.round(degrees * 1e4) / 1e4;
