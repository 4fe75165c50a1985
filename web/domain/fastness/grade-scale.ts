/** The scales grades are given on; grades of different scales are never compared. */
export type GradeScale = 'grey-change' | 'grey-staining' | 'blue-wool' | 'blue-wool-american' | 'unknown';

/**
 * The scale a note names.
 *
 * @source ISO 105-A02 (change in colour), A03 (staining), B-series blue wools 1–8 and L2–L9 (ISO 105-B02:2014).
 */
export function gradeScaleOf(scale: string): GradeScale {
  if (/\bL\s?2\b|AATCC/i.test(scale)) return 'blue-wool-american';
  if (/blue.?wool|105-?\s?B0|\bBS 1006 B/i.test(scale)) return 'blue-wool';
  if (/stain|105-?\s?A0[34]/i.test(scale)) return 'grey-staining';
  if (/gr[ae]y|105-?\s?A0[25]/i.test(scale)) return 'grey-change';
  return 'unknown';
}

/** True for a grade that its scale has: grey scales 1 to 5 with half steps, blue wools 1 to 8 with spans, L2 to L9. */
export function isGrade(grade: string, scale: string): boolean {
  const text = grade.trim().replaceAll('–', '-');
  const [, first, last] = /^([1-9])(?:-([1-9]))?$/.exec(text) ?? [];
  const [from, to] = [Number(first), Number(last ?? first)];
  switch (gradeScaleOf(scale)) {
    case 'grey-change':
    case 'grey-staining':
      return first !== undefined && to <= 5 && (to === from || to === from + 1);
    case 'blue-wool':
      return first !== undefined && to <= 8 && from <= to;
    case 'blue-wool-american':
      return /^L\s?[2-9](?:-L?\s?[2-9])?$/i.test(text);
    case 'unknown':
      return false;
  }
}
