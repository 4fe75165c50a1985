import { expect, test } from 'vitest';
import { packNumbers, packRising, unpackNumbers, unpackRising } from '../../../web/search/frozen/packed-numbers.ts';
import { fc } from '../../helpers/property.ts';

const numbers = fc.array(fc.oneof(fc.nat(300), fc.constantFrom(127, 128, 16_383, 16_384, 2 ** 32 - 1), fc.nat(2 ** 32 - 1)));

test('numbers come back as they were, in one byte each where they are small', () => {
  fc.assert(
    fc.property(numbers, (list) => {
      expect([...unpackNumbers(packNumbers(list))]).toEqual(list);
    }),
    { seed: 5 },
  );
  expect(packNumbers([0, 1, 127])).toHaveLength(4);
  expect(packNumbers([128])).toHaveLength(3);
});

test('so do numbers that rise', () => {
  fc.assert(
    fc.property(numbers, (list) => {
      const rising = Uint32Array.from(list).sort();
      expect(unpackRising(packRising(rising))).toEqual(rising);
    }),
    { seed: 6 },
  );
  expect(packRising(Uint32Array.of(100_000, 100_001, 100_101))).toHaveLength(6);
});
