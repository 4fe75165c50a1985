/** A value in another unit, with how it was got: shown wherever the value is. */
export interface Conversion {
  readonly value: number;
  readonly unit: string;
  /** What one of the old unit comes to in the new one, where the two share a zero. */
  readonly factor?: number;
  /** The sum itself, where no single factor does: `(160 − 32) × 5/9`. */
  readonly sum?: string;
  readonly source: string;
  /** What to look at before trusting it. */
  readonly caution?: string;
}

/** A figure with its range and who says so. A reader may put their own in its place. */
export interface SourcedRange {
  readonly from: number;
  readonly to: number;
  readonly source: string;
  readonly caution?: string;
}

/** Twelve digits are kept: more would only show how binary fractions multiply. */
export const twelveDigits = (value: number): number => Number(value.toPrecision(12));
