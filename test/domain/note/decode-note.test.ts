import { describe, expect, test } from 'vitest';
import { decodeNote } from '../../../web/domain/note/decode-note.ts';
import { fc } from '../../helpers/property.ts';

const bytesOf = (...values: readonly number[]): Uint8Array => Uint8Array.from(values);

describe('decodeNote', () => {
  test('gives back any well-formed text, byte order mark included', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const { value, diagnostics } = decodeNote(new TextEncoder().encode(text));
        expect(value).toEqual({ text, encoding: 'utf-8', readOnly: false });
        expect(diagnostics).toEqual([]);
      }),
      { numRuns: 1000, seed: 1 },
    );
    expect(decodeNote(bytesOf(0xef, 0xbb, 0xbf, 0x61)).value.text).toBe('\uFEFFa');
  });

  test('agrees with the platform on what is UTF-8', () => {
    const platform = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
    const byte = fc.constantFrom(
      0x41,
      0x7f,
      0x80,
      0x8f,
      0x90,
      0x9f,
      0xa0,
      0xbf,
      0xc0,
      0xc1,
      0xc2,
      0xdf,
      0xe0,
      0xe1,
      0xed,
      0xef,
      0xf0,
      0xf1,
      0xf4,
      0xf5,
      0xff,
    );
    let good = 0;
    fc.assert(
      fc.property(
        fc.uint8Array({ maxLength: 5 }).chain((any) =>
          fc.oneof(
            fc.constant(any),
            fc.array(byte, { maxLength: 6 }).map((list) => Uint8Array.from(list)),
          ),
        ),
        (bytes) => {
          let expected: string | undefined;
          try {
            expected = platform.decode(bytes);
            good++;
          } catch {
            expected = undefined;
          }
          const { value } = decodeNote(bytes);
          expect(value.readOnly ? undefined : value.text).toBe(expected);
        },
      ),
      { numRuns: 20_000, seed: 2 },
    );
    expect(good).toBeGreaterThan(500);
  });

  test('shows anything else as Latin-1, read-only, and tells the first wrong byte', () => {
    const { value, diagnostics } = decodeNote(bytesOf(0x6b, 0x65, 0xe4, 0x72, 0x6d));
    expect(value).toEqual({ text: 'keärm', encoding: 'latin-1', readOnly: true });
    expect(diagnostics).toEqual([{ code: 'file-not-utf8', severity: 'error', range: [2, 3], about: ['2', 'E4'] }]);
  });

  test('a mark of one character before the wrong byte does not shift the finding', () => {
    const { value, diagnostics } = decodeNote(bytesOf(0xc3, 0xa4, 0xff));
    expect(diagnostics[0]?.range).toEqual([2, 3]);
    expect(value.text.charCodeAt(2)).toBe(0xff);
  });

  test('takes an empty file and five million bytes', () => {
    expect(decodeNote(bytesOf()).value).toEqual({ text: '', encoding: 'utf-8', readOnly: false });
    const text = 'färben 🧶 '.repeat(400_000);
    expect(decodeNote(new TextEncoder().encode(text)).value.text).toBe(text);
  });
});
