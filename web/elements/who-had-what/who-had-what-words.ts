import { chartCsv } from '../../notebook/chart-csv.ts';
import type { ChartSources } from '../../notebook/typed-chart.ts';
import type { WhoHadWhatView } from '../../notebook/views/who-had-what-view.ts';

/** Which sources, as it stands in the sentence. */
export const SOURCE_WORDS: Readonly<Record<ChartSources, string>> = {
  all: 'every dyestuff',
  plant: 'dye plants',
  insect: 'dye insects',
  mollusc: 'shellfish',
  lichen: 'lichens',
  mineral: 'mineral colours',
  synthetic: 'synthetic dyes',
  mordant: 'mordants and helpers',
};

/** Which origin, as it stands in the sentence. */
export const ORIGIN_WORDS = {
  any: 'from wherever it came',
  local: 'to hand there',
  imported: 'imported',
  'cloth-only': 'known only as cloth',
  find: 'found on cloth',
  absent: 'known to be absent',
} as const;

/** How far around, as it stands in the sentence. */
export const AROUND_WORDS = { within: 'in the place and its parts', around: 'with wider region and neighbours' } as const;

/** The chart as a file to keep. */
export const csvOf = (view: WhoHadWhatView): string => `data:text/csv;charset=utf-8,${encodeURIComponent(chartCsv(view))}`;
