/** A measure with what it comes to, and who says so. */
export interface Measure {
  /** Grams or millilitres to one of it. */
  readonly factor: number;
  readonly of: 'mass' | 'volume';
  readonly source: string;
  /** What to look at before trusting the conversion. */
  readonly caution?: string;
  /** How many ounces a pound has, or the pound of an ounce: 12 or 16. */
  readonly ounces?: 12 | 16;
}
