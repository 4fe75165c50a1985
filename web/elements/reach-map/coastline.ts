let loading: Promise<object> | undefined;

/**
 * The coastline of the world as GeoJSON, fetched with the page's own files when it is first wanted.
 *
 * @source Natural Earth, 1:110 million, public domain, as the package world-atlas (ISC) has it.
 */
export function coastline(): Promise<object> {
  loading ??= Promise.all([import('topojson-client'), import('world-atlas/land-110m.json')]).then(([{ feature }, { default: topology }]) =>
    feature(topology, topology.objects.land),
  );
  return loading;
}
