/** How a band is drawn, which is what it says. */
export type BandStyle = 'local' | 'imported' | 'cloth-only' | 'find' | 'absent';

/** One claim's time on the chart. Years are astronomical and inclusive; `null` is an open end. */
export interface ChartBand {
  /** The years it surely holds. May be the wrong way round when none is sure. */
  readonly from: number | null;
  readonly to: number | null;
  /** The years it may hold. */
  readonly outerFrom: number | null;
  readonly outerTo: number | null;
  readonly style: BandStyle;
  /** What the claim says, in a few words. */
  readonly label: string;
  readonly claimKey: string;
  /** True for evidence that settles nothing by itself: drawn paler. */
  readonly soft: boolean;
}

/** One source with its claims. */
export interface ChartRow {
  readonly id: string;
  readonly title: string;
  /** Colour of the small cloth at the row's head, `#rrggbb`. */
  readonly hex?: string | undefined;
  readonly fibre?: string | undefined;
  readonly bands: readonly ChartBand[];
}
