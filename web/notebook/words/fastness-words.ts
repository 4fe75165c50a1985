import type { GreyScaleChange } from '../../domain/colour/grey-scale.ts';
import type { FastnessTest } from '../../domain/fastness/fastness-test.ts';

/** What cloth is tested for. */
export const fastnessTestWords = {
  light: 'light',
  wash: 'washing',
  rub: 'rubbing',
  water: 'water',
  other: 'other',
} as const satisfies Record<FastnessTest, string>;

/** Where no scale is named. */
export const UNKNOWN_SCALE = 'scale not said';

/** The grade of a change, which is no grade of fastness to light. */
export const readingGradeText = ({ step }: GreyScaleChange): string => `grey-scale grade ${step} (ISO 105-A05)`;

/** What stands under every light test. */
export const LIGHT_TEST_CAVEAT =
  'The grade is of the change in colour after that dose of light, not a grade of light fastness; a window is no laboratory, and its dose an order of magnitude.';

/** What stands under every list of grades. */
export const GRADES_CAVEAT = 'Grades of different scales, or from different sources, are never made into one number.';
