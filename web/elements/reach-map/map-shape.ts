import { geoGraticule10, geoNaturalEarth1, geoPath, type GeoProjection } from 'd3-geo';
import type { ReachPlace } from '../../notebook/views/reach-map-view.ts';

/** The drawing's own units; the page scales them. */
export const MAP = { width: 1000, height: 620, margin: 90 } as const;

/** A place as it is drawn. */
export interface DrawnPlace {
  readonly place: ReachPlace;
  /** Its number on the map and in the table, from 1. */
  readonly nth: number;
  readonly x: number;
  readonly y: number;
  /** Where its name stands; absent where there is no room, the number still does. */
  readonly name?: { readonly x: number; readonly y: number; readonly anchor: 'start' | 'end' | 'middle' };
}

/** The map's drawing. */
export interface MapShape {
  readonly land: string;
  readonly lines: string;
  readonly places: readonly DrawnPlace[];
}

/** At least this much of the world is shown, in degrees either way, so that one place still has a coast to be known by. Our choice. */
const LEAST_SPAN = 14;
const MARK = 11;
const LETTER = 8.2;
const LINE = 19;

type Box = readonly [x0: number, y0: number, x1: number, y1: number];

/** Draws a map around the places; without any, of the whole world. Natural Earth projection, turned to the places' middle. */
export function mapShape(land: object, places: readonly ReachPlace[]): MapShape {
  const numbered = places.map((place, at) => ({ place, nth: at + 1 }));
  const pinned = numbered.flatMap(({ place, nth }) => (place.point ? [{ place, nth, point: place.point }] : []));
  const projection = projectionFor(pinned.map(({ point }) => point));
  const path = geoPath(projection);
  const spots = pinned.flatMap(({ place, nth, point: [lat, lon] }) => {
    const at = projection([lon, lat]);
    return at ? [{ place, nth, x: at[0], y: at[1] }] : [];
  });
  return { land: path(land) ?? '', lines: path(geoGraticule10()) ?? '', places: withNames(apart(spots)) };
}

function projectionFor(points: readonly (readonly [number, number])[]): GeoProjection {
  const { width, height, margin } = MAP;
  const whole = [
    [0, 0],
    [width, height],
  ] as const;
  if (points.length === 0) return geoNaturalEarth1().precision(0.2).fitExtent(whole, { type: 'Sphere' });
  const lats = points.map(([lat]) => lat);
  const lons = points.map(([, lon]) => lon);
  const middle = (Math.min(...lons) + Math.max(...lons)) / 2;
  const half = (list: readonly number[]) => Math.max((Math.max(...list) - Math.min(...list)) / 2, LEAST_SPAN);
  const lat = (Math.min(...lats) + Math.max(...lats)) / 2;
  const [dLon, dLat] = [Math.min(half(lons), 179), Math.min(half(lats), 89)];
  const corners = [-1, 0, 1].flatMap((i) =>
    [-1, 0, 1].map((j) => [middle + i * dLon, Math.max(-89, Math.min(89, lat + j * dLat))] as const),
  );
  const fitted = geoNaturalEarth1()
    .precision(0.2)
    .rotate([-middle, 0])
    .fitExtent(
      [
        [margin, margin],
        [width - margin, height - margin],
      ],
      { type: 'MultiPoint', coordinates: corners },
    );
  // No empty sky above the northernmost land, nor below the southernmost, where there is world to show instead.
  const [x, y] = fitted.translate();
  const north = fitted([middle, 84])?.[1] ?? 0;
  const south = fitted([middle, -60])?.[1] ?? height;
  const shift =
    north > 0 ? -Math.min(north, Math.max(0, south - height)) : south < height ? Math.min(height - south, Math.max(0, -north)) : 0;
  return fitted.translate([x, y + shift]).clipExtent(whole);
}

interface Spot {
  readonly place: ReachPlace;
  readonly nth: number;
  x: number;
  y: number;
}

/** Pushes marks that lie upon each other a little apart, so that each can be seen; at most two marks' width from its point. */
function apart(spots: readonly Spot[]): readonly Spot[] {
  const moved = spots.map((one) => ({ ...one }));
  for (let round = 0; round < 60; round += 1) {
    for (const [i, a] of moved.entries()) {
      for (const b of moved.slice(i + 1)) {
        const [dx, dy] = [b.x - a.x, b.y - a.y];
        const distance = Math.hypot(dx, dy);
        const wanted = MARK * 2.1;
        if (distance >= wanted) continue;
        const [ux, uy] = distance < 0.01 ? [1, 0] : [dx / distance, dy / distance];
        const push = (wanted - distance) / 2;
        a.x -= ux * push;
        a.y -= uy * push;
        b.x += ux * push;
        b.y += uy * push;
      }
    }
  }
  return moved.map((one, i) => {
    const [from = one] = spots.slice(i, i + 1);
    const distance = Math.hypot(one.x - from.x, one.y - from.y);
    const held = Math.min(1, (MARK * 4) / Math.max(distance, 0.01));
    return { ...one, x: from.x + (one.x - from.x) * held, y: from.y + (one.y - from.y) * held };
  });
}

/** Names beside their marks where there is room: right, left, above and below are tried in turn, the earlier place first. */
function withNames(spots: readonly Spot[]): readonly DrawnPlace[] {
  const taken: Box[] = spots.map(({ x, y }) => [x - MARK, y - MARK, x + MARK, y + MARK]);
  return spots.map(({ place, nth, x, y }) => {
    const long = place.title.length * LETTER;
    const tries = [
      { x: x + MARK + 5, y: y + 6, anchor: 'start' },
      { x: x - MARK - 5, y: y + 6, anchor: 'end' },
      { x, y: y - MARK - 5, anchor: 'middle' },
      { x, y: y + MARK + LINE - 3, anchor: 'middle' },
    ] as const;
    const name = tries.find((one) => {
      const left = one.anchor === 'start' ? one.x : one.anchor === 'end' ? one.x - long : one.x - long / 2;
      const box: Box = [left, one.y - LINE + 4, left + long, one.y + 4];
      const fits =
        box[0] > 2 && box[2] < MAP.width - 2 && box[1] > 2 && box[3] < MAP.height - 2 && !taken.some((other) => overlap(box, other));
      if (fits) taken.push(box);
      return fits;
    });
    return { place, nth, x, y, ...(name && { name }) };
  });
}

const overlap = (a: Box, b: Box): boolean => a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3];
