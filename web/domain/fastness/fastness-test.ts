/** What cloth is tested for. */
export const FASTNESS_TESTS = ['light', 'wash', 'rub', 'water', 'other'] as const;
export type FastnessTest = (typeof FASTNESS_TESTS)[number];

/**
 * What a published grade is a grade of, by its method and scale. Where neither says anything else it is light:
 * that is what the list of grades in a dyestuff's note is for.
 *
 * @source parts of ISO 105: B light, C washing, D dry cleaning, E01 water, E04 perspiration, X12 rubbing.
 */
export function fastnessTestOf(method = '', scale = ''): FastnessTest {
  const said = `${method} ${scale}`;
  if (/105-?\s?X12|\brub|\bcrock/i.test(said)) return 'rub';
  if (/105-?\s?C\d|\bwash|\bsoap|\blaunder/i.test(said)) return 'wash';
  if (/105-?\s?E01|\bfastness to water\b|\bwater fastness\b/i.test(said)) return 'water';
  if (/105-?\s?(?:E04|D01|P01)|\bperspir|\bdry.?clean|\bpressing\b/i.test(said)) return 'other';
  return 'light';
}
