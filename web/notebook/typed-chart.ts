/** What the sources of a chart are. */
export const CHART_SOURCES = ['all', 'plant', 'insect', 'mollusc', 'lichen', 'mineral', 'synthetic', 'mordant'] as const;
export type ChartSources = (typeof CHART_SOURCES)[number];

/** What the claims of a chart say. */
export const CHART_ORIGINS = ['local', 'imported', 'cloth-only', 'find', 'absent'] as const;
export type ChartOrigin = (typeof CHART_ORIGINS)[number];

/** Which sources a chart shows, and of what place. */
export interface TypedChart {
  readonly region: string;
  readonly sources?: ChartSources;
  readonly origin?: ChartOrigin;
  /** Also what reaches in from the wider region, and what is known of neighbours. */
  readonly around?: boolean;
}
