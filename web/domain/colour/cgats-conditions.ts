import type { Observer } from './conditions.ts';
import type { MeasuredUnder } from './spectral-file.ts';

/** How the samples were measured, from the keywords of the header; only what they state. */
export function measuredUnder(header: ReadonlyMap<string, string>): MeasuredUnder {
  const stated = (...keys: readonly string[]): string | undefined =>
    keys.map((key) => header.get(key)).find((value) => value !== undefined && value !== '');
  const weighting = stated('WEIGHTING_FUNCTION') ?? '';
  const found: Record<keyof MeasuredUnder, string | Observer | undefined> = {
    illuminant: stated('ILLUMINANT') ?? /ILLUMINANT\W+([A-Z0-9-]+)/i.exec(weighting)?.[1],
    observer: readObserver(stated('OBSERVER') ?? /OBSERVER\W+([^;]+)/i.exec(weighting)?.[1] ?? ''),
    condition: /\bM[0-3]\b/.exec(stated('MEASUREMENT_CONDITION', 'MEASUREMENT_SOURCE') ?? '')?.[0],
    geometry: stated('MEASUREMENT_GEOMETRY'),
    instrument: stated('INSTRUMENTATION'),
    originator: stated('ORIGINATOR'),
    description: stated('FILE_DESCRIPTOR', 'DESCRIPTOR'),
    created: stated('CREATED'),
  };
  return Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined)) as MeasuredUnder;
}

/** `2`, `10`, `2 degree`, `10°`, `1931`, `1964`; undefined for anything else. */
function readObserver(text: string): Observer | undefined {
  const number = /\d+/.exec(text)?.[0];
  return number === '2' || number === '1931' ? 2 : number === '10' || number === '1964' ? 10 : undefined;
}
