import { describe, expect, test } from 'vitest';
import { crc32 } from '../../../web/notebook/import/crc-32.ts';
import type { FoundFile } from '../../../web/notebook/import/found-files.ts';
import { openZip, ZIP_LIMITS } from '../../../web/notebook/import/open-zip.ts';
import { END, ENTRY, makeZip, placesOf, tamper } from '../../helpers/make-zip.ts';

const text = (words: string): Uint8Array => new TextEncoder().encode(words);

function files(zip: Uint8Array, limits = ZIP_LIMITS): readonly FoundFile[] {
  const opened = openZip('a.zip', zip, limits);
  if (!opened.ok) throw new Error(opened.error);
  return opened.value.files;
}

const only = (zip: Uint8Array, limits = ZIP_LIMITS): FoundFile => {
  const [file] = files(zip, limits);
  if (!file) throw new Error('no file');
  return file;
};

describe('openZip', () => {
  test('reads packed and plain entries, their times and names', async () => {
    const zip = makeZip([
      { path: 'notes/madder.md', bytes: text('red '.repeat(100)) },
      { path: 'Färber/紅花.md', bytes: text('é'), options: { level: 0 } },
      { path: 'empty.md', bytes: new Uint8Array() },
    ]);
    const found = files(zip);
    expect(found.map(({ path }) => path)).toEqual(['notes/madder.md', 'Färber/紅花.md', 'empty.md']);
    expect(await Promise.all(found.map((file) => file.read()))).toEqual([
      { ok: true, value: text('red '.repeat(100)) },
      { ok: true, value: text('é') },
      { ok: true, value: new Uint8Array() },
    ]);
    expect(found[0]?.modifiedAt).toBe(new Date('2020-05-04T10:20:30').getTime());
  });

  test('reads names of the first PCs where they are no UTF-8', () => {
    const zip = makeZip([{ path: 'F__rber.md', bytes: text('x') }]);
    const [at = 0] = placesOf(zip, ENTRY);
    // F, 0x84 (ä of code page 437), 0x81 (ü)
    expect(
      only(
        tamper(zip, (view) => {
          view.setUint8(at + 47, 0x84);
          view.setUint8(at + 48, 0x81);
        }),
      ).path,
    ).toBe('Fäürber.md');
  });

  test('folders are no files', () => {
    expect(files(makeZip([{ path: 'notes/', bytes: new Uint8Array() }]))).toEqual([]);
  });

  test('a comment after the end does not hide it', () => {
    const zip = makeZip([{ path: 'a.md', bytes: text('a') }]);
    const [end = 0] = placesOf(zip, END);
    const remarked = new Uint8Array(zip.length + 5);
    remarked.set(zip);
    new DataView(remarked.buffer).setUint16(end + 20, 5, true);
    expect(files(remarked)).toHaveLength(1);
  });

  test('a zip inside a zip stays packed', async () => {
    const inner = makeZip([{ path: '../../evil.md', bytes: text('evil') }]);
    const found = files(makeZip([{ path: 'inner.zip', bytes: inner }]));
    expect(found.map(({ path }) => path)).toEqual(['inner.zip']);
    expect(await found[0]?.read()).toEqual({ ok: true, value: inner });
  });
});

describe('openZip, given something hostile', () => {
  test.each([
    ['nothing', new Uint8Array(), 'not-a-zip'],
    ['a note', text('---\nkind: recipe\n---\n'), 'not-a-zip'],
    ['the first half of a zip', makeZip([{ path: 'a.md', bytes: text('a') }]).slice(0, 60), 'not-a-zip'],
  ])('%s is no zip', (_, bytes, error) => {
    expect(openZip('x', bytes)).toEqual({ ok: false, error });
  });

  test('more entries than allowed: nothing is read, and the number is said', () => {
    const zip = makeZip(
      Array.from({ length: 10_001 }, (_, at) => ({ path: `${at}.md`, bytes: new Uint8Array(), options: { level: 0 } as const })),
    );
    expect(openZip('x', zip)).toEqual({ ok: false, error: 'too-many', count: 10_001 });
    expect(openZip('x', zip, { ...ZIP_LIMITS, entries: 20_000 })).toMatchObject({ ok: true });
  });

  test('a directory that holds more entries than its end says is not believed', () => {
    const zip = makeZip(Array.from({ length: 5 }, (_, at) => ({ path: `${at}.md`, bytes: text('a') })));
    const [end = 0] = placesOf(zip, END);
    const lying = tamper(zip, (view) => view.setUint16(end + 10, 2, true));
    expect(openZip('x', lying, { ...ZIP_LIMITS, entries: 3 })).toEqual({ ok: false, error: 'too-many', count: 4 });
    expect(openZip('x', lying)).toEqual({ ok: false, error: 'damaged' });
  });

  test('a bomb by its ratio is not unpacked', async () => {
    const bomb = only(makeZip([{ path: 'bomb.md', bytes: new Uint8Array(8 * 1024 * 1024) }]));
    expect(bomb.fault).toBe('bomb');
    expect(await bomb.read()).toEqual({ ok: false, error: 'bomb' });
  });

  test('a bomb that lies about its size stops as soon as it has made more than it said', async () => {
    const zip = makeZip([{ path: 'bomb.md', bytes: new Uint8Array(64 * 1024 * 1024) }]);
    const [at = 0] = placesOf(zip, ENTRY);
    const lying = only(tamper(zip, (view) => view.setUint32(at + 24, 5000, true)));
    expect(lying.fault).toBeUndefined();
    expect(await lying.read()).toEqual({ ok: false, error: 'damaged' });
  });

  test('an entry that says it is larger than it is, is damaged', async () => {
    const zip = makeZip([{ path: 'a.md', bytes: text('madder') }]);
    const [at = 0] = placesOf(zip, ENTRY);
    expect(await only(tamper(zip, (view) => view.setUint32(at + 24, 500_000, true))).read()).toEqual({ ok: false, error: 'damaged' });
  });

  test('files past the limit of all together are left, also where many entries share the same bytes', () => {
    const noise = Uint8Array.from({ length: 1000 }, (_, at) => (at * 7919) % 251);
    const zip = makeZip(Array.from({ length: 4 }, (_, at) => ({ path: `${at}.bin`, bytes: noise })));
    expect(files(zip, { ...ZIP_LIMITS, allBytes: 2500 }).map(({ fault }) => fault)).toEqual([
      undefined,
      undefined,
      'too-large-together',
      'too-large-together',
    ]);
    expect(files(zip, { ...ZIP_LIMITS, fileBytes: 999 }).map(({ fault }) => fault)).toEqual(Array(4).fill('too-large'));
  });

  test('entries that lie over each other count each for what it says, so that little bytes never become many', async () => {
    const noise = Uint8Array.from({ length: 1000 }, (_, at) => (at * 7919) % 251);
    const zip = makeZip(Array.from({ length: 4 }, (_, at) => ({ path: `${at}.bin`, bytes: noise, options: { level: 0 } as const })));
    const overlapping = tamper(zip, (view) => placesOf(zip, ENTRY).forEach((at) => view.setUint32(at + 42, 0, true)));
    const found = files(overlapping, { ...ZIP_LIMITS, allBytes: 2500 });
    expect(found.map(({ fault }) => fault)).toEqual([undefined, undefined, 'too-large-together', 'too-large-together']);
    const made = await Promise.all(found.map((file) => file.read()));
    expect(made.reduce((sum, one) => sum + (one.ok ? one.value.length : 0), 0)).toBeLessThanOrEqual(2500);
  });

  test('a bomb within a zip is a packed file like any other: nothing opens it', async () => {
    const bomb = makeZip([{ path: 'bomb.md', bytes: new Uint8Array(1024 * 1024) }]);
    const nested = only(makeZip([{ path: 'outer.zip', bytes: makeZip([{ path: 'inner.zip', bytes: bomb }]) }]));
    const read = await nested.read();
    expect(read.ok && read.value.length).toBeLessThan(64 * 1024);
  });

  test('a symbolic link is not followed', async () => {
    const zip = makeZip([{ path: 'a.md', bytes: text('/etc/passwd'), options: { os: 3, attrs: 0o120777 << 16 } }]);
    expect(await only(zip).read()).toEqual({ ok: false, error: 'link' });
  });

  test('encrypted and unknown packings are said to be so', () => {
    const zip = makeZip([{ path: 'a.md', bytes: text('a') }]);
    const [at = 0] = placesOf(zip, ENTRY);
    expect(only(tamper(zip, (view) => view.setUint16(at + 8, 1, true))).fault).toBe('encrypted');
    expect(only(tamper(zip, (view) => view.setUint16(at + 10, 93, true))).fault).toBe('packing-unknown');
  });

  test('changed bytes are found by their checksum', async () => {
    const zip = makeZip([{ path: 'a.md', bytes: text('madder'), options: { level: 0 } }]);
    expect(await only(tamper(zip, (view) => view.setUint8(30 + 4, 0x58))).read()).toEqual({ ok: false, error: 'damaged' });
  });

  test('places and lengths that lead out of the file are damage, never more', async () => {
    const zip = makeZip([{ path: 'a.md', bytes: text('madder') }]);
    const [at = 0] = placesOf(zip, ENTRY);
    const [end = 0] = placesOf(zip, END);
    const reads = [
      only(tamper(zip, (view) => view.setUint32(at + 42, 0x7fffffff, true))),
      only(tamper(zip, (view) => view.setUint32(at + 20, 0x7fffffff, true))),
    ].map((file) => file.read());
    expect(await Promise.all(reads)).toEqual([
      { ok: false, error: 'damaged' },
      { ok: false, error: 'damaged' },
    ]);
    expect(
      openZip(
        'x',
        tamper(zip, (view) => view.setUint16(at + 28, 0xffff, true)),
      ),
    ).toEqual({ ok: false, error: 'damaged' });
    expect(
      openZip(
        'x',
        tamper(zip, (view) => view.setUint32(end + 16, 0x7fffffff, true)),
      ),
    ).toEqual({ ok: false, error: 'damaged' });
  });

  test('any byte overwritten never throws', async () => {
    const zip = makeZip([
      { path: 'a.md', bytes: text('madder and weld '.repeat(20)) },
      { path: 'b.md', bytes: text('b'), options: { level: 0 } },
    ]);
    for (let at = 0; at < zip.length; at++) {
      for (const byte of [0, 0xff]) {
        const opened = openZip(
          'x',
          tamper(zip, (view) => view.setUint8(at, byte)),
        );
        if (opened.ok) for (const file of opened.value.files) await file.read();
      }
    }
  });
});

describe('crc32', () => {
  // The check value that every description of this checksum gives for these nine digits.
  test('of 123456789 is cbf43926', () => expect(crc32(text('123456789')).toString(16)).toBe('cbf43926'));
});
