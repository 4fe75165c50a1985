import { describe, expect, test } from 'vitest';
import { BLOCK_BYTES, cutFile, packFiles } from '../../web/store/block-codec.ts';
import { fc, runs } from '../helpers/property.ts';

const sized = (length: number): Uint8Array => Uint8Array.from({ length }, (_, at) => (at * 7 + length) % 256);

describe('packFiles', () => {
  test('cutting gives back what was packed, byte for byte, whatever the sizes', () => {
    const files = fc.array(fc.oneof(fc.uint8Array({ maxLength: 300 }), fc.integer({ min: 0, max: 2 * BLOCK_BYTES }).map(sized)), {
      maxLength: 12,
    });
    fc.assert(
      fc.property(files, fc.integer({ min: 1, max: 1e9 }), (given, first) => {
        const { blocks, places } = packFiles(given, first);
        const byKey = new Map(blocks);
        expect(blocks.map(([key]) => key)).toEqual(blocks.map((_, at) => first + at));
        for (const [at, bytes] of given.entries()) {
          const place = places[at];
          const block = place && byKey.get(place.block);
          expect(block && Buffer.compare(cutFile(block, place), bytes)).toBe(0);
        }
      }),
      runs(60),
    );
  });

  test('small files share a block, and no block outgrows its size unless one file does', () => {
    const { blocks } = packFiles([sized(1000), sized(2000), sized(BLOCK_BYTES), sized(10), sized(BLOCK_BYTES + 5), sized(10)], 1);
    expect(blocks.map(([, bytes]) => bytes.length)).toEqual([3000, BLOCK_BYTES, 10, BLOCK_BYTES + 5, 10]);
  });

  test('packs nothing into nothing, and an empty file into a block', () => {
    expect(packFiles([], 1)).toEqual({ blocks: [], places: [] });
    expect(packFiles([new Uint8Array()], 7)).toEqual({ blocks: [[7, new Uint8Array()]], places: [{ block: 7, offset: 0, length: 0 }] });
  });
});
