import { describe, expect, test } from 'vitest';
import { coastline } from '../../../web/elements/reach-map/coastline.ts';
import { MAP, mapShape } from '../../../web/elements/reach-map/map-shape.ts';
import type { ReachPlace } from '../../../web/notebook/views/reach-map-view.ts';

const land = await coastline();
const aPlace = (region: string, point?: readonly [number, number]): ReachPlace => ({
  region,
  title: region,
  ...(point && { point }),
  reaches: ['grown'],
  doubtful: false,
  contested: false,
  somewhere: false,
  claims: [],
});

describe('mapShape', () => {
  test('draws land and keeps every place inside the map', () => {
    const { land: path, places } = mapShape(land, [aPlace('york', [53.96, -1.08]), aPlace('persia', [36, 58]), aPlace('japan', [36, 138])]);
    expect(path.length).toBeGreaterThan(1000);
    for (const { x, y } of places) expect(x > 0 && x < MAP.width && y > 0 && y < MAP.height).toBe(true);
  });

  test('north is up and east is right', () => {
    const [york, venice] = mapShape(land, [aPlace('york', [53.96, -1.08]), aPlace('venice', [45.44, 12.33])]).places;
    expect((york?.x ?? 0) < (venice?.x ?? 0) && (york?.y ?? 0) < (venice?.y ?? 0)).toBe(true);
  });

  test('numbers follow the list, and a place without a point has none on the map', () => {
    expect(mapShape(land, [aPlace('york', [54, -1]), aPlace('nowhere'), aPlace('rome', [42, 12])]).places.map(({ nth }) => nth)).toEqual([
      1, 3,
    ]);
  });

  test('marks upon one another are pushed apart, and names never overlap', () => {
    const crowd = Array.from({ length: 9 }, (_, i) => aPlace(`A place called ${i}`, [51.5 + (i % 3) * 0.1, 4 + i * 0.1]));
    const { places } = mapShape(land, [...crowd, aPlace('far', [40, 40])]);
    for (const [i, a] of places.entries()) for (const b of places.slice(i + 1)) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(5);
    const boxes = places.flatMap(({ name, place }) => {
      if (!name) return [];
      const long = place.title.length * 8;
      const left = name.anchor === 'start' ? name.x : name.anchor === 'end' ? name.x - long : name.x - long / 2;
      return [{ left, right: left + long, y: name.y }];
    });
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1)) expect(a.left < b.right && b.left < a.right && Math.abs(a.y - b.y) < 14).toBe(false);
  });

  test('without places it is the whole world', () => {
    expect(mapShape(land, []).land.length).toBeGreaterThan(5000);
  });

  test('one place alone still shows the coast around it', () => {
    expect(mapShape(land, [aPlace('york', [53.96, -1.08])]).land.length).toBeGreaterThan(300);
  });
});
