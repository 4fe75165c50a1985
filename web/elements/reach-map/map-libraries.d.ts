/** The little that the map uses of three libraries that carry no types. */
declare module 'd3-geo' {
  export interface GeoProjection {
    (point: readonly [longitude: number, latitude: number]): [x: number, y: number] | null;
    rotate(angles: readonly [number, number]): this;
    fitExtent(extent: readonly [readonly [number, number], readonly [number, number]], object: object): this;
    clipExtent(extent: readonly [readonly [number, number], readonly [number, number]] | null): this;
    precision(precision: number): this;
    translate(): [x: number, y: number];
    translate(point: readonly [x: number, y: number]): this;
  }
  export function geoNaturalEarth1(): GeoProjection;
  export function geoGraticule10(): object;
  export function geoPath(projection: GeoProjection): (object: object) => string | null;
}
declare module 'topojson-client' {
  export function feature(topology: object, object: object): object;
}
declare module 'world-atlas/land-110m.json' {
  const topology: { readonly objects: { readonly land: object } };
  export default topology;
}
