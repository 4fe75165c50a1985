import type { Measure } from './measure.ts';

const volume = (factor: number, source: string, caution?: string): Measure => ({
  factor,
  of: 'volume',
  source,
  ...(caution === undefined ? {} : { caution }),
});

const INCH = 16.387064;
const WINE = 'wine gallon of 231 cubic inches, the US gallon';
const ALE = 'ale gallon of 282 cubic inches';
const CORN = 'Winchester corn gallon of 268.8 cubic inches';
const SCOTS = 'a table of Scots measures: pint of 104.20 cubic inches';

/** Measures of capacity by the names people write, in lower case: millilitres to one. */
export const VOLUME_UNITS: Readonly<Record<string, Measure>> = {
  ml: volume(1, 'SI'),
  cl: volume(10, 'SI'),
  l: volume(1000, 'SI'),
  pint: volume(568.26125, 'imperial pint, Weights and Measures Act 1824', 'Before 1824 ask which pint: the wine pint is 473 ml.'),
  quart: volume(1136.5225, 'imperial quart, two pints', 'Before 1824 ask which quart.'),
  gallon: volume(4546.09, 'imperial gallon', 'Before 1824 ask which gallon: wine 3.785, ale 4.621, corn 4.405 L.'),
  'wine pint': volume((231 * INCH) / 8, WINE),
  'wine gallon': volume(231 * INCH, WINE, 'Before 1707 wine gallons varied.'),
  'ale pint': volume((282 * INCH) / 8, ALE),
  'ale gallon': volume(282 * INCH, ALE),
  'corn pint': volume((268.8 * INCH) / 8, CORN),
  'corn gallon': volume(268.8 * INCH, CORN),
  'us gallon': volume(231 * INCH, WINE),
  'scots pint': volume(104.2 * INCH, SCOTS, 'An archive’s page says 1.7 L and 2¾ imperial pints, which is not the same.'),
  'scots gallon': volume(8 * 104.2 * INCH, SCOTS),
};
