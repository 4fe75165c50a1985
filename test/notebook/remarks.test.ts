import { describe, expect, test } from 'vitest';
import { mergeRemarks, readRemarks, type Remark, remarksFile } from '../../web/notebook/remarks.ts';
import { fc } from '../helpers/property.ts';

const bytes = (value: unknown): Uint8Array => new TextEncoder().encode(typeof value === 'string' ? value : JSON.stringify(value));
const REMARK: Remark = { id: 'r1', note: 'weld', line: 4, text: 'Which edition?', by: 'A reviewer', at: '2024-05-01T10:00:00Z' };

const remark = fc.record(
  {
    id: fc.constantFrom('a', 'b', 'c', 'd'),
    note: fc.constantFrom('weld', 'woad'),
    line: fc.integer({ min: 1, max: 9 }),
    text: fc.constantFrom('One.', 'Two <b>.', 'Три'),
    by: fc.constantFrom('', 'Anna'),
    at: fc.constantFrom('2024-05-01T10:00:00Z', '2024-05-02T10:00:00+02:00'),
    done: fc.constant(true),
  },
  { requiredKeys: ['id', 'note', 'text', 'by', 'at'] },
) as fc.Arbitrary<Remark>;
const collection = fc.uniqueArray(remark, { selector: ({ id }) => id });

describe('readRemarks', () => {
  test('reads back what was written', () => {
    fc.assert(
      fc.property(collection, (remarks) => {
        const read = readRemarks(remarksFile(remarks));
        expect(read.ok && [...read.value.remarks].sort(byId)).toEqual([...remarks].sort(byId));
        expect(read.ok && remarksFile(read.value.remarks)).toEqual(remarksFile(remarks));
      }),
    );
  });

  test.each(['', 'no json', '[]', { format: 'another', version: 1, remarks: [] }, { format: 'tenterground-remarks', version: 1 }])(
    'refuses %j as another kind of file',
    (file) => expect(readRemarks(bytes(file))).toEqual({ ok: false, error: 'not-remarks' }),
  );

  test('refuses a later version, and counts what is no remark', () => {
    const file = {
      format: 'tenterground-remarks',
      version: 1,
      remarks: [REMARK, null, { ...REMARK, at: 'soon' }, { ...REMARK, text: ' ' }],
    };
    expect(readRemarks(bytes(file))).toEqual({ ok: true, value: { remarks: [REMARK], unreadCount: 3 } });
    expect(readRemarks(bytes({ ...file, version: 2 }))).toEqual({ ok: false, error: 'newer' });
  });

  test('drops a line that is none, and keys it does not know', () => {
    const read = readRemarks(bytes({ format: 'tenterground-remarks', version: 1, remarks: [{ ...REMARK, line: 0, colour: 'red' }] }));
    const { line: _line, ...whole } = REMARK;
    expect(read.ok && read.value.remarks).toEqual([whole]);
  });
});

const byId = (a: Remark, b: Remark): number => (a.id < b.id ? -1 : 1);

describe('mergeRemarks', () => {
  test('takes each remark once, and done from either', () => {
    const other = { ...REMARK, id: 'r2', text: 'And where?' };
    expect(mergeRemarks([REMARK], [{ ...REMARK, done: true }, other])).toEqual([{ ...REMARK, done: true }, other]);
  });

  test('keeps two different remarks that have one id', () => {
    const other = { ...REMARK, text: 'Another.' };
    expect(mergeRemarks([REMARK], [other]).map(({ id, text }) => [id, text])).toEqual([
      ['r1', 'Which edition?'],
      ['r1.2', 'Another.'],
    ]);
  });

  test('loses no words, and merging again changes nothing', () => {
    fc.assert(
      fc.property(collection, collection, (mine, theirs) => {
        const merged = mergeRemarks(mine, theirs);
        const words = ({ note, line, text, by, at }: Remark) => JSON.stringify([note, line, text, by, at]);
        for (const one of [...mine, ...theirs]) expect(merged.map(words)).toContain(words(one));
        expect(mergeRemarks(merged, theirs)).toEqual(merged);
        expect(mergeRemarks(merged, merged)).toEqual(merged);
      }),
    );
  });
});
